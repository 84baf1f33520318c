/** Jobs to try things on: sound ones as a link would carry them, and ones full of nonsense. */
import fc from 'fast-check';
import { DEFAULT_JOB, JOB_FIELDS, jobProblems, NEEDS, type Job } from '../../../src/core/choose/job';
import { SIZINGS, SURFACES, type JobPaper } from '../../../src/core/paper/asked-paper';
import { catalogue } from '../../../src/data/catalogue';

const ids = (kind: 'papers' | 'substrates' | 'techniques' | 'adhesives') => [...catalogue[kind].keys()];

/** Object with the keys that have a value: an absent field and one that is `undefined` are not the same. */
function present<T extends object>(value: T): { [K in keyof T]: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(value).filter(([, inner]) => inner !== undefined)) as never;
}

type NumberField = {
  [K in keyof typeof JOB_FIELDS]: (typeof JOB_FIELDS)[K] extends { readonly kind: 'number' } ? K : never;
}[keyof typeof JOB_FIELDS];
/** Fields of a job that hold a number. */
export const NUMBER_FIELDS = (Object.keys(JOB_FIELDS) as (keyof typeof JOB_FIELDS)[]).filter(
  (field): field is NumberField => JOB_FIELDS[field].kind === 'number',
);

const within = (field: NumberField) =>
  fc.double({ min: JOB_FIELDS[field].low, max: JOB_FIELDS[field].high, noNaN: true });
const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined });

/** A job that `jobProblems` has nothing to say about, in the order that a link carries it. */
export const soundJob: fc.Arbitrary<Job> = fc
  .record({
    paper: fc.record({
      family: fc.constantFrom(...ids('papers')),
      grammage: maybe(within('grammage')),
      caliper: maybe(within('caliper')),
      dropSeconds: maybe(within('dropSeconds')),
      cobb: maybe(within('cobb')),
      surface: maybe(fc.constantFrom(...SURFACES)),
      sizing: maybe(fc.constantFrom(...SIZINGS)),
      coloursRun: maybe(fc.boolean()),
    }),
    substrate: fc.constantFrom(...ids('substrates')),
    widthMm: within('widthMm'),
    heightMm: within('heightMm'),
    placeSeconds: maybe(within('placeSeconds')),
    needs: fc.subarray([...NEEDS]),
    celsius: within('celsius'),
    humidity: within('humidity'),
    tool: fc.constantFrom(...ids('techniques')),
    atHand: fc.subarray(ids('adhesives')).map((some) => [...some].sort()),
  })
  .map(({ paper, ...rest }) => present({ ...rest, paper: present(paper) as JobPaper }) as Job)
  .filter((job) => jobProblems(job, catalogue).length === 0);

const oddNumber = fc.oneof(
  fc.double(),
  fc.constantFrom(NaN, Infinity, -Infinity, 0, -0, -1, 1e-320, 1e308, Number.MAX_SAFE_INTEGER, 0.1, 100),
);
const oddId = fc.oneof(
  fc.string({ maxLength: 20 }),
  fc.constantFrom('', '__proto__', 'constructor', 'toString', 'pva', 'kozo-tissue', '<b>', '../..'),
);

/** A job of the right shape whose numbers and names may be anything. */
export const oddJob: fc.Arbitrary<Job> = fc
  .record({
    paper: fc.record({
      family: fc.oneof(fc.constantFrom(...ids('papers')), oddId),
      grammage: maybe(oddNumber),
      caliper: maybe(oddNumber),
      dropSeconds: maybe(oddNumber),
      cobb: maybe(oddNumber),
      surface: maybe(fc.constantFrom(...SURFACES)),
      sizing: maybe(fc.constantFrom(...SIZINGS)),
      coloursRun: maybe(fc.boolean()),
    }),
    substrate: fc.oneof(fc.constantFrom(...ids('substrates')), oddId),
    widthMm: oddNumber,
    heightMm: oddNumber,
    placeSeconds: maybe(oddNumber),
    needs: fc.subarray([...NEEDS]),
    celsius: oddNumber,
    humidity: oddNumber,
    tool: fc.oneof(fc.constantFrom(...ids('techniques')), oddId),
    atHand: fc.array(fc.oneof(fc.constantFrom(...ids('adhesives')), oddId), { maxLength: 5 }),
  })
  .map(({ paper, ...rest }) => present({ ...rest, paper: present(paper) as JobPaper }) as Job);

/** The usual job with a paper of this kind and weight. */
export const jobWith = (family: string, grammage?: number, rest: Partial<Job> = {}): Job => ({
  ...DEFAULT_JOB,
  ...rest,
  paper: { family, ...(grammage !== undefined && { grammage }) },
});
