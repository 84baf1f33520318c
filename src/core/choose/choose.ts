/** The whole answer: the order, and for each adhesive its reasons, its technique and its cautions. */
import type { DrawsFor, Samples } from './draws';
import type { Placement, Ranked, Reason } from './finding';
import { settleJob, type Job, type SettledJob } from './job';
import { atOnce, type InTurns } from '../base/turns';
import { rankInTurns, SAMPLES } from './ranking';
import { reasonsFor } from './reasons';
import type { Catalogue } from '../records/records';
import { layingCautions } from '../adhesive/hazards';
import { gravestFirst, type Caution } from '../safety/hazards';
import { stepsFor } from './technique';

export interface HowTo extends Placement {
  /** what to do, in order, each a sentence */
  readonly steps: readonly string[];
}

export interface Choice extends Ranked {
  /** the weightiest first */
  readonly reasons: readonly Reason[];
  readonly technique: HowTo;
  /** the gravest first */
  readonly cautions: readonly Caution[];
}

/** Every adhesive of the catalogue for a job that is settled, best first, stopping now and then; `samples` as for `rankInTurns`. */
export function* chooseInTurns(
  job: SettledJob,
  catalogue: Catalogue,
  samples: Samples | DrawsFor = SAMPLES,
): InTurns<readonly Choice[]> {
  const choices: Choice[] = [];
  for (const ranked of yield* rankInTurns(job, catalogue, samples)) {
    yield;
    choices.push(toldOf(ranked, catalogue));
  }
  return choices;
}

/** One place of the order with its reasons, its technique and its cautions. */
export const toldOf = (ranked: Ranked, catalogue: Catalogue): Choice => ({
  ...ranked,
  reasons: reasonsFor(ranked.facts),
  technique: { ...ranked.placement, steps: stepsFor(ranked.facts, ranked.placement, catalogue) },
  cautions: cautionsOf(ranked, catalogue),
});

/** Nothing is glued where the answer is refused: then only the reason for that stands. */
function cautionsOf({ verdict, facts: { fit, adhesive, job } }: Ranked, catalogue: Catalogue): readonly Caution[] {
  const ground = catalogue.substrates.get(job.substrate)!;
  return gravestFirst([...fit.cautions, ...(verdict === 'refused' ? [] : layingCautions(adhesive, ground, catalogue))]);
}

/**
 * The same in one go, for any job. Never throws: a job with unusable parts is answered with those parts at their
 * defaults (see `settleJob`, which names them).
 */
export const choose = (job: Job, catalogue: Catalogue, samples: Samples | DrawsFor = SAMPLES): readonly Choice[] =>
  atOnce(chooseInTurns(settleJob(job, catalogue).job, catalogue, samples));
