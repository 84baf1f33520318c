/** The exact stratified permutation test, against R's coin, full enumeration and by hand. */
import { permutationTest } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { fisherExact } from '../../../src/core/stats/fisher-exact';
import { stratifiedPermutation, type Stratum } from '../../../src/core/stats/stratified-permutation';

/** Pass, partly, fail of the first; the same of the second. */
type Row = readonly [number, number, number, number, number, number];
const stratum = ([a, b, c, d, e, f]: Row): Stratum => ({
  first: { pass: a, partly: b, fail: c },
  second: { pass: d, partly: e, fail: f },
});
const test = (...rows: readonly Row[]) => stratifiedPermutation(rows.map(stratum));

describe('R 4.2.2, coin 1.4-2: independence_test(score ~ glue | block, distribution = exact("shift"))', () => {
  it('passes, partlies and fails in three blocks', () =>
    expect(test([3, 1, 2, 1, 0, 5], [4, 0, 2, 2, 2, 2], [1, 1, 4, 0, 1, 5]).p).toBeCloseTo(0.121039199552, 11));
  it('passes and fails in three blocks of unlike size', () =>
    expect(test([2, 0, 1, 0, 0, 4], [5, 0, 0, 3, 0, 3], [1, 0, 3, 1, 0, 1]).p).toBeCloseTo(0.0894660894661, 11));
});

it('R 4.2.2, mantelhaen.test(exact = TRUE): the same three blocks, where both tails are the same tables', () =>
  expect(test([2, 0, 1, 0, 0, 4], [5, 0, 0, 3, 0, 3], [1, 0, 3, 1, 0, 1]).p).toBeCloseTo(0.0894660894661, 11));

const scores = ({ pass, partly, fail }: Stratum['first']) => [
  ...Array<number>(pass).fill(1),
  ...Array<number>(partly).fill(0.5),
  ...Array<number>(fail).fill(0),
];

/** Every way to choose which swatches of one stratum bear the first label, by counting in binary. */
function byHand({ first, second }: Stratum): number {
  const [a, b] = [scores(first), scores(second)];
  const all = [...a, ...b];
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const gap = (chosen: (i: number) => boolean) =>
    mean(all.filter((_, i) => chosen(i))) - mean(all.filter((_, i) => !chosen(i)));
  const seen = Math.abs(gap((i) => i < a.length));
  let [count, extreme] = [0, 0];
  for (let bits = 0; bits < 2 ** all.length; bits += 1) {
    const chosen = (i: number) => Math.floor(bits / 2 ** i) % 2 === 1;
    if (all.filter((_, i) => chosen(i)).length !== a.length) continue;
    count += 1;
    if (Math.abs(gap(chosen)) >= seen - 1e-9) extreme += 1;
  }
  return extreme / count;
}

describe('by full enumeration', () => {
  it.each([
    [[3, 0, 0, 0, 0, 3]],
    [[3, 1, 0, 0, 1, 2]],
    [[2, 2, 1, 1, 0, 3]],
    [[0, 3, 0, 1, 1, 1]],
    [[1, 0, 0, 0, 2, 4]],
  ] as readonly [Row][])('%j', (row) => expect(test(row).p).toBeCloseTo(byHand(stratum(row)), 12));

  it('on passes and fails of one stratum of like size it is Fisher’s test', () => {
    const rows = [
      [5, 1],
      [1, 5],
    ] as const;
    expect(test([5, 0, 1, 1, 0, 5]).p).toBeCloseTo(fisherExact(rows), 12);
  });

  it('comes near the sampled test of the package simple-statistics', () => {
    const row = stratum([5, 1, 1, 1, 1, 5]);
    const sampled = permutationTest(scores(row.first), scores(row.second), 'two_side', 4000, Math.random);
    expect(sampled).toBeCloseTo(stratifiedPermutation([row]).p, 1);
  });
});

describe('by hand', () => {
  it('two passes against two fails: of six ways, this and its mirror', () => {
    expect(test([2, 0, 0, 0, 0, 2])).toMatchObject({ difference: 1, p: expect.closeTo(1 / 3, 12) });
    expect(test([0, 0, 2, 2, 0, 0]).difference).toBe(-1);
  });
  it('labels stay within their stratum: 20 × 20 ways, two of them as far out', () =>
    expect(test([3, 0, 0, 0, 0, 3], [3, 0, 0, 0, 0, 3])).toMatchObject({
      difference: 1,
      p: expect.closeTo(2 / 400, 12),
    }));
  it('two hands that differ and two adhesives that do not: no difference', () => {
    // one hand passes 9 of 10 with either, the other 1 of 10; together 9 of 12 against 3 of 12
    const merged = test([9, 0, 1, 1, 0, 0], [0, 0, 1, 2, 0, 9]);
    expect(merged.p).toBeGreaterThan(0.5);
    expect(fisherExact([[9, 2], [3, 9]] as const)).toBeLessThan(0.05); // prettier-ignore
  });
  it('a stratum without one of the two says nothing', () =>
    expect(test([1, 0, 0, 0, 0, 1], [1, 0, 0, 0, 0, 1], [0, 0, 2, 0, 0, 0])).toEqual(
      test([1, 0, 0, 0, 0, 1], [1, 0, 0, 0, 0, 1]),
    ));
  it('strata weigh by what they can tell: one of one against three 3/4, two against two 1', () =>
    expect(test([1, 0, 0, 0, 0, 3], [1, 0, 1, 1, 0, 1]).difference).toBeCloseTo(0.75 / 1.75, 12));
  it('partly lies half way', () => expect(test([0, 1, 0, 0, 0, 1]).difference).toBe(0.5));
  it('the smallest p that there could have been', () => {
    expect(test([2, 0, 1, 1, 0, 2]).least).toBeCloseTo(2 / 20, 12);
    expect(test([3, 0, 0, 3, 0, 0])).toMatchObject({ p: 1, least: 1 });
    // 1 of 4 passes: it lies with the one or among the three
    expect(test([1, 0, 0, 0, 0, 3]).least).toBeCloseTo(1 / 4, 12);
  });
});

it('refuses what cannot be compared', () => {
  for (const rows of [
    [],
    [[1, 0, 0, 0, 0, 0]],
    [[1.5, 0, 0, 0, 0, 1]],
    [[-1, 0, 2, 0, 0, 1]],
    [[NaN, 0, 0, 0, 0, 1]],
  ] as readonly (readonly Row[])[])
    expect(() => test(...rows)).toThrow(RangeError);
});
