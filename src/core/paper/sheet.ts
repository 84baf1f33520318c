/** The paper of a job as ranges: what the person measured, and for the rest what its family is like. */
import type { JobPaper } from './asked-paper';
import { around, type Range } from '../base/quantity';
import type { Catalogue, Paper, Sizing, Surface } from '../records/records';
import { dropDoubt, sorptivityFromCobb, sorptivityFromDrop } from './sorption';

export interface Sheet extends Paper {
  /** which numbers nobody measured, in the order they matter */
  readonly assumed: readonly ('grammage' | 'caliper' | 'absorbency' | 'strength')[];
}

/** How much of the face touches, by surface. From memory. */
const CONTACT: Readonly<Record<Surface, readonly [low: number, middle: number, high: number]>> = {
  smooth: [0.95, 0.98, 1],
  textured: [0.6, 0.75, 0.88],
  embossed: [0.3, 0.45, 0.6],
};

/**
 * Cobb 60 by sizing class, g/m². From memory: hard-sized 15–25, sized 20–35, slack 40–80, unsized over
 * 100; coated papers take up about as little as hard-sized ones.
 */
const COBB: Readonly<Record<Sizing, readonly [low: number, middle: number, high: number]>> = {
  unsized: [90, 120, 200],
  'lightly-sized': [40, 56, 80],
  sized: [20, 26, 35],
  'hard-sized': [12, 19, 25],
  coated: [8, 15, 25],
};

const range = ([low, middle, high]: readonly [number, number, number], scale = 1): Range => ({
  low: low * scale,
  middle: middle * scale,
  high: high * scale,
  basis: 'from-memory',
});

/** A shop's or mill's figure is taken to be within 4 % (ISO 536 lots; from memory). */
const GRAMMAGE_TOLERANCE = 0.04;
const CALIPER_TOLERANCE = 0.06;
const COBB_TOLERANCE = 0.15;

/**
 * A sheet as the model takes it: the kind of paper with whatever was measured in its place. The kind must be in the
 * catalogue.
 */
export function sheetOf(job: { readonly paper: JobPaper }, catalogue: Catalogue): Sheet {
  const family = catalogue.papers.get(job.paper.family)!;
  const { grammage, caliper, surface, sizing, coloursRun } = job.paper;
  const weight = grammage === undefined ? family.grammage : around(grammage, GRAMMAGE_TOLERANCE, 'measured');
  const density =
    caliper === undefined
      ? family.density
      : around(Math.min(1.45, weight.middle / caliper), CALIPER_TOLERANCE, 'measured');
  const absorbency = absorbencyOf(job.paper, family);
  return {
    ...family,
    grammage: weight,
    density: caliper === undefined ? density : { ...density, high: Math.min(1.48, density.high) },
    sorptivity: absorbency ?? family.sorptivity,
    contact: surface === undefined || surface === family.surface ? family.contact : range(CONTACT[surface]),
    surface: surface ?? family.surface,
    sizing: sizing ?? family.sizing,
    coloursRun: coloursRun === undefined ? family.coloursRun : coloursRun ? 'likely' : 'unlikely',
    assumed: [
      ...(grammage === undefined ? (['grammage'] as const) : []),
      ...(absorbency?.basis === 'measured' ? [] : (['absorbency'] as const)),
      ...(caliper === undefined ? (['caliper'] as const) : []),
      'strength',
    ],
  };
}

/** From a test when there is one, else from a sizing that differs from the family's; else undefined. */
function absorbencyOf(paper: JobPaper, family: Paper): Range | undefined {
  if (paper.cobb !== undefined) return around(sorptivityFromCobb(paper.cobb), COBB_TOLERANCE, 'measured');
  if (paper.dropSeconds !== undefined) {
    const middle = sorptivityFromDrop(paper.dropSeconds);
    const doubt = dropDoubt(paper.dropSeconds);
    return { low: middle / doubt, middle, high: middle * doubt, basis: 'measured' };
  }
  if (paper.sizing !== undefined && paper.sizing !== family.sizing) {
    // A kind of paper sized otherwise keeps its own absorbency, moved as far as the two classes lie apart.
    const { low, middle, high } = family.sorptivity;
    const times = COBB[paper.sizing][1] / COBB[family.sizing][1];
    return range([low, middle, high], times);
  }
  return undefined;
}
