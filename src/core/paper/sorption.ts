/** How fast a sheet drinks: sorptivity from a Cobb test or a drop test, and uptake over time. */
import { mustBePositive, mustBeWithin } from '../base/result';

/**
 * Water that the wetted spot holds when a drop has gone in, g/m², for a sheet nobody has measured.
 * Common practice, no source: it puts a 60 s drop at the absorbency of ordinary sized writing paper.
 */
const ORDINARY_SPOT_LOAD = 20;

/** Above this many seconds a drop dries as much as it sinks in, and says nothing. Published: scope of ASTM D824. */
export const LONGEST_DROP_SECONDS = 120;

/**
 * Sorptivity, g/m² per √s, from the water taken up in a 60-second Cobb test, g/m².
 * Lucas–Washburn form: uptake = sorptivity × √time. Valid 1–400 g/m². Source: ISO 535 for the test.
 */
export function sorptivityFromCobb(gsm60: number): number {
  mustBeWithin('gsm60', gsm60, 0.1, 1000);
  return gsm60 / Math.sqrt(60);
}

/**
 * Sorptivity, g/m² per √s, from the seconds a drop of water takes to sink in (0.1–120 s).
 * Give `dropMillilitres` and the final `stainMm` across to work out what the stain holds; otherwise an
 * ordinary spot is assumed. An estimate: good to a factor of about two. Throws RangeError outside the range.
 */
export function sorptivityFromDrop(
  seconds: number,
  measured: { dropMillilitres?: number; stainMm?: number } = {},
): number {
  mustBeWithin('seconds', seconds, 0.1, LONGEST_DROP_SECONDS);
  const { dropMillilitres, stainMm } = measured;
  if (dropMillilitres === undefined || stainMm === undefined) return ORDINARY_SPOT_LOAD / Math.sqrt(seconds);
  mustBePositive('dropMillilitres', dropMillilitres);
  mustBePositive('stainMm', stainMm);
  const squareMetres = (Math.PI * (stainMm / 1000) ** 2) / 4;
  return dropMillilitres / squareMetres / Math.sqrt(seconds);
}

/** The other way: seconds in which an ordinary drop sinks into a sheet of this sorptivity, g/m² per √s; Infinity at 0. */
export function dropFromSorptivity(sorptivity: number): number {
  mustBeWithin('sorptivity', sorptivity, 0, 1000);
  return (ORDINARY_SPOT_LOAD / sorptivity) ** 2;
}

export interface Uptake {
  /** g/m² per √s, for water */
  readonly sorptivity: number;
  readonly seconds: number;
  /** how easily this liquid follows water into the pores, 0–1; 1 (water) when left out */
  readonly mobility?: number;
  /** what the sheet can hold, g/m²; no limit when left out */
  readonly capacity?: number;
}

/**
 * Liquid taken up, g/m²: the smaller of capacity and sorptivity × mobility × √seconds, so four times the
 * time takes in twice as much (Lucas–Washburn; it fails once fibres swell, so it is used for minutes only).
 */
export function uptake({ sorptivity, seconds, mobility = 1, capacity = Infinity }: Uptake): number {
  mustBeWithin('sorptivity', sorptivity, 0, 1000);
  mustBeWithin('seconds', seconds, 0, 1e7);
  mustBeWithin('mobility', mobility, 0, 1);
  return Math.min(capacity, sorptivity * mobility * Math.sqrt(seconds));
}
