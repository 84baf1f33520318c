/**
 * Quantities as the core speaks of them. Everything is a plain number in the unit that its name or
 * its docstring gives; records arrive as ranges, because nothing at the bench is known to one digit.
 */

/** How a number is known. `published` rests on a named source; the others say plainly that they do not. */
export type Basis = 'published' | 'common-practice' | 'from-memory' | 'calibrated' | 'estimate' | 'measured';

/** A number that is known to lie between `low` and `high`, with `middle` the value to use when one is needed. */
export interface Range {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
  readonly basis: Basis;
}

/** A range around one value: `share` is the half-width as a share of the value (0.1 means ±10 %). */
export function around(value: number, share: number, basis: Basis): Range {
  return { low: value * (1 - share), middle: value, high: value * (1 + share), basis };
}

/**
 * The value at `u` of the way through a range, 0 ≤ u ≤ 1. The lower half runs from low to middle and
 * the upper half from middle to high, so that half of all samples fall on each side of the middle.
 */
export function at(range: Range, u: number): number {
  return u < 0.5
    ? range.low + (range.middle - range.low) * u * 2
    : range.middle + (range.high - range.middle) * (u - 0.5) * 2;
}

/** `value` held between `low` and `high`. */
export function clamp(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}
