/** The functions of core that check files may call, by the names they are exported under. */
import { cover, dryFilmMicrometres, squareMetresPerLitre, wetFilmMicrometres } from '../core/coverage';
import { curl } from '../core/curl';
import { diluteTo, solutionFromPowder, stretch } from '../core/dilution';
import { equilibriumMoisture } from '../core/held-moisture';
import { bowHeight, stripCurvature, twoPlyCurvature, type MovingPly } from '../core/laminate';
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
import { cookPaste } from '../core/paste';
import { sorptivityFromCobb, sorptivityFromDrop, uptake } from '../core/sorption';
import { boschlooExact, fisherExact, mcnemarExact } from '../core/trial-compare';
import { firthLine } from '../core/trial-firth';
import { clopperPearsonInterval, wilsonInterval } from '../core/trial-intervals';
import { celluloseEtherViscosity, dispersionViscosity } from '../core/viscosity';

/** Timoshenko's curvature made free of size: κ·h/ε, which the published figures are given in. */
const curvatureTimesThickness = (m: number, n: number): number =>
  twoPlyCurvature({ thickness: m, modulus: n }, { thickness: 1, modulus: 1 }, 0.001) * ((m + 1) / 0.001);

/** The same of any number of plies, from κ and the whole thickness; `strain` is the mismatch it is given by. */
const stripTimesThickness = (plies: readonly MovingPly[], strain: number): number =>
  (stripCurvature(plies) * plies.reduce((sum, { thickness }) => sum + thickness, 0)) / strain;

/** How many times as much is taken up after `times` the seconds. */
const uptakeGrowth = (sorptivity: number, seconds: number, times: number): number =>
  uptake({ sorptivity, seconds: seconds * times }) / uptake({ sorptivity, seconds });

export const CHECK_FUNCTIONS: Readonly<Record<string, (...args: never[]) => unknown>> = {
  apparentDensity,
  basisWeightFromGrammage,
  boschlooExact,
  bowHeight,
  celluloseEtherViscosity,
  clopperPearsonInterval,
  cookPaste,
  cover,
  curl,
  curvatureTimesThickness,
  diluteTo,
  dispersionViscosity,
  dryFilmMicrometres,
  equilibriumMoisture,
  evaporationRate,
  firthLine,
  fisherExact,
  grammageFromBasisWeight,
  grammageFromWeighing,
  humidityRatio,
  mcnemarExact,
  mix,
  poreVolume,
  porosity,
  saturationPressure,
  solutionFromPowder,
  sorptivityFromCobb,
  sorptivityFromDrop,
  squareMetresPerLitre,
  stretch,
  stripCurvature,
  stripTimesThickness,
  twoPlyCurvature,
  uptake,
  uptakeGrowth,
  wetFilmMicrometres,
  wilsonInterval,
};
