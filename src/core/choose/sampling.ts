/**
 * The many possible versions of one job: every uncertain number drawn evenly from its range, the same
 * draws for every visitor and every adhesive, so that two adhesives are compared on the same sheets.
 */
import { DIMENSIONS, drawsOf, type Draws, type Samples } from './draws';
import { placingSeconds, placingTime, type Job } from './job';
import { liquidOf, type Liquid, type Uncertain } from '../adhesive/liquid';
import type { Bench } from '../joint/bench';
import type { DryPoint } from '../joint/margins';
import { ethanolEvaporationRate, evaporationRate } from '../joint/moisture';
import { at, type Range } from '../base/quantity';
import type { Catalogue, DryAdhesive, Technique, WetAdhesive } from '../records/records';
import type { Sheet } from '../paper/sheet';
import { TASK_TRAITS, type Task } from '../records/task';
import { workingSeconds, type Way } from '../joint/way';

type Draw = (range: Range, dimension: number) => number;

const drawOf =
  ({ points }: Draws, sample: number): Draw =>
  (range, dimension) =>
    at(range, points[sample * DIMENSIONS + dimension]!);

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

/** As many possible benches of a job as asked for, drawn evenly from the stated ranges (1 to 1000), or those of the draws. */
export function benchesOf(
  job: Job,
  sheet: Sheet,
  catalogue: Catalogue,
  samples: Samples,
  bringing: Bringing = usualBringing(job, catalogue),
): readonly Bench[] {
  const bench = benchAsked(job, sheet, catalogue, samples, bringing);
  return Array.from({ length: drawsOf(samples).count }, (_, sample) => bench(sample));
}

/** The same, each made as it is asked for by its number: most ways of bringing the glue are tried on a few of them. */
export function benchAsked(
  job: Job,
  sheet: Sheet,
  catalogue: Catalogue,
  samples: Samples,
  bringing: Bringing,
): (sample: number) => Bench {
  const draws = drawsOf(samples);
  const make = benchMaker(job, sheet, catalogue, bringing);
  return (sample) => make(drawOf(draws, sample));
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
    plastic: Boolean(sheet.plasticBack || substrate.plastic),
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

/** One mixing of an adhesive, by the number of its draw. */
export type LiquidOn = (sample: number) => Liquid;

/** Liquids do not depend on the job, so they are worked out once per catalogue and draws. */
const liquidCache = new WeakMap<Catalogue, WeakMap<object, Map<string, LiquidOn>>>();
const MIDDLE = {};

/** The liquid at the middle of every range. */
export function middleLiquid(adhesive: WetAdhesive, catalogue: Catalogue): Liquid {
  return cached(catalogue, MIDDLE, adhesive.id, () => {
    const liquid = liquidOf(adhesive, catalogue);
    return () => liquid;
  })(0);
}

/**
 * The same adhesive mixed many times within its stated ranges: as many times as asked (1 to 1000), or as the draws say;
 * each mixed when it is asked for by its number, since most adhesives are tried on a few of them.
 */
export function liquidAsked(adhesive: WetAdhesive, catalogue: Catalogue, samples: Samples): LiquidOn {
  const draws = drawsOf(samples);
  return cached(catalogue, draws, adhesive.id, () => {
    const made = new Array<Liquid>(draws.count);
    return (sample) => {
      const draw = drawOf(draws, sample);
      return (made[sample] ??= liquidOf(adhesive, catalogue, (range, of) => draw(range, LIQUID_DIMENSION[of])));
    };
  });
}

/** The same, all of them. */
export function liquidsOf(adhesive: WetAdhesive, catalogue: Catalogue, samples: Samples): readonly Liquid[] {
  const liquidOn = liquidAsked(adhesive, catalogue, samples);
  return Array.from({ length: drawsOf(samples).count }, (_, sample) => liquidOn(sample));
}

function cached(catalogue: Catalogue, of: object, id: string, make: () => LiquidOn): LiquidOn {
  let known = liquidCache.get(catalogue);
  if (!known) liquidCache.set(catalogue, (known = new WeakMap()));
  let byId = known.get(of);
  if (!byId) known.set(of, (byId = new Map()));
  let liquids = byId.get(id);
  if (!liquids) byId.set(id, (liquids = make()));
  return liquids;
}

/** A dry adhesive drawn from its stated ranges: as many times as asked (1 to 1000), or as the draws say. */
export function dryPointsOf(adhesive: DryAdhesive, samples: Samples): readonly DryPoint[] {
  const draws = drawsOf(samples);
  return Array.from({ length: draws.count }, (_, sample) => dryPoint(adhesive, drawOf(draws, sample)));
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
