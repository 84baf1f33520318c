/** What each number of a paper may be, in one place: forms, links, own papers and jobs all hold to these. */
import { fail, ok, type ErrorCode, type InputError, type Result } from '../base/result';
import { densityIsPossible, FIBRE_DENSITY, LEAST_DENSITY } from './paper';
import { LONGEST_DROP_SECONDS } from './sorption';

/** What a number may be, in the unit its field is labelled with, and what it is called as a sentence begins. */
export interface NumberLimits {
  readonly low: number;
  readonly high: number;
  readonly unit: string;
  readonly what: string;
  /** said after the limits when the number is above them */
  readonly ifTooLarge?: string;
}

export const PAPER_LIMITS = {
  grammage: { low: 5, high: 600, unit: 'g/m²', what: 'The weight of the paper' },
  caliper: { low: 10, high: 3000, unit: 'µm', what: 'The thickness' },
  dropSeconds: {
    low: 0.2,
    high: LONGEST_DROP_SECONDS,
    unit: 's',
    what: 'The drop test',
    ifTooLarge: ' A slower drop dries as much as it sinks in: leave this empty and choose hard-sized.',
  },
  cobb: { low: 1, high: 400, unit: 'g/m²', what: 'The Cobb 60 figure' },
} as const satisfies Record<string, NumberLimits>;

/** The number itself when it is within its limits; else what is wrong with it, saying what is allowed. */
export function withinLimits(field: string, value: number, limits: NumberLimits): Result<number> {
  const { low, high, unit, what, ifTooLarge = '' } = limits;
  const problem = (code: ErrorCode): Result<number> =>
    fail([
      {
        field,
        code,
        message: `${what} must be a number from ${low} to ${high} ${unit}.${code === 'too-large' ? ifTooLarge : ''}`,
        limits: { low, high, unit },
      },
    ]);
  if (!Number.isFinite(value)) return problem('not-a-number');
  if (value < low) return problem('too-small');
  return value > high ? problem('too-large') : ok(value);
}

/** A caliper that makes the sheet denser than cellulose, or lighter than any felt, is a slip of unit or of a digit. */
export function caliperProblem(grammage: number, caliper: number): InputError | undefined {
  if (densityIsPossible(grammage, caliper)) return undefined;
  const thinnest = Math.ceil(grammage / FIBRE_DENSITY);
  const thickest = Math.floor(grammage / LEAST_DENSITY);
  const why = caliper < thinnest ? 'denser than cellulose itself (1.5 g/cm³)' : 'lighter than any paper';
  return {
    field: 'caliper',
    code: 'contradiction',
    message: `At ${grammage} g/m² this thickness would make the sheet ${why}. Give ${thinnest} to ${thickest} µm (0.1 mm is 100 µm), or leave it empty.`,
    limits: { low: thinnest, high: thickest, unit: 'µm' },
  };
}
