/** The link that carries a coverage's amount to the mixing calculator. */
import { computed, type ReadableAtom } from 'nanostores';
import type { JobFacts } from '../../core/handover/job-facts';
import { mixPlanFor } from '../../core/handover/cover-to-mix';
import { MIX_FIELDS } from '../../core/mix/plan';
import { encodePlan } from '../../core/link/plan-link';
import type { CoverStore } from '../cover/cover';

/** Undefined where the adhesive is used as it comes. */
export const mixTailOf = ({ $solved, catalogue }: CoverStore): ReadableAtom<string | undefined> =>
  computed($solved, ({ plan, answer }) => {
    const mix = mixPlanFor(plan, answer.buyMillilitres, catalogue);
    return mix && encodePlan(mix, MIX_FIELDS);
  });

/** The same for the other rooms to know of. */
export const mixTold = (store: CoverStore): ReadableAtom<JobFacts> =>
  computed(mixTailOf(store), (mix): JobFacts => (mix === undefined ? {} : { mix }));
