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

/** A range without a stated middle takes the geometric mean, four figures of it; one that touches zero, the arithmetic. */
export function middleOf({ low, high, middle }: Pick<Range, 'low' | 'high'> & { middle?: number | undefined }): number {
  if (middle !== undefined) return middle;
  const mean = low > 0 ? Math.sqrt(low * high) : (low + high) / 2;
  return Number(mean.toPrecision(4));
}

/**
 * The value at `u` of the way through a range, 0 ≤ u ≤ 1. Values near the middle are the likelier: the
 * ends are the extremes met in practice, so each side is a triangle that is fullest at the middle, with
 * half of all samples on either side of it.
 */
export function at(range: Range, u: number): number {
  return u < 0.5
    ? range.low + (range.middle - range.low) * Math.sqrt(2 * u)
    : range.high - (range.high - range.middle) * Math.sqrt(2 * (1 - u));
}

/** `value` held between `low` and `high`. */
export function clamp(value: number, low: number, high: number): number {
  // compared, for a chooser's first answer asks fifty thousand times
  return value <= low ? low : value >= high ? high : value;
}

export interface Percentiles {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
}
