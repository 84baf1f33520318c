/** The measures of a plan: its maker's own, and the usual ones. */
import type { MakePlan } from './fields';
import { measuresFor, usualMeasures, type ForMeasures, type Measured } from './measures';
import { bearsOn, PROJECTS } from './projects';

/** mm, measured or reckoned from leaves. */
export const thicknessOf = ({ thicknessFrom, thickness, leaves, caliper }: MakePlan): number =>
  thicknessFrom === 'measured' ? thickness : (leaves * caliper) / 1000;

const givenBy = (plan: MakePlan): ForMeasures => ({
  project: plan.project,
  width: plan.width,
  board: plan.board,
  thick: thicknessOf(plan),
  // What was set for another project, or is not asked now, does not bear on this one.
  own: Object.fromEntries(
    PROJECTS[plan.project].measures.filter((id) => bearsOn(id, plan)).map((id) => [id, plan[id]]),
  ),
});

/** Every measure of this plan, mm: the reader's own, else the usual one. */
export const measuresOf = (plan: MakePlan): Measured => measuresFor(givenBy(plan));

/** What stands as placeholder in each measure's field, mm. */
export const usualFor = (plan: MakePlan): Measured => usualMeasures(givenBy(plan));
