/** The project calculator's state, and the link that carries its glued pieces to the coverage calculator. */
import { computed, type ReadableAtom } from 'nanostores';
import type { LengthUnit } from '../core/length-text';
import { projectAnswer, type ProjectAnswer } from '../core/project-answer';
import { DEFAULT_PROJECT, projectSpecs, type ProjectPlan } from '../core/project-fields';
import { askedOfProject } from '../core/project-plan';
import { coverTailFor } from '../core/project-to-cover';
import { cutTailOf } from '../core/project-to-cut';
import { encodePlan } from '../core/plan-link';
import { changeUnit } from './change-unit';
import { createPlan, type PlanStore } from './plan';

export type MakeStore = PlanStore<typeof projectSpecs, ProjectAnswer> & {
  readonly changeUnit: (unit: LengthUnit) => void;
  /** tails of the links to the cutting plan and to the workshop sheet */
  readonly $cutTail: ReadableAtom<string>;
  readonly $classTail: ReadableAtom<string>;
  /** tail of the link to the coverage calculator */
  readonly $coverTail: ReadableAtom<string>;
};

export function createMaking(start: ProjectPlan = DEFAULT_PROJECT): MakeStore {
  const store = createPlan<typeof projectSpecs, ProjectAnswer>(
    { specs: projectSpecs, usual: DEFAULT_PROJECT, asked: askedOfProject, answer: projectAnswer },
    start,
  );
  return {
    ...store,
    changeUnit: (unit) => changeUnit(store, unit),
    $cutTail: computed(store.$solved, ({ plan, answer }) => cutTailOf(plan, answer.pieces)),
    // The workshop sheet keeps a project under the same keys.
    $classTail: computed(store.$solved, ({ plan }) =>
      encodePlan(plan, projectSpecs, askedOfProject(plan), DEFAULT_PROJECT),
    ),
    $coverTail: computed(store.$solved, ({ plan, answer }) => coverTailFor(plan, answer.pieces)),
  };
}
