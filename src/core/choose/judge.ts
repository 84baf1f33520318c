/**
 * One adhesive on one job by the chooser's model: the same benches, liquids and margins, without the rest
 * of the shelf or what a person may need of it. Quick enough for every key that is pressed.
 */
import type { Job } from './job';
import { drawsOf } from './draws';
import { wetMargins } from '../joint/margins';
import { recordsOn } from '../records/kinds';
import type { Catalogue, WetAdhesive } from '../records/records';
import { benchesOf, liquidsOf } from './sampling';
import { sheetOf } from '../paper/sheet';
import { tally, type Tally } from './tally';

/** As many draws as the chooser takes (see ranking.ts), each with its own constants. */
const DRAWS = 64;

/** Chances, margins and slip times. The job's paper, substrate and tool must be in the catalogue. */
export function judge(adhesive: WetAdhesive, job: Job, records: Catalogue): Tally {
  const catalogue = recordsOn(job.bench, records);
  const draws = drawsOf(DRAWS);
  const benches = benchesOf(job, sheetOf(job, catalogue), catalogue, draws);
  // Liquids are kept by catalogue and id, and a mix that is being tried has no id of its own: a fresh catalogue, then.
  const liquids = liquidsOf(adhesive, { ...catalogue }, draws);
  return tally((draw) => wetMargins(adhesive, liquids[draw]!, benches[draw]!, draws.constants[draw]!), DRAWS);
}
