/**
 * A trial that somebody has handed in: the file as the reading page saves it, one trial in it, with two lines more. The
 * licence says that others may use it, the contributor is the name to be shown, or none.
 */
import { z } from 'astro/zod';
import { OTHER } from '../core/trial/method';
import { parseTrial } from '../core/trial/parse';
import { OUTCOMES, TRIAL_FORMAT, TRIAL_LIMITS, type Trial } from '../core/trial/record';
import { idOf } from './ids';
import { strictObject } from './strict';

export const LICENCES = ['CC0-1.0', 'CC-BY-4.0'] as const;

export interface PublishedTrial {
  readonly licence: (typeof LICENCES)[number];
  readonly contributor?: string | undefined;
  readonly trial: Trial;
}

export const trialSchema = strictObject({
  format: z.literal(TRIAL_FORMAT),
  licence: z.enum(LICENCES),
  contributor: z.string().min(1).max(TRIAL_LIMITS.name).optional(),
  trials: z.array(z.unknown()).length(1),
}).transform(({ licence, contributor, trials }, context): PublishedTrial => {
  const fault = (message: string) => context.addIssue({ code: z.ZodIssueCode.custom, path: ['trials'], message });
  const read = parseTrial(trials[0]);
  const named = (kind: 'papers' | 'adhesives' | 'substrates' | 'techniques', id: string | undefined) => {
    const found = id === undefined ? undefined : idOf(kind).safeParse(id);
    if (found && !found.success) for (const { message } of found.error.issues) fault(message);
  };
  if (!read.ok) {
    for (const problem of read.problems) fault(problem);
    return z.NEVER;
  }
  // what a reader may leave out of a file of his own is mended before it is shown to others
  for (const note of read.notes) fault(note);
  for (const message of [...strayWeights(trials[0], read.trial), ...strayOutcomes(trials[0])]) fault(message);
  for (const { family } of read.trial.papers) named('papers', family);
  for (const { record } of read.trial.glues) named('adhesives', record);
  named('substrates', read.trial.substrate);
  for (const { method } of [read.trial, ...read.trial.swatches])
    if (method?.tool !== OTHER) named('techniques', method?.tool);
  return { licence, contributor, trial: read.trial };
});

/** Weights that cannot be read, which a reader's own file loses quietly too. */
function strayWeights(trial: unknown, { papers }: Trial): string[] {
  const { low, high } = TRIAL_LIMITS.grammage;
  const written = z.object({ papers: z.array(z.object({ id: z.unknown(), grammage: z.unknown() })) }).parse(trial);
  return written.papers.flatMap(({ id, grammage }, i) => {
    const isRead = grammage === undefined || papers.some((one) => one.id === id && one.grammage === grammage);
    return isRead
      ? []
      : [`paper no. ${i + 1}: the grammage is a number from ${low} to ${high}, in g/m² and without the unit`];
  });
}

/** Outcomes that are none of the three: a reader's own file loses them quietly, a published one is not to. */
function strayOutcomes(trial: unknown): string[] {
  const { swatches } = z.object({ swatches: z.array(z.unknown()) }).parse(trial);
  return swatches.flatMap((swatch, i) => {
    const read = z.object({ outcomes: z.record(z.string(), z.enum(OUTCOMES)).optional() }).safeParse(swatch);
    return read.success ? [] : [`swatch no. ${i + 1}: each outcome is one of ${OUTCOMES.join(', ')}`];
  });
}
