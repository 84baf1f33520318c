/** The exact stratified permutation test: is it the adhesive, or how the swatches happened to fall. */
import { logChoose } from './distributions';

/** How the swatches of one adhesive came out in one stratum; they score 1, ½ and 0. */
export interface Outcomes {
  readonly pass: number;
  readonly partly: number;
  readonly fail: number;
}

/** Swatches that differ in nothing but the adhesive: the same hand, trial, paper and hold. */
export interface Stratum {
  readonly first: Outcomes;
  readonly second: Outcomes;
}

export interface PermutationResult {
  /** mean score of the first less that of the second, weighed over the strata by what each can tell; −1 to 1 */
  readonly difference: number;
  /** two-sided */
  readonly p: number;
  /** the smallest p that labels dealt out on these swatches could have given */
  readonly least: number;
}

/** Sums that differ by rounding alone count as equal. */
const CLOSE = 1e-9;

const countOf = ({ pass, partly, fail }: Outcomes): number => pass + partly + fail;
/** Twice the sum of the scores: a whole number. */
const doubled = ({ pass, partly }: Outcomes): number => 2 * pass + partly;

function mustBeOutcomes(outcomes: Outcomes): void {
  for (const count of [outcomes.pass, outcomes.partly, outcomes.fail]) {
    if (!Number.isInteger(count) || count < 0 || count > 10_000)
      throw new RangeError(`outcomes must be whole counts from 0 to 10000; got ${count}`);
  }
}

/** Chance of each (doubled) sum of scores when `size` swatches are drawn by lot from these: a multivariate hypergeometric. */
function sumsByLot(all: Outcomes, size: number): Float64Array {
  const chances = new Float64Array(Math.min(2 * size, doubled(all)) + 1);
  const ways = logChoose(countOf(all), size);
  for (let pass = 0; pass <= Math.min(all.pass, size); pass += 1) {
    const least = Math.max(0, size - pass - all.fail);
    for (let partly = least; partly <= Math.min(all.partly, size - pass); partly += 1) {
      const log = logChoose(all.pass, pass) + logChoose(all.partly, partly) + logChoose(all.fail, size - pass - partly);
      chances[2 * pass + partly]! += Math.exp(log - ways);
    }
  }
  return chances;
}

/** Chances of the sums of two independent draws. */
export function convolve(one: Float64Array, other: Float64Array): Float64Array {
  const sums = new Float64Array(one.length + other.length - 1);
  for (let i = 0; i < one.length; i += 1) {
    const chance = one[i]!;
    if (chance > 0) for (let j = 0; j < other.length; j += 1) sums[i + j]! += chance * other[j]!;
  }
  return sums;
}

/**
 * The exact stratified permutation test of two adhesives, with scores pass 1, partly ½, fail 0.
 * Null hypothesis: within each stratum the two come out alike, so that the labels could have fallen on its swatches
 * in any other way. It counts how many of those ways give a gap as large as the one seen, either way. Strata may
 * differ from one another as they like: labels never move from one hand, trial, paper or hold to another.
 * On passes and fails alone it is the exact conditional Cochran–Mantel–Haenszel test (Birch's), and in one stratum
 * Fisher's, but for which tables count as extreme: here those whose sum lies as far from its mean.
 *
 * It takes repeats of one stratum as exchangeable: a hand that tires over the repeats makes it milder, not sharper,
 * since the order within a repeat is drawn by lot.
 *
 * Published: M. W. Birch, J. R. Stat. Soc. B 26 (1964) 313; Hothorn et al., Am. Stat. 60 (2006) 257, whose R package
 * coin gives the same p. Strata in which one of the two was not tried say nothing. Counts whole, 0–10 000. Throws
 * RangeError outside these, and when no stratum holds both.
 */
export function stratifiedPermutation(strata: readonly Stratum[]): PermutationResult {
  let chances: Float64Array = Float64Array.of(1);
  let [seen, mean, weight] = [0, 0, 0];
  for (const { first, second } of strata) {
    mustBeOutcomes(first);
    mustBeOutcomes(second);
    const [m, n] = [countOf(first), countOf(second)];
    if (m === 0 || n === 0) continue;
    const all = {
      pass: first.pass + second.pass,
      partly: first.partly + second.partly,
      fail: first.fail + second.fail,
    };
    chances = convolve(chances, sumsByLot(all, m));
    seen += doubled(first);
    mean += (m * doubled(all)) / (m + n);
    weight += (m * n) / (m + n);
  }
  if (weight === 0) throw new RangeError('both adhesives need at least one swatch in the same stratum');
  const { p, least } = tailsOf(chances, seen, mean);
  return { difference: (seen - mean) / 2 / weight, p, least };
}

/** Chance of a sum as far from `mean` as `seen` is, and of one as far as any can be. */
export function tailsOf(chances: Float64Array, seen: number, mean: number): { p: number; least: number } {
  let farthest = 0;
  for (let sum = 0; sum < chances.length; sum += 1) {
    if (chances[sum]! > 0) farthest = Math.max(farthest, Math.abs(sum - mean));
  }
  let [p, least] = [0, 0];
  for (let sum = 0; sum < chances.length; sum += 1) {
    const distance = Math.abs(sum - mean);
    if (distance >= Math.abs(seen - mean) - CLOSE) p += chances[sum]!;
    if (distance >= farthest - CLOSE) least += chances[sum]!;
  }
  return { p: Math.min(1, p), least: Math.min(1, least) };
}
