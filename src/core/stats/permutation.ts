/**
 * The permutation test: if the glue made no difference, its labels could have fallen on the swatches in
 * any other way; how many of those ways look at least as different as what was seen. Labels move only
 * within a block (the same paper, the same hold), as they did when the order was drawn.
 */
import { seededUniform } from '../base/random';

export interface Block {
  readonly first: readonly number[];
  readonly second: readonly number[];
}

export interface PermutationResult {
  /** mean of the first less mean of the second, weighed over the blocks */
  readonly difference: number;
  /** two-sided */
  readonly p: number;
  /** true when every arrangement was counted, false when they were sampled */
  readonly exact: boolean;
  /** arrangements there are (exact) or were drawn (sampled) */
  readonly arrangements: number;
}

export interface PermutationOptions {
  /** different sums above which arrangements are sampled, not counted; 20 000 when left out */
  readonly most?: number;
  /** how many are sampled then; 20 000 when left out */
  readonly draws?: number;
  readonly seed?: number;
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
/** Statistics that differ by rounding alone count as equal. */
const CLOSE = 1e-9;

/** Arrangements of one block: ways to choose which of its swatches bear the first label. */
function ways(n: number, k: number): number {
  let count = 1;
  for (let i = 1; i <= Math.min(k, n - k); i += 1) count = (count * (n - i + 1)) / i;
  return count;
}

/** A sum as a whole number of billionths, so that equal sums meet under one key. */
const keyOf = (total: number) => Math.round(total / CLOSE);

/**
 * How many choices of `size` of the values have which sum, value by value (each is taken or left).
 * Undefined when there are more than `most` different sums to keep count of.
 */
function sumsOf(values: readonly number[], size: number, most: number): Map<number, number> | undefined {
  const bySize = Array.from({ length: size + 1 }, () => new Map<number, number>());
  bySize[0]!.set(0, 1);
  for (const value of values) {
    for (let taken = size; taken > 0; taken -= 1) {
      const target = bySize[taken]!;
      for (const [key, count] of bySize[taken - 1]!) {
        const sumKey = key + keyOf(value);
        target.set(sumKey, (target.get(sumKey) ?? 0) + count);
      }
      if (target.size > most) return undefined;
    }
  }
  return bySize[size]!;
}

/** The sums of all blocks together: every arrangement of one with every arrangement of the others. */
function sumsOfAll(
  blocks: readonly { centred: readonly number[]; size: number }[],
  most: number,
): Map<number, number> | undefined {
  let all = new Map<number, number>([[0, 1]]);
  for (const { centred, size } of blocks) {
    const own = sumsOf(centred, size, most);
    if (own === undefined) return undefined;
    const next = new Map<number, number>();
    for (const [key, count] of own) {
      for (const [before, ways] of all) next.set(key + before, (next.get(key + before) ?? 0) + count * ways);
      if (next.size > most) return undefined;
    }
    all = next;
  }
  return all;
}

/**
 * Two-sided permutation test of `first` against `second`, scores of any kind (pass 1, partly ½, fail 0).
 * Either two lists, or one list of blocks. Exact while there are at most `most`
 * different sums (always so for pass, partly, fail), else seeded sampling with the seen arrangement counted in (so p is never 0). Throws RangeError on empty groups
 * and on scores that are not finite.
 */
export function permutationTest(
  groups: readonly Block[] | readonly [readonly number[], readonly number[]],
  options: PermutationOptions = {},
): PermutationResult {
  const { most = 20_000, draws = 20_000, seed = 1 } = options;
  const blocks = asBlocks(groups).filter(({ first, second }) => first.length > 0 && second.length > 0);
  if (blocks.length === 0) throw new RangeError('both groups need at least one score in the same block');
  const laid = blocks.map(({ first, second }) => {
    const all = [...first, ...second];
    if (!all.every(Number.isFinite)) throw new RangeError('scores must be finite numbers');
    const mean = sum(all) / all.length;
    // Within a block the weighed difference of means is the first group's sum, centred.
    return {
      centred: all.map((score) => score - mean),
      size: first.length,
      weight: (first.length * second.length) / all.length,
    };
  });
  const seen = sum(laid.map(({ centred, size }) => sum(centred.slice(0, size))));
  const difference = seen / sum(laid.map(({ weight }) => weight));
  const arrangements = laid.reduce((count, { centred, size }) => count * ways(centred.length, size), 1);
  const sums = sumsOfAll(laid, most);
  if (sums !== undefined) {
    // each swatch's score is rounded to its key, so sums may be out by that much for every swatch
    const slack = sum(laid.map(({ centred }) => centred.length));
    let extreme = 0;
    for (const [key, count] of sums) if (Math.abs(key) >= Math.abs(seen) / CLOSE - slack) extreme += count;
    return { difference, p: Math.min(1, extreme / arrangements), exact: true, arrangements };
  }
  const uniform = seededUniform(seed);
  let extreme = 1;
  for (let draw = 0; draw < draws; draw += 1) {
    const total = sum(laid.map(({ centred, size }) => drawnSum(centred, size, uniform)));
    if (Math.abs(total) >= Math.abs(seen) - 100 * CLOSE) extreme += 1;
  }
  return { difference, p: extreme / (draws + 1), exact: false, arrangements: draws };
}

function asBlocks(groups: readonly Block[] | readonly [readonly number[], readonly number[]]): readonly Block[] {
  const [head, tail] = groups;
  return Array.isArray(head) ? [{ first: head, second: tail as readonly number[] }] : (groups as readonly Block[]);
}

/** The sum of `size` of the values, drawn without replacement. */
function drawnSum(values: readonly number[], size: number, uniform: () => number): number {
  const pool = [...values];
  let total = 0;
  for (let i = 0; i < size; i += 1) {
    const j = i + Math.floor(uniform() * (pool.length - i));
    [pool[i], pool[j]] = [pool[j]!, pool[i]!];
    total += pool[i]!;
  }
  return total;
}
