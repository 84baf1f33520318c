/** What swatches do to a ranking, and how their say travels in a link. */
import { describe, expect, it } from 'vitest';
import { DEFAULT_JOB } from '../../../src/core/choose/job';
import type { Ranked } from '../../../src/core/choose/finding';
import { adjustRanking, decodeEvidence, encodeEvidence, evidenceFor } from '../../../src/core/handover/trial-to-choose';
import { catalogue } from '../../../src/data/catalogue';
import { trialOf } from '../support/trial';

describe('what swatches say of a job', () => {
  const job = { ...DEFAULT_JOB, paper: { family: 'unryu', grammage: 25 }, placeSeconds: 20 };
  it('is gathered for each adhesive on the shelf, and travels in a link in the order of its ids', () => {
    const glues = [
      { id: 'a', name: 'Paste', record: 'wheat-starch-paste-thin' },
      { id: 'b', name: 'Vinyl', record: 'pva' },
      { id: 'c', name: 'Own' },
      { id: 'd', name: 'Gone', record: 'moon-glue' },
    ];
    const lines = ['p a 20 1 pass', 'p b 20 1 fail', 'p b 20 2 partly', 'p c 20 1 pass', 'p d 20 1 pass'];
    const found = evidenceFor([trialOf(lines, { glues })], job, catalogue);
    expect([...found.keys()]).toEqual(['wheat-starch-paste-thin', 'pva']);
    const word = encodeEvidence(found);
    expect(word).toBe('pva.l.50.200.2~wheat-starch-paste-thin.l.100.100.1');
    expect(decodeEvidence(word).get('pva')).toEqual({ lift: { passes: 0.5, weight: 2, swatches: 2 } });
    expect(evidenceFor([trialOf(['q a 20 1 pass'])], job, catalogue).size).toBe(0);
  });
  it('twelve adhesives travel, the rest stay behind', () => {
    const many = new Map(
      Array.from({ length: 14 }, (_, i) => [
        `glue-${String.fromCharCode(97 + i)}`,
        Object.fromEntries(
          ['spread', 'lift', 'bond', 'flat'].map((thing) => [thing, { passes: 1, weight: 1, swatches: 1 }] as const),
        ),
      ]),
    );
    const read = decodeEvidence(encodeEvidence(many));
    expect(read.size).toBe(12);
    expect(Object.keys(read.get('glue-l')!)).toEqual(['spread', 'lift', 'bond', 'flat']);
    expect(read.has('glue-m')).toBe(false);
  });
  it.each([
    '',
    'pva',
    'pva.x.1.1.1',
    'PVA.l.1.1.1',
    'a pva.l.1.1.1',
    'pva.l.1.1.1x',
    'pva.l.200.100.1',
    'pva.l.1.1.0',
    'pva.l.100.101.1',
  ])('“%s” says nothing', (word) => expect(decodeEvidence(word).size).toBe(0));
  it('the limits of a word', () => {
    expect(decodeEvidence('pva.l.100.100.1').size).toBe(1);
    expect(decodeEvidence('pva.l.0.1200.12').get('pva')!.lift!.swatches).toBe(12);
    expect(decodeEvidence(5).size).toBe(0);
  });
  it('moves a ranking: failed lifts put another first, and nothing is told of what was not tried', () => {
    const all = { spread: 1, reach: 1, place: 1, lift: 1, grab: 1, strike: 1, bond: 1, flat: 1 };
    const chances = { ...all, lift: 0.9 };
    const weights = { ...all, lift: 0.6 };
    const ranked = (adhesiveId: string, chance: number) =>
      ({ adhesiveId, chance, chances, weights, atHand: true, verdict: 'sound', kind: adhesiveId }) as Ranked;
    const evidence = new Map([['pva', { lift: { passes: 0, weight: 36, swatches: 36 } }]]);
    const { choices, told } = adjustRanking([ranked('pva', 0.9), ranked('eva', 0.8)], evidence, catalogue);
    expect(choices.map(({ adhesiveId }) => adhesiveId)).toEqual(['eva', 'pva']);
    // 4 × 0.9 of 4 + 36
    expect(told.get('pva')!.things.lift!.withTrials).toBeCloseTo(0.09, 12);
    expect(told.has('eva')).toBe(false);
    expect(choices[0]).toMatchObject({ chance: 0.8, verdict: 'sound' });
    expect(choices[1]!.verdict).not.toBe('sound');
  });
});
