/** What the answer rests on, in words and figures. */
import { describe, expect, it } from 'vitest';
import { flatAnswerFacts } from '../../../src/core/flat/facts';
import { makingOf } from '../../../src/core/flat/making';
import { DEFAULT_FLAT, type FlatPlan } from '../../../src/core/flat/plan';
import { STIFFER_ALONG } from '../../../src/core/flat/plies';
import { catalogue } from '../../../src/data/catalogue';
const plan = (change: Partial<FlatPlan> = {}): FlatPlan => ({ ...DEFAULT_FLAT, ...change });

const plainly = (text: string) => text.replaceAll('\u00a0', ' ');

describe('what it rests on', () => {
  const facts = (change: Partial<FlatPlan> = {}) => {
    const asked = plan({ paper: 'wove-text', adhesive: 'pva', ...change });
    const all = flatAnswerFacts(asked, makingOf(asked, catalogue));
    return Object.fromEntries(
      all.map(({ label, value, note }) => [label, { value: plainly(value), note: note && plainly(note) }]),
    );
  };
  it('each figure as by hand', () => {
    const of = facts();
    expect(of['Water brought']!.value).toBe('18 to 51 g/m²');
    // 29.9 × 3 ÷ 5.8 ÷ 100 ÷ 0.779
    expect(of['The sheet is soaked']!.value).toBe('20 %');
    expect(of['It grows']).toMatchObject({
      value: '0.48 % across, 0.048 % along',
      note: expect.stringMatching(/about a tenth/),
    });
    expect(of['Still pulling when dry']!.value).toBe('30 %');
    expect(of.Stiffness!.value).toBe('paper 1\u202f800 MPa across, 1.7 times that along');
    expect(of['The board']).toMatchObject({
      value: '1.8 to 3 mm, 1\u202f500 to 4\u202f000 MPa',
      note: expect.stringMatching(/0\.5 to 1\.5 % across/),
    });
    // wood in 50 % holds 9.2 % at 21 °C and a little more at 20 (Wood Handbook, table 4-2), paper half to 0.85 of that
    expect(of['Moisture, your room']).toMatchObject({
      value: expect.stringMatching(/^4\.[67] to 7\.[89] %$/),
      note: expect.stringMatching(/at 50 % and 20 °C: wood holds 9\.[23] %/),
    });
    expect(of['Moisture, later']!.note).toMatch(/at 35 %, the same warmth: wood [67](\.\d)? ?%/);
    expect(of['The cover']!.value).toMatch(/80 to 150 g\/m², grain up the height$/);
    expect(of.On).toMatchObject({
      value: expect.stringMatching(/148 × 216 mm, grain up the height$/),
      note: 'under weight for 24 h',
    });
    expect(of['Glued with']!.value).toBe('PVA: bristle brush, full coat');
    expect(of).not.toHaveProperty('Lined with');
  });
  it('a lining, a board that does not move, other grains', () => {
    const of = facts({ lining: 'paper', liningGrain: 'unknown', board: 'glass', paper: 'lokta-light' });
    expect(of['Lined with']!.value).toMatch(/grain unknown$/);
    expect(of['The board']!.note).toMatch(/not to move with the air/);
    expect(of['It grows']!.note).toBe('no grain: alike both ways');
    expect(facts({ paper: 'blotting' })['It grows']!.note).toMatch(/a weak grain: along it 0\.4 times/);
    expect(STIFFER_ALONG.none).toBe(1);
  });
});
