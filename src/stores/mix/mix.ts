/** The mixing calculator's state. Which kinds of job it can answer is handed in, so that a lesson loads only its own. */
import type { MixAnswer } from '../../core/mix/answer';
import type { MixAnswerer } from '../../core/mix/any';
import { DEFAULT_MIX, MIX_FIELDS, type MixPlan } from '../../core/mix/plan';
import type { Catalogue } from '../../core/records/records';
import { createPlan, type PlanStore } from '../shared/plan';

export type MixStore = PlanStore<typeof MIX_FIELDS, MixAnswer> & {
  readonly catalogue: Catalogue;
  /** A better answerer has arrived: what was asked is answered anew. */
  readonly learn: (answer: MixAnswerer) => void;
};

export function createMix(catalogue: Catalogue, answer: MixAnswerer, start: MixPlan = DEFAULT_MIX): MixStore {
  let now = answer;
  const store = createPlan<typeof MIX_FIELDS, MixAnswer>(
    { fields: MIX_FIELDS, answer: (plan) => now(plan, catalogue) },
    start,
  );
  return {
    ...store,
    catalogue,
    learn(better) {
      now = better;
      store.recheck();
    },
  };
}
