/** A chooser over this site's own records. */
import { encodeJob } from '../core/encode-job';
import { DEFAULT_JOB, type Job } from '../core/job';
import { rankInTurns } from '../core/ranking';
import { catalogue } from '../data/catalogue';
import { createChooser, type ChooserStore } from './chooser';
import { answersAhead } from './in-turns';

const answers = answersAhead(encodeJob, (job: Job) => rankInTurns(job, catalogue));

/** Works out the first answer before the page needs it, in turns that leave it free to be used. */
export const prepareChooser = answers.prepare;

export const openChooser = (start: Job = DEFAULT_JOB): ChooserStore =>
  createChooser(catalogue, answers.now, start, answers.inTurns);
