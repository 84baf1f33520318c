/** The project calculator's state, and the link that carries its glued pieces to the coverage calculator. */
import { computed, type ReadableAtom } from 'nanostores';
import type { LengthUnit } from '../../core/base/length-text';
import { makeAnswer, type MakeAnswer } from '../../core/make/answer';
import { DEFAULT_MAKE, MAKE_FIELDS, type MakePlan } from '../../core/make/fields';
import { coverTailFor } from '../../core/handover/make-to-cover';
import { cutTailOf } from '../../core/handover/make-to-cut';
import { encodePlan } from '../../core/link/plan-link';
import { changeUnit } from '../shared/change-unit';
import { createPlan, type PlanStore } from '../shared/plan';

export type MakeStore = PlanStore<typeof MAKE_FIELDS, MakeAnswer> & {
  readonly changeUnit: (unit: LengthUnit) => void;
  /** tails of the links to the cutting plan and to the workshop sheet */
  readonly $cutTail: ReadableAtom<string>;
  readonly $classTail: ReadableAtom<string>;
  /** tail of the link to the coverage calculator */
  readonly $coverTail: ReadableAtom<string>;
};

export function createMake(start: MakePlan = DEFAULT_MAKE): MakeStore {
  const store = createPlan<typeof MAKE_FIELDS, MakeAnswer>({ fields: MAKE_FIELDS, answer: makeAnswer }, start);
  return {
    ...store,
    changeUnit: (unit) => changeUnit(store, unit),
    $cutTail: computed(store.$solved, ({ plan, answer }) => cutTailOf(plan, answer.pieces)),
    // The workshop sheet keeps a project under the same keys.
    $classTail: computed(store.$solved, ({ plan }) => encodePlan(plan, MAKE_FIELDS)),
    $coverTail: computed(store.$solved, ({ plan, answer }) => coverTailFor(plan, answer.pieces)),
  };
}
