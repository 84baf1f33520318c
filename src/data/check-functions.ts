/** The functions of core that check files may call, by the names they are exported under. */
import { cover, dryFilmMicrometres, squareMetresPerLitre, wetFilmMicrometres } from '../core/adhesive/coverage';
import { curl } from '../core/joint/curl';
import { diluteTo, solutionFromPowder, stretch } from '../core/adhesive/dilution';
import { equilibriumMoisture } from '../core/joint/equilibrium-moisture';
import { bowHeight, stripCurvature, twoPlyCurvature, type MovingPly } from '../core/joint/laminate';

import { findGrain, type GrainTest, type GrainWay, type GrainSeen } from '../core/paper/grain-tests';
import { mix } from '../core/adhesive/mixture';
import { evaporationRate, humidityRatio, saturationPressure } from '../core/joint/moisture';
import {
  apparentDensity,
  basisWeightFromGrammage,
  grammageFromBasisWeight,
  grammageFromThousand,
  grammageFromWeighing,
  poreVolume,
  porosity,
  thousandFromGrammage,
} from '../core/paper/paper';
import { cookPaste } from '../core/adhesive/paste';
import { stripsOf } from '../core/make/accordion';
import { usualMeasures, type MeasureId } from '../core/make/measures';
import {
  caseSizes,
  lidInside,
  SLIP_CASE_SLACK,
  slipCaseOutside,
  trayRound,
  withSlack,
  type Space,
} from '../core/base/board-sizes';
import { layOut } from '../core/cut/layout';
import { mostWorth } from '../core/cut/layout-exact';
import { kindsOf, roomOf } from '../core/cut/layout-units';
import { sorptivityFromCobb, sorptivityFromDrop, uptake } from '../core/paper/sorption';
import { boschlooExact } from '../core/stats/boschloo';
import { cochranArmitage } from '../core/stats/cochran-armitage';
import { firthLine } from '../core/stats/firth';
import { fisherExact } from '../core/stats/fisher-exact';
import { mcnemarExact } from '../core/stats/mcnemar-exact';
import { wilsonInterval } from '../core/stats/wilson';
import { holmTarone } from '../core/stats/holm';
import { stratifiedPermutation } from '../core/stats/stratified-permutation';
import { clopperPearsonInterval } from '../core/stats/clopper-pearson';
import { sheetsToHalve } from '../core/paper/weighing-error';
import { celluloseEtherViscosity, dispersionViscosity, shearedViscosity } from '../core/adhesive/viscosity';

/** Timoshenko's curvature made free of size: κ·h/ε, which the published figures are given in. */
const curvatureTimesThickness = (m: number, n: number): number =>
  twoPlyCurvature({ thickness: m, modulus: n }, { thickness: 1, modulus: 1 }, 0.001) * ((m + 1) / 0.001);

/** The same of any number of plies, from κ and the whole thickness; `strain` is the mismatch it is given by. */
const stripTimesThickness = (plies: readonly MovingPly[], strain: number): number =>
  (stripCurvature(plies) * plies.reduce((sum, { thickness }) => sum + thickness, 0)) / strain;

/** Chance that the grain runs this way; tests that are not named were not tried. */
const chanceOfGrain = (
  way: GrainWay,
  seen: Partial<Record<GrainTest, GrainSeen>>,
  kind: 'none' | 'weak' | 'marked',
): number =>
  findGrain({ bend: 'untried', strips: 'untried', damp: 'untried', tear: 'untried', ...seen }, kind).chances[way];

/** How far the free end of a strip of two plies moves, mm, with plies given by the growth of each degree. */
const bimetalEnd = (
  plies: readonly { thickness: number; modulus: number; perDegree: number }[],
  degrees: number,
  length: number,
): number => {
  const moving = plies.map(({ perDegree, ...ply }) => ({ ...ply, strain: perDegree * degrees }));
  return (Math.abs(stripCurvature(moving)) * length ** 2) / 2;
};

/** Stress, Pa, in a solution of a cellulose ether that is sheared at so many 1/s. */
const etherStress = (ether: Parameters<typeof celluloseEtherViscosity>[0], perSecond: number): number =>
  (shearedViscosity(celluloseEtherViscosity(ether), perSecond) / 1000) * perSecond;

/** Viscosity at the faster rate of shear as a share of that at the slower, both 1/s. */
const etherThinning = (ether: Parameters<typeof celluloseEtherViscosity>[0], slow: number, fast: number): number =>
  (etherStress(ether, fast) * slow) / (etherStress(ether, slow) * fast);

/** Power of the shear rate with which the stress grows: the slope of a straight line through both logs, at these 1/s. */
const etherPower = (ether: Parameters<typeof celluloseEtherViscosity>[0], rates: readonly number[]): number => {
  const logs = rates.map((rate) => [Math.log(rate), Math.log(etherStress(ether, rate))] as const);
  const mean = (of: 0 | 1) => logs.reduce((sum, point) => sum + point[of], 0) / logs.length;
  const [x, y] = [mean(0), mean(1)];
  return (
    logs.reduce((sum, [a, b]) => sum + (a - x) * (b - y), 0) / logs.reduce((sum, [a]) => sum + (a - x) * (a - x), 0)
  );
};

/** Water that leaves so many square metres, kg/s. */
const evaporationFrom = (celsius: number, relativeHumidity: number, airSpeed: number, squareMetres: number): number =>
  (evaporationRate(celsius, relativeHumidity, airSpeed) * squareMetres) / 1000;

/** Square feet to the US gallon, for a wet film of so many thousandths of an inch. */
const squareFeetPerGallon = (mils: number): number => (squareMetresPerLitre(mils * 25.4) * 3.785411784) / 0.09290304;

/** m² to the litre, for a dry film of so many µm left by a liquid with this share of solids by volume. */
const coverageAtDry = (micrometres: number, volumeSolids: number): number =>
  squareMetresPerLitre(micrometres / volumeSolids);

/** Per cent of starch by mass before cooking, from the amounts that a recipe prints. */
const pasteStrength = (starchGrams: number, waterMillilitres: number): number =>
  cookPaste({ waterParts: waterMillilitres / starchGrams, by: 'mass', starchGrams, boiledOff: 0 }).percentRaw;

/** How many times as much is taken up after `times` the seconds. */
const uptakeGrowth = (sorptivity: number, seconds: number, times: number): number =>
  uptake({ sorptivity, seconds: seconds * times }) / uptake({ sorptivity, seconds });

/** What is usual for a block of 148 × 12 mm with boards of this thickness, mm. */
const usualMeasure = (project: string, id: MeasureId, board: number): number =>
  usualMeasures({ project, width: 148, thick: 12, board, own: {} })[id];

const slipCaseWith = (book: Space, slack: Space, board: number) => {
  const inside = withSlack(book, slack);
  return { inside, side: slipCaseOutside(inside, board) };
};

const slipCaseAround = (book: Space, board: number) => slipCaseWith(book, SLIP_CASE_SLACK, board);

/** How much larger a board is than the leaves, in inches as all the lengths here, with a joint as wide as the square. */
const boardBeyondBook = (width: number, height: number, square: number) => {
  const { board } = caseSizes({ width, height }, { square, joint: square, spine: 1 });
  return { width: board.width - width, height: board.height - height };
};

/** How far apart the two boards lie when the case is open, mm. */
const boardsApart = (book: { width: number; height: number }, rest: Parameters<typeof caseSizes>[1]): number => {
  const { open, board } = caseSizes(book, rest);
  return open - 2 * board.width;
};

const lidOver = (inside: Space, board: number): Space => lidInside(trayRound(inside, board), inside.thickness / 3);

/** The most worth that straight-through cuts get out of one sheet; rows are width, height, count and worth of one, none turned. */
function mostWorthOfSheet(widthMm: number, heightMm: number, rows: readonly (readonly number[])[]): number | undefined {
  const stock = { widthMm, heightMm, grain: widthMm > heightMm ? 'long' : 'short' } as const;
  const pieces = rows.map(([w = 0, h = 0, count = 0]) => ({
    name: '',
    widthMm: w,
    heightMm: h,
    count,
    grain: 'width' as const,
  }));
  const worth = rows.map(([, , , one = 0]) => one);
  return mostWorth(kindsOf(pieces, stock, 1), worth, roomOf(stock), { left: 1e8 });
}

/** The smallest of these p with all of them reckoned in. */
const smallestAmong = (ps: readonly number[]): number => Math.min(...holmTarone(ps.map((p) => ({ p, least: 0 }))));

export const CHECK_FUNCTIONS: Readonly<Record<string, (...args: never[]) => unknown>> = {
  apparentDensity,
  basisWeightFromGrammage,
  bimetalEnd,
  boardBeyondBook,
  boardsApart,
  boschlooExact,
  bowHeight,
  celluloseEtherViscosity,
  chanceOfGrain,
  clopperPearsonInterval,
  cochranArmitage,
  coverageAtDry,
  cover,
  curl,
  curvatureTimesThickness,
  diluteTo,
  dispersionViscosity,
  dryFilmMicrometres,
  equilibriumMoisture,
  etherPower,
  etherStress,
  etherThinning,
  evaporationFrom,
  firthLine,
  fisherExact,
  mcnemarExact,
  wilsonInterval,
  grammageFromBasisWeight,
  grammageFromThousand,
  grammageFromWeighing,
  humidityRatio,
  lidOver,
  layOut,
  mix,
  mostWorthOfSheet,
  poreVolume,
  porosity,
  saturationPressure,
  pasteStrength,
  slipCaseAround,
  slipCaseWith,
  squareFeetPerGallon,
  smallestAmong,
  solutionFromPowder,
  sorptivityFromCobb,
  sorptivityFromDrop,
  sheetsToHalve,
  squareMetresPerLitre,
  stratifiedPermutation,
  stretch,
  stripCurvature,
  stripTimesThickness,

  thousandFromGrammage,
  stripsOf,
  twoPlyCurvature,
  uptake,
  uptakeGrowth,
  usualMeasure,
  wetFilmMicrometres,
};
