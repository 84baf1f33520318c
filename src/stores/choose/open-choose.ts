/** A chooser over this site's own records that shows the first places alone, as in a lesson. */
import { encodeJob } from '../../core/choose/write-link';
import { DEFAULT_JOB, settleJob, type Job, type SettledJob } from '../../core/choose/job';
import { FIRST_PLACES, rankInTurns, SAMPLES } from '../../core/choose/ranking';
import { catalogue } from '../../data/catalogue';
import type { TypedInto } from '../shared/typed';
import { createChoose, jobOfTexts, jobTextsTyped, type ChooseStore } from './choose';
import { answersAhead } from '../shared/time-slice';

const answers = answersAhead(encodeJob, (job: SettledJob) => rankInTurns(job, catalogue, SAMPLES, FIRST_PLACES));

/** Works out the first answer before the page needs it, in turns that leave it free to be used. */
export const prepareChoose = (start: Job, into: TypedInto): Promise<void> => {
  const texts = jobTextsTyped(start, into);
  const job = texts && jobOfTexts(texts, catalogue).job;
  return answers.prepare(job ?? settleJob(start, catalogue).job);
};

export const openChoose = (start: Job = DEFAULT_JOB, into: TypedInto = { prefix: '' }): ChooseStore =>
  createChoose(catalogue, answers.now, start, answers.inTurns, jobTextsTyped(start, into));
