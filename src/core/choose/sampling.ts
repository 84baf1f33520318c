/**
 * The many possible versions of one job: every uncertain number drawn evenly from its range, the same
 * draws for every visitor and every adhesive, so that two adhesives are compared on the same sheets.
 */
import { placingSeconds, placingTime, type Job } from './job';
import { liquidOf, type Liquid, type Uncertain } from '../adhesive/liquid';
import type { Bench } from '../joint/bench';
import type { DryPoint } from '../joint/margins';
import { ethanolEvaporationRate, evaporationRate } from '../joint/moisture';
import { at, type Range } from '../base/quantity';
import { lowDiscrepancyPoints } from '../base/random';
import type { Catalogue, DryAdhesive, Technique, WetAdhesive } from '../records/records';
import type { Sheet } from '../paper/sheet';
import { TASK_TRAITS, type Task } from '../records/task';
import { workingSeconds, type Way } from '../joint/way';

const DIMENSIONS = 14;

type Draw = (range: Range, dimension: number) => number;

function drawOf(points: Float64Array, sample: number): Draw {
  return (range, dimension) => at(range, points[sample * DIMENSIONS + dimension]!);
}

const pointCache = new Map<number, Float64Array>();

function pointsFor(samples: number): Float64Array {
  let points = pointCache.get(samples);
  if (!points) pointCache.set(samples, (points = lowDiscrepancyPoints(samples, DIMENSIONS)));
  return points;
}

/** Seconds the person needs: what they said, or what the size of the piece suggests. */
export function secondsNeeded(job: Job): number {
  return job.placeSeconds ?? placingSeconds(job.widthMm, job.heightMm);
}

/** The task of a job: to cover, where none is named. */
export const taskOf = (job: Job): Task => job.task ?? 'cover';

/** How the glue is brought on these benches: the job's own tool, on the sheet, laid at once, when left out. */
export interface Bringing {
  readonly tool: Technique;
  readonly way: Way;
}

const usualBringing = (job: Job, catalogue: Catalogue): Bringing => ({
  tool: catalogue.techniques.get(job.tool)!,
  way: { face: 'sheet', minutes: 0, workSeconds: workingSeconds(job.widthMm, job.heightMm) },
});

/** As many possible benches of a job as asked for, drawn evenly from the stated ranges. `samples` 1 to 1000. */
export function benchesOf(
  job: Job,
  sheet: Sheet,
  catalogue: Catalogue,
  samples: number,
  bringing: Bringing = usualBringing(job, catalogue),
): readonly Bench[] {
  const points = pointsFor(samples);
  const make = benchMaker(job, sheet, catalogue, bringing);
  return Array.from({ length: samples }, (_, sample) => make(drawOf(points, sample)));
}

/** The bench with everything at the middle of its range. */
export function middleBench(
  job: Job,
  sheet: Sheet,
  catalogue: Catalogue,
  bringing: Bringing = usualBringing(job, catalogue),
): Bench {
  return benchMaker(job, sheet, catalogue, bringing)((range) => range.middle);
}

/** What is the same on every version of the bench is worked out once. */
function benchMaker(job: Job, sheet: Sheet, catalogue: Catalogue, { tool, way }: Bringing): (draw: Draw) => Bench {
  const substrate = catalogue.substrates.get(job.substrate)!;
  const task = taskOf(job);
  const wants = {
    flexes: job.needs.includes('flexes'),
    damp: job.needs.includes('damp'),
    flat: job.needs.includes('flat'),
    strong: job.needs.includes('strong'),
    slow: job.needs.includes('slow'),
  };
  const evaporation = evaporationRate(job.celsius, job.humidity);
  const alcoholEvaporation = ethanolEvaporationRate(job.celsius);
  // not rounded, so that a chance moves no further than the size it comes from
  const seconds = job.placeSeconds ?? placingTime(job.widthMm, job.heightMm);
  return (draw) => ({
    face: substrate.face,
    limp: substrate.limp,
    spanMm: Math.max(job.widthMm, job.heightMm),
    squareMetres: (job.widthMm * job.heightMm) / 1e6,
    seconds,
    celsius: job.celsius,
    evaporation,
    alcoholEvaporation,
    closed: sheet.closed ?? false,
    task,
    lined: job.lined ?? TASK_TRAITS[task].lined,
    plasticBack: sheet.plasticBack ?? false,
    way,
    wants,
    paper: {
      grammage: draw(sheet.grammage, 0),
      density: draw(sheet.density, 1),
      sorptivity: draw(sheet.sorptivity, 2),
      tensileIndex: draw(sheet.tensileIndex, 3),
      wetRetention: draw(sheet.wetRetention, 4),
      contact: draw(sheet.contact, 5),
      wetExpansion: draw(sheet.wetExpansion, 6),
      openWeave: sheet.openWeave ? draw(sheet.openWeave, 1) : 0,
    },
    substrate: {
      sorptivity: draw(substrate.sorptivity, 7),
      faceStrength: draw(substrate.faceStrength, 8),
      thickness: draw(substrate.thickness, 9),
      modulus: draw(substrate.modulus, 9),
      openWeave: substrate.openWeave ? draw(substrate.openWeave, 7) : 0,
    },
    tool: { drag: draw(tool.drag, 10), coat: draw(tool.coat, 10), thickest: tool.thickest },
  });
}

const LIQUID_DIMENSION: Readonly<Record<Uncertain, number>> = { solids: 11, viscosity: 12, grab: 13, film: 13 };

/** Liquids do not depend on the job, so they are worked out once per catalogue. */
const liquidCache = new WeakMap<Catalogue, Map<string, readonly Liquid[]>>();

/** The liquid at the middle of every range. */
export function middleLiquid(adhesive: WetAdhesive, catalogue: Catalogue): Liquid {
  return cached(catalogue, `${adhesive.id} middle`, () => [liquidOf(adhesive, catalogue)])[0]!;
}

/** The same adhesive mixed `samples` times within its stated ranges. `samples` 1 to 1000. */
export function liquidsOf(adhesive: WetAdhesive, catalogue: Catalogue, samples: number): readonly Liquid[] {
  return cached(catalogue, `${adhesive.id} ${samples}`, () => {
    const points = pointsFor(samples);
    return Array.from({ length: samples }, (_, sample) => {
      const draw = drawOf(points, sample);
      return liquidOf(adhesive, catalogue, (range, of) => draw(range, LIQUID_DIMENSION[of]));
    });
  });
}

function cached(catalogue: Catalogue, key: string, make: () => readonly Liquid[]): readonly Liquid[] {
  let known = liquidCache.get(catalogue);
  if (!known) liquidCache.set(catalogue, (known = new Map()));
  let liquids = known.get(key);
  if (!liquids) known.set(key, (liquids = make()));
  return liquids;
}

/** A dry adhesive drawn `samples` times from its stated ranges. `samples` 1 to 1000. */
export function dryPointsOf(adhesive: DryAdhesive, samples: number): readonly DryPoint[] {
  const points = pointsFor(samples);
  return Array.from({ length: samples }, (_, sample) => dryPoint(adhesive, drawOf(points, sample)));
}

/** A dry adhesive with everything at the middle of its range. */
export const middleDryPoint = (adhesive: DryAdhesive): DryPoint => dryPoint(adhesive, (range) => range.middle);

function dryPoint(adhesive: DryAdhesive, draw: Draw): DryPoint {
  return {
    slip: draw(adhesive.slip, 11),
    pull: draw(adhesive.pull, 12),
    waterLoad: draw(adhesive.waterLoad, 11),
    drag: draw(adhesive.drag, 10),
    strength: draw(adhesive.strength, 13),
  };
}
