/** What would change the answer: for each thing the person can change, the nearest value that flips first place. */
import type { Job } from './job';
import { LIMITS, type NumberField } from './job-limits';
import { rank } from './ranking';
import type { Catalogue } from './records';
import { secondsNeeded } from './sampling';
import { sheetOf } from './sheet';

export type FlipField = 'grammage' | 'absorbency' | 'placeSeconds' | 'celsius';
export const FLIP_FIELDS: readonly FlipField[] = ['grammage', 'absorbency', 'placeSeconds', 'celsius'];

export interface Flip {
  readonly field: FlipField;
  /** where it stands now, in the field's unit (absorbency: seconds of a drop test) */
  readonly from: number;
  /** the nearest value found that puts another adhesive first */
  readonly to: number;
  readonly adhesiveId: string;
}

/** Fewer draws than the answer itself: the search asks many times, and only first place matters. */
const DRAWS = 32;
/** Steps out in each direction, as factors; past a threefold change it is another job. */
const FACTORS = [1.15, 1.35, 1.6, 2, 2.5, 3];
const DEGREES = [3, 6, 9, 12, 15, 18];

/** The nearest flip for one field, or undefined when nothing within reach flips it. Never throws. */
export function nearestFlip(field: FlipField, job: Job, catalogue: Catalogue): Flip | undefined {
  const first = (changed: Job) => rank(changed, catalogue, DRAWS)[0]!.adhesiveId;
  const now = first(job);
  const from = valueNow(field, job, catalogue);
  const steps: number[] =
    field === 'celsius' ? DEGREES.flatMap((d) => [from - d, from + d]) : FACTORS.flatMap((f) => [from / f, from * f]);
  for (const step of steps) {
    if (!allowed(field, step)) continue;
    const adhesiveId = first(withValue(field, step, job));
    if (adhesiveId !== now) return refine(field, from, step, now, job, first);
  }
  return undefined;
}

/** Halves the gap until the flip is known to about 3 %. */
function refine(
  field: FlipField,
  from: number,
  found: number,
  now: string,
  job: Job,
  first: (job: Job) => string,
): Flip {
  let [near, far] = [from, found];
  for (let i = 0; i < 3; i += 1) {
    const between = (near + far) / 2;
    if (first(withValue(field, between, job)) === now) near = between;
    else far = between;
  }
  return { field, from, to: far, adhesiveId: first(withValue(field, far, job)) };
}

function valueNow(field: FlipField, job: Job, catalogue: Catalogue): number {
  if (field === 'placeSeconds') return secondsNeeded(job);
  if (field === 'celsius') return job.celsius;
  const sheet = sheetOf(job, catalogue);
  return field === 'grammage' ? sheet.grammage.middle : (20 / sheet.sorptivity.middle) ** 2;
}

function withValue(field: FlipField, value: number, job: Job): Job {
  if (field === 'placeSeconds' || field === 'celsius') return { ...job, [field]: value };
  if (field === 'grammage') {
    // A heavier sheet of the same make is thicker in proportion.
    const { caliper, grammage } = job.paper;
    const scaled = caliper !== undefined && grammage !== undefined ? { caliper: (caliper * value) / grammage } : {};
    return { ...job, paper: { ...job.paper, ...scaled, grammage: value } };
  }
  const { cobb: _measured, ...paper } = job.paper;
  return { ...job, paper: { ...paper, dropSeconds: value } };
}

function allowed(field: FlipField, value: number): boolean {
  const limits = LIMITS[(field === 'absorbency' ? 'dropSeconds' : field) satisfies NumberField];
  return value >= limits.low && value <= limits.high;
}
