/** The state of the calculator of warp. */
import type { LengthUnit } from '../core/length-text';
import { textsOf } from '../core/plan-fields';
import type { Catalogue } from '../core/records';
import { warpAnswer, type WarpAnswer } from '../core/warp-answer';
import { askedOfWarp, DEFAULT_WARP, WARP_SPECS, type WarpPlan } from '../core/warp-plan';
import { createPlan, type PlanStore } from './plan';
import { changeUnit } from './change-unit';

export type WarpStore = PlanStore<typeof WARP_SPECS, WarpAnswer> & {
  readonly catalogue: Catalogue;
  readonly changeUnit: (unit: LengthUnit) => void;
  /** Takes a whole plan, such as a remedy's, in the unit that the reader types in. */
  readonly take: (plan: WarpPlan) => void;
};

export function createWarping(catalogue: Catalogue, start: WarpPlan = DEFAULT_WARP): WarpStore {
  const store = createPlan<typeof WARP_SPECS, WarpAnswer>(
    { specs: WARP_SPECS, usual: DEFAULT_WARP, asked: askedOfWarp, answer: (plan) => warpAnswer(plan, catalogue) },
    start,
  );
  return {
    ...store,
    catalogue,
    changeUnit: (unit) => changeUnit(store, unit),
    take(plan) {
      store.$link.set({ dropped: [] });
      store.$texts.set(textsOf(plan, WARP_SPECS));
    },
  };
}
