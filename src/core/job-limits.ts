/** What each number of a job may be, and what to say when it is not. */
import { densityIsPossible, FIBRE_DENSITY, LEAST_DENSITY } from './paper';
import type { ErrorCode, InputError } from './result';
import { LONGEST_DROP_SECONDS } from './sorption';

/** What each number may be, in the unit its field is labelled with. */
export const LIMITS = {
  grammage: { low: 5, high: 600, unit: 'g/m²', what: 'The weight of the paper' },
  caliper: { low: 10, high: 3000, unit: 'µm', what: 'The thickness' },
  dropSeconds: { low: 0.2, high: LONGEST_DROP_SECONDS, unit: 's', what: 'The drop test' },
  cobb: { low: 1, high: 400, unit: 'g/m²', what: 'The Cobb 60 figure' },
  widthMm: { low: 5, high: 3000, unit: 'mm', what: 'The width of the piece' },
  heightMm: { low: 5, high: 3000, unit: 'mm', what: 'The height of the piece' },
  placeSeconds: { low: 1, high: 1800, unit: 's', what: 'The time to place it' },
  celsius: { low: 1, high: 40, unit: '°C', what: 'The room' },
  humidity: { low: 5, high: 95, unit: '%', what: 'The humidity' },
} as const;
export type NumberField = keyof typeof LIMITS;

/** What is wrong with one number, or undefined. The message says what is allowed. */
export function numberProblem(field: NumberField, value: number): InputError | undefined {
  const { low, high, unit, what } = LIMITS[field];
  const because =
    field === 'dropSeconds' && value > high
      ? ' A slower drop dries as much as it sinks in: leave this empty and choose hard-sized.'
      : '';
  const problem = (code: ErrorCode): InputError => ({
    field,
    code,
    message: `${what} must be a number from ${low} to ${high} ${unit}.${because}`,
    limits: { low, high, unit },
  });
  if (!Number.isFinite(value)) return problem('not-a-number');
  if (value < low) return problem('too-small');
  if (value > high) return problem('too-large');
  return undefined;
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
