/**
 * A job as the readable tail of an address, and back. A link is a promise: keys in words, record ids
 * rather than positions, a fixed order, the version, and the answer that its sender saw. Nothing that
 * is pasted here can throw.
 */
import { decodePlan, fieldInLink, partName } from '../link/read-plan-link';
import { caliperProblem } from '../paper/misfit';
import { JOB_FIELDS, jobOfPlan, type Job, type JobField } from './job';
import { decodeSeen, type Seen } from './seen';
import { encodeJob } from './write-link';

export { encodeJob };

export interface DecodedJob {
  readonly job: Job;
  /** what was left out, each named as its reader would: "gsm (abc)" */
  readonly dropped: readonly string[];
  readonly seen?: Seen;
}

/** In a link of the chooser a number left empty has always been passed over without a word. */
const PASSED_OVER = Object.values(JOB_FIELDS).flatMap(({ kind, key }) =>
  kind === 'number' ? [partName(key, '')] : [],
);

/** Any text to a job: what cannot be read is left at its default and named in `dropped`. Never throws. */
export function decodeJob(text: unknown): DecodedJob {
  const { plan, dropped: unread, seen: seenText } = decodePlan(text, JOB_FIELDS);
  const { grammage, caliper } = plan;
  const contradicts =
    grammage !== undefined && caliper !== undefined && caliperProblem(grammage, caliper) !== undefined;
  const seen = decodeSeen(seenText);
  const dropped = [
    ...unread.filter((part) => !PASSED_OVER.includes(part)),
    ...(contradicts ? [fieldInLink(JOB_FIELDS.caliper, caliper)] : []),
    ...(seenText !== undefined && !seen ? [partName('seen', seenText)] : []),
  ];
  const job = jobOfPlan(contradicts ? { ...plan, caliper: undefined } : plan);
  return { job, dropped, ...(seen && { seen }) };
}

/** How a link would name a field that only the records could judge: "paper (moon-paper)", "have". */
export const jobPartInLink = (field: string, plan: Readonly<Record<string, unknown>>): string =>
  fieldInLink(JOB_FIELDS[field as JobField], plan[field]);
