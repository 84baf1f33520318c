/** What measuring leaves open, as a standard uncertainty, and how it is set against what is usual. */
import type { Range } from '../base/quantity';
import { mustBePositive } from '../base/result';

/** A measured number above 0 with its standard uncertainty, in the same unit. */
export interface BenchReading {
  readonly value: number;
  readonly standard: number;
}

/** Ends of a range: no basis, since this is a measurement. */
export type Ends = Omit<Range, 'basis'>;

/** A triangle of half-width a has the standard uncertainty a/√6: JCGM 100:2008, 4.3.9. */
const HALF_WIDTH = Math.sqrt(6);

/** A display that steps by `step` is uncertain by step/√12: JCGM 100:2008, F.2.2.1. */
export const ofStep = (step: number): number => step / Math.sqrt(12);

/** As many repeats as what is usual of a hand counts for beside those that were made. Our own line. */
const COUNTS_FOR = 2;

/**
 * How one repeat differs from the next, as a standard deviation: what the readings show, and what is usual (a share of
 * their mean) for as much as `COUNTS_FOR` more of them. At least one reading, all above 0.
 */
export function spreadOfFew(readings: readonly number[], usualShare: number): number {
  mustBePositive('readings', readings.length);
  const mean = readings.reduce((sum, one) => sum + one, 0) / readings.length;
  const squares = readings.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  return Math.sqrt((squares + COUNTS_FOR * (usualShare * mean) ** 2) / (readings.length - 1 + COUNTS_FOR));
}

/** Standard uncertainty of the logarithm of a number that lies in this range, each side of its middle a triangle. The range is above 0. */
export function logStandardOf({ low, middle, high }: Ends): number {
  mustBePositive('low', low);
  return Math.hypot(Math.log(middle / low), Math.log(high / middle)) / Math.sqrt(12);
}

/** The range that a measured number leaves: a triangle about it, in the logarithm, so that it stays above 0. */
export function endsOf({ value, standard }: BenchReading): Ends {
  const factor = Math.exp(HALF_WIDTH * (standard / value));
  return { low: value / factor, middle: value, high: value * factor };
}

/** This far apart, in joint standard uncertainties, what is usual says nothing of what was measured. Our own line. */
const FAR = 3;

export interface Narrowed {
  readonly ends: Ends;
  /** what was measured lies so far from what is usual that it stands alone, and may be a slip */
  readonly isFar: boolean;
}

/**
 * What was measured and what is usual, each by its weight: the mean of the logarithms weighted by 1/u², whose own
 * uncertainty is 1/√Σ(1/u²). Where they contradict each other the measurement stands alone.
 */
export function narrow(measured: BenchReading, usual: Ends): Narrowed {
  const [own, common] = [measured.standard / measured.value, logStandardOf(usual)];
  const apart = Math.abs(Math.log(measured.value / usual.middle));
  if (apart > FAR * Math.hypot(own, common)) return { ends: endsOf(measured), isFar: true };
  const [a, b] = [own ** -2, common ** -2];
  const value = Math.exp((a * Math.log(measured.value) + b * Math.log(usual.middle)) / (a + b));
  return { ends: endsOf({ value, standard: value / Math.sqrt(a + b) }), isFar: false };
}

/** Standard uncertainty of f(x₁ … xₙ) by moving each by its own: JCGM 100:2008, 5.1.3 with the note on numerical evaluation. */
export function carried(
  f: (x: readonly number[]) => number,
  x: readonly number[],
  standards: readonly number[],
): number {
  const moved = x.map((value, i) => {
    const by = (step: number) => f(x.map((one, j) => (j === i ? value + step : one)));
    return (by(standards[i]!) - by(-standards[i]!)) / 2;
  });
  return Math.hypot(...moved);
}
