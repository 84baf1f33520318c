/** How fast a sheet drinks: sorptivity from a Cobb test or a drop test, and uptake over time. */
import { mustBePositive, mustBeWithin } from '../base/result';
import { LONGEST_DROP_SECONDS } from './limits';

/**
 * Water that the wetted spot is taken to hold when a drop has gone in, g/m², where nobody measured the stain. A rule of
 * thumb and not a likeness of what happens: it is set so that 60 s read as the absorbency of ordinary sized writing
 * paper. A full drop leaves two or three times as much behind. Common practice, no source.
 */
const ORDINARY_SPOT_LOAD = 20;

/** The drop that the rule of thumb speaks of, µl: twenty to the millilitre, as a dropper gives them. From memory. */
export const USUAL_DROP_MICROLITRES = 50;

/**
 * Seconds to which the drop tests of the laboratory go. Published: ASTM D824, which is for unsized and absorbent papers,
 * not for sized ones, and measures its drop (1, 0.1 or 0.01 ml). Past it ours goes on, with growing doubt.
 */
export const STANDARD_DROP_SECONDS = 120;
/** g/m² of water that leave an open wet face each second in an ordinary room, 20 °C and 50 %, by the rule in joint/moisture.ts. */
export const OPEN_FACE_DRIES = 0.055;

/** A bench drop test is good to this factor each way; less where the stain was measured. Estimates. */
const DOUBT = { byRule: 1.6, byStain: 1.3 };
/** Past the standard's time fibres have swollen and the root law gives way: the doubt grows by this power of the time. Our own line. */
const DOUBT_GROWS = 0.25;

const grown = (factor: number, seconds: number): number =>
  factor * Math.max(1, seconds / STANDARD_DROP_SECONDS) ** DOUBT_GROWS;

/** By how much, each way, the sorptivity of a drop of so many seconds may be out when no stain was measured. */
export const dropDoubt = (seconds: number): number => grown(DOUBT.byRule, seconds);

/**
 * Sorptivity, g/m² per √s, from the water taken up in a 60-second Cobb test, g/m².
 * Lucas–Washburn form: uptake = sorptivity × √time. Valid 1–400 g/m². Source: ISO 535 for the test.
 */
export function sorptivityFromCobb(gsm60: number): number {
  mustBeWithin('gsm60', gsm60, 0.1, 1000);
  return gsm60 / Math.sqrt(60);
}

/**
 * Sorptivity, g/m² per √s, from the seconds a drop of water takes to sink in (0.1–1800 s), by the rule of thumb: the
 * spot holds an ordinary load, a larger drop a little more, as the third root of its volume, since drops are of one
 * shape. An estimate, out by `dropDoubt`. Throws RangeError outside the range.
 */
export function sorptivityFromDrop(seconds: number, microlitres: number = USUAL_DROP_MICROLITRES): number {
  mustBeWithin('seconds', seconds, 0.1, LONGEST_DROP_SECONDS);
  mustBePositive('microlitres', microlitres);
  return (ORDINARY_SPOT_LOAD * Math.cbrt(microlitres / USUAL_DROP_MICROLITRES)) / Math.sqrt(seconds);
}

export interface StainTest {
  readonly seconds: number;
  readonly microlitres: number;
  /** mm across, as far as the wet reaches when the shine has gone */
  readonly stainMm: number;
}

export interface StainReading {
  /** g/m² per √s */
  readonly sorptivity: { readonly low: number; readonly middle: number; readonly high: number };
  /** g/m² that the stain would hold if nothing had dried */
  readonly load: number;
  /** share of the drop that left into the air, 0–1; past a half the method says nothing */
  readonly dried: number;
}

/**
 * What a drop of known volume and the stain that it left say: what went in, over the stain's area and the root of the
 * time. Some of the drop dries meanwhile: all of the stain's area would dry `OPEN_FACE_DRIES`, but it starts small, so
 * half is the middle, none and all the ends.
 */
export function readStain({ seconds, microlitres, stainMm }: StainTest): StainReading {
  mustBeWithin('seconds', seconds, 0.1, LONGEST_DROP_SECONDS);
  mustBePositive('microlitres', microlitres);
  mustBePositive('stainMm', stainMm);
  const squareMetres = (Math.PI * (stainMm / 1000) ** 2) / 4;
  const load = microlitres / 1000 / squareMetres;
  const most = Math.min(1, (OPEN_FACE_DRIES * seconds) / load);
  const by = (dried: number) => (load * (1 - dried)) / Math.sqrt(seconds);
  const doubt = grown(DOUBT.byStain, seconds);
  return {
    load,
    dried: most / 2,
    sorptivity: { low: by(most) / doubt, middle: by(most / 2), high: by(0) * doubt },
  };
}

/** Seconds by which half of such a drop has dried into the air from such a stain: there the method ends. */
export const halfDriedAfter = ({ microlitres, stainMm }: Omit<StainTest, 'seconds'>): number =>
  readStain({ seconds: 1, microlitres, stainMm }).load / OPEN_FACE_DRIES;

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
