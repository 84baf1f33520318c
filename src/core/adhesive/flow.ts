/** How a liquid flows under the brush as it loses water: particles in a liquid that thins, or in a paste. */
import {
  BRUSH_SHEAR,
  dispersionViscosity,
  pasteViscosity,
  RANDOM_PACKING,
  shearedViscosity,
  solutionViscosity,
} from './viscosity';

/** Per gram of the liquid: what decides how it flows as it loses water. */
export interface Flowing {
  /** cm³ of particles, and cm³ of all that is not particle */
  readonly particles: number;
  readonly between: number;
  /** thickening of the liquid between the particles: Σ α·C */
  readonly strength: number;
  /** share of that thickening which follows a power law, 0–1, and its index */
  readonly pasteShare: number;
  readonly flowIndex: number;
}

/** The liquid between the particles under the brush: by the Cross law, as a paste, or between the two. */
function thinned(atRest: number, { pasteShare, flowIndex }: Flowing): number {
  if (pasteShare <= 0) return shearedViscosity(atRest, BRUSH_SHEAR);
  const paste = pasteViscosity(atRest, BRUSH_SHEAR, flowIndex);
  if (pasteShare >= 1) return paste;
  const liquid = shearedViscosity(atRest, BRUSH_SHEAR);
  return liquid * Math.pow(paste / liquid, pasteShare);
}

/** Nearest that a coat comes to packing under a brush: beyond it, it would be paste and not liquid. */
const NEAREST_PACKING = 0.98;

/**
 * Viscosity of a coat under the brush, mPa·s, once it has lost this share of all that is not particle (0 to below 1):
 * Krieger–Dougherty for the particles, in a liquid that thins by the Cross law, or as a paste, or between the two.
 */
export function draggingViscosity(flow: Flowing, lostShare: number): number {
  const left = flow.between * (1 - lostShare);
  const atRest = solutionViscosity(Math.min(flow.strength / (1 - lostShare), 15));
  const liquid = thinned(atRest, flow);
  if (flow.particles <= 0) return liquid;
  const packed = flow.particles / (flow.particles + left);
  return dispersionViscosity({
    volumeFraction: Math.min(packed, RANDOM_PACKING * NEAREST_PACKING),
    continuousMilliPascalSeconds: liquid,
  });
}
