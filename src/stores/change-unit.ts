/** Another unit for a calculator's lengths. */
import { inUnit, type LengthUnit } from '../core/length-text';
import { readTexts, textsOf, type Specs } from '../core/plan-fields';
import type { PlanStore } from './plan';

/** Lengths that could be read are written anew in the unit, the others stay as typed. */
export function changeUnit<S extends Specs, A>({ specs, $texts, $solved }: PlanStore<S, A>, unit: LengthUnit): void {
  const texts = $texts.get();
  const fields = Object.keys(specs);
  const { plan, problems } = readTexts(texts, specs, fields, $solved.get().plan);
  const anew = textsOf({ ...plan, unit }, specs);
  // In the new unit as a rule shows them; the plan follows what is then read.
  const lengths = fields.flatMap((field) => {
    const [spec, kept]: [S[string] | undefined, unknown] = [specs[field as keyof S & string], plan[field]];
    const isLength = spec?.kind === 'length' || spec?.kind === 'maybe-length';
    return isLength && typeof kept === 'number' ? [[field, inUnit(kept, unit)] as const] : [];
  });
  // A list's problems are named by row: "piece-0-wide" for the field "pieces".
  const stays = fields.filter((field) =>
    problems.some((one) => one.field === field || (field === 'pieces' && one.field.startsWith('piece-'))),
  );
  $texts.set({
    ...anew,
    ...Object.fromEntries(lengths),
    ...Object.fromEntries(stays.map((field) => [field, texts[field]])),
    unit,
  });
}
