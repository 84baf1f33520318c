/** Fisher's exact test for a table of two by two. */
import { mustBeWithin } from '../base/result';
import { logChoose } from './distributions';

export type TwoByTwo = readonly [readonly [number, number], readonly [number, number]];
export type Alternative = 'two-sided' | 'greater' | 'less';

/** Guards a count: a whole number from 0 to 10 000. Throws RangeError otherwise. */
export function mustBeCount(name: string, value: number): void {
  mustBeWithin(name, value, 0, 10_000);
  if (!Number.isInteger(value)) throw new RangeError(`${name} must be a whole number`);
}

/** Tables that are as likely as the one seen but for rounding count as no likelier; R uses the same allowance. */
export const SAME = 1 + 1e-7;

/**
 * Fisher's exact test on [[a, b], [c, d]], for example passes and fails of two adhesives, a row each.
 * Null hypothesis: both rows pass equally often, so that only luck dealt the passes out between them. Row and
 * column sums are taken as given.
 *
 * Published: R. A. Fisher, The Design of Experiments (1935), the lady tasting tea. Two-sided: the sum over all
 * tables no likelier than the one seen, as R's fisher.test; 'greater' and 'less' are about a. Counts whole,
 * 0–10 000. Returns p in (0, 1]. Throws RangeError outside these.
 */
export function fisherExact(table: TwoByTwo, alternative: Alternative = 'two-sided'): number {
  const [[a, b], [c, d]] = table;
  for (const [name, value] of Object.entries({ a, b, c, d })) mustBeCount(name, value);
  const [row, column, all] = [a + b, a + c, a + b + c + d];
  const chance = (x: number) => Math.exp(logChoose(column, x) + logChoose(all - column, row - x) - logChoose(all, row));
  const seen = chance(a);
  let p = 0;
  for (let x = Math.max(0, row + column - all); x <= Math.min(row, column); x += 1) {
    const counts = alternative === 'two-sided' ? chance(x) <= seen * SAME : alternative === 'greater' ? x >= a : x <= a;
    if (counts) p += chance(x);
  }
  return Math.min(1, p);
}
