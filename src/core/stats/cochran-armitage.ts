/** The exact Cochran–Armitage test for trend: do heavier papers pass more often. */
import { seededUniform } from '../base/random';
import { mustBePositive, mustBeWithin } from '../base/result';
import { atOnce, type InTurns } from '../base/turns';
import { logChoose } from './distributions';
import { convolve, tailsOf } from './stratified-permutation';

/** Swatches of one weight in one stratum. */
export interface Dose {
  /** g/m², or any other measure above 0 */
  readonly amount: number;
  readonly passes: number;
  readonly n: number;
}

export interface Trend {
  /** above 0 where the greater amounts pass more often, below 0 where the smaller do */
  readonly direction: number;
  /** two-sided */
  readonly p: number;
  /** the smallest p that passes dealt out on these swatches could have given; 0 where the p was sampled */
  readonly least: number;
}

/**
 * Amounts are told apart in steps of 5 %, or of a twentieth of their span where that is less: sums are then whole
 * numbers, and the test stays exact. Choice of ours.
 */
const STEPS = 20;
/** Products that are still counted and not sampled: some 10 ms of a desk machine. */
const MOST_PRODUCTS = 8e6;
const DRAWS = 20_000;

interface Laid {
  /** steps above the least amount */
  readonly scores: readonly number[];
  readonly n: readonly number[];
  readonly total: number;
  readonly passes: number;
  /** sum of the scores of those that passed */
  readonly seen: number;
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** Chance of each sum of scores when the passes of one stratum are dealt out on its swatches by lot. */
function* sumsByLot({ scores, n, passes }: Laid): InTurns<Float64Array> {
  const width = Math.max(...scores) * passes + 1;
  let byCount: Float64Array[] = [Float64Array.of(1)];
  let before = 0;
  for (const [group, score] of scores.entries()) {
    yield;
    const next: Float64Array[] = [];
    const size = n[group]!;
    for (let count = 0; count <= Math.min(passes, before + size); count += 1) {
      const sums = new Float64Array(Math.min(width, count * Math.max(...scores.slice(0, group + 1)) + 1));
      for (let here = Math.max(0, count - before); here <= Math.min(size, count); here += 1) {
        const earlier = byCount[count - here];
        if (!earlier) continue;
        const share = Math.exp(
          logChoose(size, here) + logChoose(before, count - here) - logChoose(before + size, count),
        );
        for (let i = 0; i < earlier.length; i += 1) sums[i + here * score]! += share * earlier[i]!;
      }
      next.push(sums);
    }
    before += size;
    byCount = next;
  }
  return byCount[passes]!;
}

/** Products that `sumsByLot` takes, about. */
const productsOf = ({ scores, n, passes }: Laid): number =>
  (Math.max(...scores) * passes + 1) * (passes + 1) * sum(n.map((size) => Math.min(size, passes) + 1));

/**
 * The exact Cochran–Armitage test for trend, stratified, in turns.
 * Null hypothesis: within a stratum (one hand, one trial, one hold) every paper passes equally often, so that its
 * passes could have fallen on any of its swatches. The statistic is the sum of ln(amount) over the swatches that
 * passed; it counts how many ways of dealing out the passes put it as far from its mean. It says that the heavier
 * of *these* papers pass more often. Whether weight is the reason, or something else in which they differ, no such
 * test can tell.
 *
 * Published: P. Armitage, Biometrics 11 (1955) 375; the exact form is R's coin::independence_test of passes on
 * scores. Where counting every way would take too long, 20 000 are drawn by a seeded lot and the one seen counts
 * among them, so that p is never too small. Amounts above 0, counts whole. Throws RangeError outside these, and when
 * no stratum has two amounts.
 */
export function* trendInTurns(strata: readonly (readonly Dose[])[]): InTurns<Trend> {
  const logs = strata.flat().map(({ amount }) => Math.log(amount));
  const least = Math.min(...logs);
  const perLog = Math.max(STEPS, STEPS / (Math.max(...logs) - least));
  const differ = strata.some((doses) => new Set(doses.map(({ amount }) => amount)).size > 1);
  const laid = strata.flatMap((doses): Laid[] => {
    for (const { amount, passes, n } of doses) {
      mustBePositive('amount', amount);
      mustBeWithin('n', n, 1, 100_000);
      mustBeWithin('passes', passes, 0, n);
      if (!Number.isInteger(n) || !Number.isInteger(passes)) throw new RangeError('passes and n must be whole numbers');
    }
    const scores = doses.map(({ amount }) => Math.round((Math.log(amount) - least) * perLog));
    const n = doses.map((one) => one.n);
    const passes = sum(doses.map((one) => one.passes));
    const seen = sum(doses.map((one, i) => one.passes * scores[i]!));
    return new Set(scores).size > 1 ? [{ scores, n, total: sum(n), passes, seen }] : [];
  });
  if (!differ) throw new RangeError('a trend needs at least two different amounts in one stratum');
  // amounts of one step in every stratum: nothing can be told
  if (laid.length === 0) return { direction: 0, p: 1, least: 1 };
  const seen = sum(laid.map((stratum) => stratum.seen));
  const mean = sum(laid.map(({ scores, n, total, passes }) => (passes * sum(scores.map((s, i) => s * n[i]!))) / total));
  const direction = seen - mean;
  if (sum(laid.map(productsOf)) <= MOST_PRODUCTS) {
    let chances: Float64Array = Float64Array.of(1);
    for (const stratum of laid) {
      yield;
      chances = convolve(chances, yield* sumsByLot(stratum));
    }
    return { direction, ...tailsOf(chances, seen, mean) };
  }
  const uniform = seededUniform(1);
  const pools = laid.map(({ scores, n }) => scores.flatMap((score, i) => Array<number>(n[i]!).fill(score)));
  let extreme = 1;
  for (let draw = 0; draw < DRAWS; draw += 1) {
    if (draw % 100 === 0) yield;
    let total = 0;
    laid.forEach(({ passes }, stratum) => {
      const pool = pools[stratum]!;
      for (let i = 0; i < passes; i += 1) {
        const j = i + Math.floor(uniform() * (pool.length - i));
        [pool[i], pool[j]] = [pool[j]!, pool[i]!];
        total += pool[i]!;
      }
    });
    if (Math.abs(total - mean) >= Math.abs(direction) - 1e-9) extreme += 1;
  }
  return { direction, p: extreme / (DRAWS + 1), least: 0 };
}

/** The same in one go. */
export const cochranArmitage = (strata: readonly (readonly Dose[])[]): Trend => atOnce(trendInTurns(strata));
