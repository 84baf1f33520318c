/** The whole answer: the order, and for each adhesive its reasons, its technique and its cautions. */
import type { DrawsFor, Samples } from './draws';
import type { Placement, Ranked, Reason } from './finding';
import type { Job } from './job';
import { rank, SAMPLES } from './ranking';
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
 * Every adhesive of the catalogue for any job, best first. Never throws: a job with unusable parts is answered with those
 * parts at their defaults (see `settleJob`, which names them). `samples` as for `rankInTurns`.
 */
export const choose = (job: Job, catalogue: Catalogue, samples: Samples | DrawsFor = SAMPLES): readonly Choice[] =>
  rank(job, catalogue, samples).map((ranked) => toldOf(ranked, catalogue));
