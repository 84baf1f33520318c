/**
 * Benches that the model has never seen, drawn by a seeded lot: other constants than the ensemble's (a loose chain over
 * the whole stated ranges, which need not meet every outcome), an own draw of every number of every glue, board and
 * sheet (the chooser moves all glues together), a lasting difference of each pair of paper and adhesive that no number
 * of the model explains, and noise with long tails in place of the model's own. What a swatch shows there is what the
 * learning is judged on.
 */
import { liquidOf, type Liquid } from '../../src/core/adhesive/liquid';
import { at, type Range } from '../../src/core/base/quantity';
import { lowDiscrepancyPoints, seededUniform } from '../../src/core/base/random';
import { DIMENSIONS, PAPER_DIMENSIONS, type Draws } from '../../src/core/choose/draws';
import { DEFAULT_JOB, type Job } from '../../src/core/choose/job';
import { benchesOf } from '../../src/core/choose/sampling';
import type { Margins } from '../../src/core/joint/bench';
import { BOND_CONSTANTS, SEARCHED, type BondConstants } from '../../src/core/joint/constants';
import { wetMargins } from '../../src/core/joint/margins';
import type { Condition, SwatchSeen } from '../../src/core/learn/condition';
import { sheetOf } from '../../src/core/paper/sheet';
import type { Catalogue, WetAdhesive } from '../../src/core/records/records';
import type { Outcome } from '../../src/core/trial/record';
import { logLikelihood } from '../calibration/chain';
import { FREE, type Outcomes } from '../calibration/fit';

export const PAPERS = [
  'machine-tissue',
  'kozo-tissue',
  'gift-tissue',
  'lokta-light',
  'unryu',
  'kozo-medium',
  'mitsumata',
  'chiyogami',
  'marbled',
  'copy',
  'wove-text',
  'embossed-mulberry',
  'kraft',
  'lokta-heavy',
  'construction',
  'cartridge',
] as const;
export const ADHESIVES = ['pva', 'pva-mc-1-1', 'methylcellulose-2-5', 'wheat-starch-paste-12'] as const;
export const HOLDS = [20, 60, 180] as const;

type Uniform = () => number;
const normal = (uniform: Uniform) => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
/** Student's t with three degrees of freedom. */
const longTailed = (uniform: Uniform) =>
  normal(uniform) / Math.sqrt((normal(uniform) ** 2 + normal(uniform) ** 2 + normal(uniform) ** 2) / 3);

/** Of the logs of the margins: of a pair for good, and of one swatch. */
export const PAIR = 0.25;
const SWATCH = 0.2;
/** "Partly" is said within this distance of the edge, and 6 swatches in 100 are called something else. */
const PARTLY = 0.12;
const CALLED_ELSE = 0.06;

/** Steps of the chain from one set to the next: neighbours nearer than that are much alike. */
const APART = 100;

/**
 * Sets of constants from a chain that is looser than the ensemble's: it counts each outcome `timesSeen` times (once,
 * where nothing is said, as the sets do that learning starts from; less lets them lie farther off) and insists on none.
 */
export function otherConstants(
  outcomes: Outcomes,
  catalogue: Catalogue,
  count: number,
  { timesSeen = 1, apart = APART } = {},
): BondConstants[] {
  const likely = logLikelihood(outcomes, catalogue, 12, { timesSeen, insist: 0 });
  const uniform = seededUniform(1234);
  const found: BondConstants[] = [];
  let here: BondConstants = BOND_CONSTANTS;
  let level = likely(here);
  for (let step = 0; found.length < count; step += 1) {
    const next = { ...here } as Record<(typeof FREE)[number], number> & BondConstants;
    for (let k = 0; k < 3; k += 1) {
      const key = FREE[Math.floor(uniform() * FREE.length)]!;
      const [low, high] = SEARCHED[key] as readonly [number, number];
      const moved = next[key] * Math.exp(0.3 * Math.log(high / low) * normal(uniform));
      (next as Record<string, number>)[key] = Math.min(high, Math.max(low, moved));
    }
    const there = likely(next);
    if (Math.log(1 - uniform()) < there - level) [here, level] = [next, there];
    if (step > 300 && step % apart === 0) found.push(here);
  }
  return found;
}

export interface World {
  /** what one swatch of this shows, a new lot each time */
  readonly lay: (paper: string, adhesive: string, hold: number) => SwatchSeen;
  /** the true margins, without the noise of a swatch */
  readonly margins: (paper: string, adhesive: string, hold: number) => Pick<Margins, 'spread' | 'lift' | 'sheetToFace'>;
  /** chances for somebody who knows this bench by heart, but neither the sheet nor the quirk of the pair */
  readonly knownByHeart: (paper: string, adhesive: string, hold: number) => { spread: number; lift: number };
}

/** Sheets over which `knownByHeart` takes the mean. */
const SHEETS = 64;
const SHEET_POINTS = lowDiscrepancyPoints(SHEETS, PAPER_DIMENSIONS);

/** Share of a bell curve below this many widths (a logistic that lies within a hundredth of it). */
export const below = (widths: number): number => 1 / (1 + Math.exp(-1.702 * widths));

export const jobFor = (family: string, hold: number): Job => ({
  ...DEFAULT_JOB,
  paper: { family },
  widthMm: 50,
  heightMm: 70,
  placeSeconds: hold,
  lined: false,
});

export function drawWorld(seed: number, constants: BondConstants, catalogue: Catalogue): World {
  const uniform = seededUniform(seed);
  const lots = new Map<Range, number>();
  const lotOf = (range: Range): number => {
    let lot = lots.get(range);
    if (lot === undefined) lots.set(range, (lot = uniform()));
    return lot;
  };
  const liquids = new Map<string, Liquid>();
  for (const id of ADHESIVES)
    liquids.set(
      id,
      liquidOf(catalogue.adhesives.get(id) as WetAdhesive, catalogue, (range) => at(range, lotOf(range))),
    );
  const board = Array.from({ length: DIMENSIONS }, uniform);
  const sheets = new Map(PAPERS.map((paper) => [paper as string, Array.from({ length: PAPER_DIMENSIONS }, uniform)]));
  const apart = new Map<string, readonly [number, number]>();
  for (const paper of PAPERS)
    for (const id of ADHESIVES) apart.set(`${paper} ${id}`, [PAIR * normal(uniform), PAIR * normal(uniform)]);
  /** The margins on each of these sheets, without a quirk of the pair. */
  const onSheets = (sheetPoints: ArrayLike<number>, paper: string, id: string, hold: number) => {
    const count = sheetPoints.length / PAPER_DIMENSIONS;
    const points = new Float64Array(count * DIMENSIONS);
    for (let i = 0; i < count; i += 1) {
      points.set(board, i * DIMENSIONS);
      for (let d = 0; d < PAPER_DIMENSIONS; d += 1) points[i * DIMENSIONS + d] = sheetPoints[i * PAPER_DIMENSIONS + d]!;
    }
    const draws: Draws = { count, points, constants: Array.from({ length: count }, () => constants) };
    const job = jobFor(paper, hold);
    return benchesOf(job, sheetOf(job, catalogue), catalogue, draws).map((bench) =>
      wetMargins(catalogue.adhesives.get(id) as WetAdhesive, liquids.get(id)!, bench, constants),
    );
  };
  const margins: World['margins'] = (paper, id, hold) => {
    const found = onSheets(sheets.get(paper)!, paper, id, hold)[0]!;
    const [spread, lift] = apart.get(`${paper} ${id}`)!;
    return {
      spread: found.spread * Math.exp(spread),
      lift: found.lift * Math.exp(lift),
      sheetToFace: found.sheetToFace,
    };
  };
  const knownByHeart: World['knownByHeart'] = (paper, id, hold) => {
    const all = onSheets(SHEET_POINTS, paper, id, hold);
    const share = (thing: 'spread' | 'lift') =>
      all.reduce((sum, found) => sum + below(Math.log(found[thing]) / PAIR), 0) / all.length;
    return { spread: share('spread'), lift: share('lift') };
  };
  const read = (margin: number): Outcome => {
    const log = Math.log(margin) + SWATCH * longTailed(uniform);
    return Math.abs(log) < PARTLY ? 'partly' : log > 0 ? 'pass' : 'fail';
  };
  const called = (outcome: Outcome): Outcome => {
    if (uniform() >= CALLED_ELSE) return outcome;
    const others = (['pass', 'partly', 'fail'] as const).filter((one) => one !== outcome);
    return others[Math.floor(uniform() * 2)]!;
  };
  const lay: World['lay'] = (paper, id, hold) => {
    const { spread, lift, sheetToFace } = margins(paper, id, hold);
    const lifted = read(lift);
    const faceGives = sheetToFace > 1;
    return {
      spread: called(read(spread)),
      lift: called(faceGives ? 'pass' : lifted),
      board: called(faceGives ? lifted : 'pass'),
    };
  };
  return { lay, margins, knownByHeart };
}

/** Swatches as the learning takes them. */
export const conditionOf = (paper: string, adhesive: string, hold: number, seen: SwatchSeen): Condition => ({
  bench: 'one',
  sheet: `one ${paper}`,
  paperName: paper,
  paper: { family: paper },
  adhesive,
  job: jobFor(paper, hold),
  seen: [seen],
});
