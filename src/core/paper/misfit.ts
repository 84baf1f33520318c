/** A thickness and a weight that no sheet has together. */
import type { InputError } from '../base/result';
import { densityIsPossible, FIBRE_DENSITY, LEAST_DENSITY } from './paper';

/** A caliper that makes the sheet denser than cellulose, or lighter than any felt, is a slip of unit or of a digit. */
export function caliperProblem(grammage: number, caliper: number): InputError | undefined {
  if (densityIsPossible(grammage, caliper)) return undefined;
  const thinnest = Math.ceil(grammage / FIBRE_DENSITY);
  const thickest = Math.floor(grammage / LEAST_DENSITY);
  const why = caliper < thinnest ? 'denser than cellulose itself (1.5 g/cm³)' : 'lighter than any paper';
  return {
    field: 'caliper',
    code: 'contradiction',
    message: `At ${grammage} g/m² this thickness would make the sheet ${why}. Give ${thinnest} to ${thickest} µm (0.1 mm is 100 µm), or leave it blank.`,
    limits: { low: thinnest, high: thickest, unit: 'µm' },
  };
}
