/** The functions of core that check files may call, by the names they are exported under. */
import { cover, dryFilmMicrometres, squareMetresPerLitre, wetFilmMicrometres } from '../core/coverage';
import { diluteTo, solutionFromPowder, stretch } from '../core/dilution';
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
import { cookPaste } from '../core/paste';
import { layOut } from '../core/sheet-layout';
import { mostWorth } from '../core/sheet-layout-exact';
import { kindsOf, roomOf } from '../core/sheet-layout-units';
import { sorptivityFromCobb, sorptivityFromDrop, uptake } from '../core/sorption';
import { boschlooExact, fisherExact, mcnemarExact } from '../core/trial-compare';
import { firthLine } from '../core/trial-firth';
import { clopperPearsonInterval, wilsonInterval } from '../core/trial-intervals';
import { celluloseEtherViscosity, dispersionViscosity } from '../core/viscosity';

/** Timoshenko's curvature made free of size: κ·h/ε, which the published figures are given in. */
const curvatureTimesThickness = (m: number, n: number): number =>
  twoPlyCurvature({ thickness: m, modulus: n }, { thickness: 1, modulus: 1 }, 0.001) * ((m + 1) / 0.001);

/** How many times as much is taken up after `times` the seconds. */
const uptakeGrowth = (sorptivity: number, seconds: number, times: number): number =>
  uptake({ sorptivity, seconds: seconds * times }) / uptake({ sorptivity, seconds });

/** The most worth that straight-through cuts get out of one sheet; rows are width, height, count and worth of one, none turned. */
function mostWorthOfSheet(widthMm: number, heightMm: number, rows: readonly (readonly number[])[]): number | undefined {
  const stock = { widthMm, heightMm, grain: widthMm > heightMm ? 'long' : 'short' } as const;
  const pieces = rows.map(([w = 0, h = 0, count = 0]) => ({
    ...{ name: '', widthMm: w, heightMm: h, count, grain: 'width' as const },
  }));
  const worth = rows.map(([, , , one = 0]) => one);
  return mostWorth(kindsOf(pieces, stock, 1), worth, roomOf(stock), { left: 1e8 });
}

export const CHECK_FUNCTIONS: Readonly<Record<string, (...args: never[]) => unknown>> = {
  apparentDensity,
  basisWeightFromGrammage,
  boschlooExact,
  bowHeight,
  celluloseEtherViscosity,
  clopperPearsonInterval,
  cookPaste,
  cover,
  curvatureTimesThickness,
  diluteTo,
  dispersionViscosity,
  dryFilmMicrometres,
  evaporationRate,
  firthLine,
  fisherExact,
  grammageFromBasisWeight,
  grammageFromWeighing,
  humidityRatio,
  layOut,
  mcnemarExact,
  mix,
  mostWorthOfSheet,
  poreVolume,
  porosity,
  saturationPressure,
  solutionFromPowder,
  sorptivityFromCobb,
  sorptivityFromDrop,
  squareMetresPerLitre,
  stretch,
  twoPlyCurvature,
  uptake,
  uptakeGrowth,
  wetFilmMicrometres,
  wilsonInterval,
};
