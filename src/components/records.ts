/** Records that a lesson names, at the middle of their ranges. Each throws at build on an unknown id. */
import type { Job } from '../core/choose/job';
import type { Adhesive, Paper, Substrate, Technique, WetAdhesive } from '../core/records/records';
import { DEFAULT_JOB } from '../core/choose/job';
import { catalogue } from '../data/catalogue';

function named<T>(record: T | undefined, id: string): T {
  if (record === undefined) throw new Error(`no record is called "${id}"`);
  return record;
}
export const paperOf = (id: string): Paper => named(catalogue.papers.get(id), id);
export const substrateOf = (id: string): Substrate => named(catalogue.substrates.get(id), id);
export const techniqueOf = (id: string): Technique => named(catalogue.techniques.get(id), id);
export const adhesiveOf = (id: string): Adhesive => named(catalogue.adhesives.get(id), id);
export function wetAdhesiveOf(id: string): WetAdhesive {
  const adhesive = adhesiveOf(id);
  if (adhesive.form !== 'wet') throw new Error(`"${id}" is not a wet adhesive`);
  return adhesive;
}

/** A job on binder's board that names only its paper. */
export const jobWith = (family: string, more: Partial<Job> = {}): Job => ({
  ...DEFAULT_JOB,
  paper: { family },
  ...more,
});
