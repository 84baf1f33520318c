/** Two adhesives on the same sheets, swatch beside swatch. */
import { mustBeWithin } from '../base/result';
import { binomialChance } from './distributions';

/**
 * McNemar's exact test for pairs: `b` pairs where only the first passed, `c` where only the second did. Null
 * hypothesis: where the two differ, either is as likely to be the one that passed. Pairs that agree say nothing.
 * Two-sided: twice the smaller binomial tail at one half, at most 1.
 *
 * Published: Q. McNemar, Psychometrika 12 (1947) 153, in its exact form. Counts whole, 0–10 000; returns p in (0, 1].
 * Throws RangeError outside these.
 */
export function mcnemarExact(b: number, c: number): number {
  for (const [name, value] of Object.entries({ b, c })) {
    mustBeWithin(name, value, 0, 10_000);
    if (!Number.isInteger(value)) throw new RangeError(`${name} must be a whole number`);
  }
  let tail = 0;
  for (let k = 0; k <= Math.min(b, c); k += 1) tail += binomialChance(k, b + c, 0.5);
  return Math.min(1, 2 * tail);
}
