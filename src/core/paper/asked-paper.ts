/** A paper as somebody describes it: its kind, and whatever of it was measured or is known. */
import type { Sizing, Surface } from '../records/records';

export const SURFACES: readonly Surface[] = ['smooth', 'textured', 'embossed'];
export const SIZINGS: readonly Sizing[] = ['unsized', 'lightly-sized', 'sized', 'hard-sized', 'coated'];

export interface JobPaper {
  /** id of the paper family it is, or is most like */
  readonly family: string;
  /** g/m²; the family's own range when left out */
  readonly grammage?: number;
  /** µm; worked out from the family's density when left out */
  readonly caliper?: number;
  /** seconds a drop of water takes to sink in */
  readonly dropSeconds?: number;
  /** g/m² taken up in a 60-second Cobb test; wins over the drop test when both are given */
  readonly cobb?: number;
  readonly surface?: Surface;
  readonly sizing?: Sizing;
  readonly coloursRun?: boolean;
}
