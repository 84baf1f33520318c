/** Tests on counts, against published tables, R, SciPy and full enumeration. */
import { permutationTest as sampledTest } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { boschlooExact, fisherExact, mcnemarExact } from '../../../src/core/stats/compare';
import { permutationTest } from '../../../src/core/stats/permutation';
import { detectableDifference, trialPower } from '../../../src/core/stats/power';

describe('Fisher: the lady tasting tea (R help of fisher.test)', () => {
  test('four of four is 1 in 70', () => {
    expect(
      fisherExact(
        [
          [4, 0],
          [0, 4],
        ],
        'greater',
      ),
    ).toBeCloseTo(1 / 70, 12);
    expect(
      fisherExact([
        [4, 0],
        [0, 4],
      ]),
    ).toBeCloseTo(2 / 70, 12);
  });
  test('three of four is 0.2429', () => {
    expect(
      fisherExact(
        [
          [3, 1],
          [1, 3],
        ],
        'greater',
      ),
    ).toBeCloseTo(0.2429, 4);
  });
});

test('Fisher: twins of convicts, Fisher 1962 (R help of fisher.test)', () => {
  // the help prints 0.0005367; R 4.2.2 gives more digits
  expect(
    fisherExact([
      [2, 15],
      [10, 3],
    ]),
  ).toBeCloseTo(0.000536724119143, 12);
  expect(
    fisherExact([
      [7, 12],
      [8, 3],
    ]),
  ).toBeCloseTo(0.128135932034, 11);
});

test('McNemar: Fay, vignette of the R package exact2x2, 9 against 2', () => {
  expect(mcnemarExact(9, 2)).toBeCloseTo(0.06543, 5);
});

test('McNemar: approval of a president, Agresti 1990 p. 350; R 4.2.2, binom.test(86, 236)', () => {
  expect(mcnemarExact(86, 150)).toBeCloseTo(3.71593613957e-5, 14);
  expect(mcnemarExact(0, 5)).toBeCloseTo(0.0625, 12);
  expect(mcnemarExact(0, 0)).toBe(1);
});

describe('Boschloo', () => {
  test('the example in the SciPy documentation of boschloo_exact', () => {
    expect(boschlooExact({ passes: 74, n: 117 }, { passes: 31, n: 63 }, 'greater')).toBeCloseTo(0.03556406, 5);
  });
  test('brute force in R 4.2.2 over the common rate in steps of 0.0005', () => {
    expect(boschlooExact({ passes: 3, n: 3 }, { passes: 0, n: 3 })).toBeCloseTo(0.03125, 10);
    expect(boschlooExact({ passes: 4, n: 5 }, { passes: 1, n: 5 })).toBeCloseTo(0.109375, 10);
    expect(boschlooExact({ passes: 7, n: 8 }, { passes: 2, n: 8 })).toBeCloseTo(0.0212707519531, 8);
    expect(boschlooExact({ passes: 5, n: 6 }, { passes: 1, n: 4 })).toBeCloseTo(0.109375, 8);
  });
});

/** Every way to choose which of `n` swatches bear the first label, by counting in binary. */
function byHand(first: readonly number[], second: readonly number[]): number {
  const all = [...first, ...second];
  const gap = (chosen: (i: number) => boolean) => {
    const mean = (values: readonly number[]) => values.reduce((sum, v) => sum + v, 0) / values.length;
    return mean(all.filter((_, i) => chosen(i))) - mean(all.filter((_, i) => !chosen(i)));
  };
  const seen = Math.abs(gap((i) => i < first.length));
  let [count, extreme] = [0, 0];
  for (let bits = 0; bits < 2 ** all.length; bits += 1) {
    const chosen = (i: number) => Math.floor(bits / 2 ** i) % 2 === 1;
    if (all.filter((_, i) => chosen(i)).length !== first.length) continue;
    count += 1;
    if (Math.abs(gap(chosen)) >= seen - 1e-9) extreme += 1;
  }
  return extreme / count;
}

describe('permutation', () => {
  test.for([
    [
      [1, 1, 1],
      [0, 0, 0],
    ],
    [
      [1, 1, 0.5, 1],
      [0, 0.5, 0],
    ],
    [
      [3.2, 4.1, 5, 2.2, 6],
      [1.1, 2.3, 4.4, 0.2],
    ],
  ] as const)('%j against %j, by full enumeration', ([first, second]) => {
    const found = permutationTest([first, second]);
    expect(found.exact).toBe(true);
    expect(found.p).toBeCloseTo(byHand(first, second), 12);
  });

  test('on passes and fails alone it is Fisher’s test', () => {
    const scores = (passes: number, n: number) => Array.from({ length: n }, (_, i) => (i < passes ? 1 : 0));
    expect(permutationTest([scores(2, 17), scores(10, 13)]).p).toBeCloseTo(0.000536724119143, 10);
    expect(permutationTest([scores(5, 6), scores(1, 6)]).p).toBeCloseTo(
      fisherExact([
        [5, 1],
        [1, 5],
      ]),
      10,
    );
  });

  test('labels move within blocks only', () => {
    // block one: 20 arrangements, 2 of them as far out; block two the same: 2 of 400 are as far out as both
    const block = { first: [1, 1, 1], second: [0, 0, 0] };
    expect(permutationTest([block, block])).toMatchObject({
      p: 2 / 400,
      exact: true,
      arrangements: 400,
      difference: 1,
    });
  });

  test('sampling comes near the full count, and the same seed gives the same answer', () => {
    const first = [1, 0.5, 1, 1, 0, 1, 1];
    const second = [0, 0, 1, 0.5, 0, 0, 1];
    const exact = permutationTest([first, second]);
    const sampled = permutationTest([first, second], { most: 10, draws: 40_000, seed: 7 });
    expect(sampled.exact).toBe(false);
    expect(sampled.p).toBeCloseTo(exact.p, 2);
    expect(permutationTest([first, second], { most: 10, draws: 40_000, seed: 7 })).toEqual(sampled);
    expect(sampledTest(first, second, 'two_side', 4000, Math.random)).toBeCloseTo(exact.p, 1);
  });

  test('nothing to compare is refused', () => {
    expect(() => permutationTest([[], [1]])).toThrow(RangeError);
    expect(() => permutationTest([[NaN], [1]])).toThrow(/finite/);
  });
});

describe('what replicates can tell apart', () => {
  test('with 3 each: always against never, not 2 of 3 against 1 of 3', () => {
    const { noticed, fromNever } = detectableDifference(3);
    expect(noticed).toEqual([3, undefined, undefined, undefined]);
    // 3 of 3 against 0 of 3 must come up with chance 0.8: rate³ ≥ 0.8
    expect(fromNever).toBe(Math.ceil(Math.cbrt(0.8) * 100) / 100);
  });
  test('with 2 each: nothing', () => {
    expect(detectableDifference(2)).toMatchObject({ difference: undefined, fromNever: undefined });
  });
  test('equal rates are called different at most 1 time in 20, whatever they are', () => {
    for (const n of [3, 5, 8]) {
      for (let rate = 0; rate <= 1; rate += 0.05) expect(trialPower(rate, rate, n)).toBeLessThanOrEqual(0.05 + 1e-9);
    }
  });
  test('at the stated gap it is noticed 4 times in 5, and no longer one step below', () => {
    const { difference = NaN } = detectableDifference(8);
    expect(trialPower(0.5 - difference / 2, 0.5 + difference / 2, 8)).toBeGreaterThanOrEqual(0.8);
    expect(trialPower(0.505 - difference / 2, 0.495 + difference / 2, 8)).toBeLessThan(0.8);
  });
});
