/**
 * What a swatch trial is: the papers, the adhesives, the hold times and the questions that were tried, and
 * every swatch with what it showed. This shape is what is kept on the device, exported and imported.
 */

import { PAPER_LIMITS } from '../paper/limits';

/** Raise it when the shape changes, and add the step to MIGRATIONS in parse.ts. */
export const TRIAL_VERSION = 3;

/** Names the file as one of ours whatever it is called. */
export const TRIAL_FORMAT = 'open-time-trial';

export const OUTCOMES = ['pass', 'partly', 'fail'] as const;
export type Outcome = (typeof OUTCOMES)[number];

export interface TrialPaper {
  readonly id: string;
  readonly name: string;
  /** id of the paper family it is, or is most like */
  readonly family?: string;
  /** g/m² */
  readonly grammage?: number;
  /** seconds a drop of water takes to sink in */
  readonly dropSeconds?: number;
}

export interface TrialGlue {
  readonly id: string;
  readonly name: string;
  /** id of the adhesive on the shelf that it is */
  readonly record?: string;
  /** name and record may not be of one adhesive: planned when a default row kept its name under another pick from the shelf */
  readonly doubtful?: true;
}

/** Which side got the glue: the paper in the hand, the paper laid out on a support, or the board. */
export type SwatchFace = 'sheet' | 'sheet-on-support' | 'ground';

/** How swatches were made. What is left out was done as usual: with a full brush, on the paper. */
export interface SwatchMethod {
  /** id of the tool on the shelf; 'other' for one that is not on it */
  readonly tool?: string;
  readonly face?: SwatchFace;
  /** wet coat, g/m², where it was weighed */
  readonly coat?: number;
}

export interface Question {
  readonly id: string;
  /** 'lift' and 'spread' feed the chooser; 'stuck' does so for the joint */
  readonly kind: QuestionKind;
  readonly text: string;
  /** what counts as a pass, written before the first swatch is laid */
  readonly criterion: string;
}

export const QUESTION_KINDS = ['spread', 'lift', 'board', 'strike', 'cockle', 'stuck', 'own'] as const;
export type QuestionKind = (typeof QUESTION_KINDS)[number];

export interface Swatch {
  /** its place in the drawn order, from 1: the number on its card */
  readonly number: number;
  readonly paper: string;
  readonly glue: string;
  /** seconds between laying and lifting */
  readonly hold: number;
  /** how it was made, where that is another way than its trial's */
  readonly method?: SwatchMethod;
  /** which repeat of the whole set it belongs to, from 1 */
  readonly block: number;
  /** question id → what it showed; a question without an entry is not judged yet */
  readonly outcomes: Readonly<Record<string, Outcome>>;
  /** when it was laid, milliseconds since 1970 */
  readonly laidAt?: number;
  /** when it was last judged, ISO 8601 */
  readonly judgedAt?: string;
  readonly by?: string;
  readonly note?: string;
  /** set aside: dropped, smeared, the wrong paper; counts nowhere */
  readonly spoiled?: boolean;
  /** where it comes from when another's trial was merged in */
  readonly from?: Origin;
}

export interface Origin {
  readonly trial: string;
  readonly name: string;
  readonly number: number;
}

export interface Conditions {
  readonly celsius?: number;
  /** relative, per cent */
  readonly humidity?: number;
  /** batches, makers, anything that may matter later */
  readonly batch?: string;
}

export interface Trial {
  readonly version: typeof TRIAL_VERSION;
  readonly id: string;
  readonly name: string;
  readonly by: string;
  /** ISO 8601 */
  readonly createdAt: string;
  /** invented for showing how this works */
  readonly demo?: boolean;
  /** substrate id */
  readonly substrate?: string;
  /** how its swatches were made */
  readonly method?: SwatchMethod;
  readonly papers: readonly TrialPaper[];
  readonly glues: readonly TrialGlue[];
  readonly holds: readonly number[];
  readonly replicates: number;
  readonly questions: readonly Question[];
  readonly widthMm: number;
  readonly heightMm: number;
  readonly seed: number;
  readonly conditions: Conditions;
  readonly swatches: readonly Swatch[];
}

/** What a trial may hold: enough for a class, little enough for a phone. Choices of ours. */
export const TRIAL_LIMITS = {
  papers: 24,
  glues: 24,
  holds: 6,
  replicates: 12,
  questions: 10,
  swatches: 600,
  name: 80,
  text: 240,
  note: 600,
  /** characters of a file that is read in */
  file: 1_000_000,
  hold: { low: 0, high: 86_400, unit: 's' },
  grammage: PAPER_LIMITS.grammage,
  dropSeconds: PAPER_LIMITS.dropSeconds,
  side: { low: 10, high: 300, unit: 'mm' },
  coat: { low: 1, high: 1000, unit: 'g/m²' },
  celsius: { low: -10, high: 50, unit: '°C' },
  humidity: { low: 0, high: 100, unit: '%' },
} as const;

/** Ids are made here or checked on the way in; nothing typed becomes one. */
export const ID = /^[a-z0-9]{1,40}(?:-[a-z0-9]{1,40}){0,7}$/;

/** What a swatch showed, or undefined. Asks only for its own entries: a question may be called "constructor". */
export function outcomeOf(swatch: Swatch, question: string): Outcome | undefined {
  return Object.hasOwn(swatch.outcomes, question) ? swatch.outcomes[question] : undefined;
}

/** Has every question been answered, or has the swatch been set aside. */
export function isDone(swatch: Swatch, questions: readonly Question[]): boolean {
  return swatch.spoiled === true || questions.every(({ id }) => outcomeOf(swatch, id) !== undefined);
}

/** What a list is called by, or the id itself: names are text and may be anything. */
export function nameIn(list: readonly { readonly id: string; readonly name: string }[], id: string): string {
  return list.find((one) => one.id === id)?.name ?? id;
}
