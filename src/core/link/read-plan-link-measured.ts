/**
 * A form that opens with nothing measured, and a link to it: an example that fills a field stands for no measurement, so
 * what the link does not say whole was not measured.
 */
import { isAsked, type FieldTable, type PlanOf } from './fields';
import { fieldInLink } from './read-plan-link';

/**
 * The plan without what was measured in a way that asks for a field that it `lacks`: a weighed coat of which the link
 * holds no weights. `unmeasured` is what the form opens with; a way to measure is what differs in it from what is usual. What
 * was put back is added to `put`, as its reader would name it in a link.
 */
export function measuredOnly<S extends FieldTable>(
  fields: S,
  unmeasured: PlanOf<S>,
): (plan: PlanOf<S>, lacks: (name: string) => boolean, put: string[]) => PlanOf<S> {
  const ways = Object.keys(fields).filter((way) => unmeasured[way] !== fields[way]!.usual);
  return (from, lacks, put) => {
    let plan = from;
    for (const [name, field] of Object.entries(fields)) {
      if (!field.example || !lacks(name) || !isAsked(field, plan)) continue;
      for (const way of ways) {
        const without = { ...plan, [way]: unmeasured[way] };
        if (plan[way] === unmeasured[way] || isAsked(field, without)) continue;
        put.push(fieldInLink(fields[way]!, plan[way]));
        plan = without;
      }
    }
    return plan;
  };
}
