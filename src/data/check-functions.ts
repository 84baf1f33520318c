/** The functions of core that check files may call, by the names they are exported under. */
import { twoPlyCurvature, bowHeight } from '../core/laminate';
import { mix } from '../core/mixture';
import { evaporationRate, humidityRatio, saturationPressure } from '../core/moisture';
import {
  apparentDensity,
  basisWeightFromGrammage,
  grammageFromBasisWeight,
  grammageFromWeighing,
  poreVolume,
  porosity,
} from '../core/paper';
import { sorptivityFromCobb, sorptivityFromDrop, uptake } from '../core/sorption';
import { celluloseEtherViscosity, dispersionViscosity } from '../core/viscosity';

/** Timoshenko's curvature made free of size: κ·h/ε, which the published figures are given in. */
const curvatureTimesThickness = (m: number, n: number): number =>
  twoPlyCurvature({ thickness: m, modulus: n }, { thickness: 1, modulus: 1 }, 0.001) * ((m + 1) / 0.001);

/** How many times as much is taken up after `times` the seconds. */
const uptakeGrowth = (sorptivity: number, seconds: number, times: number): number =>
  uptake({ sorptivity, seconds: seconds * times }) / uptake({ sorptivity, seconds });

export const CHECK_FUNCTIONS: Readonly<Record<string, (...args: never[]) => unknown>> = {
  apparentDensity,
  basisWeightFromGrammage,
  bowHeight,
  celluloseEtherViscosity,
  curvatureTimesThickness,
  dispersionViscosity,
  evaporationRate,
  grammageFromBasisWeight,
  grammageFromWeighing,
  humidityRatio,
  mix,
  poreVolume,
  porosity,
  saturationPressure,
  sorptivityFromCobb,
  sorptivityFromDrop,
  twoPlyCurvature,
  uptake,
  uptakeGrowth,
};
