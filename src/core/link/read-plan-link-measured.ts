/**
 * A form that opens with nothing measured, and a link to it: an example that fills a field stands for no measurement, so
 * what the link does not say whole was not measured.
 */
import { isAsked, type FieldTable, type PlanOf } from './fields';
import { parsePairs } from './pairs';
import { fieldInLink } from './read-plan-link';

/**
 * The plan without what was measured in a way that asks for a field that the link's `text` does not say whole, such as a
 * weighed coat of which it holds no weights; or for the field whose value is `wrong`. `unmeasured` is what the form opens with; a way to measure is what differs in it from what is usual. What
 * was put back is added to `put`, as its reader would name it in a link.
 */
export function measuredOnly<S extends FieldTable>(
  fields: S,
  unmeasured: PlanOf<S>,
): (plan: PlanOf<S>, put: string[], text: string, wrong?: string) => PlanOf<S> {
  const ways = Object.keys(fields).filter((way) => unmeasured[way] !== fields[way]!.usual);
  return (from, put, text, wrong) => {
    const { query } = parsePairs(text);
    const lacks = (name: string, key: string) =>
      wrong === undefined ? !query.has(key) || put.some((part) => part.startsWith(`${key} (`)) : name === wrong;
    let plan = from;
    for (const [name, field] of Object.entries(fields)) {
      if (!field.example || !lacks(name, field.key) || !isAsked(field, plan)) continue;
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
