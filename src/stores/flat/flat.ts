/** The state of the calculator of warp. */
import { LOADING } from '../../core/base/result';
import type { LengthUnit } from '../../core/base/length-text';
import { textsOf } from '../../core/link/fields';
import type { Catalogue } from '../../core/records/records';
import { flatAnswer, type FlatAnswer } from '../../core/flat/answer';
import { DEFAULT_FLAT, FLAT_FIELDS, type FlatPlan } from '../../core/flat/plan';
import { fetchBench, waitsForBench, withBenches } from '../shared/on-bench';
import { createPlan, type PlanStore } from '../shared/plan';
import { changeUnit } from '../shared/change-unit';

export type FlatStore = PlanStore<typeof FLAT_FIELDS, FlatAnswer> & {
  readonly catalogue: Catalogue;
  readonly changeUnit: (unit: LengthUnit) => void;
  /** Takes a whole plan, such as a remedy's, in the unit that the reader types in. */
  readonly take: (plan: FlatPlan) => void;
};

export function createFlat(catalogue: Catalogue, start: FlatPlan = DEFAULT_FLAT): FlatStore {
  const records = withBenches(catalogue);
  const store = createPlan<typeof FLAT_FIELDS, FlatAnswer>(
    {
      fields: FLAT_FIELDS,
      answer(plan) {
        if (!waitsForBench(plan)) return flatAnswer(plan, records);
        void fetchBench().then(() => store.recheck());
        return LOADING;
      },
    },
    start,
  );
  return {
    ...store,
    catalogue,
    changeUnit: (unit) => changeUnit(store, unit),
    take(plan) {
      store.$link.set({ dropped: [] });
      store.$texts.set(textsOf(plan, FLAT_FIELDS));
    },
  };
}
