/** How many sheets to lay on the scale together. */
import { grammageFromWeighing, type Weighing } from './paper';

/**
 * The fewest sheets, of the same size and weight as the ones weighed, whose joint weighing is at most half as
 * uncertain; undefined where no number will do, because the cut and not the scale is what is uncertain. The
 * share of the scale falls as one over the sheets; that of the cut stays.
 */
export function sheetsToHalve(weighing: Weighing): number | undefined {
  const { sheets = 1 } = weighing;
  const now = grammageFromWeighing(weighing);
  const cut = grammageFromWeighing({ ...weighing, scaleStepGrams: 1e-9 });
  if (cut.standard >= now.standard / 2) return undefined;
  const scale = Math.sqrt(now.standard ** 2 - cut.standard ** 2);
  const left = Math.sqrt((now.standard / 2) ** 2 - cut.standard ** 2);
  // A hair off the quotient, so that a sum that comes out whole is not carried one further by rounding.
  return Math.ceil((sheets * scale) / left - 1e-9);
}
