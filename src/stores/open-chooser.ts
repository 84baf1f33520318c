/** A chooser over this site's own records. */
import { DEFAULT_JOB, type Job } from '../core/job';
import { rank } from '../core/ranking';
import { catalogue } from '../data/catalogue';
import { createChooser, type ChooserStore } from './chooser';

export const openChooser = (start: Job = DEFAULT_JOB): ChooserStore =>
  createChooser(catalogue, (job) => rank(job, catalogue), start);
