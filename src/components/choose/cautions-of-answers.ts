/** Cautions that some answer of the chooser can call for: its page is sent the texts of these and of no others. */
import { layingCautions } from '../../core/adhesive/hazards';
import { DEFAULT_JOB } from '../../core/choose/job';
import { choose } from '../../core/choose/choose';
import type { Catalogue } from '../../core/records/records';

export function cautionsOfAnswers(catalogue: Catalogue): ReadonlySet<string> {
  // whatever it is glued with, these needs have cautions of their own
  const needed = (['valued', 'food'] as const).flatMap((need) =>
    choose({ ...DEFAULT_JOB, needs: [need] }, catalogue, 1).flatMap(({ cautions }) => cautions),
  );
  return new Set([...cautionsOfLaying(catalogue), ...needed]);
}

/** What laying anything on anything can call for. */
const cautionsOfLaying = (catalogue: Catalogue): readonly string[] =>
  [...catalogue.adhesives.values()].flatMap((adhesive) =>
    [...catalogue.substrates.values()].flatMap((ground) => layingCautions(adhesive, ground, catalogue)),
  );

/** The same of flatness, which asks what is laid on what, and whether it is valued. */
export const cautionsOfFlatness = (catalogue: Catalogue): ReadonlySet<string> =>
  new Set(['valued-original', ...cautionsOfLaying(catalogue)]);
