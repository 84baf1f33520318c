/**
 * The chooser's state: what was typed, as typed; the job it makes when it makes one; the answer to the
 * last job that did. Nothing here computes an answer: core does.
 */
import type { Ranked } from '../../core/choose/finding';
import { atom, computed } from 'nanostores';
import {
  DEFAULT_JOB,
  JOB_FIELDS,
  jobOfPlan,
  jobProblems,
  placingSeconds,
  planOfJob,
  settleJob,
  type Job,
  type SettledJob,
} from '../../core/choose/job';
import { readTexts, textsOf, usualOf, type TextsOf } from '../../core/link/fields';
import type { Catalogue } from '../../core/records/records';
import type { Task } from '../../core/records/task';
import type { InputError } from '../../core/base/result';
import { seenIn } from '../../core/choose/seen';
import { encodeJob } from '../../core/choose/write-link';
import { isTyped, textsTyped, type TypedInto } from '../shared/typed';

/** What stands in the form: numbers as text, so that nothing typed is ever lost; needs and adhesives as ticked. */
export type JobTexts = TextsOf<typeof JOB_FIELDS>;
type TickedField = 'needs' | 'atHand';

/** A job as its reader would have typed it. */
export const textsOfJob = (job: Job): JobTexts => textsOf(planOfJob(job), JOB_FIELDS);

const USUAL = usualOf(JOB_FIELDS);

/** The job that these texts make, settled; or everything that is wrong with them. */
export function jobOfTexts(
  texts: JobTexts,
  catalogue: Catalogue,
): { job?: SettledJob; problems: readonly InputError[] } {
  const { plan, problems: slips } = readTexts(texts, JOB_FIELDS, USUAL);
  const job = jobOfPlan(plan);
  const problems = [...slips, ...jobProblems(job, catalogue)];
  return problems.length > 0 ? { problems } : { job: job as SettledJob, problems };
}

/**
 * The texts of a form that started at this job, with what was typed into it. None where nothing was, or where it
 * was the task, with which other fields change.
 */
export function jobTextsTyped(start: Job, into: TypedInto): JobTexts | undefined {
  const typed = textsTyped(into, JOB_FIELDS);
  if (!isTyped(typed) || 'task' in typed) return undefined;
  return { ...textsOfJob(start), ...typed } as JobTexts;
}

/** The task that these texts name; to cover when they name none. */
export const taskIn = (texts: JobTexts): Task => (texts.task === '' ? 'cover' : (texts.task as Task));

export type ChooseStore<R extends Ranked = Ranked> = ReturnType<typeof createChoose<R>>;

/** Answers a job: `rank` for the order alone, `choose` with reasons and technique. */
export type Answerer<R extends Ranked> = (job: SettledJob, catalogue: Catalogue) => readonly R[];
/** Answers a job in turns, and says so when it is done. Returns a function that stops it. */
export type Answering<R extends Ranked> = (job: SettledJob, done: (choices: readonly R[]) => void) => () => void;

/**
 * Texts, the job they make, its answer and its link: what every chooser has, in a lesson or on its own page.
 * The job, the answer and the link change together, when the answer is there. `texts`: what the form holds already.
 */
export function createChoose<R extends Ranked>(
  catalogue: Catalogue,
  answer: Answerer<R>,
  start: Job = DEFAULT_JOB,
  answering: Answering<R> = (job, done) => {
    done(answer(job, catalogue));
    return () => {};
  },
  texts?: JobTexts,
) {
  const settled = settleJob(start, catalogue).job;
  const $texts = atom<JobTexts>(texts ?? textsOfJob(settled));
  const $parsed = computed($texts, (texts) => jobOfTexts(texts, catalogue));
  const $problems = computed($parsed, ({ problems }) => problems);
  /** the last job that made sense: its answer stays, dimmed, while the inputs do not */
  const first = $parsed.get().job ?? settled;
  const $answered = atom({ job: first, choices: answer(first, catalogue) });
  let stop = () => {};
  $parsed.listen(({ job }) => {
    if (!job) return;
    stop();
    stop = answering(job, (choices) => $answered.set({ job, choices }));
  });
  const $job = computed($answered, ({ job }) => job);
  const $choices = computed($answered, ({ choices }) => choices);
  const $tail = computed($answered, ({ job, choices }) => encodeJob(job, seenIn(choices[0]!)));
  const $suggestedSeconds = computed($job, (job) => placingSeconds(job.widthMm, job.heightMm));

  const set = <K extends keyof JobTexts>(field: K, text: JobTexts[K]): void => {
    if ($texts.get()[field] !== text) $texts.set({ ...$texts.get(), [field]: text });
  };
  const toggle = (field: TickedField, value: string): void => {
    const now: readonly string[] = $texts.get()[field];
    const next = now.includes(value) ? now.filter((one) => one !== value) : [...now, value];
    set(field, next as never);
  };
  return {
    fields: JOB_FIELDS,
    catalogue,
    $texts,
    $problems,
    $job,
    $choices,
    $tail,
    $suggestedSeconds,
    set,
    toggle,
  };
}
