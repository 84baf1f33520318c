/** The sheets calculator's state. */
import { LOADING, type Loading, type Result } from '../../core/base/result';
import { cutAnswerInTurns, type CutAnswer } from '../../core/cut/answer';
import { CUT_FIELDS, cutTailFor, DEFAULT_CUT, type CutField, type CutPlan } from '../../core/cut/plan';
import { joinCutPieces, joinStocks, splitCutPieces, splitStocks } from '../../core/cut/rows';
import type { LengthUnit } from '../../core/base/length-text';
import { readTexts, textsOf } from '../../core/link/fields';
import { createPlan, type PlanStore } from '../shared/plan';
import { answersSoon } from '../shared/time-slice';

export type CutStore = PlanStore<typeof CUT_FIELDS, CutAnswer> & {
  /** Another unit: lists and lengths that could be read are written anew in it, the others stay as typed. */
  readonly changeUnit: (unit: LengthUnit) => void;
  /** Takes a stock away; its pieces go to the first of the others. */
  readonly removeStock: (index: number) => void;
};

/** A row's problem belongs to the list it stands in: "piece-3-wide" to "pieces". */
const listOf = (field: string): CutField | undefined =>
  field.startsWith('piece-') ? 'pieces' : field.startsWith('stock-') ? 'stocks' : undefined;

/** Cutting plans as pages ask for them: at once, or in turns. */
export const createCutAnswers = () => answersSoon<CutPlan, Result<CutAnswer>>(cutTailFor, cutAnswerInTurns);
export type CutAnswers = ReturnType<typeof createCutAnswers>;

export function createCut(start: CutPlan = DEFAULT_CUT, answers: CutAnswers = createCutAnswers()): CutStore {
  // The first answer is waited for; a later one is loading until it is there.
  let answer: (plan: CutPlan) => Result<CutAnswer> | Loading = answers.now;
  const store = createPlan<typeof CUT_FIELDS, CutAnswer>({ fields: CUT_FIELDS, answer: (plan) => answer(plan) }, start);
  answer = (plan) => answers.soon(plan, store.recheck) ?? LOADING;
  return {
    ...store,
    // A link that cannot be answered is mended list by list, for pieces are nothing without their sheets.
    solve(plan) {
      const found = store.solve(plan);
      if (!('problems' in found)) return found;
      const wrong = found.problems.flatMap((problem) => {
        const list = listOf(problem.field);
        return list ? (['stocks', 'pieces'] as const).map((field) => ({ ...problem, field })) : [problem];
      });
      return { problems: wrong.filter(({ field }, i) => wrong.findIndex((one) => one.field === field) === i) };
    },
    changeUnit(unit) {
      const texts = store.$texts.get();
      const names = Object.keys(CUT_FIELDS) as CutField[];
      const { plan, problems } = readTexts(texts, CUT_FIELDS, store.$solved.get().plan, names);
      const anew = textsOf({ ...plan, unit }, CUT_FIELDS);
      const stays = names.filter((field) => problems.some((one) => (listOf(one.field) ?? one.field) === field));
      store.$texts.set({ ...anew, ...Object.fromEntries(stays.map((field) => [field, texts[field]])), unit });
    },
    removeStock(index) {
      const texts = store.$texts.get();
      const pieces = splitCutPieces(texts.pieces).map((row) => {
        const at = Number(row.stock) - 1;
        return { ...row, stock: at === index ? '1' : at > index ? String(at) : row.stock };
      });
      const stocks = splitStocks(texts.stocks).filter((_, i) => i !== index);
      store.set('stocks', joinStocks(stocks));
      store.set('pieces', joinCutPieces(pieces));
    },
  };
}
