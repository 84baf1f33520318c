/** What a judgement of one adhesive for one job has found: the shapes that the files of this room hand each other. */
import type { Percentiles, Range } from '../base/quantity';
import type { Sheet } from '../paper/sheet';
import type { Adhesive } from '../records/records';
import type { Job } from './job';
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
  readonly chances: Chances;
  readonly margins: Chances;
  readonly slipSeconds: Percentiles;
  /** seconds the person needs */
  readonly needed: number;
  readonly gives: 'paper' | 'substrate' | 'neither';
  readonly fit: Suitability;
}

export interface Ranked {
  readonly adhesiveId: string;
  readonly verdict: Verdict;
  /** all of it together, with what the person needs: what the order goes by, 0–1 */
  readonly chance: number;
  /** chance of each margin holding, 0–1 */
  readonly chances: Chances;
  readonly slipSeconds: Percentiles;
  /** middle margin of each: 1 is the edge */
  readonly margins: Chances;
  /** which side gives where the lift fails; 'neither' when it mostly holds */
  readonly gives: 'paper' | 'substrate' | 'neither';
  readonly placement: Placement;
  /** false when the person said what is at hand and this is not among it */
  readonly atHand: boolean;
  readonly facts: Finding;
}
