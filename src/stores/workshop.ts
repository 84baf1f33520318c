/** The workshop sheet's state. */
import { choose } from '../core/chooser';
import { cutAnswer } from '../core/cut-answer';
import { encodeJob } from '../core/encode-job';
import type { LengthUnit } from '../core/length-text';
import type { Catalogue } from '../core/records';
import { workshopAnswer, type SlowParts, type WorkshopAnswer } from '../core/workshop-answer';
import { askedOfWorkshop, DEFAULT_WORKSHOP, WORKSHOP_SPECS, type WorkshopPlan } from '../core/workshop-plan';
import { changeUnit } from './change-unit';
import { createPlan, type PlanStore } from './plan';
import { remembering } from './remembering';

export type WorkshopStore = PlanStore<typeof WORKSHOP_SPECS, WorkshopAnswer> & {
  readonly catalogue: Catalogue;
  readonly changeUnit: (unit: LengthUnit) => void;
};

/** The slow parts, which remember: most edits leave the sheets alone, or what the chooser is asked. */
export const rememberingParts = (chooser: SlowParts['choose']): SlowParts => ({
  cut: remembering((plan) => Object.values(plan).join('\n'), cutAnswer),
  choose: remembering(encodeJob, chooser),
});

export function createWorkshop(
  catalogue: Catalogue,
  start: WorkshopPlan = DEFAULT_WORKSHOP,
  slow: SlowParts = rememberingParts((job) => choose(job, catalogue)),
): WorkshopStore {
  const store = createPlan<typeof WORKSHOP_SPECS, WorkshopAnswer>(
    {
      specs: WORKSHOP_SPECS,
      usual: DEFAULT_WORKSHOP,
      asked: askedOfWorkshop,
      answer: (plan) => workshopAnswer(plan, catalogue, slow),
    },
    start,
  );
  return { ...store, catalogue, changeUnit: (unit) => changeUnit(store, unit) };
}
