/** What would change the answer: for each thing the person can change, the nearest value that flips first place. */
import { JOB_FIELDS, settleJob, withoutMisfit, type Job, type SettledJob } from './job';
import { atOnce, type InTurns } from '../base/turns';
import { rankInTurns, SAMPLES } from './ranking';
import { withinLimits } from '../base/limits';
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

/** Looks for the nearest flip of one field of a settled job; `now` is the adhesive in first place. */
export function* searchFlip(field: FlipField, now: string, job: SettledJob, catalogue: Catalogue): FlipSearch {
  const from = valueNow(field, job, catalogue);
  const steps: number[] =
    field === 'celsius' ? DEGREES.flatMap((d) => [from - d, from + d]) : FACTORS.flatMap((f) => [from / f, from * f]);
  const other = (value: number): string | undefined => {
    if (!isOther(field, value, from)) return undefined;
    const adhesiveId = firstOf(withValue(field, value, job, catalogue), catalogue);
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
  const sound = settleJob(job, catalogue).job;
  return atOnce(searchFlip(field, firstOf(sound, catalogue), sound, catalogue));
}

const firstOf = (job: SettledJob, catalogue: Catalogue): string =>
  atOnce(rankInTurns(job, catalogue, SAMPLES, 1))[0]!.adhesiveId;

function valueNow(field: FlipField, job: Job, catalogue: Catalogue): number {
  if (field === 'placeSeconds') return secondsNeeded(job);
  if (field === 'celsius') return job.celsius;
  const sheet = sheetOf(job, catalogue);
  return field === 'grammage' ? sheet.grammage.middle : dropFromSorptivity(sheet.sorptivity.middle);
}

/** The job with another value, which is within its limits. */
function withValue(field: FlipField, value: number, job: SettledJob, catalogue: Catalogue): SettledJob {
  if (field === 'placeSeconds' || field === 'celsius') return { ...job, [field]: value };
  if (field === 'grammage') return withGrammage(value, job, catalogue);
  const { cobb: _measured, ...paper } = job.paper;
  return { ...job, paper: { ...paper, dropSeconds: value } };
}

/** A heavier sheet of the same make is thicker in proportion; a thickness past its limits, or that the weight forbids, is left out. */
function withGrammage(value: number, job: SettledJob, catalogue: Catalogue): SettledJob {
  const { caliper, ...paper } = job.paper;
  const scaled = caliper !== undefined && paper.grammage !== undefined ? (caliper * value) / paper.grammage : caliper;
  const fits = scaled !== undefined && withinLimits('caliper', scaled, JOB_FIELDS.caliper).ok;
  const changed = { ...paper, grammage: value, ...(fits && { caliper: scaled }) };
  return withoutMisfit({ ...job, paper: changed }, catalogue).job;
}

/** Whether a value can be typed, and reads differently from the one that stands there. */
function isOther(field: FlipField, value: number, from: number): boolean {
  const limits = JOB_FIELDS[field === 'absorbency' ? 'dropSeconds' : field];
  return value >= limits.low && value <= limits.high && value !== asShown(from);
}
