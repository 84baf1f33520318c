/** The exact Cochran–Armitage test for trend, against R's coin, by hand and between its two ways of counting. */
import { describe, expect, it } from 'vitest';
import { cochranArmitage, type Dose } from '../../../src/core/stats/cochran-armitage';

const doses = (amounts: readonly number[], passes: readonly number[], n: readonly number[]): readonly Dose[] =>
  amounts.map((amount, i) => ({ amount, passes: passes[i]!, n: n[i]! }));
const WEIGHTS = [30, 45, 60, 120];

// scores 0, 8, 14, 28: twenty times ln(weight ÷ 30), rounded
describe('R 4.2.2, coin 1.4-2: independence_test(score ~ passed | block, distribution = exact())', () => {
  const one = doses(WEIGHTS, [0, 1, 3, 4], [4, 4, 5, 4]);
  it('one hand', () =>
    expect(cochranArmitage([one])).toMatchObject({
      direction: expect.closeTo(61.2941176, 6),
      p: expect.closeTo(0.0027149321267, 12),
    }));
  it('two hands', () =>
    expect(cochranArmitage([one, doses(WEIGHTS, [1, 1, 2, 3], [3, 3, 3, 3])]).p).toBeCloseTo(0.000372866883562, 12));
});

describe('by hand', () => {
  it('two weights, three of three against none: two of twenty ways', () => {
    const found = cochranArmitage([doses([50, 100], [0, 3], [3, 3])]);
    expect(found.p).toBeCloseTo(0.1, 12);
    expect(found.least).toBeCloseTo(0.1, 12);
    expect(found.direction).toBeGreaterThan(0);
    expect(cochranArmitage([doses([50, 100], [3, 0], [3, 3])]).direction).toBeLessThan(0);
  });
  it('all pass, or none: nothing could ever be told', () => {
    for (const passes of [
      [0, 0, 0],
      [2, 2, 2],
    ])
      expect(cochranArmitage([doses([20, 40, 80], passes, [2, 2, 2])])).toMatchObject({ p: 1, least: 1 });
  });
  it('two hands that differ, each on weights of its own, are no trend', () => {
    // one hand passes always and had heavy papers, the other never and had light ones
    const found = cochranArmitage([doses([100, 120], [6, 6], [6, 6]), doses([20, 30], [0, 0], [6, 6])]);
    expect(found).toMatchObject({ p: 1, direction: 0 });
  });
  it('papers of one weight among others of one hand do not matter', () =>
    expect(cochranArmitage([doses([50, 100], [0, 3], [3, 3]), doses([70, 70], [1, 3], [3, 3])]).p).toBeCloseTo(
      0.1,
      12,
    ));
});

describe('weights that lie close', () => {
  it('are told apart when there are no others: 80 and 82 g/m² as 50 and 100', () =>
    expect(cochranArmitage([doses([80, 81, 82], [0, 1, 3], [3, 3, 3])]).p).toBeCloseTo(
      cochranArmitage([doses([50, 100, 200], [0, 1, 3], [3, 3, 3])]).p,
      12,
    ));
  it('tell nothing beside others far off, and stop nothing', () =>
    expect(cochranArmitage([doses([80, 81], [0, 3], [3, 3]), doses([20, 20.2], [0, 3], [3, 3])])).toEqual({
      direction: 0,
      p: 1,
      least: 1,
    }));
});

it('drawn by lot where there are too many ways to count, it comes near the count', () => {
  // 1200 swatches, 600 of which pass; the normal approximation of the trend test by hand
  const [amounts, passes, n] = [
    [20, 40, 80, 160],
    [140, 150, 152, 158],
    [300, 300, 300, 300],
  ];
  const found = cochranArmitage([doses(amounts, passes, n)]);
  expect(found.least).toBe(0);
  const scores = amounts.map((amount) => Math.round(20 * Math.log(amount / 20)));
  const rate = 600 / 1200;
  const mean = scores.reduce((sum, score) => sum + score, 0) / 4;
  const spread = 300 * scores.reduce((sum, score) => sum + (score - mean) ** 2, 0);
  const seen = scores.reduce((sum, score, i) => sum + (score - mean) * passes[i]!, 0);
  const z = seen / Math.sqrt((rate * (1 - rate) * spread * 1200) / 1199);
  expect(z).toBeCloseTo(1.445, 2);
  // two-sided at 1.445 standard errors: 0.1485 (published in any table); 20 000 draws know it to 0.0025
  expect(Math.abs(found.p - 0.1485)).toBeLessThan(0.01);
});

it.each([
  [
    [0, 50],
    [1, 1],
    [2, 2],
  ],
  [
    [20, 50],
    [3, 1],
    [2, 2],
  ],
  [
    [20, 50],
    [0.5, 1],
    [2, 2],
  ],
  [
    [20, 50],
    [1, 1],
    [2, 2.5],
  ],
  [
    [50, 50],
    [1, 1],
    [2, 2],
  ],
] as const)('%j with %j of %j is refused', (amounts, passes, n) =>
  expect(() => cochranArmitage([doses(amounts, passes, n)])).toThrow(RangeError),
);
