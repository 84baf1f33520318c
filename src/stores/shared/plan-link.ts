/** Taking a plan from a link. Apart from the store, because a calculator inside a lesson has no link to read. */
import { textsOf, type FieldTable, type PlanOf } from '../../core/link/fields';
import { decodePlan } from '../../core/link/read-plan-link';
import type { PlanStore } from './plan';

/** Takes a link's tail; empty text leaves everything as it is. What has no answer is put back to what the form opens with, and named. */
export function loadPlan<S extends FieldTable, A>(
  { fields, start, settle, solve, $texts, $link }: PlanStore<S, A>,
  text: string,
): void {
  if (text.replace(/^[?#]/, '') === '') return;
  const { plan: asSent, said, dropped, seen } = decodePlan(text, fields, start);
  const put = [...dropped];
  const taken = (plan: PlanOf<S>, lacks: (name: string) => boolean) => (settle ? settle(plan, lacks, put) : plan);
  let plan = taken(asSent, (name) => !said.has(name));
  const found = solve(plan);
  if ('problems' in found) {
    for (const { field: name } of found.problems) {
      const field = fields[name];
      if (!field) continue;
      put.push(field.key);
      plan = taken({ ...plan, [name]: start[name] }, (lacking) => lacking === name);
    }
    if ('problems' in solve(plan)) plan = start;
  }
  $texts.set(textsOf(plan, fields));
  $link.set({ dropped: put, ...(seen !== undefined && { seen }) });
}
