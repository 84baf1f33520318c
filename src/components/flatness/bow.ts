/** How far a covered board bows, for the lesson: two plies, the cover having dried on it. */
import { LEFT_AFTER_PRESSING, sheetPly } from '../../core/flatness';
import { bowHeight, twoPlyCurvature } from '../../core/laminate';
import type { Paper, Substrate } from '../../core/records';
import { paperOf, substrateOf } from '../records';

export interface Cover {
  readonly paper: string;
  /** mm; the middle of the record when left out */
  readonly boardMm?: number;
  readonly spanMm: number;
  /** dried under weight; otherwise the whole of the growth pulls */
  readonly pressed?: boolean;
  /** paper on the inner face, with its grain the same way */
  readonly lining?: string;
}

/** Curvature, 1/mm, that one sheet glued on wet gives the board as it dries. */
function pullOf(paper: Paper, board: Substrate, boardMm: number, share: number): number {
  const sheet = {
    grammage: paper.grammage.middle,
    density: paper.density.middle,
    tensileIndex: paper.tensileIndex.middle,
  };
  const ply = { thickness: boardMm, modulus: board.modulus.middle };
  return twoPlyCurvature(sheetPly(sheet), ply, paper.wetExpansion.middle * share);
}

/** Height of the bow, mm. The two faces are taken to pull against each other, which is right for sheets thin beside the board. */
export function bowOf({ paper, boardMm, spanMm, pressed = true, lining }: Cover): number {
  const board = substrateOf('binders-board');
  const thick = boardMm ?? board.thickness.middle;
  const share = pressed ? LEFT_AFTER_PRESSING : 1;
  const outside = pullOf(paperOf(paper), board, thick, share);
  const inside = lining === undefined ? 0 : pullOf(paperOf(lining), board, thick, share);
  return bowHeight(outside - inside, spanMm);
}
