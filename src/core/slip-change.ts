/** How long a sheet slides on a mix, and on what it was made from, by the chooser's own model. */
import { DEFAULT_JOB } from './job';
import { judge } from './judge-one';
import { readPaper } from './paper-text';
import type { Catalogue } from './records';
import { secondsNeeded } from './sampling';
import { alone, asAdhesive, type Blend } from './stretching';
import type { Percentiles } from './tally';

/** The bench a mix is tried on: an A5 piece on binder's board, as the chooser starts with. */
export interface SlipBench {
  /** a paper's text (paper-text.ts) and the id of a technique */
  readonly paper: string;
  readonly tool: string;
  readonly celsius: number;
}

export interface SlipChange {
  readonly base: Percentiles;
  readonly mixed: Percentiles;
  /** middle of the mix ÷ middle of the base */
  readonly times: number;
  /** seconds it takes to place such a piece */
  readonly neededSeconds: number;
}

/** How long the sheet on this bench can be slid with the base and with the mix, s. */
export function slipChange(parts: Blend, bench: SlipBench, catalogue: Catalogue): SlipChange {
  const job = { ...DEFAULT_JOB, paper: readPaper(bench.paper)!, tool: bench.tool, celsius: bench.celsius };
  const before = judge(alone(parts.base, catalogue), job, catalogue).slipSeconds;
  const after = judge(asAdhesive(parts, catalogue), job, catalogue).slipSeconds;
  return { base: before, mixed: after, times: after.p50 / before.p50, neededSeconds: secondsNeeded(job) };
}
