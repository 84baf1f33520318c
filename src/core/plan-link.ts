/** A calculator's plan as the tail of a link, and back. Nothing that is pasted here can throw. */
import { parsePairs, writePairs } from './pairs';
import { read, type PlanOf, type Specs } from './plan-fields';

const FORMAT = '1';

/** A plan as the tail of a link: what is asked always, the rest where it is not as usual; `seen` is the sender's answer. */
export function encodePlan<S extends Specs>(
  plan: PlanOf<S>,
  specs: S,
  asked: readonly (keyof S)[],
  usual: PlanOf<S>,
  seen?: string,
): string {
  const pairs = Object.entries(specs).flatMap(([field, { key }]): [string, string][] => {
    const value = plan[field];
    const silent = value === undefined && usual[field] === undefined;
    if (silent || (!asked.includes(field) && value === usual[field])) return [];
    return [[key, value === undefined ? '' : String(value)]];
  });
  return writePairs([['v', FORMAT], ...pairs, ...(seen === undefined ? [] : [['seen', seen] as [string, string]])]);
}

export interface DecodedPlan<S extends Specs> {
  readonly plan: PlanOf<S>;
  /** what was left at its usual value, each as its reader would name it */
  readonly dropped: readonly string[];
  readonly seen?: string;
}

/** Any text to a plan; never throws. */
export function decodePlan<S extends Specs>(text: unknown, specs: S, usual: PlanOf<S>): DecodedPlan<S> {
  const { query, broken } = parsePairs(text);
  const dropped = [...broken];
  const name = (key: string) => `${key} (${query.get(key)!.slice(0, 40)})`;
  if (query.has('v') && query.get('v') !== FORMAT) dropped.push(name('v'));
  const entries = Object.entries(specs).map(([field, spec]) => {
    const value = query.get(spec.key);
    if (value === undefined) return [field, usual[field]];
    const found = read(field, spec, value);
    if (found.ok) return [field, found.value];
    dropped.push(name(spec.key));
    return [field, usual[field]];
  });
  const seen = query.get('seen');
  return { plan: Object.fromEntries(entries) as PlanOf<S>, dropped, ...(seen !== undefined && { seen }) };
}
