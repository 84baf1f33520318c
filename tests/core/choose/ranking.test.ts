/** The order, and what the bench can do about each failure: on made-up judgements and ones that a hand can follow. */
import type { Ranked } from '../../../src/core/choose/finding';
import { describe, expect, it } from 'vitest';
import { DEFAULT_JOB } from '../../../src/core/choose/job';
import { judge } from '../../../src/core/choose/judge';
import { bestFirst, canBrushBoard, rank, weighedUp } from '../../../src/core/choose/ranking';
import type { Adhesive } from '../../../src/core/records/records';
import { weightMap } from '../../../src/core/choose/weight-map';
import { catalogue } from '../../../src/data/catalogue';
import { jobWith } from '../support/jobs';

const one = (adhesiveId: string, chance: number, change: Partial<Ranked> = {}) =>
  ({ adhesiveId, chance, atHand: true, verdict: 'likely', ...change }) as Ranked;
const order = (all: readonly Ranked[]) => all.toSorted(bestFirst).map(({ adhesiveId }) => adhesiveId);

describe('the order', () => {
  it('is by chance, and between equals by id, however they came', () => {
    const [a, b, c] = [one('a', 0.4), one('b', 0.4), one('c', 0.9)];
    for (const shuffled of [
      [a, b, c],
      [b, a, c],
      [c, b, a],
    ])
      expect(order(shuffled)).toEqual(['c', 'a', 'b']);
    expect(bestFirst(a, b)).toBeLessThan(0);
    expect(bestFirst(b, a)).toBeGreaterThan(0);
  });
  it('puts what is at hand first, and of what is ruled out nothing before the rest, at hand or not', () => {
    const out = { verdict: 'ruled-out' } as const;
    const away = { atHand: false };
    expect(
      order([
        one('away, out', 0, { ...away, ...out }),
        one('away', 0.9, away),
        one('out', 0.2, out),
        one('unlikely', 0.1),
      ]),
    ).toEqual(['unlikely', 'out', 'away', 'away, out']);
  });
  it('everything is at hand until something is said to be', () => {
    const some = (atHand: readonly string[]) =>
      rank({ ...DEFAULT_JOB, atHand }, catalogue, 4)
        .filter((found) => found.atHand)
        .map(({ adhesiveId }) => adhesiveId);
    expect(some([])).toHaveLength(catalogue.adhesives.size);
    expect(some(['pva'])).toEqual(['pva']);
  });
});

describe('a way round', () => {
  const sure = { spread: 1, lift: 1, bond: 1, flat: 1 };
  it('nothing is taken off where all holds; a joint that cannot hold has none', () => {
    for (const form of ['wet', 'dry'] as const) {
      expect(weighedUp(sure, form, false)).toBe(1);
      expect(weighedUp({ ...sure, bond: 0 }, form, true)).toBe(0);
      expect(weighedUp({ ...sure, flat: 0 }, form, true)).toBe(0);
      expect(weighedUp({ ...sure, bond: 0.5, flat: 0.5 }, form, true)).toBe(0.25);
    }
  });
  it('a sheet that cannot be brushed is lost, unless the board can be', () => {
    expect(weighedUp({ ...sure, spread: 0 }, 'wet', false)).toBe(0);
    const half = weighedUp({ ...sure, spread: 0 }, 'wet', true);
    expect(half).toBeGreaterThan(0);
    expect(half).toBeLessThan(1);
  });
  it('a wet sheet that does not come up clean costs more than a dry one, and neither is lost', () => {
    const [wet, dry] = (['wet', 'dry'] as const).map((form) => weighedUp({ ...sure, lift: 0 }, form, false));
    expect(wet!).toBeGreaterThan(0);
    expect(dry!).toBeGreaterThan(wet!);
    expect(dry!).toBeLessThan(1);
  });
  it('the board is brushed with what is wet, where it takes glue', () => {
    const can = (id: string, substrate: string) =>
      canBrushBoard(catalogue.adhesives.get(id)!, { ...DEFAULT_JOB, substrate }, catalogue);
    expect(can('pva', 'binders-board')).toBe(true);
    expect(can('pva', 'leather')).toBe(false);
    expect(can('film-double-sided', 'binders-board')).toBe(false);
    expect(can('film-double-sided', 'leather')).toBe(false);
  });
});

it('one adhesive by itself has the chances it has among all, and nothing weighed up', () => {
  const pva = catalogue.adhesives.get('pva')!;
  if (pva.form !== 'wet') throw new Error('PVA is not wet');
  const alone = judge(pva, DEFAULT_JOB, catalogue);
  const among = rank(DEFAULT_JOB, catalogue).find(({ adhesiveId }) => adhesiveId === 'pva')!;
  expect(alone.chances).toEqual(among.chances);
  expect(alone.slipSeconds).toEqual(among.slipSeconds);
  expect(alone.together).toBe(0);
});

describe('the map', () => {
  const regions = (hold: number) => {
    const pva = catalogue.adhesives.get('pva')!;
    const weak: Adhesive = { ...pva, hold: { porous: hold, leather: hold, nonPorous: hold } };
    const { grammages, regions } = weightMap(
      'pva',
      jobWith('wove-text', 90),
      { ...catalogue, adhesives: new Map([['pva', weak]]) },
      8,
      4,
    );
    return { grammages, regions };
  };
  it('of one that holds on nothing is a weak bond wherever the sheet spreads and lifts', () => {
    const [sound, weak] = [regions(100), regions(0)];
    const held = sound.regions.flat().filter((region) => region === 'holds');
    expect(held.length).toBeGreaterThan(0);
    expect(sound.regions.flat()).not.toContain('weak-bond');
    expect(weak.regions).toEqual(
      sound.regions.map((row) => row.map((region) => (region === 'holds' ? 'weak-bond' : region))),
    );
  });
});
