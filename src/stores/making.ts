/** The project calculator's state, and the link that carries its glued pieces to the coverage calculator. */
import { computed, type ReadableAtom } from 'nanostores';
import { askedOfCover, COVER_SPECS, DEFAULT_COVER } from '../core/cover-plan';
import type { LengthUnit } from '../core/length-text';
import { encodePlan } from '../core/plan-link';
import { projectAnswer, type ProjectAnswer } from '../core/project-answer';
import { DEFAULT_PROJECT, projectSpecs, type ProjectPlan } from '../core/project-fields';
import { askedOfProject } from '../core/project-plan';
import { coverPlanFor } from '../core/project-to-cover';
import { changeUnit } from './change-unit';
import { createPlan, type PlanStore } from './plan';

export type MakeStore = PlanStore<typeof projectSpecs, ProjectAnswer> & {
  readonly changeUnit: (unit: LengthUnit) => void;
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
    $coverTail: computed(store.$solved, ({ plan, answer }) => {
      const cover = coverPlanFor(plan, answer.pieces);
      return encodePlan(cover, COVER_SPECS, askedOfCover(cover), DEFAULT_COVER);
    }),
  };
}
