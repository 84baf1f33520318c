/** The paper calculator's state. */
import { textsOf } from '../../core/link/fields';
import { measureAnswer, type MeasureAnswer } from '../../core/measure/answer';
import { MEASURE_FIELDS, UNMEASURED, type MeasurePlan } from '../../core/measure/plan';
import type { Catalogue } from '../../core/records/records';
import { createPlan, type PlanStore } from '../shared/plan';

export type MeasureStore = PlanStore<typeof MEASURE_FIELDS, MeasureAnswer> & {
  readonly catalogue: Catalogue;
  /** Takes a whole plan, such as the example. */
  readonly take: (plan: MeasurePlan) => void;
};

export function createMeasure(catalogue: Catalogue): MeasureStore {
  const store = createPlan<typeof MEASURE_FIELDS, MeasureAnswer>(
    { fields: MEASURE_FIELDS, answer: (plan) => measureAnswer(plan, catalogue) },
    UNMEASURED,
  );
  return {
    ...store,
    catalogue,
    take(plan) {
      store.$link.set({ dropped: [] });
      store.$texts.set(textsOf(plan, MEASURE_FIELDS));
    },
  };
}
