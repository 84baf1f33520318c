/** What each number of a job may be, and what to say when it is not. */
import type { InputError } from '../base/result';
import { PAPER_LIMITS, withinLimits, type NumberLimits } from '../paper/limits';

/** What each number may be, in the unit its field is labelled with. */
export const LIMITS = {
  ...PAPER_LIMITS,
  widthMm: { low: 5, high: 3000, unit: 'mm', what: 'The width of the piece' },
  heightMm: { low: 5, high: 3000, unit: 'mm', what: 'The height of the piece' },
  placeSeconds: { low: 1, high: 1800, unit: 's', what: 'The time to place it' },
  celsius: { low: 1, high: 40, unit: '°C', what: 'The room' },
  humidity: { low: 5, high: 95, unit: '%', what: 'The humidity' },
} as const satisfies Record<string, NumberLimits>;
export type NumberField = keyof typeof LIMITS;

/** What is wrong with one number, or undefined. The message says what is allowed. */
export function numberProblem(field: NumberField, value: number): InputError | undefined {
  const found = withinLimits(field, value, LIMITS[field]);
  return found.ok ? undefined : found.errors[0];
}
