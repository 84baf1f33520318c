/** A calculator's plan from the tail of a link. Nothing that is pasted here can throw. */
import { parsePairs } from './pairs';
import { read, type PlanOf, type Specs } from './fields';
import { FORMAT } from './plan-link';

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
