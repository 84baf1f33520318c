/** A chooser over this site's own records. */
import { encodeJob } from '../../core/choose/write-link';
import { DEFAULT_JOB, type Job } from '../../core/choose/job';
import { rankInTurns } from '../../core/choose/ranking';
import { catalogue } from '../../data/catalogue';
import { createChoose, type ChooseStore } from './choose';
import { answersAhead } from '../shared/time-slice';

const answers = answersAhead(encodeJob, (job: Job) => rankInTurns(job, catalogue));

/** Works out the first answer before the page needs it, in turns that leave it free to be used. */
export const prepareChoose = answers.prepare;

export const openChoose = (start: Job = DEFAULT_JOB): ChooseStore =>
  createChoose(catalogue, answers.now, start, answers.inTurns);
