/**
 * Check values from outside: the tests run them and the page "How we check" shows them, from one file.
 * A `formula` check calls one function of core with the arguments of each row.
 */
import { z } from 'astro/zod';
import { id } from './number';
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
  /** largest difference that passes, absolute, in the unit */
  within: z.number().nonnegative(),
  basis,
  source: id.optional(),
  /** what the row says, for a reader: "20 lb bond in g/m²" */
  says: z.string().min(5),
  note: z.string().optional(),
}).refine((row) => row.basis !== 'published' || row.source, { message: 'published needs a source id' });

const outcomeRow = strictObject({
  id,
  paper: id,
  grammage: z.number().positive(),
  adhesive: id,
  spreads: z.boolean(),
  lifts: z.boolean(),
  gives: z.enum(['paper', 'substrate']).optional(),
});

const head = { title: z.string().min(5), about: z.string().min(20) };

export const checkSchema = z.discriminatedUnion('kind', [
  strictObject({ ...head, kind: z.literal('formula'), rows: z.array(formulaRow).min(1) }),
  strictObject({
    ...head,
    kind: z.literal('outcomes'),
    basis,
    note: z.string(),
    setting: strictObject({ substrate: id, technique: id, seconds: z.number().positive() }),
    rows: z.array(outcomeRow).min(1),
  }),
  strictObject({
    ...head,
    kind: z.literal('leave-one-out'),
    of: id,
    right: z.number().int(),
    asked: z.number().int(),
    folds: z.array(
      strictObject({
        paper: id,
        constants: z.record(z.number()),
        rows: z.array(strictObject({ id, spread: z.boolean(), lift: z.boolean() })),
      }),
    ),
  }),
]);

export type Check = z.infer<typeof checkSchema>;
export type FormulaRow = z.infer<typeof formulaRow>;
export type OutcomeRow = z.infer<typeof outcomeRow>;
