/**
 * How many swatches it takes until the right adhesive stands first for one job: made as the site suggests, in the drawn
 * order of a full design, and by lot.
 */
import { atOnce } from '../../src/core/base/turns';
import { seededUniform } from '../../src/core/base/random';
import { weighedUp, weightsOf } from '../../src/core/choose/ranking';
import { holds } from '../../src/core/choose/tally';
import type { BondConstants } from '../../src/core/joint/constants';
import type { Condition } from '../../src/core/learn/condition';
import { firstPlaceInTurns, nextSwatches } from '../../src/core/learn/next-swatch';
import { learnInTurns, type Learned } from '../../src/core/learn/reweigh';
import type { MarginsOf } from '../../src/core/learn/versions';
import type { Catalogue } from '../../src/core/records/records';
import { shuffled } from './learning';
import { ADHESIVES, conditionOf, drawWorld, jobFor, PAPERS, type World } from './learning-worlds';

export const WAYS = ['suggested', 'full', 'lot'] as const;
export type Way = (typeof WAYS)[number];
/** Swatches of the full design: 4 papers, 4 adhesives, 2 holds. */
export const FULL = 32;
/** As many as a way may make. */
export const MOST: Readonly<Record<Way, number>> = { suggested: FULL / 2, full: FULL, lot: FULL };

const HOLDS = [20, 60] as const;
/** As good as the best, for a hand: the same as in next-swatch.ts. */
const AS_GOOD = 0.02;
/** Seconds that the job needs. */
const NEEDED = 60;

/** How good each adhesive truly is on this paper: spreading and lifting as they are there, weighed as the chooser weighs them. */
function trueLevels(world: World, paper: string): number[] {
  const weights = weightsOf(jobFor(paper, NEEDED), 'wet');
  return ADHESIVES.map((id) => {
    const { spread, lift } = world.margins(paper, id, NEEDED);
    const certain = { spread: 1, reach: 1, place: 1, lift: 1, grab: 1, strike: 1, bond: 1, flat: 1 };
    return weighedUp({ ...certain, spread: holds(spread), lift: holds(lift) }, weights);
  });
}

/** How often another would do better on this paper, as the model alone has it. */
function doubt(paper: string, catalogue: Catalogue): number {
  let known = doubts.get(paper);
  if (known === undefined) {
    const asking = { job: jobOn(paper), among: ADHESIVES };
    known = atOnce(firstPlaceInTurns(asking, { asked: [], own: 'one', swatches: 0 }, catalogue)).wrong;
    doubts.set(paper, known);
  }
  return known;
}
const doubts = new Map<string, number>();
/** A choice is open from here on. */
const OPEN = 0.1;

const jobOn = (paper: string) => ({ ...jobFor(paper, NEEDED), widthMm: 150, heightMm: 210 });

/** Whether what stands first is as good as the best there is, after 0, 1, 2 … swatches. */
export function runChoice(
  seed: number,
  constants: BondConstants,
  way: Way,
  catalogue: Catalogue,
  ask: MarginsOf,
): boolean[] {
  const world = drawWorld(seed, constants, catalogue);
  const uniform = seededUniform(seed * 104_729 + 7);
  const lots = shuffled(PAPERS, uniform);
  // A choice that is worth asking about: the model alone is not sure of it.
  const paper = lots.find((one) => doubt(one, catalogue) >= OPEN)!;
  const papers = [paper, ...lots.filter((one) => one !== paper).slice(0, 3)];
  const truth = trueLevels(world, paper);
  const best = Math.max(...truth);
  const asking = { job: jobOn(paper), among: ADHESIVES, papers: papers.map((family) => ({ family })), holds: HOLDS };
  const all = papers.flatMap((one) => ADHESIVES.flatMap((id) => HOLDS.map((hold) => [one, id, hold] as const)));
  const design = shuffled(all, uniform);
  let learned: Learned = { asked: [], own: 'one', swatches: 0 };
  const right: boolean[] = [];
  for (let made = 0; ; made += 1) {
    const { first } = atOnce(firstPlaceInTurns(asking, learned, catalogue));
    right.push(truth[ADHESIVES.indexOf(first as (typeof ADHESIVES)[number])]! >= best - AS_GOOD);
    if (made === MOST[way]) return right;
    const [suggested] = way === 'suggested' ? nextSwatches(asking, learned, catalogue).swatches : [];
    // Where nothing is worth making the site says stop.
    if (way === 'suggested' && !suggested) return right;
    const [on, id, hold] = suggested
      ? ([suggested.paper.family, suggested.adhesive, suggested.hold] as const)
      : way === 'full'
        ? design[made]!
        : all[Math.floor(uniform() * all.length)]!;
    const condition: Condition = conditionOf(on, id, hold, world.lay(on, id, hold));
    const more = atOnce(learnInTurns([condition], catalogue, 'one', ask));
    learned = { asked: [...learned.asked, ...more.asked], own: 'one', swatches: made + 1 };
  }
}

/** After how many swatches the first place is right and stays so; undefined where it never is. */
export function rightFrom(right: readonly boolean[]): number | undefined {
  const last = right.lastIndexOf(false);
  return last === right.length - 1 ? undefined : last + 1;
}
