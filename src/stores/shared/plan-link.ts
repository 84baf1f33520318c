/** Taking a plan from a link. Apart from the store, because a calculator inside a lesson has no link to read. */
import { textsOf, usualOf, type FieldTable } from '../../core/link/fields';
import { decodePlan } from '../../core/link/read-plan-link';
import type { PlanStore } from './plan';

/** Takes a link's tail; empty text leaves everything as it is. What has no answer is put back to what is unsaid, and named. */
export function loadPlan<S extends FieldTable, A>(
  { fields, unsaid, solve, $texts, $link }: PlanStore<S, A>,
  text: string,
): void {
  if (text.replace(/^[?#]/, '') === '') return;
  const usual = unsaid?.plan ?? usualOf(fields);
  const { plan: asSent, dropped, seen } = decodePlan(text, fields, usual);
  const put = [...dropped];
  let plan = unsaid?.settle(asSent, put, text) ?? asSent;
  const found = solve(plan);
  if ('problems' in found) {
    for (const { field: name } of found.problems) {
      const field = fields[name];
      if (!field) continue;
      put.push(field.key);
      const without = { ...plan, [name]: usual[name] };
      plan = unsaid?.settle(without, put, text, name) ?? without;
    }
    if ('problems' in solve(plan)) plan = usual;
  }
  $texts.set(textsOf(plan, fields));
  $link.set({ dropped: put, ...(seen !== undefined && { seen }) });
}
