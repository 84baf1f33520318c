/**
 * Check values from outside: the tests run them and the page "How we check" shows them, from one file.
 * A `formula` check calls one function of core with the arguments of each row.
 */
import { NEEDS } from '../core/choose/job';
import { TASKS } from '../core/records/task';
import { z } from 'astro/zod';
import { id, idOf } from './ids';
import { strictObject } from './strict';

const basis = z.enum(['published', 'common-practice', 'from-memory', 'exact']);
const scalar = z.union([z.number(), z.string(), z.boolean()]);
const argument: z.ZodType<unknown> = z.lazy(() => z.union([scalar, z.array(argument), z.record(argument)]));

const formulaRow = strictObject({
  id,
  /** name of an exported function of core (see src/data/check-functions.ts) */
  call: z.string(),
  args: z.array(argument),
  /** field of the result to compare, where the function gives several: "value", "uptake.paper" */
  pick: z.string().optional(),
  expected: z.number(),
  unit: z.string().default(''),
  /** largest difference that passes, absolute, in the unit: no more than the rounding of `expected` lets through */
  within: z.number().nonnegative(),
  /** why it may be more than that: what the source says of its own trust, or what the model knows of its own */
  toleranceFrom: z.string().min(20).optional(),
  /** the source that says so, where it is another than `source` */
  toleranceSource: idOf('sources').optional(),
  basis,
  source: idOf('sources').optional(),
  /** what the row says, for a reader: "20 lb bond in g/m²" */
  says: z.string().min(5),
  note: z.string().optional(),
}).superRefine((row, context) => {
  const say = (path: string, message: string) =>
    context.addIssue({ code: z.ZodIssueCode.custom, path: [path], message: `${row.id}: ${message}` });
  if (row.basis === 'published' && !row.source)
    say('source', 'published needs a source: …, the name of a file in content/sources');
  const rounding = halfOfLastFigure(row.expected);
  if (!row.toleranceFrom && row.within > rounding * (1 + 1e-9))
    say('within', `${row.expected} is rounded to ${rounding} at most; say in toleranceFrom why more may pass`);
  const counts = row.within === 0 || row.expected === 0;
  if (!counts && numbersIn(row.args).includes(row.expected))
    say('args', `the answer, ${row.expected}, stands among what goes in, so the check could not fail`);
});

/** Half a unit of the last figure that a number is written with: 9.2 → 0.05, 244 → 0.5. */
export function halfOfLastFigure(value: number): number {
  const [mantissa = '', exponent = '0'] = value.toString().split('e');
  const decimals = mantissa.split('.')[1]?.length ?? 0;
  return 0.5 * 10 ** (Number(exponent) - decimals);
}

function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (value === null || typeof value !== 'object') return [];
  return Object.values(value).flatMap(numbersIn);
}

const outcomeRow = strictObject({
  id,
  paper: idOf('papers'),
  grammage: z.number().positive(),
  adhesive: idOf('adhesives'),
  spreads: z.boolean(),
  lifts: z.boolean(),
  gives: z.enum(['paper', 'substrate']).optional(),
});

/** One statement of published practice as a job, with what its source accepts. */
const practiceRow = strictObject({
  id,
  task: z.enum(TASKS),
  paper: strictObject({
    family: idOf('papers'),
    grammage: z.number().positive().optional(),
    coloursRun: z.boolean().optional(),
  }),
  substrate: idOf('substrates'),
  widthMm: z.number().positive(),
  heightMm: z.number().positive(),
  /** needs of the job; called otherwise here, because a lesson's needs are lessons */
  wants: z.array(z.enum(NEEDS)),
  /** what the source accepts, of what is on the shelf here; of those the best it names; and what is not on the shelf */
  accepted: z.array(idOf('adhesives')),
  best: z.array(idOf('adhesives')),
  others: z.array(z.string()),
  /** what it warns of */
  warned: z.array(idOf('adhesives')),
  era: z.enum(['early', 'modern']),
  /** A institution, manual, textbook or journal; B named or practised binder; C unsigned or amateur */
  grade: z.enum(['A', 'B', 'C']),
  /** statements of one source are counted together where doubt is told */
  group: z.string().min(2),
  says: z.string().min(5),
  textSeen: z.enum(['full', 'excerpt']),
  from: strictObject({
    by: z.string().min(2),
    title: z.string().min(2),
    year: z.string().optional(),
    url: z.string().url().optional(),
    where: z.string().optional(),
  }),
  /** our reading of why the model answers otherwise, where it does */
  reading: z.string().min(10).optional(),
});

/** Statements that no setting was made with: half were looked at while the model was changed, half kept back till the end. */
const freshRow = strictObject({
  ...practiceRow.shape,
  half: z.enum(['seen', 'kept']),
  /** how a second reader coded it, who had not seen the first coding; what is left out was coded alike */
  again: practiceRow
    .pick({ task: true, paper: true, accepted: true, best: true, warned: true })
    .partial()
    .extend({
      textSeen: practiceRow.shape.textSeen,
      /** what the text does not tell, as far as the second reader saw it */
      untold: z.array(z.enum(['accepted', 'best', 'warned'])).optional(),
    })
    .optional(),
  /** where the row was corrected for it: what the first reader had coded, and why it was corrected, to follow "corrected: " */
  was: practiceRow
    .pick({ task: true, accepted: true, best: true, warned: true })
    .partial()
    .extend({ why: z.string().min(20) })
    .optional(),
});
const count = z.number().int().nonnegative();
/** How often each question was answered yes, on the day. */
const told = strictObject({ first: count, three: count, likely: count, warned: count });
const toldOfHalves = strictObject({ seen: told, kept: told });

const share = z.number().min(0).max(1);
const head = { title: z.string().min(5), about: z.string().min(20) };

/** Shares of trials: one adhesive did better, weight matters, the one or the other. `before` is what was told on 25 November 2026. */
const claimed = { better: share, weight: share, either: share };

const foretoldBy = strictObject({ brier: share, off: share });

export const checkSchema = z.discriminatedUnion('kind', [
  strictObject({ ...head, kind: z.literal('formula'), rows: z.array(formulaRow).min(1) }),
  strictObject({
    ...head,
    kind: z.literal('outcomes'),
    basis,
    note: z.string(),
    setting: strictObject({
      substrate: idOf('substrates'),
      technique: idOf('techniques'),
      seconds: z.number().positive(),
    }),
    rows: z.array(outcomeRow).min(1),
  }),
  strictObject({
    ...head,
    kind: z.literal('leave-one-out'),
    of: idOf('checks'),
    folds: z.array(
      strictObject({
        paper: idOf('papers'),
        /** chances that the model gave to the outcomes of the paper it had not seen */
        rows: z.array(strictObject({ id, spread: z.number().min(0).max(1), lift: z.number().min(0).max(1) })),
      }),
    ),
  }),
  strictObject({ ...head, kind: z.literal('practice'), rows: z.array(practiceRow).min(1) }),
  strictObject({
    ...head,
    kind: z.literal('fresh-practice'),
    /** the statements from which the favourites of tasks are learned */
    of: idOf('checks'),
    /** the day on which they were coded and asked, as it is read */
    made: z.string().min(10),
    /** before the model was changed with the first half in view, and after */
    before: toldOfHalves,
    after: toldOfHalves,
    rows: z.array(freshRow).min(1),
  }),
  strictObject({
    ...head,
    kind: z.literal('simulated'),
    /** the day on which it was run, as it is read: "28 November 2026" (a bare date is no text to YAML) */
    made: z.string().min(10),
    /** drawn for each row */
    trials: z.number().int().positive(),
    /** shares of trials whose page says that an adhesive did better, that weight matters, either */
    rows: z.array(
      strictObject({ id, says: z.string(), differs: z.boolean(), ...claimed, before: strictObject(claimed) }),
    ),
    /** share of pairings at a true half that are said to pass, or to fail, mostly */
    cells: z.array(strictObject({ id, swatches: z.number().int().positive(), rate: share, before: share })),
    /** share of trials in which what the page promises beside its claims was kept */
    promises: z.array(strictObject({ id, says: z.string(), rate: share, before: share })),
  }),
  strictObject({
    ...head,
    kind: z.literal('learning'),
    made: z.string().min(10),
    /** drawn for each row */
    benches: z.number().int().positive(),
    /** of them, those on which the right adhesive was sought */
    choices: z.number().int().positive(),
    /** papers that were not swatched, after so many swatches of others: Brier score, and how far what was said lies from what came true */
    foretold: z.array(
      strictObject({
        worlds: z.enum(['other-constants', 'far-constants', 'own-constants']),
        swatches: z.number().int().positive(),
        model: foretoldBy,
        learned: foretoldBy,
        counted: foretoldBy,
        /** Brier score of whoever knows the bench by heart, but neither the sheet nor the quirk of the pair */
        known: z.number().nonnegative(),
      }),
    ),
    /** how low a learner comes that knows from what the benches with other constants were drawn */
    ideal: strictObject({
      model: z.number().nonnegative(),
      rows: z.array(strictObject({ swatches: z.number().int().nonnegative(), brier: z.number().nonnegative() })),
    }).optional(),
    /** whether the right adhesive stands first */
    chosen: z.array(
      strictObject({
        way: z.enum(['suggested', 'full', 'lot']),
        right: z.array(strictObject({ swatches: z.number().int().nonnegative(), share })),
        /** swatches after which it is right for good on 8 benches of 10; -1 where it never is */
        mostNeed: z.number().int().min(-1),
        /** swatches made, in the mean */
        made: z.number().nonnegative(),
        /** of those that stood right at first, share that ended wrong */
        spoiled: share,
      }),
    ),
  }),
]);

export type Check = z.infer<typeof checkSchema>;
export type FormulaRow = z.infer<typeof formulaRow>;
export type OutcomeRow = z.infer<typeof outcomeRow>;
export type PracticeRow = z.infer<typeof practiceRow>;
export type FreshRow = z.infer<typeof freshRow>;
