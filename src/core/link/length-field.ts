/** Fields that hold a length, and the one that says in which unit lengths are typed. */
import { asTyped, parseLength, type LengthUnit } from '../base/length-text';

/** In which unit a plan's lengths are typed; they are kept in mm whatever it is. */
export const LENGTH_UNIT = {
  kind: 'one-of',
  key: 'in',
  label: 'Lengths in',
  of: ['mm', 'cm', 'in'],
  what: 'The unit',
  usual: 'mm',
} as const;

interface LengthRow {
  readonly key: string;
  readonly label?: string;
  readonly what: string;
  /** mm */
  readonly low: number;
  readonly high: number;
  readonly usual?: number;
  readonly optional?: true;
  readonly asked?: (plan: never) => boolean;
}

/** A row for a length, typed in the plan's unit, with fractions, and kept in mm. */
export const lengthField = <const R extends LengthRow>(row: R) => ({
  ...row,
  kind: 'length' as const,
  unit: 'mm' as const,
  parse: (typed: string, unit: LengthUnit, field: string) => parseLength(typed, { ...row, unit, field }),
  show: asTyped,
});
