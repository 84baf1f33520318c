/** How long a sheet slides on a mix, and on what it was made from, by the chooser's own model. */
import type { Job } from './job';
import { judge } from './judge-one';
import type { Catalogue } from './records';
import { alone, asAdhesive, type Blend } from './stretching';
import type { Percentiles } from './tally';

export interface SlipChange {
  readonly base: Percentiles;
  readonly mixed: Percentiles;
  /** middle of the mix ÷ middle of the base */
  readonly times: number;
}

/** How long the sheet of this job can be slid with the base and with the mix, s. */
export function slipChange(parts: Blend, job: Job, catalogue: Catalogue): SlipChange {
  const before = judge(alone(parts.base, catalogue), job, catalogue).slipSeconds;
  const after = judge(asAdhesive(parts, catalogue), job, catalogue).slipSeconds;
  return { base: before, mixed: after, times: after.p50 / before.p50 };
}
