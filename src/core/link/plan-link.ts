/** A calculator's plan as the tail of a link. */
import { writePairs } from './pairs';
import type { PlanOf, Specs } from './fields';

export const FORMAT = '1';

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
