/** What a plan can tell apart, worked out in turns: it is drawn some thousand times over. */
import { planPowerInTurns, type PlanPower, type PlanShape } from '../../core/stats/power';
import { claimCount } from '../../core/trial/design';
import { planOf, type Planned } from '../../core/trial/plan';
import type { PlanText } from '../../core/trial/plan-text';
import { answersAhead } from '../shared/time-slice';

/** What of a plan its power hangs on. */
export const shapeOf = (plan: Planned): PlanShape => ({
  replicates: plan.replicates,
  blocks: plan.papers.length * plan.holds.length,
  claims: Math.max(1, claimCount(plan)),
});

const powers = answersAhead(JSON.stringify, (shape: PlanShape) => planPowerInTurns(shape));

/** At once: for the build, and for what was prepared. */
export const powerNow = (shape: PlanShape): PlanPower => powers.now(shape);

/** Returns a function that stops it. */
export const powerLater = (shape: PlanShape, done: (power: PlanPower) => void): (() => void) =>
  powers.inTurns(shape, done);

/** Works out what the planner opens with. */
export async function preparePower(text: PlanText): Promise<void> {
  const { plan } = planOf(text, 1);
  if (plan) await powers.prepare(shapeOf(plan));
}
