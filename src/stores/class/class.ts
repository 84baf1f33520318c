/** The workshop sheet's state. */
import { choose } from '../../core/choose/choose';
import { LOADING, type Result } from '../../core/base/result';
import type { CutAnswer } from '../../core/cut/answer';
import type { CutPlan } from '../../core/cut/plan';
import { encodeJob } from '../../core/choose/write-link';
import type { LengthUnit } from '../../core/base/length-text';
import type { Catalogue } from '../../core/records/records';
import { classAnswer, slowQuestions, type SlowParts, type ClassAnswer } from '../../core/class/answer';
import { DEFAULT_CLASS, CLASS_FIELDS, type ClassPlan } from '../../core/class/plan';
import { createCutAnswers, type CutAnswers } from '../cut/cut';
import { changeUnit } from '../shared/change-unit';
import { fetchBench, waitsForBench, withBenches } from '../shared/on-bench';
import { createPlan, type PlanStore } from '../shared/plan';
import { remembering } from '../shared/memoize';

export type ClassStore = PlanStore<typeof CLASS_FIELDS, ClassAnswer> & {
  readonly catalogue: Catalogue;
  readonly changeUnit: (unit: LengthUnit) => void;
};

/** The slow parts: sheets at once or in turns, and a chooser that remembers, for most edits leave alone what it is asked. */
export interface ClassParts {
  readonly cut: CutAnswers;
  readonly choose: SlowParts['choose'];
}
export const rememberingParts = (chooser: SlowParts['choose']): ClassParts => ({
  cut: createCutAnswers(),
  choose: remembering(encodeJob, chooser),
});

export function createClass(
  catalogue: Catalogue,
  start: ClassPlan = DEFAULT_CLASS,
  parts: ClassParts = rememberingParts((job) => choose(job, withBenches(catalogue))),
): ClassStore {
  const records = withBenches(catalogue);
  // The sheets of the first answer are waited for; a later answer is loading until its sheets are there.
  let cut: (plan: CutPlan) => Result<CutAnswer> | undefined = parts.cut.now;
  const store = createPlan<typeof CLASS_FIELDS, ClassAnswer>(
    {
      fields: CLASS_FIELDS,
      answer(plan) {
        if (waitsForBench(plan)) {
          void fetchBench().then(() => store.recheck());
          return LOADING;
        }
        const asked = slowQuestions(plan);
        const sheets = asked && cut(asked.cut);
        if (asked && !sheets) return LOADING;
        return classAnswer(plan, records, { cut: () => sheets!, choose: parts.choose });
      },
    },
    start,
  );
  cut = (plan) => parts.cut.soon(plan, store.recheck);
  return { ...store, catalogue, changeUnit: (unit) => changeUnit(store, unit) };
}
