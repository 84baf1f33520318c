/** How far a covered board bows, for the lesson: the cover, and perhaps a lining, having dried on it. */
import { LEFT_AFTER_PRESSING, sheetPly } from '../../core/joint/flatness';
import { bowHeight, stripCurvature, type MovingPly } from '../../core/joint/laminate';
import { paperOf, substrateOf } from '../records';

export interface BowedBoard {
  readonly paper: string;
  /** mm; the middle of the record when left out */
  readonly boardMm?: number;
  readonly spanMm: number;
  /** dried under weight; otherwise the whole of the growth pulls */
  readonly pressed?: boolean;
  /** paper on the inner face, with its grain the same way */
  readonly lining?: string;
}

/** One sheet, glued on soaked and dried, as a ply that would be smaller. */
function pullOf(id: string, share: number): MovingPly {
  const { grammage, density, tensileIndex, wetExpansion } = paperOf(id);
  const sheet = { grammage: grammage.middle, density: density.middle, tensileIndex: tensileIndex.middle };
  return { ...sheetPly(sheet), strain: -wetExpansion.middle * share };
}

/** Height of the bow, mm. */
export function bowOf({ paper, boardMm, spanMm, pressed = true, lining }: BowedBoard): number {
  const { thickness, modulus } = substrateOf('binders-board');
  const share = pressed ? LEFT_AFTER_PRESSING : 1;
  const board = { thickness: boardMm ?? thickness.middle, modulus: modulus.middle, strain: 0 };
  const inside = lining === undefined ? [] : [pullOf(lining, share)];
  return bowHeight(stripCurvature([pullOf(paper, share), board, ...inside]), spanMm);
}
