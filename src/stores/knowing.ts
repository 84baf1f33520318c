/** The paper calculator's state. */
import { knowAnswer, type KnowAnswer } from '../core/know-answer';
import { askedToKnow, DEFAULT_KNOW, KNOW_SPECS } from '../core/know-plan';
import type { Catalogue } from '../core/records';
import { createPlan, type PlanStore } from './plan';

export type KnowStore = PlanStore<typeof KNOW_SPECS, KnowAnswer> & { readonly catalogue: Catalogue };

export const createKnowing = (catalogue: Catalogue): KnowStore => ({
  ...createPlan<typeof KNOW_SPECS, KnowAnswer>({
    specs: KNOW_SPECS,
    usual: DEFAULT_KNOW,
    asked: askedToKnow,
    answer: (plan) => knowAnswer(plan, catalogue),
  }),
  catalogue,
});
