/**
 * Whether a sheet bears the tool that spreads the glue, or drags and wrinkles under it. What counts is the drag
 * at the end of brushing: by then the coat has given water to the sheet, and a dispersion is near packing, where
 * it stiffens without limit, while a jelly or a paste has hardly changed.
 */
import { BOND_CONSTANTS, type BondConstants } from './constants';
import { mustBePositive } from '../base/result';
import { brushingViscosity } from '../adhesive/viscosity';

export interface Spreading {
  /** g/m² */
  readonly grammage: number;
  /** mPa·s at rest */
  readonly viscosity: number;
  /** drag of the tool as a multiple of a full bristle brush's; 1 when left out */
  readonly toolDrag?: number;
  readonly constants?: BondConstants;
}

/**
 * What the sheet bears ÷ what the tool asks of it: above 1 the glue spreads, below 1 the sheet drags. For a liquid
 * of which only the viscosity at rest is known, and that loses no water while it is brushed. It grows as a power of
 * grammage, and falls with viscosity. Throws RangeError unless everything is above 0.
 */
export function spreadMargin({ grammage, viscosity, toolDrag = 1, constants = BOND_CONSTANTS }: Spreading): number {
  return spreadMarginUnderBrush(grammage, brushingViscosity(viscosity), toolDrag, constants);
}

/** The same from a viscosity under the brush, mPa·s, already worked out. */
export function spreadMarginUnderBrush(
  grammage: number,
  underBrush: number,
  toolDrag: number,
  constants: BondConstants = BOND_CONSTANTS,
): number {
  mustBePositive('grammage', grammage);
  mustBePositive('toolDrag', toolDrag);
  return bearing(grammage, constants) / ((underBrush / 1000) * toolDrag);
}

/** Drag that a sheet bears, Pa·s under a full brush. */
export const bearing = (grammage: number, { brushedGrammage, bearingExponent }: BondConstants): number =>
  Math.pow(grammage / brushedGrammage, bearingExponent);

/** Seconds for which one place is worked with the brush. From memory. */
export const WORKED_SECONDS = 10;
