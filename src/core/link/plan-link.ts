/** A plan as the tail of a link; `read-plan-link.ts` reads it back. */
import { writePairs } from './pairs';
import { isAsked, type Field, type FieldTable, type PlanOf } from './fields';

/** Version of the link's own form. */
export const FORMAT = '1';

/** What carries one value in a link; undefined where nothing is to be said. */
export function linkTextOf(field: Field, value: unknown): string | undefined {
  if (value === undefined) return undefined;
  if (field.kind === 'yes-no') return value ? 'yes' : 'no';
  if (field.kind === 'some-of')
    return field.of.filter((one) => (value as readonly string[]).includes(one)).join('.') || undefined;
  if (field.kind === 'ids') return [...(value as readonly string[])].sort().join('.') || undefined;
  if (field.kind === 'rows') return field.write(value as never);
  return String(value);
}

/** A plan as the tail of a link: what is asked always, the rest where it is not as usual; `seen` is the sender's answer. */
export function encodePlan<S extends FieldTable>(plan: PlanOf<S>, fields: S, seen?: string): string {
  const pairs = Object.entries(fields).flatMap(([name, field]): [string, string][] => {
    const text = linkTextOf(field, plan[name]);
    if (text === linkTextOf(field, field.usual) && (text === undefined || !isAsked(field, plan))) return [];
    return [[field.key, text ?? '']];
  });
  return writePairs([['v', FORMAT], ...pairs, ...(seen === undefined ? [] : [['seen', seen] as [string, string]])]);
}
