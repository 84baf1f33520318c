/** The mixing calculator's state. */
import { mixAnswer, type MixAnswer } from '../core/mix-answer';
import { askedIn, DEFAULT_MIX, MIX_SPECS, type MixPlan } from '../core/mix-plan';
import type { Catalogue } from '../core/records';
import { createPlan, type PlanStore } from './plan';

export type MixStore = PlanStore<typeof MIX_SPECS, MixAnswer> & { readonly catalogue: Catalogue };

export const createMixing = (catalogue: Catalogue, start: MixPlan = DEFAULT_MIX): MixStore => ({
  ...createPlan<typeof MIX_SPECS, MixAnswer>(
    { specs: MIX_SPECS, usual: DEFAULT_MIX, asked: askedIn, answer: (plan) => mixAnswer(plan, catalogue) },
    start,
  ),
  catalogue,
});
