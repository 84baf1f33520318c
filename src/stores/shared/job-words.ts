/** The job on the bench in one line, with the names of this site's own records. */
import type { JobFacts } from '../../core/handover/job-facts';
import { jobInLine } from '../../core/handover/job-line';
import { catalogue } from '../../data/catalogue';

export const jobLine = (facts: JobFacts): string => jobInLine(facts, catalogue);
