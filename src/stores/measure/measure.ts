/** The paper calculator's state. */
import { computed, type ReadableAtom } from 'nanostores';
import type { JobFacts } from '../../core/handover/job-facts';
import { textsOf } from '../../core/link/fields';
import { measuredOnly } from '../../core/link/read-plan-link-measured';
import { measureAnswer, type MeasureAnswer } from '../../core/measure/answer';
import { isMeasured, MEASURE_FIELDS, UNMEASURED, type MeasurePlan } from '../../core/measure/plan';
import type { Catalogue } from '../../core/records/records';
import { createPlan, type PlanStore } from '../shared/plan';

export type MeasureStore = PlanStore<typeof MEASURE_FIELDS, MeasureAnswer> & {
  readonly catalogue: Catalogue;
  /** Takes a whole plan, such as the example. */
  readonly take: (plan: MeasurePlan) => void;
  /** the paper, once something of it was measured or it has a name */
  readonly $tells: ReadableAtom<JobFacts>;
};

export function createMeasure(catalogue: Catalogue): MeasureStore {
  const store = createPlan<typeof MEASURE_FIELDS, MeasureAnswer>(
    {
      fields: MEASURE_FIELDS,
      answer: (plan) => measureAnswer(plan, catalogue),
      unsaid: { plan: UNMEASURED, settle: measuredOnly(MEASURE_FIELDS, UNMEASURED) },
    },
    UNMEASURED,
  );
  return {
    ...store,
    catalogue,
    $tells: computed(store.$solved, ({ plan, answer }): JobFacts =>
      isMeasured(plan) || answer.paper.name !== undefined ? { paper: answer.text } : {},
    ),
    take(plan) {
      store.$link.set({ dropped: [] });
      store.$texts.set(textsOf(plan, MEASURE_FIELDS));
    },
  };
}
