/**
 * The versions of a job that an answer is tried on: where each uncertain number lies in its range, and which set of
 * constants goes with it. An answer takes them evenly from the ranges and from the ensemble; swatches of one's own
 * choose among them (see the room `learn`).
 */
import { lowDiscrepancyPoints } from '../base/random';
import type { Margins } from '../joint/bench';
import type { BondConstants } from '../joint/constants';
import { ENSEMBLE, SETS } from '../joint/ensemble';

/** Uncertain numbers of a job. The first `PAPER_DIMENSIONS` are the sheet's own; the rest are the bench's. */
export const DIMENSIONS = 14;
export const PAPER_DIMENSIONS = 7;

export interface Draws {
  readonly count: number;
  /** place in its range, 0–1, of number d of draw i at i·DIMENSIONS + d */
  readonly points: Float64Array;
  /** one for each draw */
  readonly constants: readonly BondConstants[];
  /** what this bench makes of the model's margins for good, by the kind of film; as the model says when left out */
  readonly hand?: (kind: string) => Hand;
}

/** Factors on two margins; 1 is as the model says. */
export interface Hand {
  readonly spread: number;
  readonly lift: number;
}

/** The margins as they come out in this hand. */
export const inHand = (margins: Margins, { spread, lift }: Hand): Margins => ({
  ...margins,
  spread: margins.spread * spread,
  lift: margins.lift * lift,
});

/** Draws, or how many of the even ones: 1–1000. */
export type Samples = number | Draws;

const even = new Map<number, Draws>();

/** Draws spread evenly over the ranges, each with the next set of the ensemble; the same for the same count. */
export function drawsOf(samples: Samples): Draws {
  if (typeof samples !== 'number') return samples;
  let draws = even.get(samples);
  if (!draws) {
    const constants = Array.from({ length: samples }, (_, draw) => ENSEMBLE[draw % SETS]!);
    even.set(samples, (draws = { count: samples, points: lowDiscrepancyPoints(samples, DIMENSIONS), constants }));
  }
  return draws;
}

/** Draws for each adhesive by its id, where what is known differs between them. */
export type DrawsFor = (adhesiveId: string) => Samples;
