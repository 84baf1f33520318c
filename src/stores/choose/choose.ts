/**
 * The chooser's state: what was typed, as typed; the job it makes when it makes one; the answer to the
 * last job that did. Nothing here computes an answer: core does.
 */
import type { Ranked } from '../../core/choose/finding';
import { atom, computed } from 'nanostores';
import { DEFAULT_JOB, jobProblems, placingSeconds, type Job, type Need } from '../../core/choose/job';
import type { JobPaper } from '../../core/paper/asked-paper';
import { LIMITS, numberProblem, type NumberField } from '../../core/choose/job-limits';
import { parseNumber } from '../../core/base/number-text';
import type { Catalogue, Sizing, Surface } from '../../core/records/records';
import type { InputError } from '../../core/base/result';
import { seenIn } from '../../core/choose/seen';
import { encodeJob } from '../../core/choose/write-link';

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
    if (value !== undefined) numbers[field] = value;
    else problems.push(numberProblem(field, Number.NaN)!);
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

export type ChooseStore<R extends Ranked = Ranked> = ReturnType<typeof createChoose<R>>;

/** Answers a job: `rank` for the order alone, `choose` with reasons and technique. */
export type Answerer<R extends Ranked> = (job: Job, catalogue: Catalogue) => readonly R[];
/** Answers a job in turns, and says so when it is done. Returns a function that stops it. */
export type Answering<R extends Ranked> = (job: Job, done: (choices: readonly R[]) => void) => () => void;

/**
 * Inputs, the job they make, its answer and its link: what every chooser has, in a lesson or on its own page.
 * The job, the answer and the link change together, when the answer is there.
 */
export function createChoose<R extends Ranked>(
  catalogue: Catalogue,
  answer: Answerer<R>,
  start: Job = DEFAULT_JOB,
  answering: Answering<R> = (job, done) => {
    done(answer(job, catalogue));
    return () => {};
  },
) {
  const $inputs = atom<Inputs>(inputsOf(start));
  const $parsed = computed($inputs, (inputs) => jobOf(inputs, catalogue));
  const $problems = computed($parsed, ({ problems }) => problems);
  /** the last job that made sense: its answer stays, dimmed, while the inputs do not */
  const $answered = atom({ job: start, choices: answer(start, catalogue) });
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

  const set = <K extends keyof Inputs>(field: K, value: Inputs[K]): void =>
    $inputs.set({ ...$inputs.get(), [field]: value });
  const toggle = (field: 'needs' | 'atHand', value: string): void => {
    const now = $inputs.get()[field] as readonly string[];
    const next = now.includes(value) ? now.filter((one) => one !== value) : [...now, value];
    set(field, next as never);
  };
  return { catalogue, $inputs, $problems, $job, $choices, $tail, $suggestedSeconds, set, toggle };
}
