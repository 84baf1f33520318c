/** Taking a plan from a link. Apart from the store, because a calculator inside a lesson has no link to read. */
import { textsOf, usualOf, type FieldTable } from '../../core/link/fields';
import { decodePlan } from '../../core/link/read-plan-link';
import type { PlanStore } from './plan';

/** Takes a link's tail; empty text leaves everything as it is. What has no answer is put back to its usual value and named. */
export function loadPlan<S extends FieldTable, A>(
  { fields, solve, $texts, $link }: PlanStore<S, A>,
  text: string,
): void {
  if (text.replace(/^[?#]/, '') === '') return;
  const { plan: asSent, dropped, seen } = decodePlan(text, fields);
  let plan = asSent;
  const put: string[] = [];
  const found = solve(plan);
  if ('problems' in found) {
    for (const { field: name } of found.problems) {
      const field = fields[name];
      if (!field) continue;
      put.push(field.key);
      plan = { ...plan, [name]: field.usual };
    }
    if ('problems' in solve(plan)) plan = usualOf(fields);
  }
  $texts.set(textsOf(plan, fields));
  $link.set({ dropped: [...dropped, ...put], ...(seen !== undefined && { seen }) });
}
