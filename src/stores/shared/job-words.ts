/** The job on the bench in one line, with the names of this site's own records. */
import type { Facts } from '../../core/handover/job-facts';
import { jobInLine } from '../../core/handover/job-line';
import { catalogue } from '../../data/catalogue';

export const jobLine = (facts: Facts): string => jobInLine(facts, catalogue);
