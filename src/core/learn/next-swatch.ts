/**
 * Which swatch is most worth making. For a choice between adhesives on one job, every version of the bench has its own
 * best adhesive; the choice is wrong as often as the versions disagree with it. A swatch is worth as much as it is
 * expected to bring that down, made a few times over, whatever it may show.
 */
import { atOnce, type InTurns } from '../base/turns';
import { benchesOf, dryPointsOf, liquidsOf } from '../choose/sampling';
import { inHand, type Draws } from '../choose/draws';
import { DEFAULT_JOB, settleJob, type Job } from '../choose/job';
import { kindOf } from '../choose/kind';
import { rankInTurns, weighedUp } from '../choose/ranking';
import { heldBy } from '../choose/tally';
import type { Margins } from '../joint/bench';
import { dryMargins, wetMargins } from '../joint/margins';
import { workingSeconds } from '../joint/way';
import type { JobPaper } from '../paper/asked-paper';
import { sheetOf } from '../paper/sheet';
import type { Catalogue } from '../records/records';
import type { Outcome } from '../trial/record';
import { isSheet } from './condition';
import { LIFTED, liftedShares, MISJUDGED, sharesOf } from './likelihood';
import { learnedDraws, type Learned } from './reweigh';

export interface Asking {
  readonly job: Job;
  /** ids of the adhesives among which to choose, 2 to 8 */
  readonly among: readonly string[];
  /** papers that swatches could be cut from, the job's own among them or not, 1 to 12 */
  readonly papers: readonly JobPaper[];
  /** seconds after which a swatch could be lifted; 1 to 4 */
  readonly holds: readonly number[];
}

/** A swatch that could be made. */
export interface Possible {
  readonly paper: JobPaper;
  readonly adhesive: string;
  /** s */
  readonly hold: number;
}

export interface Suggested extends Possible {
  /** by how much it, made a few times over, is expected to lower the chance that the first place is wrong, 0–1 */
  readonly settles: number;
  /** chance that it comes up clean, 0–1, as things stand */
  readonly clean: number;
}

export interface NextSwatches {
  /** id of what stands first now */
  readonly first: string;
  /** chance that another of them would do better on this bench, 0–1 */
  readonly wrong: number;
  /** the three most worth making, the best first; fewer where fewer are worth anything */
  readonly swatches: readonly Suggested[];
  /** no swatch is worth making: the choice would stay */
  readonly settled: boolean;
}

/** Versions asked: enough to tell one swatch from another. */
const VERSIONS = 128;
/**
 * One swatch alone seldom changes what stands first, though it is a step to it: what is reckoned is what so many alike
 * would settle. A judgement of ours: as many as a trial usually makes of each.
 */
const ALIKE_MADE = 4;
/** A swatch that settles less than this is not worth its paper. A judgement of ours. */
export const LEAST_WORTH = 0.01;
/** How much better another must do for the first place to count as wrong. A judgement of ours: nobody would notice less. */
const WORTH_CHANGING = 0.02;
const MOST = 3;

/** What stands first of these adhesives on this job by what has been learned, and how often another would do better. */
export function* firstPlaceInTurns(
  asking: Pick<Asking, 'job' | 'among'>,
  learned: Learned,
  catalogue: Catalogue,
): InTurns<{ readonly first: string; readonly wrong: number }> {
  const levels = yield* levelsOf(asking, learnedDraws(learned, asking.job.paper, VERSIONS), catalogue);
  const { first, wrong } = standing(levels, new Float64Array(VERSIONS).fill(1 / VERSIONS));
  return { first: asking.among[first]!, wrong };
}

/** The three swatches most worth making for this choice, given what has been learned; stops after each that is tried. */
export function* nextSwatchesInTurns(asking: Asking, learned: Learned, catalogue: Catalogue): InTurns<NextSwatches> {
  const draws = learnedDraws(learned, asking.job.paper, VERSIONS);
  const levels = yield* levelsOf(asking, draws, catalogue);
  const now = standing(levels, new Float64Array(VERSIONS).fill(1 / VERSIONS));
  const found: Suggested[] = [];
  for (const paper of asking.papers)
    for (const adhesive of asking.among)
      for (const hold of asking.holds) {
        yield;
        const one = { paper, adhesive, hold };
        const { chances, clean } = outcomesOf(one, asking.job, draws, catalogue);
        found.push({ ...one, clean, settles: now.wrong - after(levels, chances) });
      }
  found.sort((a, b) => b.settles - a.settles);
  const swatches = unlike(found.filter(({ settles }) => settles >= LEAST_WORTH)).slice(0, MOST);
  return { first: asking.among[now.first]!, wrong: now.wrong, swatches, settled: swatches.length === 0 };
}

/** The same in one go. */
export const nextSwatches = (asking: Asking, learned: Learned, catalogue: Catalogue): NextSwatches =>
  atOnce(nextSwatchesInTurns(asking, learned, catalogue));

/** Of one pair only the most telling hold: three suggestions are to be three different things. */
function unlike(found: readonly Suggested[]): Suggested[] {
  return found.filter(
    (one, i) =>
      !found.slice(0, i).some((before) => before.adhesive === one.adhesive && isSheet(before.paper, one.paper)),
  );
}

/** How well each adhesive does on each version of the job, by the method that the chooser gives it. */
function* levelsOf(
  { job, among }: Pick<Asking, 'job' | 'among'>,
  draws: Draws,
  catalogue: Catalogue,
): InTurns<readonly Float64Array[]> {
  const settled = settleJob({ ...job, atHand: [] }, catalogue).job;
  const sheet = sheetOf(settled, catalogue);
  const levels: Float64Array[] = [];
  for (const id of among) {
    const adhesive = catalogue.adhesives.get(id)!;
    const shelf = new Map([...catalogue.adhesives]);
    // Only this one is ranked; what it is made of is still looked up.
    shelf.values = () => [adhesive].values() as ReturnType<typeof shelf.values>;
    const [ranked] = yield* rankInTurns(settled, { ...catalogue, adhesives: shelf }, draws);
    const { method, weights, chance } = ranked!;
    const tool = catalogue.techniques.get(method.tool) ?? catalogue.techniques.get(settled.tool)!;
    const way = {
      face: method.face === 'both' ? ('sheet' as const) : method.face,
      minutes: method.minutes,
      workSeconds: workingSeconds(settled.widthMm, settled.heightMm),
    };
    const benches = benchesOf(settled, sheet, catalogue, draws, { tool, way });
    yield;
    const margins = marginsOf(id, draws, catalogue, benches);
    const level = Float64Array.from({ length: draws.count }, (_, i) => weighedUp(heldBy(margins(i)), weights));
    // What the needs and the way take off is the same on every version.
    const mean = level.reduce((sum, one) => sum + one, 0) / level.length;
    levels.push(level.map((one) => (one * chance) / Math.max(mean, 1e-6)));
  }
  return levels;
}

function marginsOf(
  id: string,
  draws: Draws,
  catalogue: Catalogue,
  benches: ReturnType<typeof benchesOf>,
): (i: number) => Margins {
  const adhesive = catalogue.adhesives.get(id)!;
  const hand = draws.hand?.(kindOf(adhesive, catalogue));
  const own = (margins: Margins) => (hand ? inHand(margins, hand) : margins);
  if (adhesive.form === 'dry') {
    const points = dryPointsOf(adhesive, draws);
    return (i) => own(dryMargins(adhesive, points[i]!, benches[i]!, draws.constants[i]));
  }
  const liquids = liquidsOf(adhesive, catalogue, draws);
  return (i) => own(wetMargins(adhesive, liquids[i]!, benches[i]!, draws.constants[i]));
}

/** What stands first under these weights of the versions, and how often another would have been better. */
function standing(levels: readonly Float64Array[], weights: Float64Array): { first: number; wrong: number } {
  const means = levels.map((level) => level.reduce((sum, one, i) => sum + one * weights[i]!, 0));
  const first = means.indexOf(Math.max(...means));
  let wrong = 0;
  for (let i = 0; i < weights.length; i += 1) {
    const best = Math.max(...levels.map((level) => level[i]!));
    if (best > levels[first]![i]! + WORTH_CHANGING) wrong += weights[i]!;
  }
  return { first, wrong };
}

/** The chance of a wrong first place after the swatch, over everything it may show. `chances`: by outcome, by version. */
function after(levels: readonly Float64Array[], chances: readonly Float64Array[]): number {
  let wrong = 0;
  for (const shown of chances) {
    const all = shown.reduce((sum, one) => sum + one, 0);
    if (all > 0)
      wrong +=
        (all / shown.length) *
        standing(
          levels,
          shown.map((one) => one / all),
        ).wrong;
  }
  return wrong;
}

const KINDS: readonly Outcome[] = ['pass', 'partly', 'fail'];

/** For everything that a swatch may show, how likely it is on each version; and how likely it comes up clean. */
function outcomesOf(
  { paper, adhesive, hold }: Possible,
  job: Job,
  draws: Draws,
  catalogue: Catalogue,
): { chances: readonly Float64Array[]; clean: number } {
  const made: Job = {
    ...DEFAULT_JOB,
    paper,
    substrate: job.substrate,
    widthMm: 50,
    heightMm: 70,
    placeSeconds: Math.max(1, hold),
    celsius: job.celsius,
    humidity: job.humidity,
    tool: job.tool,
    lined: false,
  };
  const benches = benchesOf(made, sheetOf(made, catalogue), catalogue, draws);
  const margins = marginsOf(adhesive, draws, catalogue, benches);
  const chances = Array.from({ length: KINDS.length * LIFTED.length }, () => new Float64Array(draws.count));
  let clean = 0;
  for (let i = 0; i < draws.count; i += 1) {
    const found = margins(i);
    const spread = sharesOf(found.spread);
    const lifted = liftedShares(found.lift, found.sheetToFace);
    clean += lifted[0]! / draws.count;
    KINDS.forEach((kind, k) => {
      const dragged = (1 - MISJUDGED) * spread[kind] + (MISJUDGED / 2) * (1 - spread[kind]);
      lifted.forEach((share, l) => {
        const seen = (1 - MISJUDGED) * share + (MISJUDGED / (LIFTED.length - 1)) * (1 - share);
        chances[k * LIFTED.length + l]![i] = (dragged * seen) ** ALIKE_MADE;
      });
    });
    const all = chances.reduce((sum, one) => sum + one[i]!, 0);
    for (const one of chances) one[i]! /= all;
  }
  return { chances, clean };
}
