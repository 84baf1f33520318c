/**
 * What one's own swatches say about a job. The model's chance is a beta prior that counts as a few swatches;
 * each swatch of one's own is added with a weight that falls as its paper, its coat and its hold time lie farther
 * from the job's. The more swatches near by, the less the model has to say.
 */
import type { Job } from '../choose/job';
import type { Condition } from '../learn/condition';
import type { Catalogue } from '../records/records';
import { mustBeWithin } from '../base/result';
import { secondsNeeded } from '../choose/sampling';
import { sheetOf } from '../paper/sheet';
import { sorptivityFromDrop } from '../paper/sorption';
import type { Chances } from '../choose/tally';
import { betaQuantile } from '../stats/distributions';
import { methodOf, USUAL_METHOD } from '../trial/method';
import {
  outcomeOf,
  type Outcome,
  type Question,
  type QuestionKind,
  type Swatch,
  type SwatchMethod,
  type Trial,
} from '../trial/record';

/** The chances that a swatch can speak of. */
export type TestedThing = keyof Pick<Chances, 'spread' | 'lift' | 'bond' | 'flat'>;

/** The model counts as this many swatches. Estimate: it was right on most of a dozen outcomes, fitted to them. */
export const MODEL_COUNTS_AS = 4;

/** Distances at which a swatch counts for 0.61 (one standard width of a bell curve), in natural logs. Estimates. */
export const WIDTHS = { grammage: 0.25, sorptivity: 0.7, hold: 0.7, coat: 0.35 } as const;
/** A trial that does not say what it was glued to. Estimate. */
const UNNAMED_BOARD = 0.5;
/** A tool that is not on the shelf. Estimate. */
const OTHER_TOOL = 0.5;
/** Swatches that count for less than this are not counted at all. */
const LEAST_WEIGHT = 0.05;

export interface Witness {
  /** 1 pass, ½ partly, 0 fail */
  readonly score: number;
  /** 0–1 */
  readonly weight: number;
}

export interface Updated {
  readonly modelAlone: number;
  readonly withTrials: number;
  /** the two parameters of its beta distribution */
  readonly beta: readonly [number, number];
  /** swatches that were counted */
  readonly swatches: number;
  /** what they count for together */
  readonly weight: number;
}

/** What witnesses say together: all that a link has to carry. */
export interface Testimony {
  /** scores times weights */
  readonly passes: number;
  readonly weight: number;
  readonly swatches: number;
}

/** What several trials say together of one pair of paper and adhesive. */
export function testimonyOf(witnesses: readonly Witness[]): Testimony {
  const counted = witnesses.filter(({ weight }) => weight >= LEAST_WEIGHT);
  return {
    passes: counted.reduce((sum, one) => sum + one.weight * one.score, 0),
    weight: counted.reduce((sum, one) => sum + one.weight, 0),
    swatches: counted.length,
  };
}

/** The model's chance (0–1) brought up to date by swatches. `strength` swatches' worth of prior, above 0. */
export function updateChance(
  modelAlone: number,
  witnesses: readonly Witness[] | Testimony,
  strength: number = MODEL_COUNTS_AS,
): Updated {
  mustBeWithin('modelAlone', modelAlone, 0, 1);
  mustBeWithin('strength', strength, 0.1, 1000);
  const { passes, weight, swatches } = 'passes' in witnesses ? witnesses : testimonyOf(witnesses);
  // A chance of exactly 0 or 1 would never move: the model is not that sure of anything.
  const prior = Math.min(0.999, Math.max(0.001, modelAlone));
  const [a, b] = [strength * prior + passes, strength * (1 - prior) + weight - passes];
  return {
    modelAlone,
    withTrials: swatches === 0 ? modelAlone : a / (a + b),
    beta: [a, b],
    swatches,
    weight,
  };
}

/** The middle 90 % of an updated chance. Apart from it, since it is dear and wanted only where it is shown. */
export const rangeOf = ({ beta: [a, b] }: Updated): { low: number; high: number } => ({
  low: betaQuantile(0.05, a, b),
  high: betaQuantile(0.95, a, b),
});

/** Which questions speak of which chance; where several do, the worst counts. */
const SPEAK_OF: Readonly<Record<TestedThing, readonly QuestionKind[]>> = {
  spread: ['spread'],
  lift: ['lift', 'board'],
  bond: ['stuck'],
  flat: ['cockle'],
};
const SCORE: Readonly<Record<Outcome, number>> = { pass: 1, partly: 0.5, fail: 0 };

/** The swatches of these trials that bear on one adhesive for this job, for each of the four chances. */
export function witnessesFor(
  trials: readonly Trial[],
  adhesiveId: string,
  job: Job,
  catalogue: Catalogue,
): Readonly<Record<TestedThing, readonly Witness[]>> {
  const sheet = sheetOf(job, catalogue);
  const needed = secondsNeeded(job);
  const found: Record<TestedThing, Witness[]> = { spread: [], lift: [], bond: [], flat: [] };
  for (const trial of trials) {
    if (trial.substrate !== undefined && trial.substrate !== job.substrate) continue;
    const board = trial.substrate === undefined ? UNNAMED_BOARD : 1;
    // where name and record may not be of one adhesive, nobody knows which was glued
    const glues = new Set(
      trial.glues.flatMap(({ id, record, doubtful }) => (record === adhesiveId && !doubtful ? [id] : [])),
    );
    for (const swatch of trial.swatches) {
      const paper = trial.papers.find(({ id }) => id === swatch.paper);
      const family = paper?.family === undefined ? undefined : catalogue.papers.get(paper.family);
      const grammage = paper?.grammage ?? family?.grammage.middle;
      const sorptivity =
        paper?.dropSeconds === undefined ? family?.sorptivity.middle : sorptivityFromDrop(paper.dropSeconds);
      if (!glues.has(swatch.glue) || swatch.spoiled || grammage === undefined || sorptivity === undefined) continue;
      const near =
        board *
        alikeSpread(methodOf(swatch, trial), job, catalogue) *
        bell(grammage, sheet.grammage.middle, WIDTHS.grammage) *
        bell(sorptivity, sheet.sorptivity.middle, WIDTHS.sorptivity);
      for (const thing of ['spread', 'lift', 'bond', 'flat'] as const) {
        const score = worst(swatch, trial.questions, SPEAK_OF[thing]);
        const weight = thing === 'lift' ? near * bell(Math.max(1, swatch.hold), needed, WIDTHS.hold) : near;
        if (score !== undefined && weight >= LEAST_WEIGHT) found[thing].push({ score, weight });
      }
    }
  }
  return found;
}

/**
 * How much of a condition the model may learn from, for the answer on one adhesive: what is counted as evidence of this
 * very pair (`witnessesFor`) is left out of it, so that nothing counts twice.
 */
export function leftToLearn(adhesiveId: string, job: Job, catalogue: Catalogue): (condition: Condition) => number {
  const sheet = sheetOf(job, catalogue);
  return (condition) => {
    if (condition.adhesive !== adhesiveId || condition.job.substrate !== job.substrate) return 1;
    const other = sheetOf(condition.job, catalogue);
    return (
      1 -
      bell(other.grammage.middle, sheet.grammage.middle, WIDTHS.grammage) *
        bell(other.sorptivity.middle, sheet.sorptivity.middle, WIDTHS.sorptivity) *
        alikeSpread({ ...condition.method, tool: condition.job.tool }, job, catalogue)
    );
  };
}

/**
 * How much a swatch that was spread so says of what is spread as the job has it: by how far its coat lies from that of
 * the job's tool. Glue on the board, or on a sheet laid out on glass, is another way of gluing: it teaches
 * the model and counts nowhere as the same.
 */
function alikeSpread(
  { tool = USUAL_METHOD.tool, face = 'sheet', coat }: SwatchMethod,
  job: Job,
  { techniques }: Catalogue,
): number {
  if (face !== 'sheet') return 0;
  const [own, asked] = [techniques.get(tool)?.coat.middle, techniques.get(job.tool)!.coat.middle];
  const spread = coat ?? own;
  return spread === undefined ? OTHER_TOOL : bell(spread, asked, WIDTHS.coat);
}

/** 1 where two values are the same, falling with the distance of their logarithms. */
function bell(value: number, wanted: number, width: number): number {
  const distance = Math.log(Math.max(1e-6, value) / Math.max(1e-6, wanted)) / width;
  return Math.exp(-0.5 * distance * distance);
}

function worst(swatch: Swatch, questions: readonly Question[], kinds: readonly QuestionKind[]): number | undefined {
  const scores = questions.flatMap(({ id, kind }) => {
    const outcome = kinds.includes(kind) ? outcomeOf(swatch, id) : undefined;
    return outcome === undefined ? [] : [SCORE[outcome]];
  });
  return scores.length === 0 ? undefined : Math.min(...scores);
}
