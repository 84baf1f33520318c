/** What the chooser says of a job, for the lesson: the same core, the same numbers. */
import { adhesiveName, VERDICT_WORDS } from '../../core/answer-words';
import { choose, type Choice } from '../../core/chooser';
import type { Job } from '../../core/job';
import { catalogue } from '../../data/catalogue';

export interface Answer extends Choice {
  readonly name: string;
  readonly word: string;
}

export const answersTo = (job: Job): readonly Answer[] =>
  choose(job, catalogue).map((choice) => ({
    ...choice,
    name: adhesiveName(choice.adhesiveId, catalogue),
    word: VERDICT_WORDS[choice.verdict],
  }));
