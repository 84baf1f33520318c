/** Why a covered board bows: two plies that shrink by different amounts. */
import { mustBePositive, mustBeWithin } from './result';

export interface Ply {
  /** mm */
  readonly thickness: number;
  /** Young's modulus, any one unit for both */
  readonly modulus: number;
}

/**
 * Curvature, 1/mm, of two bonded plies when `first` would grow by the strain `mismatch` more than
 * `second`; positive bows away from the first ply. Timoshenko's closed form:
 * κ = 6ε(1+m)² / {h[3(1+m)² + (1+mn)(m² + 1/(mn))]}, m = t₁/t₂, n = E₁/E₂, h = t₁ + t₂.
 * Published: J. Opt. Soc. Am. 11 (1925) 233.
 */
export function twoPlyCurvature(first: Ply, second: Ply, mismatch: number): number {
  for (const ply of [first, second]) {
    mustBePositive('thickness', ply.thickness);
    mustBePositive('modulus', ply.modulus);
  }
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
