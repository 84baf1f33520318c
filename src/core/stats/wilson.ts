/** A range for a true pass rate that is right on average, for those who weigh swatches and do not claim by them. */
import { mustBeWithin } from '../base/result';
import type { Interval } from './clopper-pearson';
import { zFor } from './distributions';

/**
 * Wilson's score interval for `passes` of `n`: the true rates that a score test would not rule out. It covers the
 * true rate about as often as `confidence` says on average, less often for some rates; a page that claims by a range
 * uses `clopperPearsonInterval` instead.
 *
 * Published: E. B. Wilson, J. Am. Stat. Assoc. 22 (1927) 209; worked examples in Newcombe, Stat. Med. 17 (1998) 857.
 * `n` whole 1–100 000, 0 ≤ `passes` ≤ n (halves are allowed), `confidence` 0.5–0.9999. Throws RangeError outside these.
 */
export function wilsonInterval(passes: number, n: number, confidence = 0.95): Interval {
  mustBeWithin('n', n, 1, 100_000);
  if (!Number.isInteger(n)) throw new RangeError('n must be a whole number');
  mustBeWithin('passes', passes, 0, n);
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
