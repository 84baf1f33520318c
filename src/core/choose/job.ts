/**
 * The job a person can state: its fields, what stands in them at first, and what is wrong with one, if anything is.
 *
 * To add a field: a line in `Job` (or in `JobPaper`, where it is said of the sheet) and a row in the table, at its
 * place in the link, whose order is fixed; the key must be new. Reading, limits, messages, the link, what a link has
 * dropped, the store and the tests that send nonsense follow from the row. Left to do: show it (islands/choose), and
 * let the model make something of it. A field that links made before do not hold needs a `usual` that gives those the
 * answer they had, or is `optional`.
 */
import { RECORD_ID } from '../base/record-id';
import type { InputError } from '../base/result';
import { problemWith, usualOf, type Field, type FieldTable, type PlanOf } from '../link/fields';
import { SIZINGS, SURFACES, type JobPaper } from '../paper/asked-paper';
import { PAPER_LIMITS } from '../paper/limits';
import { caliperProblem } from '../paper/misfit';
import { BENCH_FIELD, GROUND, PAPER_KIND, TOOL } from '../records/kinds';
import type { Catalogue } from '../records/records';
import { TASKS, type Task } from '../records/task';

export const NEEDS = [
  'undo',
  'long-lived',
  'flexes',
  'damp',
  'flat',
  'colours',
  'children',
  'no-heat',
  'food',
  'valued',
  'slow',
  'quick',
  'strong',
  'no-strike-through',
] as const;
export type Need = (typeof NEEDS)[number];

export interface Job {
  /** what is being done; to cover when left out, as in links made before tasks were asked for */
  readonly task?: Task;
  readonly paper: JobPaper;
  readonly substrate: string;
  readonly widthMm: number;
  readonly heightMm: number;
  /** seconds needed to place the piece; worked out from its size when left out */
  readonly placeSeconds?: number;
  readonly needs: readonly Need[];
  readonly celsius: number;
  /** per cent */
  readonly humidity: number;
  /** technique id */
  readonly tool: string;
  /** ids of adhesives, of ingredients to mix them from, and of tools; everything when empty */
  readonly atHand: readonly string[];
  /** whether the other side is lined too; as the task has it when left out */
  readonly lined?: boolean;
  /** what was measured of one's own bench, as links carry it (`readBench`); the records alone when left out */
  readonly bench?: string;
}

/** What is asked of the sheet, which a job holds apart. */
export const JOB_PAPER_FIELDS = {
  family: {
    kind: 'text',
    key: 'paper',
    label: 'Your paper is most like',
    what: 'The paper',
    pattern: RECORD_ID,
    record: PAPER_KIND,
    usual: 'chiyogami',
  },
  grammage: { kind: 'number', key: 'gsm', label: 'Its weight', ...PAPER_LIMITS.grammage, optional: true },
  caliper: { kind: 'number', key: 'thick', label: 'Thickness', ...PAPER_LIMITS.caliper, optional: true },
  dropSeconds: {
    kind: 'number',
    key: 'drop',
    label: 'A drop sinks in after',
    ...PAPER_LIMITS.dropSeconds,
    optional: true,
  },
  cobb: { kind: 'number', key: 'cobb', label: 'or Cobb 60', ...PAPER_LIMITS.cobb, optional: true },
  surface: { kind: 'one-of', key: 'face', label: 'Its surface', what: 'Its surface', of: SURFACES, optional: true },
  sizing: {
    kind: 'one-of',
    key: 'size',
    label: 'Its sizing or coating',
    what: 'Its sizing',
    of: SIZINGS,
    optional: true,
  },
  coloursRun: {
    kind: 'yes-no',
    key: 'runs',
    label: 'Do its colours run when wet?',
    what: 'Whether its colours run',
    optional: true,
  },
} as const satisfies Readonly<Record<keyof JobPaper, Field>>;

/** Whether this id is something that can lie on a bench: an adhesive, an ingredient or a tool. */
export const isThing = (id: string, { adhesives, ingredients, techniques }: Catalogue): boolean =>
  adhesives.has(id) || ingredients.has(id) || techniques.has(id);

/** Fixed order: links are written in it. */
export const JOB_FIELDS = {
  task: {
    kind: 'one-of',
    key: 'task',
    label: 'What you are doing',
    what: 'What is being done',
    of: TASKS,
    optional: true,
  },
  ...JOB_PAPER_FIELDS,
  substrate: {
    kind: 'text',
    key: 'on',
    label: 'It goes on',
    what: 'What it goes on',
    pattern: RECORD_ID,
    record: GROUND,
    usual: 'binders-board',
  },
  widthMm: {
    kind: 'number',
    key: 'wide',
    label: 'Width',
    what: 'The width of the piece',
    low: 5,
    high: 3000,
    unit: 'mm',
    usual: 210,
  },
  heightMm: {
    kind: 'number',
    key: 'high',
    label: 'Height',
    what: 'The height of the piece',
    low: 5,
    high: 3000,
    unit: 'mm',
    usual: 150,
  },
  placeSeconds: {
    kind: 'number',
    key: 'place',
    label: 'Time you need to place it',
    what: 'The time to place it',
    low: 1,
    high: 1800,
    unit: 's',
    optional: true,
  },
  needs: { kind: 'some-of', key: 'need', label: 'It needs to be', what: 'What it must do', of: NEEDS, usual: [] },
  celsius: {
    kind: 'number',
    key: 'room',
    label: 'Room',
    what: 'The room',
    low: 1,
    high: 40,
    unit: '°C',
    usual: 20,
  },
  humidity: {
    kind: 'number',
    key: 'rh',
    label: 'Humidity',
    what: 'The humidity',
    low: 5,
    high: 100,
    unit: '%',
    usual: 50,
  },
  tool: {
    kind: 'text',
    key: 'tool',
    label: 'Your tool',
    what: 'The tool',
    pattern: RECORD_ID,
    record: TOOL,
    usual: 'brush-full',
  },
  atHand: {
    kind: 'ids',
    key: 'have',
    label: 'Adhesives you have',
    what: 'What is at hand',
    pattern: RECORD_ID,
    most: 60,
    record: { called: 'adhesives', isOne: (id: string, catalogue: Catalogue) => isThing(id, catalogue) },
    usual: [],
  },
  lined: {
    kind: 'yes-no',
    key: 'lined',
    label: 'Is the other side lined too?',
    what: 'Whether the other side is lined',
    optional: true,
  },
  bench: BENCH_FIELD,
} as const satisfies Readonly<Record<keyof JobPaper | Exclude<keyof Job, 'paper'>, Field>>;

export type JobField = keyof typeof JOB_FIELDS;
/** A job with what is said of its sheet beside the rest: what the table speaks of. */
export type JobPlan = PlanOf<typeof JOB_FIELDS>;

/** A job as the table's values. */
export const planOfJob = ({ paper, ...rest }: Job): JobPlan => ({ ...paper, ...rest }) as JobPlan;

/** The job of these values; what is undefined is left out of it. */
export function jobOfPlan(plan: JobPlan): Job {
  const said = Object.entries(plan).filter(([, value]) => value !== undefined);
  const ofPaper = ([name]: readonly [string, unknown]) => name in JOB_PAPER_FIELDS;
  return {
    ...Object.fromEntries(said.filter((entry) => !ofPaper(entry))),
    paper: Object.fromEntries(said.filter(ofPaper)),
  } as unknown as Job;
}

export const DEFAULT_JOB: Job = jobOfPlan(usualOf(JOB_FIELDS));

/**
 * Seconds most people need to lay a piece of this size: a strip 5 s, an A4 sheet about 20 s, a square metre a minute,
 * for it is rolled down a part at a time. Common practice, no source.
 */
export function placingTime(widthMm: number, heightMm: number): number {
  const squareMetres = (widthMm * heightMm) / 1e6;
  return Math.min(300, Math.max(3, 56 * Math.pow(squareMetres, 0.37)));
}

/** The same to the second, as it is shown. */
export const placingSeconds = (widthMm: number, heightMm: number): number => Math.round(placingTime(widthMm, heightMm));

const entriesOf = (job: Job): readonly (readonly [name: JobField, field: Field, value: unknown])[] => {
  const plan = planOfJob(job);
  return Object.entries<Field>(JOB_FIELDS satisfies FieldTable).map(([name, field]) => {
    const key = name as JobField;
    return [key, field, plan[key]];
  });
};

/** Everything wrong with a job, field by field; empty when `choose` can answer it as it stands. */
export function jobProblems(job: Job, catalogue: Catalogue): readonly InputError[] {
  const problems = entriesOf(job).flatMap(([name, field, value]) => problemWith(name, field, value, catalogue) ?? []);
  return problems.length > 0 ? problems : (misfit(job, catalogue) ?? []);
}

/** A thickness that the weight forbids, each being sound by itself. The weight is the kind's own where none is given. */
function misfit({ paper }: Job, { papers }: Catalogue): readonly InputError[] | undefined {
  const grammage = paper.grammage ?? papers.get(paper.family)!.grammage.middle;
  const problem = paper.caliper === undefined ? undefined : caliperProblem(grammage, paper.caliper);
  return problem && [problem];
}

declare const settled: unique symbol;
/**
 * A job that `choose` can answer as it stands: `jobProblems` has nothing to say of it. A job is settled once, on its
 * way in; what ranks takes it for granted.
 */
export type SettledJob = Job & { readonly [settled]: true };

/** The job with every unusable part put back to its default, and the fields that were. Never throws. */
export function settleJob(job: Job, catalogue: Catalogue): { job: SettledJob; dropped: readonly string[] } {
  const dropped: string[] = [];
  const entries = entriesOf(job).map(([name, field, value]): [string, unknown] => {
    const isSound = (one: unknown) => problemWith(name, field, one, catalogue) === undefined;
    if (isSound(value)) return [name, value];
    dropped.push(name);
    return [name, Array.isArray(value) ? value.filter((one) => isSound([one])) : field.usual];
  });
  const sound = dropped.length === 0 ? job : jobOfPlan(Object.fromEntries(entries) as unknown as JobPlan);
  const { job: fitting, dropped: unfit } = withoutMisfit(sound, catalogue);
  return { job: fitting, dropped: [...dropped, ...unfit] };
}

/** A job whose fields are each sound, without a thickness that its weight forbids. */
export function withoutMisfit(job: Job, catalogue: Catalogue): { job: SettledJob; dropped: readonly string[] } {
  if (!misfit(job, catalogue)) return { job: job as SettledJob, dropped: [] };
  const { caliper: _forbidden, ...paper } = job.paper;
  return { job: { ...job, paper } as SettledJob, dropped: ['caliper'] };
}
