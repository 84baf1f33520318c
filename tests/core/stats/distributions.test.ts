/** Special functions, against R, Python, the package simple-statistics and plain forms. */
import { binomialDistribution } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import {
  betaBelow,
  betaQuantile,
  binomialChance,
  logChoose,
  logFactorial,
  logGamma,
  normalQuantile,
  zFor,
} from '../../../src/core/stats/distributions';

describe('R 4.2.2', () => {
  it('qnorm', () => {
    const quantiles = [0.975, 0.95, 0.995, 0.6, 0.0001, 1e-9].map(normalQuantile);
    const expected = [1.95996398454, 1.64485362695, 2.57582930355, 0.253347103136, -3.71901648546, -5.99780701501];
    quantiles.forEach((value, i) => expect(value).toBeCloseTo(expected[i]!, 5));
  });
  it('pbeta and qbeta', () => {
    expect(betaBelow(0.1, 2.5, 1.5)).toBeCloseTo(0.00620739572045, 10);
    expect(betaBelow(0.5, 2.5, 1.5)).toBeCloseTo(0.287793409211, 10);
    expect(betaBelow(0.3, 0.2, 7)).toBeCloseTo(0.991822458017, 10);
    expect(betaQuantile(0.05, 3.2, 1.8)).toBeCloseTo(0.286607742685, 9);
    expect(betaQuantile(0.95, 3.2, 1.8)).toBeCloseTo(0.92504345207, 9);
  });
  it.each([
    [0.3, 1.09579799482],
    [1, 0],
    [4.5, 2.45373657084],
    [200.5, 860.58220351],
  ])('lgamma(%d)', (x, value) => expect(logGamma(x)).toBeCloseTo(value, 8));
});

it.each([
  [0.5, 0],
  [0.9, 1.2815516],
  [0.075, -1.4395315],
  [0.975, 1.959964],
  [0.999999, 4.7534243],
  [1e-10, -6.3613409],
  [1e-13, -7.3487961],
])('the normal quantile of %d, in the middle and in both tails (Python’s NormalDist, to sixteen digits)', (p, z) =>
  expect(normalQuantile(p)).toBeCloseTo(z, 5),
);

it('binomial chances: the package simple-statistics', () => {
  const theirs = binomialDistribution(9, 0.37) as number[];
  for (let k = 0; k <= 9; k += 1) expect(binomialChance(k, 9, 0.37)).toBeCloseTo(theirs[k]!, 12);
});

describe('plain forms', () => {
  it('a rate of 0 or 1 is certain', () =>
    expect([
      binomialChance(0, 3, 0),
      binomialChance(1, 3, 0),
      binomialChance(3, 3, 1),
      binomialChance(2, 3, 1),
    ]).toEqual([1, 0, 1, 0]));
  it('choices are counted', () => {
    expect(Math.exp(logChoose(8, 4))).toBeCloseTo(70, 9);
    expect(Math.exp(logFactorial(6))).toBeCloseTo(720, 9);
  });
  it('a beta distribution lies between 0 and 1, whatever its parameters', () => {
    for (const [a, b] of [
      [1, 1],
      [0.5, 8],
      [40, 2],
    ] as const) {
      expect([betaBelow(-1, a, b), betaBelow(0, a, b), betaBelow(1, a, b), betaBelow(2, a, b)]).toEqual([0, 0, 1, 1]);
      expect([betaQuantile(0, a, b), betaQuantile(1, a, b)]).toEqual([0, 1]);
    }
  });
  it('uniform, and x to the a for b = 1; 1 − (1 − x) to the b for a = 1', () => {
    for (const x of [0.01, 0.3, 0.9, 0.999]) {
      expect(betaBelow(x, 1, 1)).toBeCloseTo(x, 12);
      expect(betaBelow(x, 7, 1)).toBeCloseTo(x ** 7, 12);
      expect(betaBelow(x, 1, 30)).toBeCloseTo(1 - (1 - x) ** 30, 12);
      expect(betaBelow(x, 60, 5)).toBeCloseTo(1 - betaBelow(1 - x, 5, 60), 12);
    }
    expect(betaQuantile(0.3, 1, 1)).toBeCloseTo(0.3, 9);
    expect(betaQuantile(0.49, 2, 1)).toBeCloseTo(0.7, 9);
  });
  it('what has no quantile is refused', () => {
    for (const call of [
      () => normalQuantile(0),
      () => normalQuantile(1),
      () => zFor(0.4),
      () => zFor(1),
      () => betaQuantile(1.1, 1, 1),
      () => betaBelow(0.5, 0, 1),
    ])
      expect(call).toThrow(RangeError);
    expect(zFor(0.95)).toBeCloseTo(1.959964, 5);
  });
});
