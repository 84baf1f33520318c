/** The workshop sheet's state. */
import { atom, type ReadableAtom } from 'nanostores';
import { LOADING, type Result } from '../../core/base/result';
import type { LengthUnit } from '../../core/base/length-text';
import type { InTurns } from '../../core/base/turns';
import type { ClassLaying } from '../../core/class/laying';
import { DEFAULT_CLASS, CLASS_FIELDS, type ClassPlan } from '../../core/class/plan';
import { classSheet, classToCut, type ClassSheet } from '../../core/class/sheet';
import type { CutAnswer } from '../../core/cut/answer';
import type { CutPlan } from '../../core/cut/plan';
import type { Catalogue } from '../../core/records/records';
import { createCutAnswers, type CutAnswers } from '../cut/cut';
import { changeUnit } from '../shared/change-unit';
import { fetchBench, waitsForBench, withBenches } from '../shared/on-bench';
import { createPlan, type PlanStore } from '../shared/plan';
import { inTurns } from '../shared/time-slice';

/** How a class is glued, and the sheet that this belongs to. */
export interface Laid {
  readonly sheet: ClassSheet;
  readonly laying: ClassLaying;
}
/** Works out how a class is glued: the model's part, which follows the sheet. */
export type Laying = (plan: ClassPlan, sheet: ClassSheet, catalogue: Catalogue) => InTurns<ClassLaying>;

export type ClassStore = PlanStore<typeof CLASS_FIELDS, ClassSheet> & {
  readonly catalogue: Catalogue;
  readonly changeUnit: (unit: LengthUnit) => void;
  /** of the last sheet whose gluing is worked out */
  readonly $laid: ReadableAtom<Laid | undefined>;
  /** From now on each sheet's gluing is worked out in turns. Returns a function that stops it. */
  readonly layWith: (laying: Laying) => () => void;
};

/** `cuts`: the sheets, at once or in turns. */
export function createClass(
  catalogue: Catalogue,
  start: ClassPlan = DEFAULT_CLASS,
  cuts: CutAnswers = createCutAnswers(),
): ClassStore {
  const records = withBenches(catalogue);
  // The sheets of the first answer are waited for; a later answer is loading until its sheets are there.
  let cut: (plan: CutPlan) => Result<CutAnswer> | undefined = cuts.now;
  const store = createPlan<typeof CLASS_FIELDS, ClassSheet>(
    {
      fields: CLASS_FIELDS,
      answer(plan) {
        if (waitsForBench(plan)) {
          void fetchBench().then(() => store.recheck());
          return LOADING;
        }
        const asked = classToCut(plan);
        const sheets = asked && cut(asked);
        if (asked && !sheets) return LOADING;
        return classSheet(plan, records, () => sheets!);
      },
    },
    start,
  );
  cut = (plan) => cuts.soon(plan, store.recheck);
  const $laid = atom<Laid | undefined>(undefined);
  const layWith = (laying: Laying) => {
    let stop = () => {};
    const stopListening = store.$solved.subscribe(({ plan, answer }) => {
      stop();
      stop = inTurns(laying(plan, answer, records), (found) => $laid.set({ sheet: answer, laying: found }));
    });
    return () => {
      stop();
      stopListening();
    };
  };
  return { ...store, catalogue, changeUnit: (unit) => changeUnit(store, unit), $laid, layWith };
}
