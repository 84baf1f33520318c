/**
 * Paste from starch and water. Reckoned by hand: mass in is mass out, water 1 g/ml (0.998 where it is stirred into PVA), the rest from the
 * records: methylcellulose 1.3 g/ml and 4000 mPa·s, gelatine 1.35, starch 1.5, PVA 1.08 g/ml with 54 % solids. A jug
 * shows 1 ml below 50 and 5 ml below 500.
 */
import { describe, expect, it } from 'vitest';
import type { MixAnswer } from '../../../src/core/mix/answer';
import { mixAnswerer } from '../../../src/core/mix/any';
import { DEFAULT_MIX, type MixPlan } from '../../../src/core/mix/plan';
import { mixStretched } from '../../../src/core/mix/stretch';
import { catalogue } from '../../../src/data/catalogue';

const answer = mixAnswerer((plan, records) => mixStretched(plan, records));
/** As it is read, its no-break spaces made plain. */
const plainly = <T>(value: T): T => JSON.parse(JSON.stringify(value).replace(/\u00a0|\u202f/g, ' ')) as T;
function made(change: Partial<MixPlan>): MixAnswer {
  const found = answer({ ...DEFAULT_MIX, loss: 0, ...change }, catalogue);
  if (!found.ok) throw new Error(found.errors[0]?.message);
  return plainly(found.value);
}
const errorOf = (change: Partial<MixPlan>) => {
  const found = answer({ ...DEFAULT_MIX, loss: 0, ...change }, catalogue);
  return found.ok ? undefined : plainly(found.errors[0]);
};

describe('paste', () => {
  // one to four less a tenth of the water: 4.6 g of paste to a gram of starch, 21.7 %
  const paste = { kind: 'paste', waterParts: 4, by: 'mass', boiledOff: 10, need: 100 } as const;
  it('thinned to 8 %: 105 g hold 8.4 g of starch, cooked in 33.6 ml, and 105 − 38.64 ml more', () => {
    const thin = made({ ...paste, use: 'lining' });
    expect(thin.portions).toEqual([
      {
        name: 'wheat starch',
        amount: '8.4 g',
        grams: expect.closeTo(8.4, 9),
        or: '15 ml spooned loosely, from memory',
      },
      { name: 'water into the pan', amount: '34 ml' },
      { name: 'water to thin it, cold', amount: '65 ml' },
    ]);
    expect(thin.figures.map((one) => Number(one.toFixed(6)))).toEqual([8.4, 33.6, 66.36]);
    expect(thin.sentence).toBe(
      'Cook 8.4 g of wheat starch in 34 ml of water, then work in about 65 ml more when it is cold.',
    );
    expect(thin.steps.at(-2)).toMatch(/Work in the 65 ml of cold water .* for lining\./);
    const of = (label: string) => thin.facts.find((one) => one.label.startsWith(label))!;
    expect(of('Cooked')).toMatchObject({
      value: '22 % starch by mass',
      note: '20 % before cooking; 3 ml of water leaves as steam',
    });
    expect(of('For the work')).toMatchObject({
      value: '8 % starch by mass',
      note: expect.stringMatching(/single cream/),
    });
    // a twentieth or a fifth of the water gone: 1 in 4.8, 1 in 4.2
    expect(of('If less').value).toBe('21 to 24 % starch');
    // 8.4 ÷ 2.7 is 3 spoons of 8.1 g, a quarter more or less
    expect(of('In level').value).toBe('about 3, which is 6.1 to 10 g');
    expect(thin.warnings).toEqual([]);
    expect(thin.cautions).toEqual(expect.arrayContaining(['hot-liquid', 'flour-allergen']));
  });
  it('each vessel is cooked in its own way, and every way has its test for done and its scald', () => {
    const ways = (['pan', 'double-boiler', 'microwave'] as const).map((vessel) =>
      made({ ...paste, use: 'lining', vessel }),
    );
    expect(new Set(ways.map(({ steps }) => steps.join())).size).toBe(3);
    for (const { steps, cautions } of ways) {
      expect(steps.join(' ')).toMatch(/done when it shines/);
      expect(cautions[0]).toBe('hot-liquid');
    }
    expect(ways[0]!.steps[1]).toMatch(/15 to 25 min/);
    expect(ways[1]!.steps[1]).toMatch(/simmering water.*20 to 40 min/);
    // University of Virginia Library stirs every 20 s
    expect(ways[2]!.steps[1]).toMatch(/full power for 20 s/);
  });
  it('as cooked: 105 ÷ 4.6 g, nothing to thin it', () => {
    const thick = made({ ...paste, use: 'as-cooked' });
    expect(thick.portions.map(({ amount }) => amount)).toEqual(['22.8 g', '90 ml']);
    expect(thick.sentence).toBe('Cook 22.8 g of wheat starch in 90 ml of water.');
    expect(thick.steps.at(-2)).toMatch(/until it is smooth/);
    expect(thick.figures[2]).toBeCloseTo(0, 9);
    expect(thick.facts.find(({ label }) => label === 'For the work')?.note).toMatch(/from the pan/);
  });
  it('by volume a part of starch weighs 0.55: 1 in 7.5, too thin for covering, not for hinging', () => {
    expect(errorOf({ ...paste, by: 'volume', use: 'covering' })).toMatchObject({
      field: 'waterParts',
      message: expect.stringMatching(/has 13 % starch, already thinner than the 16 %/),
    });
    const hinging = made({ ...paste, by: 'volume', use: 'hinging' });
    // 12 % of 105 g
    expect(hinging.figures[0]).toBeCloseTo(12.6, 9);
    expect(hinging.warnings).toEqual([expect.stringMatching(/spoonful with air/)]);
  });
});
