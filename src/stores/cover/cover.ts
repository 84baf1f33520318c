/** The coverage calculator's state. */
import { coverAnswer, type CoverAnswer, type FlatReckoner } from '../../core/cover/answer';
import { COVER_FIELDS, DEFAULT_COVER, type CoverPlan } from '../../core/cover/plan';
import type { LengthUnit } from '../../core/base/length-text';
import { LOADING } from '../../core/base/result';
import type { Catalogue } from '../../core/records/records';
import { fetchBench, waitsForBench, withBenches } from '../shared/on-bench';
import { changeUnit } from '../shared/change-unit';
import { createPlan, type PlanStore } from '../shared/plan';

export type CoverStore = PlanStore<typeof COVER_FIELDS, CoverAnswer> & {
  readonly catalogue: Catalogue;
  /** What reckons the water has arrived: the answer is made anew. */
  readonly learn: (flat: FlatReckoner) => void;
  /** Another unit: lengths that could be read are written anew in it, the others stay as typed. */
  readonly changeUnit: (unit: LengthUnit) => void;
};

export function createCover(catalogue: Catalogue, flat?: FlatReckoner, start: CoverPlan = DEFAULT_COVER): CoverStore {
  let reckoner = flat;
  const records = withBenches(catalogue);
  const store = createPlan<typeof COVER_FIELDS, CoverAnswer>(
    {
      fields: COVER_FIELDS,
      answer(plan) {
        if (!waitsForBench(plan)) return coverAnswer(plan, records, reckoner);
        void fetchBench().then(() => store.recheck());
        return LOADING;
      },
    },
    start,
  );
  return {
    ...store,
    catalogue,
    learn(better) {
      reckoner = better;
      store.recheck();
    },
    changeUnit: (unit) => changeUnit(store, unit),
  };
}
