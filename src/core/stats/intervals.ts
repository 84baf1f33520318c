/** How far a true pass rate may lie from what a few swatches showed. */
import { binomialUpTo, crossing, zFor } from './functions';
import { mustBeWithin } from '../base/result';

export interface Interval {
  /** passes ÷ swatches */
  readonly estimate: number;
  readonly low: number;
  readonly high: number;
}

/** A count of passes: halves are allowed, because "partly" counts as half. */
function mustBeCounts(passes: number, n: number, whole: boolean): void {
  mustBeWithin('n', n, 1, 100_000);
  mustBeWithin('passes', passes, 0, n);
  if (!Number.isInteger(n) || (whole && !Number.isInteger(passes)))
    throw new RangeError('passes and n must be whole numbers');
}

/**
 * Wilson's score interval for `passes` of `n`. Published: E. B. Wilson, J. Am. Stat. Assoc. 22 (1927) 209;
 * recommended for small n by Newcombe, Stat. Med. 17 (1998) 857. n whole 1–100 000, 0 ≤ passes ≤ n,
 * confidence 0.5–0.9999. Throws RangeError outside these.
 */
export function wilsonInterval(passes: number, n: number, confidence = 0.95): Interval {
  mustBeCounts(passes, n, false);
  const z = zFor(confidence);
  const estimate = passes / n;
  const shrink = 1 + (z * z) / n;
  const centre = (estimate + (z * z) / (2 * n)) / shrink;
  const half = (z * Math.sqrt((estimate * (1 - estimate)) / n + (z * z) / (4 * n * n))) / shrink;
  // The formula touches 0 and 1 exactly at the ends; rounding must not carry it past them.
  return {
    estimate,
    low: passes === 0 ? 0 : Math.max(0, centre - half),
    high: passes === n ? 1 : Math.min(1, centre + half),
  };
}

/**
 * The "exact" interval of Clopper and Pearson, Biometrika 26 (1934) 404: never less sure than it says,
 * often a good deal surer. Same limits as `wilsonInterval`; passes must be whole.
 */
export function clopperPearsonInterval(passes: number, n: number, confidence = 0.95): Interval {
  mustBeCounts(passes, n, true);
  mustBeWithin('confidence', confidence, 0.5, 0.9999);
  const tail = (1 - confidence) / 2;
  return {
    estimate: passes / n,
    low: passes === 0 ? 0 : crossing((p) => 1 - binomialUpTo(passes - 1, n, p) - tail, 0, 1),
    high: passes === n ? 1 : crossing((p) => binomialUpTo(passes, n, p) - tail, 0, 1),
  };
}
