/** What a number may be, and what to say of one that is not. */
import { formatAmount } from './format';
import { fail, ok, type ErrorCode, type Result } from './result';

/** What a number may be, in the unit its field is labelled with, and what it is called as a sentence begins. */
export interface NumberLimits {
  readonly low: number;
  readonly high: number;
  readonly unit: string;
  readonly what: string;
  /** no halves: makers, coats */
  readonly whole?: true;
  /** said after the limits when the number is above them */
  readonly ifTooLarge?: string;
}

/**
 * The number itself when it is within its limits; else what is wrong with it, saying what is allowed. `undefined` is
 * a text that was no number. `field` is the id of the field that the message stands beside.
 */
export function withinLimits(field: string, value: number | undefined, limits: NumberLimits): Result<number> {
  const { low, high, unit, what, whole, ifTooLarge = '' } = limits;
  const allowed = `from ${formatAmount(low, 6)} to ${formatAmount(high, 6)}${unit ? `\u00a0${unit}` : ''}`;
  const problem = (code: ErrorCode): Result<number> =>
    fail([
      {
        field,
        code,
        message: `${what} must be a ${whole ? 'whole ' : ''}number ${allowed}.${code === 'too-large' ? ifTooLarge : ''}`,
        limits: { low, high, unit },
      },
    ]);
  if (value === undefined || !Number.isFinite(value) || (whole && !Number.isInteger(value)))
    return problem('not-a-number');
  if (value < low) return problem('too-small');
  return value > high ? problem('too-large') : ok(value);
}

/** The nearest number that is within the limits. */
export const nearestWithin = (value: number, { low, high }: Pick<NumberLimits, 'low' | 'high'>): number =>
  Math.min(high, Math.max(low, value));
