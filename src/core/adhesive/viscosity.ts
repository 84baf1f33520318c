/** How thick the liquid is: cellulose ethers, dispersions, and what is left of it under a brush. */
import { mustBePositive, mustBeWithin } from '../base/result';

const WATER = 1; // mPa·s at 20 °C. From memory: 1.002

/**
 * The thickening power α of a dissolved polymer: η^(1/8) = 1 + α·C, from one known point.
 * C is per cent by mass. For cellulose ethers the grade's label is the 2 % point.
 */
export function thickeningPower(milliPascalSeconds: number, percent: number): number {
  mustBeWithin('milliPascalSeconds', milliPascalSeconds, WATER, 1e9);
  mustBePositive('percent', percent);
  return (Math.pow(milliPascalSeconds, 1 / 8) - 1) / percent;
}

/**
 * Viscosity at rest, mPa·s at 20 °C, of a solution whose thickeners' α·C add up to `strength`.
 * The sum over several thickeners is an estimate of ours; for one cellulose ether it is the eighth-root law, from memory.
 */
export function solutionViscosity(strength: number): number {
  mustBeWithin('strength', strength, 0, 30);
  const squared = (1 + strength) * (1 + strength);
  const fourth = squared * squared;
  return WATER * fourth * fourth;
}

/**
 * Viscosity, mPa·s at 20 °C, of a cellulose ether solution of `percent` by mass, by the eighth-root law.
 * `gradeMilliPascalSeconds` is the label: the viscosity of the 2 % solution, 3–200 000.
 * Valid to about 4 %; the law is computed to 10 % but reads high beyond. Law from memory (high confidence).
 */
export function celluloseEtherViscosity(ether: { gradeMilliPascalSeconds: number; percent: number }): number {
  mustBeWithin('gradeMilliPascalSeconds', ether.gradeMilliPascalSeconds, 1, 1e6);
  mustBeWithin('percent', ether.percent, 0, 10);
  return solutionViscosity(thickeningPower(ether.gradeMilliPascalSeconds, 2) * ether.percent);
}

/** Volume share at which random spheres jam, used when none is given. Published: 0.64 ± 0.02 (Berryman, Phys. Rev. A 27 (1983) 1053). */
export const RANDOM_PACKING = 0.64;

export interface Dispersion {
  /** volume share of the particles, 0 to below `maximumPacking` */
  readonly volumeFraction: number;
  /** 0.64 when left out */
  readonly maximumPacking?: number;
  /** viscosity of the liquid between the particles, mPa·s; 1 (water, giving the relative viscosity) when left out */
  readonly continuousMilliPascalSeconds?: number;
}

/**
 * Viscosity, mPa·s, of particles in a liquid, by Krieger–Dougherty with intrinsic viscosity 2.5:
 * η = η_liquid · (1 − φ/φm)^(−2.5 φm). Published: Entropy 23 (2021) 979, table 6.
 * Throws RangeError at or above maximum packing, where the law has no value.
 */
export function dispersionViscosity(dispersion: Dispersion): number {
  const { volumeFraction, maximumPacking = RANDOM_PACKING, continuousMilliPascalSeconds = WATER } = dispersion;
  mustBeWithin('maximumPacking', maximumPacking, 0.1, 1);
  mustBeWithin('volumeFraction', volumeFraction, 0, maximumPacking * (1 - 1e-9));
  mustBePositive('continuousMilliPascalSeconds', continuousMilliPascalSeconds);
  return continuousMilliPascalSeconds * Math.pow(1 - volumeFraction / maximumPacking, -2.5 * maximumPacking);
}

/** Shear rate of brushing, 1/s. Published (brush-shear-example): 0.5 m/s over a layer of 200 µm. From memory, tables give 1000 to 10 000. */
export const BRUSH_SHEAR = 2500;
/** Stress at which these liquids begin to thin, Pa. From memory. */
export const THINNING_STRESS = 100;
/** How strongly they thin (Cross model exponent). From memory. */
export const THINNING_EXPONENT = 0.6;

/**
 * Viscosity, mPa·s, while the liquid is sheared at `perSecond` (1/s, from 0), from the viscosity at rest: a
 * Cross law with one yielding stress for every liquid. Held to a measured flow curve in content/checks.
 */
export function shearedViscosity(atRest: number, perSecond: number): number {
  mustBePositive('atRest', atRest);
  mustBeWithin('perSecond', perSecond, 0, 1e6);
  const stress = (atRest / 1000) * perSecond;
  return atRest / (1 + Math.pow(stress / THINNING_STRESS, THINNING_EXPONENT));
}

/**
 * Viscosity of a paste, mPa·s, at a shear rate, 1/s, by a power law of index `flowIndex` (1 does not thin) that
 * passes through its viscosity at rest, mPa·s, at 1 1/s.
 */
export function pasteViscosity(atRest: number, shear: number, flowIndex: number): number {
  mustBePositive('atRest', atRest);
  mustBePositive('shear', shear);
  mustBeWithin('flowIndex', flowIndex, 0, 1);
  return atRest * Math.pow(shear, flowIndex - 1);
}

/** Viscosity under the brush, mPa·s. A thicker liquid at rest is always thicker under the brush, but by less. */
export const brushingViscosity = (atRest: number): number => shearedViscosity(atRest, BRUSH_SHEAR);
