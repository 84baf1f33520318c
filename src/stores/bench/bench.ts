/** The state of the calculator that measures a bench. */
import { computed, type ReadableAtom } from 'nanostores';
import { benchAnswer, type BenchAnswer, type StripReader } from '../../core/bench/answer';
import { BENCH_FIELDS, UNMEASURED_BENCH, type BenchPlan } from '../../core/bench/plan';
import type { JobFacts } from '../../core/handover/job-facts';
import { textsOf } from '../../core/link/fields';
import { measuredOnly } from '../../core/link/read-plan-link-measured';
import type { Catalogue } from '../../core/records/records';
import { createPlan, type PlanStore } from '../shared/plan';

export type BenchStore = PlanStore<typeof BENCH_FIELDS, BenchAnswer> & {
  readonly catalogue: Catalogue;
  /** Takes a whole plan, such as the example. */
  readonly take: (plan: BenchPlan) => void;
  /** the bench, once something of it was measured */
  readonly $tells: ReadableAtom<JobFacts>;
};

export function createBench(catalogue: Catalogue): BenchStore {
  let reader: StripReader | undefined;
  const store = createPlan<typeof BENCH_FIELDS, BenchAnswer>(
    {
      fields: BENCH_FIELDS,
      unsaid: { plan: UNMEASURED_BENCH, settle: measuredOnly(BENCH_FIELDS, UNMEASURED_BENCH) },
      answer(plan) {
        const found = benchAnswer(plan, catalogue, reader);
        // The model is fetched when a strip is first to be read.
        if (!found.ok && 'loading' in found)
          void import('../../core/bench/grab').then((read) => {
            reader = read;
            store.recheck();
          });
        return found;
      },
    },
    UNMEASURED_BENCH,
  );
  return {
    ...store,
    catalogue,
    $tells: computed(store.$solved, ({ answer }): JobFacts => (answer.text === '' ? {} : { bench: answer.text })),
    take(plan) {
      store.$link.set({ dropped: [] });
      store.$texts.set(textsOf(plan, BENCH_FIELDS));
    },
  };
}
