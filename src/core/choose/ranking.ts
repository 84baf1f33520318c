/**
 * From a job to an order. Every adhesive is tried by every method that the task and the ground allow, on many
 * possible versions of the job, drawn evenly from the stated ranges and the same for every visitor; a chance is the
 * share that holds. The best method stands for the adhesive. Nothing here is random, so a link gives the same answer
 * anywhere.
 */
import { isAtHand } from './at-hand';
import { drawsOf, inHand, type Draws, type DrawsFor, type Samples } from './draws';
import { kindOf } from './kind';
import type { Ranked, Suitability, Verdict } from './finding';
import { THINGS, type Bench, type Margins } from '../joint/bench';
import { settleJob, type Job, type SettledJob } from './job';
import { dryMargins, easeOf, givenOf, wetMargins, type Ease, type Given } from '../joint/margins';
import { methodsFor, type Bringable } from './method';
import { placementOf } from './placement';
import { recordsOn } from '../records/kinds';
import type { Adhesive, Catalogue } from '../records/records';
import {
  benchAsked,
  dryPointsOf,
  liquidAsked,
  middleBench,
  middleLiquid,
  secondsNeeded,
  taskOf,
  type Bringing,
  type LiquidOn,
} from './sampling';
import { sheetOf, type Sheet } from '../paper/sheet';
import { suitability } from './suitability';
import { heldBy, meanHeld, tallyOf, type Chances } from './tally';
import { TASK_TRAITS } from '../records/task';
import { atOnce, type InTurns } from '../base/turns';

/** Places that are set side by side under an answer. */
export const FIRST_PLACES = 4;
/** Draws per adhesive and method. */
export const SAMPLES = 64;
/** What the ranking takes off where a thing goes wrong but a hand has a way round it. Judgements of ours. */
export const COST = {
  /** a wet sheet has to be lifted and does not come clean; times how much the task wants a second go */
  noSecondGo: 0.85,
  /** it wrinkles because it still grows when it is laid; more when it must lie flat */
  wrinkles: { usual: 0.25, flat: 0.4 },
} as const;
/** Growth after laying that a hand can just brush out, mm. Estimate. */
const BRUSHED_OUT_MM = 6;
/** A second method is told when its chance comes this near. */
const CLOSE = 0.05;
/**
 * In the order, another of a kind that stands higher counts this much: the first places name different things. Our own
 * line, set with the published statements of practice in view.
 */
const NEXT_OF_A_KIND = 0.7;

/**
 * Every adhesive of the catalogue for a job that is settled, best first, stopping after each; or the first `places` of
 * that order alone, to the last digit. Of those, an adhesive is dropped as soon as it could no longer be one even if it
 * held on every draw that is left, which spares half of the work. `samples`: how many even draws (1–1000), or what
 * swatches have made of them, for each adhesive.
 */
export function* rankInTurns(
  job: SettledJob,
  records: Catalogue,
  samples: Samples | DrawsFor = SAMPLES,
  places = Infinity,
): InTurns<readonly Ranked[]> {
  const work = workOn(job, records, samples);
  const screened: Screened[] = [];
  for (const adhesive of work.catalogue.adhesives.values()) {
    yield;
    screened.push(screen(adhesive, work));
  }
  // The likeliest are tried first, so that the others have something to fall behind.
  screened.sort(bestFirst);
  let ranked: Ranked[] = [];
  for (const one of screened) {
    const lowest = ranked[places - 1];
    if (lowest && byClass(lowest, one) < 0) break;
    yield;
    const judged = judge(one, work, lowest && countsIn(ranked).get(lowest));
    if (judged) ranked.push(judged);
    if (ranked.length >= places) ranked = inOrder(ranked).slice(0, places);
  }
  return inOrder(ranked);
}

/**
 * The same in one go, for any job. Never throws: a job with unusable parts is answered with those parts at their
 * defaults (see `settleJob`, which names them).
 */
export const rank = (job: Job, catalogue: Catalogue, samples: Samples | DrawsFor = SAMPLES): readonly Ranked[] =>
  atOnce(rankInTurns(settleJob(job, catalogue).job, catalogue, samples));

/** What an order goes by. */
interface Placed extends Pick<Ranked, 'adhesiveId' | 'atHand' | 'chance' | 'kind'> {
  /** what decides alone, where something does */
  readonly verdict: Verdict | undefined;
}

const last = (one: Pick<Placed, 'verdict'>) => (one.verdict === 'ruled-out' ? 1 : 0);

/** What is at hand first, what is ruled out last. */
const byClass = (a: Omit<Placed, 'chance'>, b: Omit<Placed, 'chance'>): number =>
  Number(b.atHand) - Number(a.atHand) || last(a) - last(b);

/** The same, else by chance; ties by id, so that they fall alike everywhere. */
const bestFirst = (a: Placed, b: Placed): number =>
  byClass(a, b) || b.chance - a.chance || (a.adhesiveId < b.adhesiveId ? -1 : 1);

/** What each counts in the order: its chance, less where others of its kind stand higher. */
function countsIn<R extends Placed>(ranked: readonly R[]): ReadonlyMap<R, number> {
  const seen = new Map<string, number>();
  const counts = new Map<R, number>();
  for (const one of [...ranked].sort(bestFirst)) {
    const before = seen.get(one.kind) ?? 0;
    seen.set(one.kind, before + 1);
    counts.set(one, one.chance * NEXT_OF_A_KIND ** before);
  }
  return counts;
}

/**
 * The order shown: by chance, but the second and third strength of one kind give way to other kinds that do nearly
 * as well, so that the first places of a list tell different things. First place is always the best chance.
 */
export function inOrder<R extends Placed>(ranked: readonly R[]): R[] {
  const counts = countsIn(ranked);
  return [...ranked].sort((a, b) => byClass(a, b) || counts.get(b)! - counts.get(a)! || bestFirst(a, b));
}

const left = (held: number, weight: number): number => 1 - weight * (1 - held);

/** The chances weighed up as one: what fails takes off its weight. */
export function weighedUp(held: Chances, weights: Chances): number {
  return (
    left(held.spread, weights.spread) *
    left(held.reach, weights.reach) *
    left(held.place, weights.place) *
    left(held.lift, weights.lift) *
    left(held.grab, weights.grab) *
    left(held.strike, weights.strike) *
    left(held.bond, weights.bond) *
    left(held.flat, weights.flat)
  );
}

/** How much each thing counts for this job, with this form of adhesive. */
export function weightsOf(job: Job, form: Adhesive['form']): Chances {
  const traits = TASK_TRAITS[taskOf(job)];
  const needs = new Set(job.needs);
  return {
    spread: 1,
    reach: 1,
    place: 1,
    // Whether a film comes up again does not hang on the moment: `suitability` counts it.
    lift: form === 'wet' ? COST.noSecondGo * traits.secondGo : 0,
    grab: needs.has('quick') ? Math.max(0.8, traits.grab) : traits.grab,
    strike: needs.has('no-strike-through') ? 1 : traits.strike,
    bond: 1,
    flat: 1,
  };
}

/** A bench of one draw, with what of it is the same for every adhesive. */
interface Kept {
  readonly bench: Bench;
  readonly given: Given;
}
/** Benches by method, each made once for all adhesives of the same draws, when it is first asked for by its number. */
type BenchKeeper = (bringing: Bringing, draws: Draws) => Benches;
type Benches = (draw: number) => Kept;

function benchKeeper(job: Job, sheet: Sheet, catalogue: Catalogue): BenchKeeper {
  const kept = new Map<Draws, Map<string, Benches>>();
  return (bringing, draws) => {
    const { face, minutes } = bringing.way;
    const key = `${bringing.tool.id} ${face} ${minutes}`;
    let byMethod = kept.get(draws);
    if (!byMethod) kept.set(draws, (byMethod = new Map()));
    let benches = byMethod.get(key);
    if (!benches) {
      const benchOf = benchAsked(job, sheet, catalogue, draws, bringing);
      const made = new Array<Kept>(draws.count);
      const make = (draw: number): Kept => {
        const bench = benchOf(draw);
        return (made[draw] = { bench, given: givenOf(bench, draws.constants[draw]) });
      };
      byMethod.set(key, (benches = (draw) => made[draw] ?? make(draw)));
    }
    return benches;
  };
}

/** What every adhesive of one job is tried with. */
interface Work {
  readonly job: SettledJob;
  readonly catalogue: Catalogue;
  readonly sheet: Sheet;
  readonly benches: BenchKeeper;
  readonly middle: Kept;
  readonly drawsFor: DrawsFor;
}

function workOn(job: SettledJob, records: Catalogue, samples: Samples | DrawsFor): Work {
  const catalogue = recordsOn(job.bench, records);
  const sheet = sheetOf(job, catalogue);
  const bench = middleBench(job, sheet, catalogue);
  return {
    job,
    catalogue,
    sheet,
    benches: benchKeeper(job, sheet, catalogue),
    middle: { bench, given: givenOf(bench) },
    drawsFor: typeof samples === 'function' ? samples : () => samples,
  };
}

/** An adhesive after a few draws of each of its methods, which tell what is worth trying on all. */
interface Screened extends Placed {
  readonly adhesive: Adhesive;
  readonly draws: Draws;
  readonly weights: Chances;
  readonly fit: Suitability;
  readonly worth: readonly Screening[];
}

interface Screening {
  readonly bringable: Bringable;
  /** what a draw comes to, worked out when it is asked for */
  readonly foundOn: (draw: number) => Found;
  /** of the draws that screened it, at their places */
  readonly found: readonly (Found | undefined)[];
  /** over those draws, as usual as it is */
  readonly level: number;
}

function screen(adhesive: Adhesive, work: Work): Screened {
  const { job, sheet, catalogue, middle, benches } = work;
  const draws = drawsOf(work.drawsFor(adhesive.id));
  const weights = weightsOf(job, adhesive.form);
  const fit = suitability(adhesive, job, sheet, catalogue);
  const needs = new Set(job.needs);
  const combine = (margins: Margins, held: Chances): number => {
    const grown = (margins.growsMm / BRUSHED_OUT_MM) ** 2;
    const wrinkles = COST.wrinkles[needs.has('flat') ? 'flat' : 'usual'] * (grown / (1 + grown));
    const quick = needs.has('quick') && adhesive.form === 'wet' ? 1 / (1 + margins.slipSeconds / QUICK_SECONDS) : 1;
    return weighedUp(held, weights) * (1 - wrinkles) * quick;
  };
  const asked = marginsOf(adhesive, catalogue, job, draws);
  const methods = methodsFor(adhesive, job, sheet, catalogue, staysOpen(adhesive, middle, catalogue));
  const count = Math.max(1, Math.ceil((draws.count - SCREEN_FROM) / SCREEN_EVERY));
  const screened: Screening[] = [];
  let leads = 0;
  for (const bringable of methods) {
    const all = benches(bringable.bringing, draws);
    const foundOn = (draw: number): Found => {
      const margins = asked(draw, all(draw));
      const held = heldBy(margins);
      return { margins, held, level: combine(margins, held) };
    };
    const found: Found[] = [];
    // what the levels could still add up to, and must, for the method to be worth trying
    let most = count;
    const least = ((leads - SCREEN_GAP) / bringable.usual) * count;
    for (let draw = SCREEN_FROM; draw < draws.count && most >= least; draw += SCREEN_EVERY)
      most -= 1 - (found[draw] = foundOn(draw)).level;
    if (most < least) continue;
    const level = (most / count) * bringable.usual;
    screened.push({ bringable, foundOn, found, level });
    leads = Math.max(leads, level);
  }
  screened.sort((a, b) => b.level - a.level);
  // One that falls far behind on those cannot be the best of all.
  const { level } = screened[0]!;
  return {
    adhesiveId: adhesive.id,
    atHand: isAtHand(adhesive, job.atHand, catalogue),
    kind: kindOf(adhesive, catalogue),
    verdict: fit.verdict,
    chance: level * fit.share,
    adhesive,
    draws,
    weights,
    fit,
    worth: screened.filter((one, i) => i < MOST_TRIED && one.level >= level - SCREEN_GAP),
  };
}

/** The whole judgement of one that was screened; none as soon as its chance is sure to lie below `least`. */
function judge(screened: Screened, { job, sheet, catalogue }: Work, least = 0): Ranked | undefined {
  const { adhesive, weights, fit, worth, atHand, kind } = screened;
  const tried: Tried[] = [];
  // one that could come no nearer than `CLOSE` to a better one is not told
  let most = least;
  for (const { bringable, foundOn, found } of worth) {
    const draws = onAll(screened.draws.count, found, foundOn, (most - CLOSE) / (bringable.usual * fit.share));
    if (!draws) continue;
    const together = draws.reduce((sum, { level }) => sum + level, 0) / draws.length;
    const chance = together * bringable.usual * fit.share;
    tried.push({ bringable, draws, chance });
    most = Math.max(most, chance);
  }
  tried.sort((a, b) => b.chance - a.chance);
  const [best, ...rest] = tried;
  if (!best) return undefined;
  const near = rest.find(
    ({ bringable: { method }, chance }) =>
      chance > best.chance - CLOSE &&
      (method.face !== best.bringable.method.face || method.tool !== best.bringable.method.tool),
  );
  const { chance, draws } = best;
  const found = tallyOf(draws);
  const { method } = best.bringable;
  const needed = secondsNeeded(job);
  // The same, said of the tool that it is done with.
  const other = adhesive.form === 'wet' && method.tool !== job.tool;
  const said = other ? suitability(adhesive, job, sheet, catalogue, method.tool) : fit;
  const facts = { adhesive, job, sheet, method, weights, needed, fit: said, ...found } as const;
  return {
    adhesiveId: adhesive.id,
    verdict: fit.verdict ?? sober(verdictOf(chance), found.chances, weights),
    chance,
    method,
    ...(near && {
      other: {
        method: near.bringable.method,
        chance: near.chance,
        chances: meanHeld(near.draws),
      },
    }),
    chances: found.chances,
    weights,
    slipSeconds: found.slipSeconds,
    openSeconds: found.openSeconds,
    margins: found.margins,
    gives: found.gives,
    placement: placementOf(facts, catalogue),
    atHand,
    kind,
    facts,
  };
}

/** Every draw of a method; none as soon as their mean could no longer reach `least`, whatever is left of them came to. */
function onAll(
  count: number,
  screened: readonly (Found | undefined)[],
  foundOn: (draw: number) => Found,
  least: number,
): readonly Found[] | undefined {
  let most = count;
  for (const found of screened) if (found) most -= 1 - found.level;
  const all: Found[] = [];
  for (let draw = 0; draw < count; draw += 1) {
    if (most < least * count) return undefined;
    const known = screened[draw];
    const found = known ?? foundOn(draw);
    if (!known) most -= 1 - found.level;
    all.push(found);
  }
  return all;
}

/** What one draw came to: its margins, the chances they give, and these weighed up as one. */
interface Found {
  readonly margins: Margins;
  readonly held: Chances;
  readonly level: number;
}

interface Tried {
  readonly bringable: Bringable;
  readonly draws: readonly Found[];
  readonly chance: number;
}

/** Where something has to hold quickly, a slip this long is half as good. Estimate. */
const QUICK_SECONDS = 300;

/** Seconds for which a coat of this stays open on the sheet, at the middle of everything; 0 where nothing is brushed. */
function staysOpen(adhesive: Adhesive, { bench, given }: Kept, catalogue: Catalogue): number {
  if (adhesive.form === 'dry') return 0;
  return wetMargins(adhesive, middleLiquid(adhesive, catalogue), bench, undefined, undefined, given).openSeconds;
}

/**
 * Draws that screen a method: every third, from the second. Of 51 000 chances of adhesives, with these none lay more than
 * 0.011 below that of the best of all methods tried on all draws; with every eighth, or every fourth, some lay 0.05 below
 * it, and leapt as soon as the screen chose otherwise.
 */
const SCREEN_FROM = 1;
const SCREEN_EVERY = 3;
/** Methods that fall this far behind on those are not tried on all draws; nor more than two are. */
const SCREEN_GAP = 0.04;
const MOST_TRIED = 2;

/** Each draw has its own set of constants, so that a chance carries what the model does not know. */
function marginsOf(
  adhesive: Adhesive,
  catalogue: Catalogue,
  { celsius }: Job,
  draws: Draws,
): (draw: number, on: Kept) => Margins {
  const { constants } = draws;
  const hand = draws.hand?.(kindOf(adhesive, catalogue));
  const own = (margins: Margins) => (hand ? inHand(margins, hand) : margins);
  if (adhesive.form === 'dry') {
    const points = dryPointsOf(adhesive, draws);
    return (draw, { bench }) => own(dryMargins(adhesive, points[draw]!, bench, constants[draw]!));
  }
  const liquidOn = liquidAsked(adhesive, catalogue, draws);
  const eased = easesOf(liquidOn, celsius);
  return (draw, { bench, given }) => {
    const liquid = liquidOn(draw);
    const ease = (eased[draw] ??= easeOf(adhesive, liquid, celsius, constants[draw]!));
    return own(wetMargins(adhesive, liquid, bench, constants[draw]!, ease, given));
  };
}

/** How easily these liquids run, filled in as they are asked about; kept for the temperature that was asked last. */
function easesOf(liquidOn: LiquidOn, celsius: number): Ease[] {
  let kept = eases.get(liquidOn);
  if (kept?.celsius !== celsius) eases.set(liquidOn, (kept = { celsius, eases: [] }));
  return kept.eases;
}
/** The liquids of some draws are kept by them, and each draw has its own constants. */
const eases = new WeakMap<LiquidOn, { readonly celsius: number; readonly eases: Ease[] }>();

/** From this weight on a thing matters to the task, is shown, and can spoil a good word. */
export const MATTERS = 0.25;
/** Nothing is called likely while something that matters holds less often than this. */
const LEAST_OF_ANY = 0.35;

function sober(verdict: Verdict, chances: Chances, weights: Chances): Verdict {
  if (verdict !== 'sound' && verdict !== 'likely') return verdict;
  return THINGS.some((thing) => weights[thing] >= MATTERS && chances[thing] < LEAST_OF_ANY) ? 'touch-and-go' : verdict;
}

/** Words for a chance; the steps are ours. */
export function verdictOf(chance: number): Verdict {
  if (chance >= 0.75) return 'sound';
  if (chance >= 0.55) return 'likely';
  if (chance >= 0.35) return 'touch-and-go';
  return 'unlikely';
}
