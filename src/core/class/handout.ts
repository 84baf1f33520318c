/** What a student is given: how to glue it, how long there is, and the order of making. */
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
}

/** What a student takes home: the thing, its sizes, the adhesive and the steps. */
export function handoutOf(plan: ClassPlan, choice: Choice, project: MakeAnswer, catalogue: Catalogue): Handout {
  return {
    glue: answerSentence(choice, catalogue),
    verdict: `${VERDICT_WORDS[choice.verdict]} on ${paperInSentence(plan.paper, catalogue)}`,
    steps: project.steps,
  };
}
