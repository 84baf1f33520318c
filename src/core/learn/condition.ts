/**
 * One way in which swatches were made, with what they showed: what the model is asked about. Apart from what reads it out of
 * trials, since a lesson asks about swatches of its own.
 */
import type { Job } from '../choose/job';
import type { JobPaper } from '../paper/asked-paper';
import type { Outcome, QuestionKind, SwatchMethod } from '../trial/record';

/** The questions that the model has an answer to. */
export const MODELLED = ['spread', 'lift', 'board', 'cockle', 'stuck'] as const satisfies readonly QuestionKind[];
export type Modelled = (typeof MODELLED)[number];

/** What one swatch showed; a question that was not asked, or not judged, is left out. */
export type SwatchSeen = Readonly<Partial<Record<Modelled, Outcome>>>;

export interface Condition {
  /** whose bench it is: everything that is a bench's own is shared by all that has one key */
  readonly bench: string;
  /** whose sheet it is: what is a sheet's own is shared by all that has one key */
  readonly sheet: string;
  /** as the maker called it */
  readonly paperName: string;
  readonly paper: JobPaper;
  /** id of the adhesive on the shelf */
  readonly adhesive: string;
  /** the swatch as a job: laid for the seconds after which it was lifted */
  readonly job: Job;
  /** how it was made, where that is not as usual: on the paper, with the coat of its tool (`job.tool`) */
  readonly method?: Pick<SwatchMethod, 'face' | 'coat'>;
  readonly seen: readonly SwatchSeen[];
}

/** Ids of trials that others have published begin so on this device: each is a bench of its own, and never one's own. */
export const PUBLISHED = 'published';
/** Whether a bench is that of a published trial. */
export const isOthers = (bench: string): boolean => bench.startsWith(`${PUBLISHED} `);

/** The bench of whoever made most of these swatches; of as many, the name that comes first. Undefined for none. */
export function ownBench(conditions: readonly Condition[]): string | undefined {
  const counts = new Map<string, number>();
  for (const { bench, seen } of conditions)
    if (!isOthers(bench)) counts.set(bench, (counts.get(bench) ?? 0) + seen.length);
  return [...counts].sort(([a, n], [b, m]) => m - n || (a < b ? -1 : 1))[0]?.[0];
}

/** Whether this is the sheet of a condition: the same kind, and a weight within a twentieth where both are given. */
export function isSheet(paper: JobPaper, other: JobPaper): boolean {
  if (paper.family !== other.family) return false;
  if (paper.grammage === undefined || other.grammage === undefined) return paper.grammage === other.grammage;
  return Math.abs(Math.log(paper.grammage / other.grammage)) <= 0.05;
}
