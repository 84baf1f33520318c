/** The workshop sheet's state. */
import { cutAnswer, type CutAnswer } from '../core/cut-answer';
import type { CutPlan } from '../core/cut-plan';
import type { LengthUnit } from '../core/length-text';
import type { Catalogue } from '../core/records';
import type { Result } from '../core/result';
import { workshopAnswer, type WorkshopAnswer } from '../core/workshop-answer';
import { askedOfWorkshop, DEFAULT_WORKSHOP, WORKSHOP_SPECS, type WorkshopPlan } from '../core/workshop-plan';
import { changeUnit } from './change-unit';
import { createPlan, type PlanStore } from './plan';

export type WorkshopStore = PlanStore<typeof WORKSHOP_SPECS, WorkshopAnswer> & {
  readonly catalogue: Catalogue;
  readonly changeUnit: (unit: LengthUnit) => void;
};

/** Most edits leave the sheets alone, and planning their cuts is the slow part: the last plan is remembered. */
function rememberingCutter(): (plan: CutPlan) => Result<CutAnswer> {
  let last: { readonly key: string; readonly answer: Result<CutAnswer> } | undefined;
  return (plan) => {
    const key = Object.values(plan).join('\n');
    if (last?.key !== key) last = { key, answer: cutAnswer(plan) };
    return last.answer;
  };
}

export function createWorkshop(catalogue: Catalogue, start: WorkshopPlan = DEFAULT_WORKSHOP): WorkshopStore {
  const cutter = rememberingCutter();
  const store = createPlan<typeof WORKSHOP_SPECS, WorkshopAnswer>(
    {
      specs: WORKSHOP_SPECS,
      usual: DEFAULT_WORKSHOP,
      asked: askedOfWorkshop,
      answer: (plan) => workshopAnswer(plan, catalogue, cutter),
    },
    start,
  );
  return { ...store, catalogue, changeUnit: (unit) => changeUnit(store, unit) };
}
