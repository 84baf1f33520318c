/** The shape of a mixing answer: what to weigh and measure, in what order, and what the mix will be like. */

import type { Fact } from '../base/fact';
import type { Caution } from '../safety/hazards';

/** One thing to put in, as the bench can measure it. */
export interface Portion {
  readonly name: string;
  /** "10 g", "490 ml": rounded to what the scale or jug shows; the better way to measure comes first */
  readonly amount: string;
  /** the other way to measure it, where there is one */
  readonly or?: string;
  /** what it weighs, g, before a scale rounds it; of what has to be bought */
  readonly grams?: number;
}

export interface SlipSpan {
  readonly name: string;
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

export interface MixAnswer {
  /** one sentence to act on */
  readonly sentence: string;
  /** the strip on a phone: what, and how much */
  readonly brief: readonly [what: string, amount: string];
  readonly portions: readonly Portion[];
  /** what rounding to the scale and the jug does to the strength */
  readonly rounding?: string;
  readonly steps: readonly string[];
  readonly facts: readonly Fact[];
  readonly warnings: readonly string[];
  /** what its steps and its ingredients call for, the gravest first */
  readonly cautions: readonly Caution[];
  /** where this mix stands on its grade's curve */
  readonly curve?: { readonly grade: number; readonly percent: number };
  /** time the sheet can be moved, s, with what was stretched and with the mix */
  readonly slip?: { readonly rows: readonly SlipSpan[]; readonly neededSeconds: number };
  /** leading figures, for the fingerprint in a link */
  readonly figures: readonly number[];
}
