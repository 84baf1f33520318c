/** Changing the unit of a plan. Apart from the store, because few calculators ask for lengths. */
import type { LengthUnit } from '../core/length-text';
import { readTexts, textsOf, type Specs } from '../core/plan-fields';
import type { PlanStore } from './plan';

/**
 * Another unit: lengths that could be read are written anew in it, the others stay as typed. `ownerOf` names
 * the field that a problem belongs to, where one field has several inputs.
 */
export function changeUnit<S extends Specs, A>(
  { specs, $texts, $solved }: PlanStore<S, A>,
  unit: LengthUnit,
  ownerOf: (field: string) => string = (field) => field,
): void {
  const texts = $texts.get();
  const fields = Object.keys(specs);
  const { plan, problems } = readTexts(texts, specs, fields, $solved.get().plan);
  const stays = fields.filter((field) => problems.some((one) => ownerOf(one.field) === field));
  const kept = Object.fromEntries(stays.map((field) => [field, texts[field]]));
  $texts.set({ ...textsOf({ ...plan, unit }, specs), ...kept, unit });
}
