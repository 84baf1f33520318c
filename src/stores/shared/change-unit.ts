/** Another unit for a calculator's lengths. */
import { inUnit, type LengthUnit } from '../../core/base/length-text';
import { readTexts, textsOf, type FieldTable } from '../../core/link/fields';
import type { PlanStore } from './plan';

/** In another unit lengths stand as a rule shows them, unless that is past what is allowed, and the plan follows what then stands there. */
const asRuled = <S extends FieldTable>(fields: S): S =>
  Object.fromEntries(
    Object.entries(fields).map(([field, spec]) => {
      if (spec.kind !== 'length') return [field, spec];
      const show = (kept: number, unit: LengthUnit): string => {
        const ruled = inUnit(kept, unit);
        return spec.parse(ruled, unit, field).ok ? ruled : spec.show(kept, unit);
      };
      return [field, { ...spec, show }];
    }),
  ) as unknown as S;

/** Lengths that could be read are written anew in the unit, the others stay as typed. */
export function changeUnit<S extends FieldTable, A>(
  { fields, $texts, $solved }: PlanStore<S, A>,
  unit: LengthUnit,
): void {
  const texts = $texts.get();
  const names = Object.keys(fields);
  const { plan, problems } = readTexts(texts, fields, $solved.get().plan, names);
  const anew = textsOf({ ...plan, unit }, asRuled(fields));
  // A list's problems are named by row: "piece-0-wide" for the field "pieces".
  const stays = names.filter((field) =>
    problems.some((one) => one.field === field || (field === 'pieces' && one.field.startsWith('piece-'))),
  );
  $texts.set({
    ...anew,
    ...Object.fromEntries(stays.map((field) => [field, texts[field]])),
    unit,
  });
}
