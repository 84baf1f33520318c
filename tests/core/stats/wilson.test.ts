/** Wilson's interval, against published examples, R and full enumeration. */
import { binomialDistribution } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { wilsonInterval } from '../../../src/core/stats/wilson';

describe('Newcombe, Stat. Med. 17 (1998) 857, table I, method 3', () => {
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

test('R 4.2.2, prop.test(x, n, correct = FALSE)', () => {
  expect(wilsonInterval(3, 3).low).toBeCloseTo(0.438502968245, 7);
  expect(wilsonInterval(3, 3).high).toBe(1);
  expect(wilsonInterval(2, 3).low).toBeCloseTo(0.207659600802, 7);
  expect(wilsonInterval(2, 3).high).toBeCloseTo(0.93850805528, 7);
  expect(wilsonInterval(7, 9, 0.9).low).toBeCloseTo(0.503642782377, 7);
  expect(wilsonInterval(7, 9, 0.9).high).toBeCloseTo(0.923505262446, 7);
});

test('on average over the true rates it covers about 95 %, by going through every outcome', () => {
  for (const n of [5, 10, 20]) {
    const rates = Array.from({ length: 181 }, (_, i) => 0.05 + i * 0.005);
    const covered = rates.map((rate) => {
      const chances = binomialDistribution(n, rate) as number[];
      return chances.reduce((sum, chance, k) => {
        const { low, high } = wilsonInterval(k, n);
        return low <= rate && rate <= high ? sum + chance : sum;
      }, 0);
    });
    const mean = covered.reduce((sum, one) => sum + one, 0) / covered.length;
    expect(Math.abs(mean - 0.95)).toBeLessThan(0.02);
  }
});

test('counts that cannot be', () => {
  for (const [passes, n] of [
    [-1, 3],
    [4, 3],
    [1, 0],
    [1, 2.5],
  ] as const)
    expect(() => wilsonInterval(passes, n)).toThrow(RangeError);
});
