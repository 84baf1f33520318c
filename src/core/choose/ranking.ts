/**
 * From a job to an order. Every adhesive is tried on many possible versions of the job, drawn evenly
 * from the stated ranges and the same for every visitor; a chance is the share that holds, softened by
 * how far the model itself may be off. Nothing here is random, so a link gives the same answer anywhere.
 */
import type { Ranked, Verdict } from './finding';
import type { Bench, Margins } from '../joint/bench';
import { settleJob, type Job, type SettledJob } from './job';
import { dryMargins, wetMargins } from '../joint/margins';
import { placementOf } from './placement';
import type { Adhesive, Catalogue } from '../records/records';
import { benchesOf, dryPointsOf, liquidsOf, secondsNeeded } from './sampling';
import { sheetOf, type Sheet } from '../paper/sheet';
import { suitability } from './suitability';
import { tally, type Chances } from './tally';
import { atOnce, type InTurns } from '../base/turns';

/** Draws per adhesive: twice as many change 99 chances in 100 by less than 0.02, and none seen by more than 0.05. */
export const SAMPLES = 96;
/** What the ranking takes off where a thing goes wrong but the bench has a way round it. Judgements of ours. */
export const COST = {
  /** the sheet cannot be brushed, but the board can be brushed instead */
  brushTheBoard: 0.3,
  /** a wet sheet has to be lifted and does not come clean */
  noSecondGo: { wet: 0.85, dry: 0.4 },
  /** it grabs before it is placed; dry films are laid from one edge, which gets round most of it */
  grabsEarly: { wet: 0.35, dry: 0.15 },
} as const;

/** Every adhesive of the catalogue for a job that is settled, best first, stopping after each. `samples` 1–1000. */
export function* rankInTurns(
  job: SettledJob,
  catalogue: Catalogue,
  samples: number = SAMPLES,
): InTurns<readonly Ranked[]> {
  const sheet = sheetOf(job, catalogue);
  const benches = benchesOf(job, sheet, catalogue, samples);
  const ranked: Ranked[] = [];
  for (const adhesive of catalogue.adhesives.values()) {
    yield;
    ranked.push(judge(adhesive, job, sheet, benches, catalogue));
  }
  return ranked.sort(bestFirst);
}

/**
 * The same in one go, for any job. Never throws: a job with unusable parts is answered with those parts at their
 * defaults (see `settleJob`, which names them).
 */
export const rank = (job: Job, catalogue: Catalogue, samples: number = SAMPLES): readonly Ranked[] =>
  atOnce(rankInTurns(settleJob(job, catalogue).job, catalogue, samples));

const last = (one: Ranked) => (one.verdict === 'ruled-out' ? 1 : 0);

/** What is at hand first, what is ruled out last, else by chance; ties by id, so that they fall alike everywhere. */
export const bestFirst = (a: Ranked, b: Ranked): number =>
  Number(b.atHand) - Number(a.atHand) ||
  last(a) - last(b) ||
  b.chance - a.chance ||
  (a.adhesiveId < b.adhesiveId ? -1 : 1);

/** Can the board be brushed instead of the sheet. */
export const canBrushBoard = (adhesive: Adhesive, job: Job, catalogue: Catalogue): boolean =>
  adhesive.form === 'wet' && catalogue.substrates.get(job.substrate)!.takesGlue;

/** The four chances weighed up as one, with what the bench can do about each. */
export function weighedUp(held: Chances, form: Adhesive['form'], boardCanBeBrushed: boolean): number {
  const spread = 1 - (boardCanBeBrushed ? COST.brushTheBoard : 1) * (1 - held.spread);
  const lift = 1 - COST.noSecondGo[form] * (1 - held.lift);
  return spread * lift * held.bond * held.flat;
}

function judge(adhesive: Adhesive, job: Job, sheet: Sheet, benches: readonly Bench[], catalogue: Catalogue): Ranked {
  const needed = secondsNeeded(job);
  const brushBoard = canBrushBoard(adhesive, job, catalogue);
  const found = tally(marginsOn(adhesive, benches, catalogue), benches.length, (margins, held) => {
    const inTime = margins.slipSeconds < needed ? 1 - COST.grabsEarly[adhesive.form] : 1;
    return inTime * weighedUp(held, adhesive.form, brushBoard);
  });
  const fit = suitability(adhesive, job, sheet, catalogue);
  const chance = found.together * fit.share;
  const facts = { adhesive, job, sheet, needed, fit, ...found } as const;
  return {
    adhesiveId: adhesive.id,
    verdict: fit.verdict ?? verdictOf(chance),
    chance,
    chances: found.chances,
    slipSeconds: found.slipSeconds,
    margins: found.margins,
    gives: found.gives,
    placement: placementOf(facts, catalogue),
    atHand: job.atHand.length === 0 || job.atHand.includes(adhesive.id),
    facts,
  };
}

function marginsOn(adhesive: Adhesive, benches: readonly Bench[], catalogue: Catalogue): (sample: number) => Margins {
  if (adhesive.form === 'dry') {
    const points = dryPointsOf(adhesive, benches.length);
    return (sample) => dryMargins(adhesive, points[sample]!, benches[sample]!);
  }
  const liquids = liquidsOf(adhesive, catalogue, benches.length);
  return (sample) => wetMargins(adhesive, liquids[sample]!, benches[sample]!);
}

/** Words for a chance; the steps are ours. */
export function verdictOf(chance: number): Verdict {
  if (chance >= 0.75) return 'sound';
  if (chance >= 0.55) return 'likely';
  if (chance >= 0.35) return 'touch-and-go';
  return 'unlikely';
}
