/** How long a sheet slides on a mix, and on what it was made from, by the chooser's own model. */
import { DEFAULT_JOB } from '../choose/job';
import { judge } from '../choose/judge';
import { readPaper } from '../paper/own-paper';
import type { Catalogue } from '../records/records';
import { secondsNeeded } from '../choose/sampling';
import { alone, asAdhesive, type Blend } from '../adhesive/blend';
import type { SlipBench, SlipChange } from '../mix/slip';

/** How long the sheet on this bench can be slid with the base and with the mix, s. */
export function slipChange(parts: Blend, bench: SlipBench, catalogue: Catalogue): SlipChange {
  const job = { ...DEFAULT_JOB, paper: readPaper(bench.paper)!, tool: bench.tool, celsius: bench.celsius };
  const before = judge(alone(parts.base, catalogue), job, catalogue).slipSeconds;
  const after = judge(asAdhesive(parts, catalogue), job, catalogue).slipSeconds;
  return { base: before, mixed: after, times: after.p50 / before.p50, neededSeconds: secondsNeeded(job) };
}
