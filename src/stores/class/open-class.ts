/** The workshop sheet over this site's own records. */
import { chooseInTurns } from '../../core/choose/choose';
import { encodeJob } from '../../core/choose/write-link';
import { settleJob, type Job } from '../../core/choose/job';
import { slowQuestions } from '../../core/class/answer';
import { DEFAULT_CLASS } from '../../core/class/plan';
import { catalogue } from '../../data/catalogue';
import { withBenches } from '../shared/on-bench';
import { answersAhead } from '../shared/time-slice';
import { madeAhead } from '../shared/precompute';
import { createClass, rememberingParts, type ClassStore } from './class';

const records = withBenches(catalogue);
const choices = answersAhead(encodeJob, (job: Job) => chooseInTurns(settleJob(job, records).job, records));
const slow = rememberingParts(choices.now);
const sheet = madeAhead(() => createClass(catalogue, DEFAULT_CLASS, slow));

/** Works out the first answer before the page needs it, its slow parts each in turns of their own. */
export async function prepareClass(): Promise<void> {
  const questions = slowQuestions(DEFAULT_CLASS);
  if (questions) {
    await choices.prepare(questions.job);
    await slow.cut.prepare(questions.cut);
  }
  await sheet.prepare();
}

export const openClass = (): ClassStore => sheet.take();
