/**
 * A trial that somebody has handed in: the file as the reading page saves it, one trial in it, with two lines more. The
 * licence says that others may use it, the contributor is the name to be shown, or none. What a reader's own file may
 * lose quietly (a weight that is no number, an adhesive that is not on the shelf) is a fault here, with its line.
 */
import { z } from 'astro/zod';
import { OTHER } from '../core/trial/method';
import { parseTrial } from '../core/trial/parse';
import { SWATCH_FACES } from '../core/trial/read-method';
import { dateIn } from '../core/trial/read-value';
import {
  ID,
  OUTCOMES,
  QUESTION_KINDS,
  TRIAL_FORMAT,
  TRIAL_LIMITS,
  TRIAL_VERSION,
  type Trial,
} from '../core/trial/record';
import { idOf } from './ids';
import { strictObject } from './strict';

export const LICENCES = ['CC0-1.0', 'CC-BY-4.0'] as const;

export interface PublishedTrial {
  readonly licence: (typeof LICENCES)[number];
  readonly contributor?: string | undefined;
  readonly trial: Trial;
}

/** `unit` as "g/m²"; the number itself is written without it. */
function within({ low, high, unit }: { readonly low: number; readonly high: number; readonly unit?: string }) {
  const message = `is a number from ${low} to ${high}${unit ? `, in ${unit} and without the unit` : ''}`;
  return z.number({ invalid_type_error: message, required_error: message }).min(low, message).max(high, message);
}
const whole = (high: number) => within({ low: 1, high }).int('is a whole number');
const line = z.string().max(TRIAL_LIMITS.name);
const ownId = z.string().regex(ID, 'is lower case, its words joined by hyphens: paper-1');
/** Empty where nobody knows it. */
const date = z
  .string()
  .refine(
    (text) => text === '' || dateIn(text) !== undefined,
    'is a date: 2026-03-01, or with the hour 2026-03-01T09:00:00Z',
  );
const tool = z.string().superRefine((value, context) => {
  if (value !== OTHER)
    for (const issue of idOf('techniques').safeParse(value).error?.issues ?? []) context.addIssue(issue);
});
const method = strictObject({
  tool: tool.optional(),
  face: z.enum(SWATCH_FACES).optional(),
  coat: within(TRIAL_LIMITS.coat).optional(),
});

/** As it is written today; in an older file less may stand. */
const written = strictObject({
  version: whole(TRIAL_VERSION),
  id: ownId,
  name: line,
  by: line,
  createdAt: date,
  demo: z.boolean().optional(),
  substrate: idOf('substrates').optional(),
  method: method.optional(),
  papers: z.array(
    strictObject({
      id: ownId,
      name: line.min(1),
      family: idOf('papers').optional(),
      grammage: within(TRIAL_LIMITS.grammage).optional(),
      dropSeconds: within(TRIAL_LIMITS.dropSeconds).optional(),
    }),
  ),
  glues: z.array(
    strictObject({
      id: ownId,
      name: line.min(1),
      record: idOf('adhesives').optional(),
      doubtful: z.literal(true).optional(),
    }),
  ),
  holds: z.array(within(TRIAL_LIMITS.hold)),
  replicates: whole(TRIAL_LIMITS.replicates),
  questions: z.array(
    strictObject({
      id: ownId,
      kind: z.enum(QUESTION_KINDS),
      text: z.string().min(1).max(TRIAL_LIMITS.text),
      criterion: z.string().max(TRIAL_LIMITS.text),
    }),
  ),
  widthMm: within(TRIAL_LIMITS.side),
  heightMm: within(TRIAL_LIMITS.side),
  seed: within({ low: 0, high: 4294967295 }),
  conditions: strictObject({
    celsius: within(TRIAL_LIMITS.celsius).optional(),
    humidity: within(TRIAL_LIMITS.humidity).optional(),
    batch: z.string().max(TRIAL_LIMITS.note).optional(),
  }),
  swatches: z.array(
    strictObject({
      number: whole(9999),
      paper: ownId,
      glue: ownId,
      hold: within(TRIAL_LIMITS.hold),
      method: method.optional(),
      block: whole(9999),
      outcomes: z.record(ownId, z.enum(OUTCOMES)),
      laidAt: z.number().optional(),
      judgedAt: date.optional(),
      by: line.optional(),
      note: z.string().max(TRIAL_LIMITS.note).optional(),
      spoiled: z.boolean().optional(),
      from: strictObject({ trial: ownId, name: line, number: whole(9999) }).optional(),
    }),
  ),
});

export const trialSchema = strictObject({
  format: z.literal(TRIAL_FORMAT),
  licence: z.enum(LICENCES),
  contributor: z.string().min(1).max(TRIAL_LIMITS.name).optional(),
  trials: z.array(written).length(1, 'holds one trial; save each to a file of its own'),
}).transform(({ licence, contributor, trials }, context): PublishedTrial => {
  const read = parseTrial(trials[0]);
  // what a reader may leave out of a file of his own is mended before it is shown to others
  for (const message of read.ok ? read.notes : read.problems)
    context.addIssue({ code: z.ZodIssueCode.custom, path: ['trials'], message });
  return read.ok ? { licence, contributor, trial: read.trial } : z.NEVER;
});
