/** The workshop sheet's state. */
import { choose } from '../../core/choose/choose';
import { cutAnswer } from '../../core/cut/answer';
import { cutTailFor } from '../../core/cut/plan';
import { encodeJob } from '../../core/choose/write-link';
import type { LengthUnit } from '../../core/base/length-text';
import type { Catalogue } from '../../core/records/records';
import { classAnswer, type SlowParts, type ClassAnswer } from '../../core/class/answer';
import { DEFAULT_CLASS, CLASS_FIELDS, type ClassPlan } from '../../core/class/plan';
import { changeUnit } from '../shared/change-unit';
import { createPlan, type PlanStore } from '../shared/plan';
import { remembering } from '../shared/memoize';

export type ClassStore = PlanStore<typeof CLASS_FIELDS, ClassAnswer> & {
  readonly catalogue: Catalogue;
  readonly changeUnit: (unit: LengthUnit) => void;
};

/** The slow parts, which remember: most edits leave the sheets alone, or what the chooser is asked. */
export const rememberingParts = (chooser: SlowParts['choose']): SlowParts => ({
  cut: remembering(cutTailFor, cutAnswer),
  choose: remembering(encodeJob, chooser),
});

export function createClass(
  catalogue: Catalogue,
  start: ClassPlan = DEFAULT_CLASS,
  slow: SlowParts = rememberingParts((job) => choose(job, catalogue)),
): ClassStore {
  const store = createPlan<typeof CLASS_FIELDS, ClassAnswer>(
    {
      fields: CLASS_FIELDS,
      answer: (plan) => classAnswer(plan, catalogue, slow),
    },
    start,
  );
  return { ...store, catalogue, changeUnit: (unit) => changeUnit(store, unit) };
}
