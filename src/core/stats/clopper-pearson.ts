/** How far a true pass rate may lie from what a few swatches showed. */
import { mustBeWithin } from '../base/result';
import { betaQuantile } from './distributions';

export interface Interval {
  /** passes ÷ swatches */
  readonly estimate: number;
  readonly low: number;
  readonly high: number;
}

/**
 * The Clopper–Pearson ("exact") interval of a binomial proportion: the true rates that a two-sided binomial test
 * would not rule out. Whatever the true rate and however few the swatches, it holds that rate at least as often as
 * `confidence` says, and often a good deal oftener; that is why a page may call a pairing by it.
 *
 * Published: C. J. Clopper and E. S. Pearson, Biometrika 26 (1934) 404. The ends are beta quantiles.
 * `passes` of `n` swatches, both whole, n 1–100 000; `confidence` 0.5–0.9999. Throws RangeError outside these.
 */
export function clopperPearsonInterval(passes: number, n: number, confidence = 0.95): Interval {
  mustBeWithin('n', n, 1, 100_000);
  mustBeWithin('passes', passes, 0, n);
  if (!Number.isInteger(n) || !Number.isInteger(passes)) throw new RangeError('passes and n must be whole numbers');
  mustBeWithin('confidence', confidence, 0.5, 0.9999);
  const tail = (1 - confidence) / 2;
  return {
    estimate: passes / n,
    low: passes === 0 ? 0 : betaQuantile(tail, passes, n - passes + 1),
    high: passes === n ? 1 : betaQuantile(1 - tail, passes + 1, n - passes),
  };
}
