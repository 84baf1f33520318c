/** The Clopper–Pearson interval, against published examples, R and full enumeration. */
import { binomialDistribution } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { clopperPearsonInterval } from '../../../src/core/stats/clopper-pearson';

describe('published examples', () => {
  it('NIST/SEMATECH e-Handbook 7.2.4.1: 4 of 20 at 90 %', () => {
    const found = clopperPearsonInterval(4, 20, 0.9);
    expect(found.estimate).toBe(0.2);
    expect(found.low).toBeCloseTo(0.071354, 6);
    // the handbook rounds the upper end from a table: R gives 0.401028117332
    expect(found.high).toBeCloseTo(0.401029, 5);
  });
  it('5 of 25: 0.068 to 0.407 (tables of Conover 1999, quoted by InfluentialPoints)', () => {
    const found = clopperPearsonInterval(5, 25);
    expect(found.low).toBeCloseTo(0.068, 3);
    expect(found.high).toBeCloseTo(0.407, 3);
  });
  it('the rule of three: none of 300 leaves at most about 1 in 100', () => {
    // the rule speaks of a one-sided 95 % bound, so of a two-sided interval at 90 %
    expect(clopperPearsonInterval(0, 300, 0.9).high).toBeCloseTo(0.01, 3);
  });
});

it.each([
  [4, 4, 0.397635364384, 1],
  [6, 6, 0.54074187356, 1],
  [0, 5, 0, 0.521823750105],
  [5, 6, 0.358765421002, 0.995789255486],
  [81, 263, 0.252736745585, 0.367621922601],
  [15, 148, 0.0578440100834, 0.161650490349],
  [0, 20, 0, 0.168433470983],
  [1, 29, 0.00087264688358, 0.177644295489],
  [3, 3, 0.292401773821, 1],
  [7, 9, 0.399906426284, 0.971855026522],
])('R 4.2.2, binom.test(%i, %i)', (passes, n, low, high) => {
  const found = clopperPearsonInterval(passes, n);
  expect(found.low).toBeCloseTo(low, 10);
  expect(found.high).toBeCloseTo(high, 10);
});

describe('by enumeration', () => {
  /** Chance that the interval holds the true rate, by going through every outcome. */
  const coverage = (n: number, rate: number, confidence: number): number =>
    (binomialDistribution(n, rate) as number[]).reduce((sum, chance, k) => {
      const { low, high } = clopperPearsonInterval(k, n, confidence);
      return low <= rate && rate <= high ? sum + chance : sum;
    }, 0);
  it.each([3, 4, 5, 10, 20])('with %i swatches it holds the true rate as often as it says, whatever that is', (n) => {
    for (let rate = 0.02; rate < 1; rate += 0.02) {
      expect(coverage(n, rate, 0.95), `95 % at ${rate}`).toBeGreaterThanOrEqual(0.95 - 1e-9);
      expect(coverage(n, rate, 0.8), `80 % at ${rate}`).toBeGreaterThanOrEqual(0.8 - 1e-9);
    }
  });
  it('never puts 4 of 4 above a half: at a true half that comes 1 time in 16', () => {
    expect(clopperPearsonInterval(4, 4).low).toBeLessThan(0.5);
    expect(clopperPearsonInterval(5, 5).low).toBeLessThan(0.5);
    expect(clopperPearsonInterval(6, 6).low).toBeGreaterThan(0.5);
  });
  it('has its plain form at the ends', () => {
    for (const n of [1, 3, 40]) {
      expect(clopperPearsonInterval(0, n)).toMatchObject({ low: 0, high: expect.closeTo(1 - 0.025 ** (1 / n), 9) });
      expect(clopperPearsonInterval(n, n)).toMatchObject({ low: expect.closeTo(0.025 ** (1 / n), 9), high: 1 });
    }
  });
});

it.each([
  [1.5, 3, 0.95],
  [4, 3, 0.95],
  [-1, 3, 0.95],
  [1, 0, 0.95],
  [1, 2.5, 0.95],
  [NaN, 3, 0.95],
  [1, 100_001, 0.95],
  [1, 3, 0.49],
  [1, 3, 0.99999],
])('%d of %d at %d is refused', (passes, n, confidence) =>
  expect(() => clopperPearsonInterval(passes, n, confidence)).toThrow(RangeError),
);
