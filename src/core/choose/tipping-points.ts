/** What would change the answer: for each thing the person can change, the nearest value that flips first place. */
import type { Job } from './job';
import { LIMITS, type NumberField } from './job-limits';
import { atOnce, rank, type InTurns } from './ranking';
import type { Catalogue } from '../records/records';
import { secondsNeeded } from './sampling';
import { sheetOf } from '../paper/sheet';
import { dropFromSorptivity } from '../paper/sorption';

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

/** To the digits a reader is shown, so that the value, typed back, gives what was found. */
const asShown = (value: number): number => Number(value.toPrecision(2));
/** Steps out in each direction, as factors; past a threefold change it is another job. */
const FACTORS = [1.15, 1.35, 1.6, 2, 2.5, 3];
const DEGREES = [3, 6, 9, 12, 15, 18];

/** A search that stops before every question to the model, so that a page can take it in small turns. */
export type FlipSearch = InTurns<Flip | undefined>;

/** Looks for the nearest flip of one field; `now` is the adhesive in first place. Never throws. */
export function* searchFlip(field: FlipField, now: string, job: Job, catalogue: Catalogue): FlipSearch {
  const from = valueNow(field, job, catalogue);
  const steps: number[] =
    field === 'celsius' ? DEGREES.flatMap((d) => [from - d, from + d]) : FACTORS.flatMap((f) => [from / f, from * f]);
  const other = (value: number): string | undefined => {
    if (!isOther(field, value, from)) return undefined;
    const adhesiveId = rank(withValue(field, value, job), catalogue)[0]!.adhesiveId;
    return adhesiveId === now ? undefined : adhesiveId;
  };
  for (const step of steps.map(asShown)) {
    yield;
    const adhesiveId = other(step);
    if (adhesiveId !== undefined) return yield* refine({ field, from, to: step, adhesiveId }, other);
  }
  return undefined;
}

/** Halves the gap until the flip is known to about 3 %. */
function* refine(found: Flip, other: (value: number) => string | undefined): FlipSearch {
  let near = found.from;
  let flip = found;
  for (let i = 0; i < 3; i += 1) {
    const to = asShown((near + flip.to) / 2);
    if (to === flip.to) break;
    yield;
    const adhesiveId = other(to);
    if (adhesiveId === undefined) near = to;
    else flip = { ...flip, to, adhesiveId };
  }
  return flip;
}

/** The nearest flip for one field in one go, or undefined when nothing within reach flips it. */
export function nearestFlip(field: FlipField, job: Job, catalogue: Catalogue): Flip | undefined {
  return atOnce(searchFlip(field, rank(job, catalogue)[0]!.adhesiveId, job, catalogue));
}

function valueNow(field: FlipField, job: Job, catalogue: Catalogue): number {
  if (field === 'placeSeconds') return secondsNeeded(job);
  if (field === 'celsius') return job.celsius;
  const sheet = sheetOf(job, catalogue);
  return field === 'grammage' ? sheet.grammage.middle : dropFromSorptivity(sheet.sorptivity.middle);
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

/** Whether a value can be typed, and reads differently from the one that stands there. */
function isOther(field: FlipField, value: number, from: number): boolean {
  const limits = LIMITS[(field === 'absorbency' ? 'dropSeconds' : field) satisfies NumberField];
  return value >= limits.low && value <= limits.high && value !== asShown(from);
}
