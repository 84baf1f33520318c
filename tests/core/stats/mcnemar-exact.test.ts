/** McNemar's exact test, against published examples and R. */
import { expect, test } from 'vitest';
import { mcnemarExact } from '../../../src/core/stats/mcnemar-exact';

test('Fay, vignette of the R package exact2x2, 9 against 2', () => {
  expect(mcnemarExact(9, 2)).toBeCloseTo(0.06543, 5);
});

test('approval of a president, Agresti 1990 p. 350; R 4.2.2, binom.test(86, 236)', () => {
  expect(mcnemarExact(86, 150)).toBeCloseTo(3.71593613957e-5, 14);
  expect(mcnemarExact(0, 5)).toBeCloseTo(0.0625, 12);
  expect(mcnemarExact(0, 0)).toBe(1);
});

test('counts are whole and not below nothing', () => {
  for (const [b, c] of [
    [-1, 2],
    [1.5, 2],
    [1, Infinity],
  ] as const)
    expect(() => mcnemarExact(b, c)).toThrow(RangeError);
});
