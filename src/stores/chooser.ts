/**
 * The chooser's state: what was typed, as typed; the job it makes when it makes one; the answer to the
 * last job that did. Nothing here computes an answer: core does.
 */
import { atom, computed, map } from 'nanostores';
import { choose } from '../core/chooser';
import { FLIP_FIELDS, nearestFlip, type Flip } from '../core/flips';
import { DEFAULT_JOB, jobProblems, placingSeconds, settleJob, type Job, type JobPaper, type Need } from '../core/job';
import { LIMITS, type NumberField } from '../core/job-limits';
import { parseNumber } from '../core/number-text';
import type { Catalogue, Sizing, Surface } from '../core/records';
import type { InputError } from '../core/result';
import { seenIn, sameAnswer, type Seen } from '../core/seen';
import { decodeJob, encodeJob } from '../core/share-link';

/** Everything as the reader typed or picked it. Numbers are text, so that nothing typed is ever lost. */
export interface Inputs {
  readonly family: string;
  readonly grammage: string;
  readonly caliper: string;
  readonly dropSeconds: string;
  readonly cobb: string;
  readonly surface: '' | Surface;
  readonly sizing: '' | Sizing;
  readonly coloursRun: '' | 'yes' | 'no';
  readonly substrate: string;
  readonly widthMm: string;
  readonly heightMm: string;
  readonly placeSeconds: string;
  readonly needs: readonly Need[];
  readonly celsius: string;
  readonly humidity: string;
  readonly tool: string;
  readonly atHand: readonly string[];
}

export function inputsOf(job: Job): Inputs {
  const text = (value: number | undefined) => (value === undefined ? '' : String(value));
  const { paper } = job;
  return {
    family: paper.family,
    grammage: text(paper.grammage),
    caliper: text(paper.caliper),
    dropSeconds: text(paper.dropSeconds),
    cobb: text(paper.cobb),
    surface: paper.surface ?? '',
    sizing: paper.sizing ?? '',
    coloursRun: paper.coloursRun === undefined ? '' : paper.coloursRun ? 'yes' : 'no',
    substrate: job.substrate,
    widthMm: text(job.widthMm),
    heightMm: text(job.heightMm),
    placeSeconds: text(job.placeSeconds),
    needs: job.needs,
    celsius: text(job.celsius),
    humidity: text(job.humidity),
    tool: job.tool,
    atHand: job.atHand,
  };
}

const REQUIRED: readonly NumberField[] = ['widthMm', 'heightMm', 'celsius', 'humidity'];
const NUMBER_FIELDS = Object.keys(LIMITS) as NumberField[];

/** The job these inputs make, or everything that is wrong with them. */
export function jobOf(inputs: Inputs, catalogue: Catalogue): { job?: Job; problems: readonly InputError[] } {
  const problems: InputError[] = [];
  const numbers: Partial<Record<NumberField, number>> = {};
  for (const field of NUMBER_FIELDS) {
    const text = inputs[field].trim();
    if (text === '' && !REQUIRED.includes(field)) continue;
    const value = parseNumber(text);
    const { low, high, unit, what } = LIMITS[field];
    if (value !== undefined) numbers[field] = value;
    else
      problems.push({
        field,
        code: 'not-a-number',
        message: `${what} must be a number from ${low} to ${high} ${unit}.`,
        limits: { low, high, unit },
      });
  }
  const { grammage, caliper, dropSeconds, cobb, ...rest } = numbers;
  const paper: JobPaper = {
    family: inputs.family,
    ...(grammage !== undefined && { grammage }),
    ...(caliper !== undefined && { caliper }),
    ...(dropSeconds !== undefined && { dropSeconds }),
    ...(cobb !== undefined && { cobb }),
    ...(inputs.surface && { surface: inputs.surface }),
    ...(inputs.sizing && { sizing: inputs.sizing }),
    ...(inputs.coloursRun && { coloursRun: inputs.coloursRun === 'yes' }),
  };
  const { substrate, needs, tool, atHand } = inputs;
  const job: Job = { ...DEFAULT_JOB, ...rest, paper, substrate, needs, tool, atHand };
  problems.push(...jobProblems(job, catalogue));
  return problems.length > 0 ? { problems } : { job, problems };
}

export type ChooserStore = ReturnType<typeof createChooser>;

export function createChooser(catalogue: Catalogue, start: Job = DEFAULT_JOB) {
  const $inputs = atom<Inputs>(inputsOf(start));
  const $parsed = computed($inputs, (inputs) => jobOf(inputs, catalogue));
  const $problems = computed($parsed, ({ problems }) => problems);
  /** the last job that made sense: its answer stays, dimmed, while the inputs do not */
  const $job = atom<Job>(start);
  $parsed.listen(({ job }) => job && $job.set(job));
  const $choices = computed($job, (job) => choose(job, catalogue));
  const $compared = map<{ a: string; b: string }>({ a: '', b: '' });
  /** what a link could not be read for, and what its sender saw */
  const $link = atom<{ readonly dropped: readonly string[]; readonly seen?: Seen }>({ dropped: [] });
  const $flips = atom<readonly Flip[] | undefined>(undefined);
  const $tail = computed([$job, $choices], (job, choices) => encodeJob(job, seenIn(choices[0]!)));
  /** set when a link's sender saw another answer than today's, until the job is changed */
  const $otherAnswer = computed([$link, $choices], ({ seen }, choices) =>
    seen && !sameAnswer(seen, seenIn(choices[0]!)) ? seen : undefined,
  );

  return {
    catalogue,
    $inputs,
    $problems,
    $job,
    $choices,
    $compared,
    $link,
    $flips,
    $tail,
    $otherAnswer,
    set<K extends keyof Inputs>(field: K, value: Inputs[K]): void {
      // Once the job is the reader's own, what a sender saw no longer bears on it.
      if ($link.get().seen) $link.set({ dropped: $link.get().dropped });
      $inputs.set({ ...$inputs.get(), [field]: value });
    },
    toggle(field: 'needs' | 'atHand', value: string): void {
      const now = $inputs.get()[field] as readonly string[];
      const next = now.includes(value) ? now.filter((one) => one !== value) : [...now, value].sort();
      this.set(field, next as never);
    },
    /** Takes a link's tail; empty text leaves everything as it is. */
    load(text: string): void {
      if (text.replace(/^[?#]/, '') === '') return;
      const { job, dropped, seen } = decodeJob(text);
      const settled = settleJob(job, catalogue);
      $link.set({ dropped: [...dropped, ...settled.dropped], ...(seen && { seen }) });
      $inputs.set(inputsOf(settled.job));
    },
    /** Looks for what would change the answer, one field per turn of `later`, and stops when the job moves on. */
    lookForFlips(later: (work: () => void) => void): void {
      const job = $job.get();
      const found: Flip[] = [];
      const look = (fields: typeof FLIP_FIELDS) => {
        const [field, ...others] = fields;
        if ($job.get() !== job) return;
        if (field === undefined) return $flips.set(found);
        const flip = nearestFlip(field, job, catalogue);
        if (flip) found.push(flip);
        later(() => look(others));
      };
      later(() => look(FLIP_FIELDS));
    },
    suggestedSeconds: computed($job, (job) => placingSeconds(job.widthMm, job.heightMm)),
  };
}
