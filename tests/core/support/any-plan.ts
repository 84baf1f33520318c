/** Plans drawn from a table of fields: any that it allows, and those whose numbers stand at an end of what is allowed. */
import fc from 'fast-check';
import type { Field, FieldTable, PlanOf } from '../../../src/core/link/fields';

const orNone = (field: Field, value: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> =>
  'optional' in field && field.optional ? fc.option(value, { nil: undefined, freq: 2 }) : value;

/** Any value that a field allows, numbers with a few decimals, as people type them; ids and texts stay as usual. */
export function anyValue(field: Field, usual: unknown = field.usual): fc.Arbitrary<unknown> {
  switch (field.kind) {
    case 'number':
    case 'length': {
      const { low, high, whole } = field;
      const typed = (value: number) => (whole ? Math.round(value) : Number(value.toFixed(2)));
      const number = fc
        .double({ min: low, max: Math.min(high, low + 5000), noNaN: true })
        .map((value) => Math.min(high, Math.max(low, typed(value))));
      return orNone(field, number);
    }
    case 'one-of':
      return orNone(field, fc.constantFrom(...field.of));
    case 'yes-no':
      return orNone(field, fc.boolean());
    case 'some-of':
      return fc.subarray([...field.of]);
    default:
      return fc.constant(usual);
  }
}

const plansOf = <S extends FieldTable>(
  fields: S,
  draw: (name: string, field: Field) => fc.Arbitrary<unknown>,
): fc.Arbitrary<PlanOf<S>> =>
  fc.record(
    Object.fromEntries(Object.entries(fields).map(([name, field]) => [name, draw(name, field)])),
  ) as fc.Arbitrary<PlanOf<S>>;

export const anyPlan = <S extends FieldTable>(fields: S, usual: PlanOf<S>): fc.Arbitrary<PlanOf<S>> =>
  plansOf(fields, (name, field) => anyValue(field, usual[name]));

/** `others`: what a field may be besides the ends of its limits and its usual value. */
export const planAtTheEnds = <S extends FieldTable>(
  fields: S,
  usual: PlanOf<S>,
  others: { readonly [K in keyof S]?: readonly unknown[] } = {},
): fc.Arbitrary<PlanOf<S>> =>
  plansOf(fields, (name, field) => {
    if (field.kind === 'one-of') return fc.constantFrom(...field.of);
    const ends = field.kind === 'number' || field.kind === 'length' ? [field.low, field.high] : [];
    return fc.constantFrom(usual[name], ...ends, ...(others[name] ?? []));
  });
