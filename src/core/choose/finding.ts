/** What a judgement of one adhesive for one job has found: the shapes that the files of this room hand each other. */
import type { Percentiles, Range } from '../base/quantity';
import type { Sheet } from '../paper/sheet';
import type { Adhesive } from '../records/records';
import type { Job } from './job';
import type { Method } from './method';
import type { Chances } from './tally';

export type Verdict = 'sound' | 'likely' | 'touch-and-go' | 'unlikely' | 'ruled-out' | 'refused' | 'defer';

export interface Placement {
  /** "the back of the paper", "the board, not the paper", "both faces" */
  readonly glueGoesOn: string;
  /** technique id, or for dry adhesives what they are put on with */
  readonly tool: string;
  /** wet coat, g/m²; absent for what is not spread */
  readonly coat?: Range;
  /** minutes to let the pasted sheet relax before laying; 0 when it should go down at once */
  readonly relaxMinutes: number;
  readonly placeBeforeContact: boolean;
}

export interface Reason {
  readonly code: string;
  /** larger is weightier */
  readonly weight: number;
  readonly against: boolean;
  readonly text: string;
}

export interface Suitability {
  /** share of the chance that is left, 0–1 */
  readonly share: number;
  /** set when the needs decide the matter alone */
  readonly verdict?: 'ruled-out' | 'refused' | 'defer';
  readonly notes: readonly Reason[];
  readonly cautions: readonly string[];
}

/** What a judgement has found, for those who put it in words. */
export interface Finding {
  readonly adhesive: Adhesive;
  readonly job: Job;
  readonly sheet: Sheet;
  readonly method: Method;
  /** how much each thing counts for this task and method, 0–1 */
  readonly weights: Chances;
  readonly chances: Chances;
  readonly margins: Chances;
  readonly slipSeconds: Percentiles;
  readonly openSeconds: Percentiles;
  /** seconds the person needs */
  readonly needed: number;
  readonly gives: 'paper' | 'substrate' | 'neither';
  readonly fit: Suitability;
}

/** Another way to use the same adhesive that does about as well. */
export interface OtherMethod {
  readonly method: Method;
  readonly chance: number;
  readonly chances: Chances;
}

export interface Ranked {
  readonly adhesiveId: string;
  readonly verdict: Verdict;
  /** all of it together, with what the person needs: what the order goes by, 0–1 */
  readonly chance: number;
  /** how it is to be done; every chance and time here is of this method */
  readonly method: Method;
  /** the next best method, where it is close */
  readonly other?: OtherMethod;
  /** chance of each thing holding, 0–1 */
  readonly chances: Chances;
  /** how much each counts for this task and method, 0–1 */
  readonly weights: Chances;
  /** from laying until it no longer slides */
  readonly slipSeconds: Percentiles;
  /** from the first stroke until what was glued first no longer sticks */
  readonly openSeconds: Percentiles;
  /** middle margin of each: 1 is the edge */
  readonly margins: Chances;
  /** which side gives where the lift fails; 'neither' when it mostly holds */
  readonly gives: 'paper' | 'substrate' | 'neither';
  readonly placement: Placement;
  /** false when the person said what is at hand and this is not among it, nor can be mixed from it */
  readonly atHand: boolean;
  /** what sort of film it leaves: "starch", "ether+vinyl" */
  readonly kind: string;
  readonly facts: Finding;
}
