/** Why a covered board bows: plies that are bonded and then grow or shrink by different amounts. */
import { mustBePositive, mustBeWithin } from '../base/result';

export interface Ply {
  /** mm */
  readonly thickness: number;
  /** Young's modulus, any one unit for all plies */
  readonly modulus: number;
}

/** A ply, and the share by which it would grow if it were free; negative when it would shrink. */
export interface MovingPly extends Ply {
  readonly strain: number;
}

/**
 * Curvature, 1/mm, of a strip of any number of bonded plies, the first at one face and the last at the
 * other; positive bows away from the first ply. Elementary strip theory: the strain over the depth is
 * e + κ·z, and forces and moments leave nothing over, so about the stiffness-weighted middle
 * κ = Σ E t ε (z̄ − z₀) / Σ E t [(z̄ − z₀)² + t²/12]. Two plies give Timoshenko's closed form (below).
 * Throws RangeError on no plies, a thickness or modulus that is not above 0, or a strain outside ±1.
 */
export function stripCurvature(plies: readonly MovingPly[]): number {
  mustBePositive('plies', plies.length);
  let [depth, stretching, first] = [0, 0, 0];
  for (const { thickness, modulus, strain } of plies) {
    mustBePositive('thickness', thickness);
    mustBePositive('modulus', modulus);
    mustBeWithin('strain', strain, -1, 1);
    stretching += modulus * thickness;
    first += modulus * thickness * (depth + thickness / 2);
    depth += thickness;
  }
  const neutral = first / stretching;
  let [top, moment, bending] = [0, 0, 0];
  for (const { thickness, modulus, strain } of plies) {
    const arm = top + thickness / 2 - neutral;
    moment -= modulus * thickness * strain * arm;
    bending += modulus * thickness * (arm * arm + (thickness * thickness) / 12);
    top += thickness;
  }
  return moment / bending;
}

/**
 * Curvature, 1/mm, of two bonded plies when `first` would grow by the strain `mismatch` more than
 * `second`; positive bows away from the first ply. Timoshenko's closed form, which the sum above gives for
 * two plies: κ = 6ε(1+m)² / {h[3(1+m)² + (1+mn)(m² + 1/(mn))]}, m = t₁/t₂, n = E₁/E₂,
 * h = t₁ + t₂. J. Opt. Soc. Am. 11 (1925) 233.
 */
export function twoPlyCurvature(first: Ply, second: Ply, mismatch: number): number {
  mustBePositive('thickness', Math.min(first.thickness, second.thickness));
  mustBePositive('modulus', Math.min(first.modulus, second.modulus));
  mustBeWithin('mismatch', mismatch, -1, 1);
  const m = first.thickness / second.thickness;
  const n = first.modulus / second.modulus;
  const h = first.thickness + second.thickness;
  return (6 * mismatch * (1 + m) ** 2) / (h * (3 * (1 + m) ** 2 + (1 + m * n) * (m * m + 1 / (m * n))));
}

/** Height of the bow, mm, of a strip `spanMm` long with this curvature (a shallow arc: κL²/8). */
export function bowHeight(curvature: number, spanMm: number): number {
  mustBeWithin('spanMm', spanMm, 0, 1e5);
  return (Math.abs(curvature) * spanMm * spanMm) / 8;
}
