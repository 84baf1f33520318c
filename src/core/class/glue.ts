/** The adhesive of a class: how much of it, and its batches. */
import { coverAnswer, type CoverAnswer } from '../cover/answer';
import { DEFAULT_COVER, type CoverPlan } from '../cover/plan';
import { mixPlanFor } from '../handover/cover-to-mix';
import type { MixAnswer } from '../mix/answer';
import { mixAnswerer } from '../mix/any';
import { mixStretched } from '../mix/stretch';
import { batchFor } from '../mix/words';
import { roundUpForJug } from '../base/rounding';
import type { MixPlan } from '../mix/plan';
import type { MakePiece } from '../make/piece';
import { coverPieces } from '../handover/make-to-cover';
import type { Catalogue } from '../records/records';
import type { Result } from '../base/result';
import { kitsOf, type ClassPlan } from './plan';

export interface Batch {
  readonly plan: MixPlan;
  readonly mix: MixAnswer;
}

/** What the class covers, as the calculator of how much glue asks for it. */
export const classCover = (plan: ClassPlan, pieces: readonly MakePiece[]): CoverPlan => ({
  ...DEFAULT_COVER,
  thing: 'own',
  unit: plan.unit,
  pieces: coverPieces(pieces),
  adhesive: plan.adhesive,
  tool: plan.tool,
  paper: plan.paper,
  makers: kitsOf(plan),
  loss: plan.loss,
  bench: plan.bench,
});

/** How much glue the class takes. */
export const classCoverage = (cover: CoverPlan, catalogue: Catalogue): Result<CoverAnswer> =>
  coverAnswer(cover, catalogue);

/** The mix itself, and before it the jelly or paste that goes into it; none where the adhesive is used as it comes. */
export function batchesFor(cover: CoverPlan, millilitres: number, catalogue: Catalogue): readonly Batch[] {
  const plan = mixPlanFor(cover, millilitres, catalogue);
  const made = plan && batch(plan, catalogue);
  if (!plan || !made) return [];
  if (plan.kind !== 'stretch') return [made];
  const share = plan.extenderParts / (plan.baseParts + plan.extenderParts);
  const added = batchFor(plan.need, plan.loss) * share;
  const before = mixPlanFor({ ...cover, adhesive: plan.extender }, roundUpForJug(batchFor(added, 5)), catalogue);
  const first = before && batch(before, catalogue);
  return first ? [first, made] : [made];
}

const mixAnswer = mixAnswerer((plan, catalogue) => mixStretched(plan, catalogue));

function batch(plan: MixPlan, catalogue: Catalogue): Batch | undefined {
  const mix = mixAnswer(plan, catalogue);
  return mix.ok ? { plan, mix: mix.value } : undefined;
}
