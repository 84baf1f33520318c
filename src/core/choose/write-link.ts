/** A job as the readable tail of an address; `read-link.ts` reads it back. */
import { encodePlan } from '../link/plan-link';
import { JOB_FIELDS, planOfJob, type Job } from './job';
import { encodeSeen, type Seen } from './seen';

/** The tail of a link, without "?". `decodeJob` gives the same job back. */
export const encodeJob = (job: Job, seen?: Seen): string =>
  encodePlan(planOfJob(job), JOB_FIELDS, seen && encodeSeen(seen));
