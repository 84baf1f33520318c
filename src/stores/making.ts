/** The project calculator's state, and the link that carries its glued pieces to the coverage calculator. */
import { computed, type ReadableAtom } from 'nanostores';
import { inUnit, type LengthUnit } from '../core/length-text';
import { projectAnswer, type ProjectAnswer } from '../core/project-answer';
import { DEFAULT_PROJECT, projectSpecs, type ProjectPlan } from '../core/project-fields';
import { askedOfProject } from '../core/project-plan';
import { coverTailFor } from '../core/project-to-cover';
import { changeUnit } from './change-unit';
import { createPlan, type PlanStore } from './plan';

export type MakeStore = PlanStore<typeof projectSpecs, ProjectAnswer> & {
  readonly changeUnit: (unit: LengthUnit) => void;
  /** tail of the link to the coverage calculator */
  readonly $coverTail: ReadableAtom<string>;
};

/** In another unit, lengths stand as a rule shows them, and the plan follows what then stands there. */
const AS_RULED = Object.fromEntries(
  Object.entries(projectSpecs).map(([field, spec]) => [field, 'show' in spec ? { ...spec, show: inUnit } : spec]),
) as typeof projectSpecs;

export function createMaking(start: ProjectPlan = DEFAULT_PROJECT): MakeStore {
  const store = createPlan<typeof projectSpecs, ProjectAnswer>(
    { specs: projectSpecs, usual: DEFAULT_PROJECT, asked: askedOfProject, answer: projectAnswer },
    start,
  );
  return {
    ...store,
    changeUnit: (unit) => changeUnit(store, unit, AS_RULED),
    $coverTail: computed(store.$solved, ({ plan, answer }) => coverTailFor(plan, answer.pieces)),
  };
}
