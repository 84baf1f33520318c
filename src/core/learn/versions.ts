/**
 * The versions of a bench that swatches are asked of: a set of constants, of the ensemble or of the loose ones, and where
 * the board, the glue, the brush and the room's other numbers lie. What a swatch would come to in each of them.
 */
import type { InTurns } from '../base/turns';
import { around } from '../base/quantity';
import { lowDiscrepancyPoints } from '../base/random';
import { DIMENSIONS, drawsOf, PAPER_DIMENSIONS, type Draws } from '../choose/draws';
import type { Job } from '../choose/job';
import { benchesOf, dryPointsOf, liquidsOf, type Bringing } from '../choose/sampling';
import type { Liquid } from '../adhesive/liquid';
import type { Bench } from '../joint/bench';
import type { BondConstants } from '../joint/constants';
import { ENSEMBLE, SETS } from '../joint/ensemble';
import { dryMargins, easeOf, wetMargins, type Ease } from '../joint/margins';
import { bearing } from '../joint/spread';
import { workingSeconds } from '../joint/way';
import { coated, laidMargins, type Coated, type LaidAsks, type LaidMargins } from './laid';
import { poreVolume } from '../paper/paper';
import { sheetOf } from '../paper/sheet';
import type { Catalogue, WetAdhesive } from '../records/records';
import type { Condition, Modelled } from './condition';
import { LOOSE_SETS } from './loose-sets';

/** Versions of a bench that are weighed: each set of the ensemble with several draws of the bench. */
export const POOL = SETS * 8;
/** Draws of a sheet, over which each version is averaged. */
export const SHEETS = 8;

/** The versions that are weighed: the even draws of an answer, more of them. */
export const pool = (): Draws => drawsOf(POOL);

/**
 * Rounds of the sets in which no version departs: half of them, so that before anything is seen it is as likely that
 * the answers' own constants hold as that they do not. A judgement of ours: with one paper left out the loose sets alone
 * foretell better, but that rests on six papers.
 */
const PLAIN_ROUNDS = POOL / SETS / 2;
const NONE = -1;

/** Which loose set a version departs to: two for each set of the ensemble, by turns; `NONE` in the plain rounds. */
export function departureAt(version: number): number {
  const round = Math.floor(version / SETS) - PLAIN_ROUNDS;
  return round < 0 ? NONE : ((version % SETS) * (LOOSE_SETS.length / SETS) + round) % LOOSE_SETS.length;
}

let departedPool: readonly BondConstants[] | undefined;
/** The constants of each version as it departs. */
export const departedConstants = (): readonly BondConstants[] =>
  (departedPool ??= pool().constants.map((constants, version) => LOOSE_SETS[departureAt(version)] ?? constants));

/** Where the sheet lies in its ranges: the same few points for every sheet. */
export const SHEET_DRAWS: Draws = {
  count: SHEETS,
  points: widened(lowDiscrepancyPoints(SHEETS, PAPER_DIMENSIONS)),
  constants: drawsOf(SHEETS).constants,
};

function widened(points: Float64Array): Float64Array {
  const wide = new Float64Array(SHEETS * DIMENSIONS).fill(0.5);
  for (let i = 0; i < SHEETS; i += 1)
    wide.set(points.subarray(i * PAPER_DIMENSIONS, (i + 1) * PAPER_DIMENSIONS), i * DIMENSIONS);
  return wide;
}

type Made = Pick<Condition, 'job' | 'adhesive' | 'method'> & Partial<Pick<Condition, 'seen'>>;
export type ByVersion = (version: number, sheet: number) => LaidMargins;
export type MarginsOf = (made: Made, catalogue: Catalogue) => InTurns<ByVersion>;

/**
 * The margins of a swatch made so, by version and draw of the sheet. They are all written into one object, to be read
 * before the next are asked: a new one each time would leave a phone a hundred thousand to clear away.
 */
export function* marginsInTurns(
  { job, adhesive: id, method = {}, seen }: Made,
  catalogue: Catalogue,
): InTurns<ByVersion> {
  const adhesive = catalogue.adhesives.get(id)!;
  const constants = departedConstants();
  const sheets = benchesOf(job, sheetOf(job, catalogue), catalogue, SHEET_DRAWS);
  const { closed, plastic, seconds } = sheets[0]!;
  yield;
  const { benches, bringing, glues, bearings } = yield* benchesFor(job, method, catalogue);
  // One bench is kept for all sheets of a version: copying it is dearer than the sums.
  let [last, here]: [number, { -readonly [K in keyof Bench]: Bench[K] }] = [NONE, { ...benches[0]! }];
  const on = (version: number, sheet: number): Bench => {
    if (version !== last) [last, here] = [version, { ...benches[version]!, closed, plastic, seconds }];
    here.paper = sheets[sheet]!.paper;
    return here;
  };
  if (adhesive.form === 'dry') {
    const points = dryPointsOf(adhesive, pool());
    return (version, sheet) => dryMargins(adhesive, points[version]!, on(version, sheet), constants[version]!);
  }
  const { liquids, eases } = glues.get(id) ?? (yield* brewed(adhesive, job.celsius, catalogue));
  glues.set(id, { liquids, eases });
  if (bringing.way.face !== 'sheet')
    return (version, sheet) =>
      wetMargins(adhesive, liquids[version]!, on(version, sheet), constants[version]!, eases[version]!);
  const grammages = sheets.map(({ paper }) => paper.grammage);
  const key = grammages.join(' ');
  const bears = bearings.get(key) ?? bearingsOf(grammages);
  bearings.set(key, bears);
  const pores = sheets.map(({ paper }) => poreVolume(paper.grammage, paper.grammage / paper.density));
  const asks = asked(seen);
  let [coatOf, coat]: [number, Coated | undefined] = [NONE, undefined];
  const into = { spread: NaN, lift: NaN, sheetToFace: NaN, flat: NaN, bond: NaN };
  return (version, sheet) => {
    const bench = on(version, sheet);
    if (coatOf !== version || !coat)
      [coatOf, coat] = [version, coated(adhesive, liquids[version]!, bench, constants[version]!, eases[version]!)];
    return laidMargins(coat, bench, pores[sheet]!, bears[setOf(version) * SHEETS + sheet]!, asks, into);
  };
}

/** Which margins these swatches speak of; all of them where nothing is said. */
function asked(seen: Condition['seen'] | undefined): LaidAsks {
  const some = (of: readonly Modelled[]) => seen?.some((one) => of.some((kind) => one[kind] !== undefined)) ?? true;
  return { spread: some(['spread']), lift: some(['lift', 'board']), dry: some(['cockle', 'stuck']) };
}

/** Which set of constants a version has, of those of the ensemble and after them the loose ones. */
function setOf(version: number): number {
  const departs = departureAt(version);
  return departs === NONE ? version % SETS : SETS + departs;
}

/** The drag that each draw of a sheet bears under each set of constants, at set·SHEETS + sheet. */
function bearingsOf(grammages: readonly number[]): Float64Array {
  const all = [...ENSEMBLE, ...LOOSE_SETS];
  const bears = new Float64Array(all.length * SHEETS);
  all.forEach((constants, set) => {
    for (let sheet = 0; sheet < SHEETS; sheet += 1) bears[set * SHEETS + sheet] = bearing(grammages[sheet]!, constants);
  });
  return bears;
}

/** A glue as it is in each version, and how easily it runs there. */
interface Brewed {
  readonly liquids: readonly Liquid[];
  readonly eases: readonly Ease[];
}

/** The bench of each version, but for the sheet and the seconds; kept for the next condition, which mostly has the same. */
interface Benches {
  readonly catalogue: Catalogue;
  readonly job: Job;
  readonly method: NonNullable<Condition['method']>;
  readonly benches: readonly Bench[];
  readonly bringing: Bringing;
  readonly glues: Map<string, Brewed>;
  /** what sheets bear (`bearingsOf`), by their weights */
  readonly bearings: Map<string, Float64Array>;
}
let lastBenches: Benches | undefined;

function* benchesFor(job: Job, method: Benches['method'], catalogue: Catalogue): InTurns<Benches> {
  const known = lastBenches;
  if (
    known?.catalogue === catalogue &&
    madeAlike(known.job, job) &&
    known.method.face === method.face &&
    known.method.coat === method.coat
  )
    return known;
  const bringing = broughtBy(job, method, catalogue);
  const benches = benchesOf(job, sheetOf(job, catalogue), catalogue, pool(), bringing);
  yield;
  return (lastBenches = { catalogue, job, method, benches, bringing, glues: new Map(), bearings: new Map() });
}

/** Whether two jobs differ in nothing but the sheet and the seconds. */
const madeAlike = (one: Job, other: Job): boolean =>
  (Object.keys({ ...one, ...other }) as (keyof Job)[]).every(
    (field) => field === 'paper' || field === 'placeSeconds' || one[field] === other[field],
  );

/** The versions in parts: to make a glue of all of them at once would keep a phone too long. */
const PARTS = 8;
let poolParts: readonly Draws[] | undefined;
function partsOfPool(): readonly Draws[] {
  const { points, constants } = pool();
  const count = POOL / PARTS;
  return (poolParts ??= Array.from({ length: PARTS }, (_, part) => ({
    count,
    points: points.subarray(part * count * DIMENSIONS, (part + 1) * count * DIMENSIONS),
    constants: constants.slice(part * count, (part + 1) * count),
  })));
}

function* brewed(adhesive: WetAdhesive, celsius: number, catalogue: Catalogue): InTurns<Brewed> {
  const constants = departedConstants();
  const liquids: Liquid[] = [];
  for (const part of partsOfPool()) {
    yield;
    liquids.push(...liquidsOf(adhesive, catalogue, part));
  }
  yield;
  return { liquids, eases: liquids.map((liquid, version) => easeOf(adhesive, liquid, celsius, constants[version]!)) };
}

/** A coat that was weighed once differs from the next of the same hand by so much either way, as a share. Estimate. */
const WEIGHED_COAT = 0.2;

/** How the glue of a swatch was brought. */
function broughtBy(
  { tool: id, widthMm, heightMm }: Condition['job'],
  method: NonNullable<Condition['method']>,
  catalogue: Catalogue,
): Bringing {
  const { face = 'sheet', coat } = method;
  const tool = catalogue.techniques.get(id)!;
  const way = { face, minutes: 0, workSeconds: workingSeconds(widthMm, heightMm) };
  if (coat === undefined) return { tool, way };
  return { tool: { ...tool, coat: around(coat, WEIGHED_COAT, 'measured') }, way };
}
