/** From draws to chances: middles and spans, against values worked out by hand. */
import fc from 'fast-check';
import type { Margins } from '../../../src/core/joint/bench';
import { describe, expect, test } from 'vitest';
import { lowDiscrepancyPoints, seededUniform } from '../../../src/core/base/random';
import { verdictOf } from '../../../src/core/choose/ranking';
import { heldBy, holds, placed, tally } from '../../../src/core/choose/tally';

const sound: Margins = {
  spread: 2,
  reach: 2,
  place: 2,
  lift: 2,
  grab: 2,
  strike: 2,
  bond: 2,
  flat: 2,
  slipSeconds: 10,
  openSeconds: 60,
  growsMm: 0,
  sheetToFace: 1,
  shows: 0,
  gives: 'neither',
};
const count = (draws: readonly Partial<Margins>[]) => tally((i) => ({ ...sound, ...draws[i] }), draws.length);

describe('quantiles, linear between neighbours (Hyndman and Fan 1996, type 7)', () => {
  test('ten draws in any order: 10, 20 … 100 have their tenth at 19, half at 55, nine tenths at 91', () => {
    const slips = [70, 10, 100, 40, 20, 90, 30, 60, 80, 50];
    const { slipSeconds } = count(slips.map((slip) => ({ slipSeconds: slip })));
    expect(slipSeconds.p10).toBeCloseTo(19, 10);
    expect(slipSeconds.p50).toBeCloseTo(55, 10);
    expect(slipSeconds.p90).toBeCloseTo(91, 10);
  });
  test('one draw is its own span', () => {
    expect(count([{ slipSeconds: 33 }]).slipSeconds).toEqual({ p10: 33, p50: 33, p90: 33 });
  });
  test('numbers are put in order as numbers: 9 before 10 before 100', () => {
    const { margins } = count([{ lift: 100 }, { lift: 9 }, { lift: 10 }]);
    expect(margins.lift).toBe(10);
  });
});

describe('chances', () => {
  test('a margin of 1 holds half the time; a margin and its inverse make one', () => {
    expect(holds(1)).toBe(0.5);
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 100, noNaN: true }), (margin) => {
        expect(holds(margin) + holds(1 / margin)).toBeCloseTo(1, 12);
        // the logistic of width 0.2 on the log margin that the comment there names
        expect(holds(margin)).toBeCloseTo(1 / (1 + Math.exp(-Math.log(margin) / 0.2)), 12);
      }),
    );
  });
  test('a chance is the mean over the draws', () => {
    const found = count([{ lift: 0.01 }, { lift: 100 }, { lift: 1 }, { lift: 1 }]);
    expect(found.chances.lift).toBeCloseTo(0.5, 6);
    expect(found.chances.spread).toBeCloseTo(32 / 33, 12); // 2⁵ ÷ (1 + 2⁵)
  });
});

describe('what does not hold by the fifth power', () => {
  test('a fifth of the time to place it is enough as often as not, a tenth a fifth of the time', () => {
    expect(placed(0.2)).toBeCloseTo(0.5, 12);
    expect(placed(0.1)).toBeCloseTo(0.2, 12); // ¼ ÷ (1 + ¼)
    expect(placed(1)).toBeCloseTo(25 / 26, 12);
  });
  test('what comes through counts only as far as it shows', () => {
    const through = (shows: number) => heldBy({ ...sound, strike: 0.5, shows }).strike;
    expect(through(0)).toBe(1);
    expect(through(1)).toBeCloseTo(0.2, 12); // ¼ ÷ (1 + ¼)
    expect(through(0.5)).toBeCloseTo(0.6, 12);
  });
});

describe('which side gives', () => {
  const sides = (...gives: Margins['gives'][]) => count(gives.map((side) => ({ gives: side }))).gives;
  test('the side that gives in most draws that fail, once half of them fail', () => {
    expect(sides('paper', 'paper', 'substrate', 'neither')).toBe('paper');
    expect(sides('substrate', 'substrate', 'paper', 'neither')).toBe('substrate');
    expect(sides('paper', 'neither', 'neither')).toBe('neither');
    expect(sides('paper', 'neither')).toBe('paper');
  });
});

test('words for a chance rise with it', () => {
  const words = ['unlikely', 'touch-and-go', 'likely', 'sound'];
  const places = [0, 0.2, 0.34, 0.35, 0.5, 0.55, 0.7, 0.75, 1].map((chance) => words.indexOf(verdictOf(chance)));
  expect(places).toEqual([0, 0, 0, 1, 1, 2, 2, 3, 3]);
});

describe('points that stand in for chance', () => {
  test('they lie in the unit cube, and fill each side of it evenly', () => {
    const [total, dimensions] = [96, 14];
    const points = lowDiscrepancyPoints(total, dimensions);
    expect(points).toHaveLength(total * dimensions);
    for (let d = 0; d < dimensions; d += 1) {
      const column = Array.from({ length: total }, (_, i) => points[i * dimensions + d]!);
      expect(Math.min(...column)).toBeGreaterThanOrEqual(0);
      expect(Math.max(...column)).toBeLessThan(1);
      const quarters = [0, 1, 2, 3].map((q) => column.filter((u) => Math.floor(u * 4) === q).length);
      // 24 each; what chance alone would give is out by 4 or more as often as not
      for (const quarter of quarters) expect(Math.abs(quarter - 24), `dimension ${d}`).toBeLessThanOrEqual(6);
    }
  });
  test('the first of many points are the points of few', () => {
    expect(lowDiscrepancyPoints(50, 5).slice(0, 100)).toEqual(lowDiscrepancyPoints(20, 5));
  });
  test('a seed gives its own sequence, between 0 and 1, with the mean and spread of chance', () => {
    const draw = (seed: number) => {
      const next = seededUniform(seed);
      return Array.from({ length: 4000 }, next);
    };
    const one = draw(1925);
    expect(draw(1925)).toEqual(one);
    expect(draw(1926)).not.toEqual(one);
    expect(one.every((u) => u >= 0 && u < 1)).toBe(true);
    const mean = one.reduce((sum, u) => sum + u, 0) / one.length;
    const variance = one.reduce((sum, u) => sum + (u - mean) ** 2, 0) / one.length;
    expect(mean).toBeCloseTo(0.5, 1);
    expect(variance).toBeCloseTo(1 / 12, 2); // of a uniform draw
  });
});
