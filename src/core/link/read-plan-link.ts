/** A calculator's plan from the tail of a link. Nothing that is pasted here can throw. */
import { parsePairs } from './pairs';
import { usualOf, valueOf, type Field, type FieldTable, type PlanOf } from './fields';
import { FORMAT, linkTextOf } from './plan-link';

export interface DecodedPlan<S extends FieldTable> {
  readonly plan: PlanOf<S>;
  /** what was left at its usual value, each as its reader would name it */
  readonly dropped: readonly string[];
  readonly seen?: string;
}

const MOST_SHOWN = 40;

/** A part of a link as its reader would name it: "gsm (abc)". */
export const partName = (key: string, text: string): string => `${key} (${text.slice(0, MOST_SHOWN)})`;

/** A field with its value, as a link that held them would be named in part: "gsm (80)", "have". */
export const fieldInLink = (field: Field, value: unknown): string =>
  field.kind === 'ids' ? field.key : partName(field.key, linkTextOf(field, value) ?? '');

/**
 * Any text to a plan; never throws. `unsaid` is what stands for what the link leaves out, and for what cannot be
 * read of it.
 */
export function decodePlan<S extends FieldTable>(
  text: unknown,
  fields: S,
  unsaid: PlanOf<S> = usualOf(fields),
): DecodedPlan<S> {
  const { query, broken } = parsePairs(text);
  const dropped = broken.map((key) => key.slice(0, MOST_SHOWN));
  const drop = (key: string) => dropped.push(partName(key, query.get(key)!));
  if (query.has('v') && query.get('v') !== FORMAT) drop('v');
  const entries = Object.entries(fields).map(([name, field]) => {
    const carried = query.get(field.key);
    if (carried === undefined) return [name, unsaid[name]];
    const { value, whole } = carriedBy(name, field, carried, unsaid[name]);
    if (!whole) drop(field.key);
    return [name, value];
  });
  const plan = Object.fromEntries(entries) as PlanOf<S>;
  const seen = query.get('seen');
  return { plan, dropped, ...(seen !== undefined && { seen }) };
}

/** The value that a link's text holds, and whether all of the text could be read; of a list what could be is kept. */
function carriedBy(
  name: string,
  field: Field,
  text: string,
  unsaid: unknown,
): { readonly value: unknown; readonly whole: boolean } {
  const words = [...new Set(text.split('.').filter(Boolean))];
  if (field.kind === 'some-of')
    return {
      value: field.of.filter((one) => words.includes(one)),
      whole: words.every((word) => field.of.includes(word)),
    };
  if (field.kind === 'ids') {
    const ids = words.filter((word) => field.pattern.test(word));
    return { value: ids.slice(0, field.most).sort(), whole: ids.length === words.length && ids.length <= field.most };
  }
  const found = valueOf(name, field, text);
  return found.ok ? { value: found.value, whole: true } : { value: unsaid, whole: false };
}
