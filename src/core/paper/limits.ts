/** What each number of a paper may be, in one place: forms, links, own papers and jobs all hold to these. */
import type { NumberLimits } from '../base/limits';
import type { InputError } from '../base/result';
import { densityIsPossible, FIBRE_DENSITY, LEAST_DENSITY } from './paper';
import { LONGEST_DROP_SECONDS } from './sorption';

export const PAPER_LIMITS = {
  grammage: { low: 5, high: 600, unit: 'g/m²', what: 'The weight of the paper' },
  caliper: { low: 10, high: 3000, unit: 'µm', what: 'The thickness' },
  dropSeconds: {
    low: 0.2,
    high: LONGEST_DROP_SECONDS,
    unit: 's',
    what: 'The drop test',
    ifTooLarge: ' A slower drop says no more than that the face is closed: leave this empty and choose hard-sized.',
  },
  cobb: { low: 1, high: 400, unit: 'g/m²', what: 'The Cobb 60 figure' },
} as const satisfies Record<string, NumberLimits>;

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
