/** What goes into the pot and what comes out: the mass balance of a mix. */
import { mustBePositive, mustBeWithin } from '../base/result';

/** One part: measured by mass (`grams`) or by volume (`millilitres`), never both. */
export type Part = {
  /** share of its mass that stays when dry, 0–1 */
  readonly solids: number;
  /** g/ml */
  readonly density: number;
} & (
  | { readonly grams: number; readonly millilitres?: never }
  | { readonly millilitres: number; readonly grams?: never }
);

export interface Mix {
  /** g */
  readonly mass: number;
  /** ml; volumes are taken to add up, which is right to about 1 % for these liquids */
  readonly volume: number;
  /** share of the mass that stays when dry, 0–1 */
  readonly solidsFraction: number;
  /** g of solids */
  readonly solids: number;
  /** g that leaves on drying (water, or alcohol where that is the liquid) */
  readonly water: number;
  /** g/ml of the whole */
  readonly density: number;
}

/** Grams of a part, however it was measured. Throws RangeError on a part of no amount, density or meaning. */
export function gramsOf(part: Part): number {
  mustBePositive('density', part.density);
  mustBeWithin('solids', part.solids, 0, 1);
  if ((part.grams === undefined) === (part.millilitres === undefined)) {
    throw new RangeError('a part is measured either in grams or in millilitres');
  }
  const grams = part.grams ?? part.millilitres! * part.density;
  mustBeWithin('amount', grams, 0, 1e9);
  return grams;
}

/** The whole of a mix: what goes in by mass comes out by mass. Throws RangeError when nothing is put in. */
export function mix(parts: readonly Part[]): Mix {
  let mass = 0;
  let volume = 0;
  let solids = 0;
  for (const part of parts) {
    const grams = gramsOf(part);
    mass += grams;
    volume += grams / part.density;
    solids += grams * part.solids;
  }
  mustBePositive('the whole mix', mass);
  return { mass, volume, solids, solidsFraction: solids / mass, water: mass - solids, density: mass / volume };
}

/** °C of watery parts stirred together, by Black's rule of mixtures: all taken to hold heat as water does, and none lost to jar or air. */
export function mixedCelsius(parts: readonly { readonly grams: number; readonly celsius: number }[]): number {
  const grams = parts.reduce((sum, part) => sum + part.grams, 0);
  mustBePositive('grams', grams);
  return parts.reduce((sum, part) => sum + part.grams * part.celsius, 0) / grams;
}
