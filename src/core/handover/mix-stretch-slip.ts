/** The whole answer to a stretched mix, the chooser's model and all. Loaded when it is asked for. */
import type { MixAnswer } from '../mix/answer';
import type { MixPlan } from '../mix/plan';
import { mixStretched } from '../mix/stretch';
import type { Catalogue } from '../records/records';
import type { Result } from '../base/result';
import { slipChange } from './slip-change';

/** The answer to a stretched mix with how long a sheet slides on it, by the chooser's model. */
export const mixStretchedWithSlip = (plan: MixPlan, catalogue: Catalogue): Result<MixAnswer> =>
  mixStretched(plan, catalogue, slipChange);
