/** What the chooser says of a job, for the lesson: the same core, the same numbers. */
import { adhesiveName, VERDICT_WORDS } from '../../core/choose/answer-words';
import { choose, type Choice } from '../../core/choose/choose';
import { encodeJob } from '../../core/choose/write-link';
import { FLIP_FIELDS, nearestFlip, type Flip } from '../../core/choose/tipping-points';
import { DEFAULT_JOB, type Job } from '../../core/choose/job';
import { memoize } from '../../core/base/memoize';
import { weightMap } from '../../core/choose/weight-map';
import { catalogue } from '../../data/catalogue';

export interface NamedAnswer extends Choice {
  readonly name: string;
  readonly word: string;
}

export const answersTo = memoize(
  (job: Job): readonly NamedAnswer[] =>
    choose(job, catalogue).map((choice) => ({
      ...choice,
      name: adhesiveName(choice.adhesiveId, catalogue),
      word: VERDICT_WORDS[choice.verdict],
    })),
  encodeJob,
);

/** The nearest change in each thing that puts another adhesive first. */
export const flipsOf = memoize(
  (job: Job): readonly Flip[] => FLIP_FIELDS.flatMap((field) => nearestFlip(field, job, catalogue) ?? []),
  encodeJob,
);

export const MAP_CELLS = { columns: 24, rows: 18 } as const;
/** Where an adhesive holds, over all papers, for the job that the chooser opens with. */
export const weightMapOf = memoize((adhesive: string) =>
  weightMap(adhesive, DEFAULT_JOB, catalogue, MAP_CELLS.columns, MAP_CELLS.rows),
);
