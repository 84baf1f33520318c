/** The project calculator's state, and its pieces as other rooms take them. */
import { computed, type ReadableAtom } from 'nanostores';
import type { LengthUnit } from '../../core/base/length-text';
import { makeAnswer, type MakeAnswer } from '../../core/make/answer';
import { DEFAULT_MAKE, MAKE_FIELDS, type MakePlan } from '../../core/make/fields';
import type { JobFacts } from '../../core/handover/job-facts';
import { coverTailFor } from '../../core/handover/make-to-cover';
import { cutTailOf } from '../../core/handover/make-to-cut';
import { changeUnit } from '../shared/change-unit';
import { createPlan, type PlanStore } from '../shared/plan';

export type MakeStore = PlanStore<typeof MAKE_FIELDS, MakeAnswer> & {
  readonly changeUnit: (unit: LengthUnit) => void;
  /** the pieces as the cutting plan and the coverage calculator take them */
  readonly $tells: ReadableAtom<JobFacts>;
};

export function createMake(start: MakePlan = DEFAULT_MAKE): MakeStore {
  const store = createPlan<typeof MAKE_FIELDS, MakeAnswer>({ fields: MAKE_FIELDS, answer: makeAnswer }, start);
  return {
    ...store,
    changeUnit: (unit) => changeUnit(store, unit),
    $tells: computed(store.$solved, ({ plan, answer }) => ({
      'cover pieces': coverTailFor(plan, answer.pieces),
      'cut pieces': cutTailOf(plan, answer.pieces),
    })),
  };
}
