/** Taking a plan from a link. Apart from the store, because a calculator inside a lesson has no link to read. */
import { textsOf, type Specs } from '../../core/link/fields';
import { decodePlan } from '../../core/link/read-plan-link';
import type { PlanStore } from './plan';

/** Takes a link's tail; empty text leaves everything as it is. What has no answer is put back to its usual value and named. */
export function loadPlan<S extends Specs, A>(
  { fields, usual, solve, $texts, $link }: PlanStore<S, A>,
  text: string,
): void {
  if (text.replace(/^[?#]/, '') === '') return;
  const { plan: asSent, dropped, seen } = decodePlan(text, fields, usual);
  let plan = asSent;
  const put: string[] = [];
  const found = solve(plan);
  // No answer and no fault: it is only not there yet.
  if ('problems' in found && found.problems.length > 0) {
    for (const { field } of found.problems) {
      if (!(field in fields)) continue;
      put.push(fields[field]!.key);
      plan = { ...plan, [field]: usual[field] };
    }
    const again = solve(plan);
    if ('problems' in again && again.problems.length > 0) plan = usual;
  }
  $texts.set(textsOf(plan, fields));
  $link.set({ dropped: [...dropped, ...put], ...(seen !== undefined && { seen }) });
}
