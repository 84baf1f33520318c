/** The coat of one's own hand: a board weighed before and after brushing, or a spoon spread over a known area. */
import { coatFromWeighing } from '../base/piece';
import { mustBePositive, mustBeWithin } from '../base/result';
import { OPEN_FACE_DRIES } from '../paper/sorption';
import { ofStep, spreadOfFew, type BenchReading } from './uncertain';

export interface WeighedCoats {
  /** g, of each board before and after; as many of the one as of the other, 1–10 */
  readonly before: readonly number[];
  readonly after: readonly number[];
  /** of the brushed face, mm */
  readonly widthMm: number;
  readonly heightMm: number;
  /** smallest step that the scale shows, g */
  readonly stepGrams: number;
  /** from the last stroke to the reading, s; some water is gone by then */
  readonly seconds: number;
}

/** How one coat of a hand differs from its next, as a share, where nobody has brushed twice. Estimate. */
export const HAND_SPREAD = 0.12;
/** A side of the brushed face is measured to this, mm. Estimate: an ordinary ruler, by eye. */
const SIDE_MM = 1;

/**
 * Wet coat, g/m², of the next board that this hand brushes: the mean of those weighed, with what dried on the way to the
 * scale put back. Uncertain by how coats differ, the steps of the scale, the sides and the drying.
 */
export function coatOfWeighings({ before, after, widthMm, heightMm, stepGrams, seconds }: WeighedCoats): BenchReading {
  mustBeWithin('boards', before.length, 1, 10);
  mustBeWithin('readings', after.length, before.length, before.length);
  for (const [name, value] of Object.entries({ widthMm, heightMm, stepGrams })) mustBePositive(name, value);
  mustBeWithin('seconds', seconds, 0, 3600);
  const squareMetres = (widthMm * heightMm) / 1e6;
  const dried = OPEN_FACE_DRIES * seconds;
  const coats = before.map((grams, i) => coatFromWeighing(grams, after[i]!, squareMetres) + dried);
  const value = coats.reduce((sum, coat) => sum + coat, 0) / coats.length;
  const hand = spreadOfFew(coats, HAND_SPREAD);
  const scale = (ofStep(stepGrams) * Math.SQRT2) / squareMetres / Math.sqrt(coats.length);
  const standard = Math.hypot(
    hand * Math.sqrt(1 + 1 / coats.length),
    scale,
    value * sidesUncertain(widthMm, heightMm),
    // between none of it and all of it
    ofStep(dried),
  );
  return { value, standard };
}

/** Uncertainty of an area as a share, each side to `SIDE_MM` either way: JCGM 100:2008, 4.3.7. */
const sidesUncertain = (widthMm: number, heightMm: number): number =>
  Math.hypot(SIDE_MM / Math.sqrt(3) / widthMm, SIDE_MM / Math.sqrt(3) / heightMm);

export interface SpoonCoat {
  /** what the spoon or syringe held, ml */
  readonly millilitres: number;
  /** g/ml */
  readonly density: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** A spoon levelled by eye, and what the brush keeps of it, as a share. Estimate. */
const SPOON = 0.1;

/** Wet coat, g/m², without scales: what a spoon held, spread until it is used up, over the area that it covered. */
export function coatOfSpoon({ millilitres, density, widthMm, heightMm }: SpoonCoat): BenchReading {
  for (const [name, one] of Object.entries({ millilitres, density, widthMm, heightMm })) mustBePositive(name, one);
  const value = (millilitres * density * 1e6) / (widthMm * heightMm);
  return { value, standard: value * Math.hypot(SPOON, HAND_SPREAD * Math.SQRT2, sidesUncertain(widthMm, heightMm)) };
}
