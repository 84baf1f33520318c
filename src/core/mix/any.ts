/** The answer to a mixing plan, whichever kind of job it is. */
import type { MixAnswer } from './answer';
import { mixByCorrecting, mixByDiluting } from './jar';
import { mixPaste } from './paste';
import type { MixPlan } from './plan';
import { mixPowder } from './powder';
import type { Catalogue } from '../records/records';
import { LOADING, type Loading, type Result } from '../base/result';

export type MixAnswerer = (plan: MixPlan, catalogue: Catalogue) => Result<MixAnswer> | Loading;

/** Kinds of job are answered each by its own file; `stretched` answers the one that asks the chooser's model. */
export const mixAnswerer =
  <R extends Result<MixAnswer> | Loading>(stretched: (plan: MixPlan, catalogue: Catalogue) => R) =>
  (plan: MixPlan, catalogue: Catalogue): Result<MixAnswer> | R => {
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

/** Answers every kind but the one that asks the chooser's model, which is still to come. */
export const mixWithoutModel = mixAnswerer((): Loading => LOADING);
