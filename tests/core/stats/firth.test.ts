/** Firth's logistic regression, against R and by hand. */
import { describe, expect, it } from 'vitest';
import { chanceOf, firthLine, hasSpread, penalised, profileOf } from '../../../src/core/stats/firth';

const POINTS = [
  { x: 0, passes: 1, n: 4 },
  { x: 1, passes: 2, n: 4 },
  { x: 2, passes: 4, n: 4 },
];

describe('by hand', () => {
  it.each([
    [0, 5, 10],
    [0, 5, 5],
    [1, 40, 40],
    [7, 2, 9],
    [0, 200, 200],
  ])('adds a half to each cell of a table of two by two: %i and %i of %i', (a, b, n) => {
    const odds = (k: number) => Math.log((k + 0.5) / (n - k + 0.5));
    const line = firthLine([
      { x: 0, passes: a, n },
      { x: 1, passes: b, n },
    ]);
    expect(line.intercept).toBeCloseTo(odds(a), 6);
    expect(line.slope).toBeCloseTo(odds(b) - odds(a), 6);
  });
  it('mirrors when passes and fails change places', () => {
    const line = firthLine(POINTS);
    const turned = firthLine(POINTS.map((point) => ({ ...point, passes: point.n - point.passes })));
    expect(turned.slope).toBeCloseTo(-line.slope, 8);
    expect(turned.intercept).toBeCloseTo(-line.intercept, 8);
  });
  it('a logit of 0 is a half, of ln 3 three quarters', () =>
    expect([chanceOf(0), chanceOf(Math.log(3))]).toEqual([0.5, expect.closeTo(0.75, 12)]));
});

describe('R 4.2.2', () => {
  it('perfect separation, x = 1…6, y = 000111: brglm 0.7.2, and optim on the penalised likelihood', () => {
    const line = firthLine([1, 2, 3, 4, 5, 6].map((x, i) => ({ x, passes: i >= 3 ? 1 : 0, n: 1 })));
    // brglm stops at −3.95113, 1.12889; the maximum itself is −3.9511937, 1.1289125
    expect(line.intercept).toBeCloseTo(-3.9511937, 6);
    expect(line.slope).toBeCloseTo(1.1289125, 6);
  });

  describe('seven papers with two peaks: none pass up to 191 g/m², all from 199', () => {
    const weights = [20, 191, 199, 218, 331, 346, 370];
    const points = weights.map((weight, i) => ({
      x: Math.log(weight),
      passes: [0, 0, 6, 5, 6, 3, 1][i]!,
      n: [3, 4, 6, 5, 6, 3, 1][i]!,
    }));
    it('brglm 0.7.2: −611.5486, 116.0168, a half at 194.65 g/m²', () => {
      const line = firthLine(points);
      expect(line.intercept).toBeCloseTo(-611.5486, 3);
      expect(line.slope).toBeCloseTo(116.0168, 3);
      expect(Math.exp(-line.intercept / line.slope)).toBeCloseTo(194.6505, 3);
    });
    it('optim climbs from level ground to the lower peak: −8.9119 at a slope of 1.9795, against −5.0309', () => {
      const gentle = { slope: 1.979487829, intercept: 1.212914854 - 1.979487829 * Math.log(195) };
      expect(penalised(points, gentle)).toBeLessThan(penalised(points, firthLine(points)) - 3.8);
      expect(penalised(points, firthLine(points))).toBeCloseTo(-5.030852, 5);
    });
    it('a peak that one start leaps past is found from another (R 4.2.2, optim from four starts; brglm 0.7.2 stops at the lower one)', () => {
      const tried = [
        [49, 0, 5],
        [83, 0, 2],
        [191, 0, 3],
        [226, 3, 3],
        [327, 5, 5],
        [379, 4, 4],
        [383, 6, 6],
      ].map(([grams = 0, passes = 0, n = 0]) => ({ x: Math.log(grams), passes, n }));
      const line = firthLine(tried);
      expect(line.intercept).toBeCloseTo(-122.1665, 3);
      expect(line.slope).toBeCloseTo(22.8925, 3);
      expect(penalised(tried, line)).toBeCloseTo(-3.694275, 5);
      expect(penalised(tried, { intercept: -49.261557, slope: 9.205904 })).toBeCloseTo(-3.86088, 4);
    });
    it('turned about, the steep slope the other way is found as well', () => {
      const turned = firthLine(points.map(({ x, passes, n }) => ({ x, passes: n - passes, n })));
      expect(turned.slope).toBeCloseTo(-116.0168, 3);
    });
  });
});

describe('the highest there is', () => {
  it('no step to any side goes up', () => {
    const line = firthLine(POINTS);
    const top = penalised(POINTS, line);
    for (const [a, b] of [
      [1e-3, 0],
      [-1e-3, 0],
      [0, 1e-3],
      [0, -1e-3],
      [1e-3, -1e-3],
    ] as const)
      expect(penalised(POINTS, { intercept: line.intercept + a, slope: line.slope + b })).toBeLessThan(top);
  });
  it('the profile through any point of the line reaches it, and through no other point', () => {
    const line = firthLine(POINTS);
    const profile = profileOf(POINTS);
    const top = penalised(POINTS, line);
    for (const x of [-1, 0.5, 1, 3]) {
      expect(profile(x, line.intercept + line.slope * x)).toBeCloseTo(top, 6);
      expect(profile(x, line.intercept + line.slope * x + 1)).toBeLessThan(top);
    }
  });
});

it('needs two different x that were tried', () => {
  expect(hasSpread(POINTS)).toBe(true);
  expect(hasSpread([POINTS[0]!, { ...POINTS[0]!, passes: 3 }])).toBe(false);
  expect(hasSpread([POINTS[0]!, { x: 1, passes: 0, n: 0 }])).toBe(false);
  expect(() => firthLine([POINTS[0]!, POINTS[0]!])).toThrow(/two different/);
  expect(penalised([POINTS[0]!], { intercept: 0, slope: 0 })).toBe(-Infinity);
});
