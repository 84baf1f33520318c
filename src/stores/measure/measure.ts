/** The paper calculator's state. */
import { measureAnswer, type MeasureAnswer } from '../../core/measure/answer';
import { MEASURE_FIELDS } from '../../core/measure/plan';
import type { Catalogue } from '../../core/records/records';
import { createPlan, type PlanStore } from '../shared/plan';

export type MeasureStore = PlanStore<typeof MEASURE_FIELDS, MeasureAnswer> & { readonly catalogue: Catalogue };

export const createMeasure = (catalogue: Catalogue): MeasureStore => ({
  ...createPlan<typeof MEASURE_FIELDS, MeasureAnswer>({
    fields: MEASURE_FIELDS,
    answer: (plan) => measureAnswer(plan, catalogue),
  }),
  catalogue,
});
