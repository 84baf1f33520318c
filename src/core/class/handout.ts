/** What a student is given: how to glue it, how long there is, and the order of making. */
import { isWorthAClock } from '../base/clock-text';
import { answerSentence, VERDICT_WORDS } from '../choose/answer-words';
import type { Choice } from '../choose/choose';
import { paperInSentence } from '../paper/own-paper';
import type { MakeAnswer } from '../make/answer';
import type { Catalogue } from '../records/records';
import type { ClassPlan } from './plan';

export interface Handout {
  readonly glue: string;
  readonly verdict: string;
  readonly steps: readonly string[];
  /** seconds for which the sheet can be moved: what can be counted on, and the most; absent where no clock is of use */
  readonly slip?: { readonly low: number; readonly high: number };
}

/** What a student takes home: the thing, its sizes, the adhesive and the steps. */
export function handoutOf(plan: ClassPlan, choice: Choice, project: MakeAnswer, catalogue: Catalogue): Handout {
  const { p10, p90 } = choice.slipSeconds;
  const isTimed = choice.verdict !== 'refused' && choice.verdict !== 'ruled-out' && isWorthAClock(p10);
  return {
    glue: answerSentence(choice, catalogue),
    verdict: `${VERDICT_WORDS[choice.verdict]} on ${paperInSentence(plan.paper, catalogue)}`,
    steps: project.steps,
    ...(isTimed && { slip: { low: p10, high: p90 } }),
  };
}
