/** What a student is given: how to glue it, how long there is, and the order of making. */
import { answerSentence, VERDICT_WORDS } from './answer-words';
import type { Choice } from './chooser';
import { paperInSentence } from './paper-text';
import type { ProjectAnswer } from './project-answer';
import type { Catalogue } from './records';
import type { WorkshopPlan } from './workshop-plan';

export interface Handout {
  readonly glue: string;
  readonly verdict: string;
  readonly steps: readonly string[];
}

export function handoutOf(plan: WorkshopPlan, choice: Choice, project: ProjectAnswer, catalogue: Catalogue): Handout {
  return {
    glue: answerSentence(choice, catalogue),
    verdict: `${VERDICT_WORDS[choice.verdict]} on ${paperInSentence(plan.paper, catalogue)}`,
    steps: project.steps,
  };
}
