/** The solids of what is in a jar: a smear weighed wet and dry, or what its data sheet says. */
import { mustBePositive, mustBeWithin } from '../base/result';
import { carried, ofStep, type BenchReading } from './uncertain';

export interface Smear {
  /** g: what it is smeared on, that with the wet smear, and that with the dry one */
  readonly dish: number;
  readonly wet: number;
  readonly dry: number;
  /** smallest step that the scale shows, g */
  readonly stepGrams: number;
}

/** What a dry smear still holds of the room's water, and what a wet one lost before it was read, as a share. Estimate. */
const LEFT_OVER = 0.006;

/** Share of the mass that stays, (dry − dish) ÷ (wet − dish), uncertain by the three readings. Wet weighs more than dry, dry more than the dish. */
export function solidsOfSmear({ dish, wet, dry, stepGrams }: Smear): BenchReading {
  mustBePositive('stepGrams', stepGrams);
  mustBeWithin('dish', dish, 0, dry);
  mustBePositive('dry smear', dry - dish);
  mustBePositive('water lost', wet - dry);
  const share = ([a, b, c]: readonly number[]) => (c! - a!) / (b! - a!);
  const readings = [dish, wet, dry];
  const step = ofStep(stepGrams);
  return { value: share(readings), standard: Math.hypot(carried(share, readings, [step, step, step]), LEFT_OVER) };
}

/** A data sheet's figure is kept to this, as a share of the whole, either way: "50 ± 1 %". From memory. */
const SHEET_TOLERANCE = 0.01;

/** Solids by a data sheet, in per cent, 1–100. */
export function solidsOfSheet(percent: number): BenchReading {
  mustBeWithin('percent', percent, 1, 100);
  return { value: percent / 100, standard: SHEET_TOLERANCE / Math.sqrt(3) };
}
