/** The answer to a mixing plan, whichever kind of job it is. */
import type { MixAnswer } from './answer';
import { mixByCorrecting, mixByDiluting } from './jar';
import { mixPaste } from './paste';
import type { MixPlan } from './plan';
import { mixPowder } from './powder';
import type { Catalogue } from '../records/records';
import { fail, type Result } from '../base/result';

export type MixAnswerer = (plan: MixPlan, catalogue: Catalogue) => Result<MixAnswer>;

/** `stretched` answers the one kind that asks the chooser's model; until it is there such a plan has no answer, and no fault either. */
export const mixAnswerer =
  (stretched: MixAnswerer = () => fail([])): MixAnswerer =>
  (plan, catalogue) => {
    switch (plan.kind) {
      case 'powder':
        return mixPowder(plan, catalogue);
      case 'paste':
        return mixPaste(plan, catalogue);
      case 'stretch':
        return stretched(plan, catalogue);
      case 'dilute':
        return mixByDiluting(plan, catalogue);
      case 'correct':
        return mixByCorrecting(plan, catalogue);
    }
  };
