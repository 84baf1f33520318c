/** Whether glue comes through the sheet, or through the cloth it goes on, and shows. */
import { clamp } from '../base/quantity';

export interface Striking {
  /** of the sheet: g/cm³, and share of its face that is holes */
  readonly density: number;
  readonly openWeave: number;
  /** share of the sheet's pores that the coat fills before it grabs, 0–1 */
  readonly filled: number;
  /** how easily the whole liquid runs, 0–1 (see `mobility`), and g/m² of it */
  readonly runs: number;
  readonly coat: number;
  /** share of the film that was particles */
  readonly particleSolids: number;
  /** share of the face below that is holes */
  readonly groundWeave: number;
}

/** A sheet this dense lets no particles through; one this open lets them all. From memory: the pores of felted tissue are tens of times those of a sized sheet. */
const CLOSE_SHEET = 0.65;
const OPEN_SHEET = 0.25;
/** Coat for which the run through a weave is reckoned, g/m². */
const USUAL_COAT = 50;
/** How far a liquid runs through a weave, against pores that are half filled. Estimate. */
const THROUGH_HOLES = 4;
/** Share at which it comes through as often as not. Estimate. */
const HALF_WAY = 0.3;

/** What keeps the film from the face ÷ what drives it there: 1 where it comes through as often as not. */
export function strikeMargin(through: Striking): number {
  const lets = clamp((CLOSE_SHEET - through.density) / (CLOSE_SHEET - OPEN_SHEET), 0, 1);
  const soaked = through.filled * (1 - through.particleSolids * (1 - lets)) * 0.35;
  const weave = Math.max(through.openWeave, through.groundWeave);
  const run = THROUGH_HOLES * weave * through.runs * (through.coat / USUAL_COAT);
  return HALF_WAY / (soaked + run);
}
