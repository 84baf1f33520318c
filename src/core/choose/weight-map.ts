/** One adhesive over all papers: where on the plane of weight and absorbency it holds, and how it fails elsewhere. */
import type { Bench, Margins } from '../joint/bench';
import type { Job } from './job';
import { dryMargins, wetMargins } from '../joint/margins';
import type { Catalogue } from '../records/records';
import { middleBench, middleDryPoint, middleLiquid } from './sampling';
import { sheetOf } from '../paper/sheet';

export type Region = 'holds' | 'drags' | 'paper-gives' | 'board-gives' | 'weak-bond';

export interface WeightMap {
  /** g/m², left to right, even steps of log */
  readonly grammages: readonly number[];
  /** sorptivity, g/m² per √s, bottom to top, even steps of log */
  readonly sorptivities: readonly number[];
  /** region of [row of sorptivity][column of grammage] */
  readonly regions: readonly (readonly Region[])[];
}

export const MAP_LIMITS = { grammage: [8, 400], sorptivity: [0.5, 40] } as const;

const steps = ([low, high]: readonly [number, number], count: number): number[] =>
  Array.from({ length: count }, (_, i) => low * Math.pow(high / low, (i + 0.5) / count));

/** The map of one adhesive for a job, every other property at its middle. `columns`, `rows` 2–80. */
export function weightMap(adhesiveId: string, job: Job, catalogue: Catalogue, columns = 30, rows = 20): WeightMap {
  const adhesive = catalogue.adhesives.get(adhesiveId);
  if (!adhesive) throw new RangeError(`no adhesive called ${adhesiveId}`);
  const bench = middleBench(job, sheetOf(job, catalogue), catalogue);
  const judge = (here: Bench): Margins =>
    adhesive.form === 'wet'
      ? wetMargins(adhesive, middleLiquid(adhesive, catalogue), here)
      : dryMargins(adhesive, middleDryPoint(adhesive), here);
  const grammages = steps(MAP_LIMITS.grammage, columns);
  const sorptivities = steps(MAP_LIMITS.sorptivity, rows);
  const regions = sorptivities.map((sorptivity) =>
    grammages.map((grammage) => regionOf(judge({ ...bench, paper: { ...bench.paper, grammage, sorptivity } }))),
  );
  return { grammages, sorptivities, regions };
}

/** Neighbouring cells of one region in a row of the map, so that it is drawn as a few pieces and not as thirty. */
export function runsOf(row: readonly Region[]): { region: Region; from: number; to: number }[] {
  const runs: { region: Region; from: number; to: number }[] = [];
  row.forEach((region, i) => {
    const last = runs.at(-1);
    if (last?.region === region) last.to = i + 1;
    else runs.push({ region, from: i, to: i + 1 });
  });
  return runs;
}

/** The failure that comes first in the work: spreading, then lifting, then holding. */
function regionOf(margins: Margins): Region {
  if (margins.spread < 1) return 'drags';
  if (margins.lift < 1) return margins.gives === 'substrate' ? 'board-gives' : 'paper-gives';
  return margins.bond < 1 ? 'weak-bond' : 'holds';
}
