/**
 * One adhesive on one possible version of the job, by one method: how comfortably each thing holds.
 * A margin is what is there ÷ what is needed; 1 is the edge. Spread and lift come from the calibrated
 * model; the others are plainer estimates of ours, and say so on the page.
 */
import type { Bench, Margins } from './bench';
import { mobility, pullOf, setting, wetStrength } from './bond-line';
import { coolingSeconds, thickenedBy } from '../adhesive/cooling';
import { flatMargin, flatnessOf, type Flatness } from './flatness';
import { SHOWING, type Liquid } from '../adhesive/liquid';
import {
  ALCOHOL,
  BOND_CONSTANTS,
  GRAB_LEVEL,
  LONGEST_SLIP_SECONDS,
  SHEET_BREATHES,
  type BondConstants,
} from './constants';
import { poreVolume } from '../paper/paper';
import { clamp } from '../base/quantity';
import type { DryAdhesive, WetAdhesive, YesNo } from '../records/records';
import { draggingViscosity } from '../adhesive/flow';
import { spreadMarginUnderBrush, WORKED_SECONDS } from './spread';
import { strikeMargin } from './strike-through';
import { TASK_TRAITS } from '../records/task';
import { drainedAt, intoPaper, timeToLose, type Flow } from './water-loss';

/** Setting progress at which an open coat no longer wets what is laid on it: later than it lets a laid sheet slide. Estimate. */
export const OPEN_LEVEL = 0.85;
/** What bears the tool where the sheet does not: the board, or glass under the sheet. Stands for "many times". */
const BORNE_BELOW = 20;
/** Seconds after laying at which turned edges must stay down: about when the last has been rubbed. Common practice, no source. */
export const GRAB_SECONDS = 60;
/** Pull that keeps the turned edge of a 100 g/m² sheet down, N/m; it grows as the sheet's stiffness, nearly. Estimate. */
export const EDGE_SPRINGS = 5.5;

/** What of a liquid's ease of running does not change from bench to bench, worked out once where many are asked. */
export interface Ease {
  /** how easily water drains from it, and how easily the whole of it runs, 0–1 (see `mobility`) */
  readonly follows: number;
  readonly runs: number;
  /** how many times thicker it becomes as it cools in this room */
  readonly thickened: number;
}

/** How easily a liquid follows water into pores in this room, thickened where it is about to gel. */
export function easeOf(
  adhesive: WetAdhesive,
  liquid: Liquid,
  celsius: number,
  constants: BondConstants = BOND_CONSTANTS,
): Ease {
  const thickened = thickenedBy(adhesive.usedAt, liquid.gelsAt, celsius);
  return {
    follows: mobility(liquid.drains * thickened, constants),
    runs: mobility(liquid.viscosity, constants),
    thickened,
  };
}

/** What of a bench is the same for every adhesive, worked out once where many are tried on it. */
export interface Given {
  /** water that the sheet can hold, and that soaks it, g/m² */
  readonly capacity: number;
  readonly soaksIn: number;
  /** N/m that the face below bears */
  readonly faceBears: number;
  /** drag that the sheet bears under the tool, Pa·s under the brush */
  readonly bearsDrag: number;
  /** N/m that keeps an edge down */
  readonly springs: number;
  /** seconds for which it has to slide */
  readonly slides: number;
  /** what the work asks of the joint, whatever the film */
  readonly load: number;
  readonly flatness: Flatness;
}

/** What is given before any glue is chosen, under these constants. */
export const givenOf = (bench: Bench, constants: BondConstants = BOND_CONSTANTS): Given => ({
  capacity: poreVolume(bench.paper.grammage, bench.paper.grammage / bench.paper.density),
  soaksIn: bench.paper.grammage * constants.soakedWater,
  faceBears: constants.boardFace * bench.substrate.faceStrength,
  bearsDrag: spreadMarginUnderBrush(bench.paper.grammage, 1000, bench.tool.drag, constants),
  springs: edgeSprings(bench),
  slides: slidingSeconds(bench),
  load: strengthAsked(bench),
  flatness: flatnessOf(bench),
});

/**
 * The margins of a wet adhesive on one possible bench; see `Margins`. Throws RangeError on values no joint can have.
 */
export function wetMargins(
  adhesive: WetAdhesive,
  liquid: Liquid,
  bench: Bench,
  constants: BondConstants = BOND_CONSTANTS,
  ease: Ease = easeOf(adhesive, liquid, bench.celsius, constants),
  given: Given = givenOf(bench, constants),
): Margins {
  const { paper, substrate, tool, way, seconds } = bench;
  const { capacity, soaksIn, faceBears } = given;
  const alcohol = liquid.carrier === 'alcohol';
  const swelling = alcohol ? ALCOHOL.swelling : 1;
  const evaporation = alcohol ? bench.alcoholEvaporation : bench.evaporation;
  const gelsIn = coolingSeconds(adhesive.usedAt, liquid.gelsAt, bench.celsius);
  const follows = ease.follows * (alcohol ? ALCOHOL.suction : 1);
  const water = tool.coat * (1 - liquid.solids);
  const drainable = constants.drainableShare * water;
  const toLose = tool.coat * Math.max(0, 1 - liquid.solids / liquid.grabSolids);
  const intoSheet = paper.sorptivity * follows;
  const intoGround = substrate.sorptivity * follows;
  const through = paper.sorptivity > 0 && !bench.closed ? evaporation * SHEET_BREATHES : 0;
  const both: Flow = { paper: intoSheet, substrate: intoGround, air: through, capacity, drainable };
  const drained = drainedAt(both);

  // Open to the air on one side, and only the glued face drinks. What was glued first has waited longest; the coat as a
  // whole, half as long.
  const onGround = way.face === 'ground';
  const open: Flow = {
    paper: onGround ? 0 : intoSheet,
    substrate: onGround ? intoGround : 0,
    air: evaporation,
    capacity,
    drainable,
  };
  const openDrained = drainedAt(open);
  const waited = way.workSeconds / 2 + way.minutes * 60;
  const openSeconds = Math.min(gelsIn, LONGEST_SLIP_SECONDS, timeToLose(open, toLose * OPEN_LEVEL, openDrained));
  const openRoot = Math.min(Math.sqrt(waited), openDrained);
  const soakedBefore = intoPaper(open, openRoot);
  const lostBefore = soakedBefore + open.substrate * openRoot + evaporation * waited;
  const slipSeconds = Math.max(
    SHORTEST_SLIP,
    Math.min(gelsIn - waited, LONGEST_SLIP_SECONDS, timeToLose(both, toLose * GRAB_LEVEL - lostBefore, drained)),
  );

  // Lifted when it has been placed: the calibrated model (bond-line.ts).
  const liftRoot = Math.min(Math.sqrt(seconds), drained);
  const soaked = intoPaper(both, liftRoot);
  const lifted = setting(soaked + intoGround * liftRoot + through * seconds, toLose, seconds, gelsIn);
  const touching = paper.contact + (1 - paper.contact) * follows;
  const sheetBears = wetStrength(paper, soaked * swelling, constants);
  const lift = Math.min(sheetBears, faceBears) / pullOf(touching, liquid.solids, lifted, constants);

  const grabRoot = Math.min(Math.sqrt(GRAB_SECONDS + waited), drained);
  const grabLost = intoPaper(both, grabRoot) + intoGround * grabRoot + through * GRAB_SECONDS;
  const grabbed = setting(grabLost, toLose, GRAB_SECONDS, gelsIn);
  const holds = hold(adhesive, bench);
  const laidSoaked = intoPaper(both, Math.min(Math.sqrt(Math.min(slipSeconds + waited, SOAKING_SECONDS)), drained));
  const growth = Math.min(1, laidSoaked / soaksIn) - (onGround ? 0 : Math.min(1, soakedBefore / soaksIn));
  return {
    spread: bounded(
      spreading(liquid, bench, follows, evaporation, ease.thickened, constants, given.bearsDrag) *
        Math.min(1, tool.thickest / liquid.viscosity),
    ),
    reach: bounded(openSeconds / (way.workSeconds + way.minutes * 60)),
    place: bounded(slipSeconds / given.slides),
    lift: bounded(lift),
    grab: bounded((pullOf(paper.contact, liquid.solids, grabbed, constants) * holds) / given.springs),
    strike: bounded(
      strikeMargin({
        density: paper.density,
        openWeave: paper.openWeave,
        filled: Math.min(1, laidSoaked / capacity),
        runs: ease.runs,
        coat: tool.coat,
        particleSolids: liquid.particleSolids,
        groundWeave: substrate.openWeave,
      }),
    ),
    bond: bounded(holding(adhesive, liquid, bench) / (given.load * demandsOf(adhesive, bench))),
    flat: bounded(flatMargin(water * swelling, bench, tool.coat * liquid.solids * liquid.pulls, given.flatness)),
    openSeconds,
    slipSeconds,
    gives: lift >= 1 ? 'neither' : sheetBears < faceBears ? 'paper' : 'substrate',
    sheetToFace: bounded(sheetBears / faceBears),
    growsMm: Math.max(0, growth) * paper.wetExpansion * swelling * bench.spanMm,
    shows: liquid.shows,
  };
}

/** Nobody can tell a shorter slip from none, s. */
const SHORTEST_SLIP = 0.5;
/** A sheet that is still wet after this has grown as far as it will, s. Common practice, no source. */
const SOAKING_SECONDS = 600;

/** What bears the tool ÷ what the tool asks: the sheet, or, where it lies on glass, the sheet that is peeled off it. */
export function spreading(
  liquid: Liquid,
  { paper, tool, way }: Bench,
  follows: number,
  evaporation: number,
  thickened: number,
  constants: BondConstants,
  bearsDrag: number,
): number {
  if (way.face === 'ground') return BORNE_BELOW;
  const water = tool.coat * (1 - liquid.solids);
  const limit = constants.drainableShare * water;
  const drag = dragOf(liquid, water, limit, paper.sorptivity * follows, evaporation, thickened);
  const bears = bearsDrag / (drag / 1000);
  if (way.face === 'sheet') return bears;
  const soaked = Math.min(limit, paper.sorptivity * follows * Math.sqrt(way.workSeconds));
  const toLose = tool.coat * Math.max(0, 1 - liquid.solids / liquid.grabSolids);
  const progress = toLose > 0 ? Math.min(1, (soaked + evaporation * way.workSeconds) / toLose) : 1;
  const tack = pullOf(paper.contact, liquid.solids, progress, constants);
  // It is peeled off a corner at a time, and of the coat only what has come through holds it to the glass.
  return Math.min((PEELS_OFF_GLASS * wetStrength(paper, soaked, constants)) / tack, HELD_ON_GLASS * bears);
}

/**
 * Drag of a coat at the end of brushing, mPa·s, of which the sheet has drunk at `thirst` g/m² per √s, as far as the
 * `limit` of what suction can draw from its `water`.
 */
export function dragOf(
  liquid: Liquid,
  water: number,
  limit: number,
  thirst: number,
  evaporation: number,
  thickened: number,
): number {
  const suction = thirst * Math.sqrt(WORKED_SECONDS);
  // Suction slows as it nears what the coat can give.
  const lost = (suction * limit) / (suction + limit) + evaporation * WORKED_SECONDS;
  return draggingViscosity(liquid.flow, Math.min(0.95, lost / water)) * thickened;
}

/** How much more drag a sheet bears while it clings to wet glass. Estimate. */
const HELD_ON_GLASS = 8;
/** How much more readily a pasted sheet leaves wet glass than it is lifted from a board. Estimate. */
const PEELS_OFF_GLASS = 2.5;

/** One draw of a dry adhesive's own numbers. */
export interface DryPoint {
  readonly slip: number;
  readonly pull: number;
  readonly waterLoad: number;
  readonly drag: number;
  readonly strength: number;
}

/** Grammage that bears a drag of 1 in a dry adhesive's record, g/m². */
export const DRY_DRAG_GRAMMAGE = 45;

/** Sheets this thin let half of what lies behind them be seen, g/m². From memory: tissues of 10 to 20 are half opaque. */
const SEEN_THROUGH = 25;

/** The margins of a film or tissue on one possible bench; see `Margins`. */
export function dryMargins(
  adhesive: DryAdhesive,
  point: DryPoint,
  bench: Bench,
  constants: BondConstants = BOND_CONSTANTS,
): Margins {
  const { paper, substrate } = bench;
  const sheetBears = wetStrength(paper, point.waterLoad, constants);
  const faceStrength = constants.boardFace * substrate.faceStrength;
  const lift = bounded(Math.min(sheetBears, faceStrength) / (paper.contact * point.pull));
  return {
    spread: bounded(paper.grammage / (DRY_DRAG_GRAMMAGE * Math.max(point.drag, 0.001))),
    reach: HIGHEST,
    place: bounded(rolledDown(point.slip / slidingSeconds(bench), bench.squareMetres)),
    lift,
    grab: HIGHEST,
    // what mends is a tissue itself; anything else lies behind the sheet, and is seen through a thin one
    strike: bench.task === 'mend' ? HIGHEST : bounded(paper.grammage / SEEN_THROUGH),
    bond: bounded((point.strength * hold(adhesive, bench)) / (strengthAsked(bench) * demandsOf(adhesive, bench))),
    flat: bounded(flatMargin(point.waterLoad, bench)),
    openSeconds: LONGEST_SLIP_SECONDS,
    slipSeconds: point.slip,
    gives: lift >= 1 ? 'neither' : sheetBears < faceStrength ? 'paper' : 'substrate',
    sheetToFace: bounded(sheetBears / faceStrength),
    growsMm: 0,
    shows: SHOWING.partly,
  };
}

/** Seconds for which it has to slide. */
const slidingSeconds = ({ seconds, task, wants }: Bench): number =>
  TASK_TRAITS[task].slide * seconds * (wants.slow ? SLOW_DEMAND : 1);
/** Estimate: how many times as long it has to stay workable when that is asked for. */
const SLOW_DEMAND = 4;

/** Pull that keeps an edge down, N/m: a sheet's grows with its stiffness; a board's wall is held, and must only stand. */
function edgeSprings({ paper, task }: Bench): number {
  return task === 'join-boards' ? WALL_STANDS : EDGE_SPRINGS * Math.pow(paper.grammage / 100, 1.25);
}
/** Estimate. */
const WALL_STANDS = 30;

/**
 * A film that grabs at once is rolled down from one edge: easy with a hand's breadth, harder the larger it is. The
 * margin of placing it is at least that of rolling it.
 */
const rolledDown = (margin: number, squareMetres: number): number =>
  Math.hypot(margin, ROLLED_DOWN / (1 + squareMetres / HARD_TO_ROLL));
/** Margin of rolling a small film down, and the m² at which it is half of that. Estimates. */
const ROLLED_DOWN = 0.6;
const HARD_TO_ROLL = 0.2;

/** What is left of a bond whose film could not form in the cold. Estimate. */
export const NO_FILM = 0.3;

/** What the film holds: the dry coat over the least that a joint needs, less where it could not form in the cold. */
export function holding(adhesive: WetAdhesive, { solids, leastDryCoat, filmFormsAbove }: Liquid, bench: Bench): number {
  const cold = bench.celsius < (filmFormsAbove ?? -Infinity);
  return ((bench.tool.coat * solids) / leastDryCoat) * hold(adhesive, bench) * (cold ? NO_FILM : 1);
}

/** How well it holds here: on the worse of the two faces. */
function hold(adhesive: WetAdhesive | DryAdhesive, { face, plastic }: Bench): number {
  const below = adhesive.hold[face === 'non-porous' ? 'nonPorous' : face];
  // A brittle film lets go of plastic as soon as it bends.
  if (!plastic) return below;
  const onPlastic = adhesive.form === 'wet' ? LEAST_STICKY : 1;
  return Math.min(below, adhesive.hold.nonPorous * onPlastic * ON_BENDING_PLASTIC[adhesive.flexes]);
}

/** What water-borne glues hold on polyethylene or polyester, of what they hold on glass: pasted tissue is laid out on such a film because it lifts off again. Estimate. */
const LEAST_STICKY = 0.5;
const ON_BENDING_PLASTIC: Readonly<Record<YesNo, number>> = { yes: 1, partly: 0.7, no: 0.45 };

/** Estimate: how much more is asked of a joint that must bend, get damp, or be strong. */
export const FLEX_DEMAND: Readonly<Record<YesNo, number>> = { yes: 1, partly: 1.3, no: 2 };
export const DAMP_DEMAND: Readonly<Record<YesNo, number>> = { yes: 1, partly: 1.5, no: 2.5 };
export const STRONG_DEMAND = 1.6;

/** What is asked of the joint, as a multiple of a 100 g/m² sheet on board: stiff sheets spring back harder. Estimate. */
export function strengthAsked({ paper, substrate, wants, task, face }: Bench): number {
  const { load, springs } = TASK_TRAITS[task];
  const springsBack = clamp(Math.pow(paper.grammage / 100, springs / 2), 0.7, 2);
  // A mend bears what the thing it mends bears: the joint of a leather book far more than a leaf.
  const mended = task === 'mend' && face === 'leather' ? LEATHER_MEND : 1;
  // A weave is touched only where its threads stand up, and gives and stretches as it is handled.
  const woven = 1 + WOVEN * substrate.openWeave;
  // What is strong by its nature, as the wall of a box, is asked for little more when somebody says so.
  const strong = wants.strong ? 1 + (STRONG_DEMAND - 1) / Math.max(1, load * load) : 1;
  return mended * woven * load * springsBack * strong;
}

/** How many times as much is asked of this film, for what it does when it bends or gets damp. */
export const demandsOf = (adhesive: WetAdhesive | DryAdhesive, { wants }: Bench): number =>
  (wants.flexes ? FLEX_DEMAND[adhesive.flexes] : 1) * (wants.damp ? DAMP_DEMAND[adhesive.bearsDamp] : 1);

/** Estimate. */
const LEATHER_MEND = 2.5;
/** How much more a weave asks, by the share of its face that is holes. Estimate. */
const WOVEN = 1;

const LOWEST = 0.01;
const HIGHEST = 100;

/** Margins past a hundredfold either way say nothing more. */
export const bounded = (margin: number): number => clamp(margin, LOWEST, HIGHEST);
