/** Intervals on small counts, against published examples, R and full enumeration. */
import { binomialDistribution } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { betaBelow, betaQuantile, binomialChance, logGamma, normalQuantile } from '../../../src/core/stats/functions';
import { clopperPearsonInterval, wilsonInterval } from '../../../src/core/stats/intervals';

describe('Wilson: Newcombe, Stat. Med. 17 (1998) 857, table I, method 3', () => {
  test.for([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ] as const)('%i of %i', ([passes, n, low, high]) => {
    const found = wilsonInterval(passes, n, 0.95);
    expect(found.low).toBeCloseTo(low, 4);
    expect(found.high).toBeCloseTo(high, 4);
    expect(found.estimate).toBe(passes / n);
  });
});

test('Wilson: R 4.2.2, prop.test(x, n, correct = FALSE)', () => {
  expect(wilsonInterval(3, 3).low).toBeCloseTo(0.438502968245, 7);
  expect(wilsonInterval(3, 3).high).toBe(1);
  expect(wilsonInterval(2, 3).low).toBeCloseTo(0.207659600802, 7);
  expect(wilsonInterval(2, 3).high).toBeCloseTo(0.93850805528, 7);
  expect(wilsonInterval(7, 9, 0.9).low).toBeCloseTo(0.503642782377, 7);
  expect(wilsonInterval(7, 9, 0.9).high).toBeCloseTo(0.923505262446, 7);
});

test('Clopper–Pearson: NIST/SEMATECH e-Handbook 7.2.4.1, 4 of 20 at 90 %', () => {
  const found = clopperPearsonInterval(4, 20, 0.9);
  expect(found.low).toBeCloseTo(0.071354, 6);
  // the handbook rounds the upper end from a table: R gives 0.401028117332
  expect(found.high).toBeCloseTo(0.401029, 5);
});

test('Clopper–Pearson: R 4.2.2, binom.test', () => {
  expect(clopperPearsonInterval(3, 3).low).toBeCloseTo(0.292401773821, 10);
  expect(clopperPearsonInterval(7, 9).low).toBeCloseTo(0.399906426284, 10);
  expect(clopperPearsonInterval(7, 9).high).toBeCloseTo(0.971855026522, 10);
});

test('the rule of three: none of 300 leaves at most about 1 in 100', () => {
  // the rule speaks of a one-sided 95 % bound, so of a two-sided interval at 90 %
  expect(clopperPearsonInterval(0, 300, 0.9).high).toBeCloseTo(0.01, 3);
});

/** Chance that the interval holds the true rate, by going through every outcome. */
function coverage(n: number, rate: number, interval: typeof wilsonInterval): number {
  const chances = binomialDistribution(n, rate) as number[];
  return Array.from({ length: n + 1 }, (_, k) => k).reduce((sum, k) => {
    const { low, high } = interval(k, n, 0.95);
    return low <= rate && rate <= high ? sum + (chances[k] ?? 0) : sum;
  }, 0);
}

test('coverage by enumeration: Wilson is near 95 % on average, Clopper–Pearson never below', () => {
  for (const n of [3, 5, 10, 20]) {
    const rates = Array.from({ length: 181 }, (_, i) => 0.05 + i * 0.005);
    const wilson = rates.map((rate) => coverage(n, rate, wilsonInterval));
    const exact = rates.map((rate) => coverage(n, rate, clopperPearsonInterval));
    const mean = wilson.reduce((sum, value) => sum + value, 0) / rates.length;
    expect(mean, `mean of Wilson at n = ${n}`).toBeGreaterThan(0.94);
    expect(mean, `mean of Wilson at n = ${n}`).toBeLessThan(0.98);
    // Newcombe finds dips, the lowest near 0.83
    expect(Math.min(...wilson), `least of Wilson at n = ${n}`).toBeGreaterThan(0.83);
    expect(Math.min(...exact), `least of Clopper–Pearson at n = ${n}`).toBeGreaterThanOrEqual(0.95 - 1e-5);
  }
});

test('what lies below: R 4.2.2, qnorm, pbeta, qbeta, lgamma', () => {
  const quantiles = [0.975, 0.95, 0.995, 0.6, 0.0001, 1e-9].map(normalQuantile);
  const expected = [1.95996398454, 1.64485362695, 2.57582930355, 0.253347103136, -3.71901648546, -5.99780701501];
  quantiles.forEach((value, i) => expect(value).toBeCloseTo(expected[i] ?? NaN, 5));
  expect(betaBelow(0.1, 2.5, 1.5)).toBeCloseTo(0.00620739572045, 10);
  expect(betaBelow(0.5, 2.5, 1.5)).toBeCloseTo(0.287793409211, 10);
  expect(betaBelow(0.3, 0.2, 7)).toBeCloseTo(0.991822458017, 10);
  expect(betaQuantile(0.05, 3.2, 1.8)).toBeCloseTo(0.286607742685, 9);
  expect(betaQuantile(0.95, 3.2, 1.8)).toBeCloseTo(0.92504345207, 9);
  for (const [x, value] of [
    [0.3, 1.09579799482],
    [1, 0],
    [4.5, 2.45373657084],
    [200.5, 860.58220351],
  ] as const) {
    expect(logGamma(x)).toBeCloseTo(value, 8);
  }
});

test('binomial chances: the package simple-statistics', () => {
  const theirs = binomialDistribution(9, 0.37) as number[];
  for (let k = 0; k <= 9; k += 1) expect(binomialChance(k, 9, 0.37)).toBeCloseTo(theirs[k] ?? NaN, 12);
});

test('what is no count is refused by name', () => {
  expect(() => wilsonInterval(4, 3)).toThrow(RangeError);
  expect(() => wilsonInterval(1, 0)).toThrow(RangeError);
  expect(() => wilsonInterval(NaN, 3)).toThrow(RangeError);
  expect(() => wilsonInterval(1, 3, 1)).toThrow(/confidence/);
  expect(() => clopperPearsonInterval(1.5, 3)).toThrow(/whole/);
});
