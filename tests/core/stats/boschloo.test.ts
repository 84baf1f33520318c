/** Boschloo's exact test, against SciPy, R and by hand. */
import { describe, expect, it } from 'vitest';
import { boschlooExact } from '../../../src/core/stats/boschloo';
import { binomialChance } from '../../../src/core/stats/distributions';
import { fisherExact } from '../../../src/core/stats/fisher-exact';

const against = (x: number, m: number, y: number, n: number, alternative?: 'greater' | 'less') =>
  boschlooExact({ passes: x, n: m }, { passes: y, n }, alternative);

it('the example in the SciPy documentation of boschloo_exact', () =>
  expect(against(74, 117, 31, 63, 'greater')).toBeCloseTo(0.03556406, 5));

it('brute force in R 4.2.2 over the common rate in steps of 0.0005', () => {
  expect(against(3, 3, 0, 3)).toBeCloseTo(0.03125, 10);
  expect(against(4, 5, 1, 5)).toBeCloseTo(0.109375, 10);
  expect(against(7, 8, 2, 8)).toBeCloseTo(0.0212707519531, 8);
  expect(against(5, 6, 1, 4)).toBeCloseTo(0.109375, 8);
});

it('by hand', () => {
  // 1 of 1 against 0 of 1: worst at a rate of a half, where each of the two extremes has a quarter
  expect(against(1, 1, 0, 1, 'greater')).toBeCloseTo(0.25, 12);
  expect(against(0, 1, 1, 1, 'less')).toBeCloseTo(0.25, 12);
  // all against none of three: 2 × (1/2)^6
  expect(against(3, 3, 0, 3)).toBeCloseTo(2 / 64, 9);
});

describe('what the test promises', () => {
  it('is never less sharp than Fisher’s', () => {
    for (let x = 0; x <= 6; x += 1)
      for (let y = 0; y <= 5; y += 1) {
        const rows = [
          [x, 6 - x],
          [y, 5 - y],
        ] as const;
        expect(against(x, 6, y, 5)).toBeLessThanOrEqual(fisherExact(rows) + 1e-9);
      }
  });
  it('of two that are alike it calls at most 1 in 20 different, at any rate', () => {
    for (const [m, n] of [
      [4, 4],
      [5, 8],
    ] as const)
      for (let rate = 0.02; rate < 1; rate += 0.02) {
        let called = 0;
        for (let x = 0; x <= m; x += 1)
          for (let y = 0; y <= n; y += 1)
            if (against(x, m, y, n) <= 0.05) called += binomialChance(x, m, rate) * binomialChance(y, n, rate);
        expect(called).toBeLessThanOrEqual(0.05 + 1e-6);
      }
  });
});

it.each([
  [1, 0, 0, 3],
  [4, 3, 0, 3],
  [1, 3, 0.5, 3],
  [1, 2.5, 0, 3],
  [1, 201, 0, 3],
])('%d of %d against %d of %d is refused', (x, m, y, n) => expect(() => against(x, m, y, n)).toThrow(RangeError));
