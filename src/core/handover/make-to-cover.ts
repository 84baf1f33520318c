/** From a project to the coverage of its glued pieces. */
import type { Piece } from '../base/piece';
import { writePairs } from '../link/pairs';
import { encodePieces, MOST_PIECES } from '../cover/pieces-link';
import { FORMAT } from '../link/plan-link';
import type { MakePlan } from '../make/fields';
import { gluedPieces, type MakePiece } from '../make/piece';

/** The glued pieces as the coverage calculator keeps them, lengths to a tenth of a millimetre. */
export function coverPieces(pieces: readonly MakePiece[]): readonly Piece[] {
  const tenth = (mm: number) => Number(mm.toFixed(1));
  const rows = gluedPieces(pieces).map(({ widthMm, heightMm, count, turnInMm }) => ({
    widthMm: Math.max(1, tenth(widthMm)),
    heightMm: Math.max(1, tenth(heightMm)),
    count,
    turnInMm: {
      top: tenth(turnInMm.top),
      right: tenth(turnInMm.right),
      bottom: tenth(turnInMm.bottom),
      left: tenth(turnInMm.left),
    },
  }));
  return rows.slice(0, MOST_PIECES);
}

/**
 * Tail of a link to the coverage calculator that takes over these pieces.
 * Written pair by pair (a test reads it with that calculator's own fields), so that a page about measures
 * need not fetch the fields of another calculator.
 */
export const coverTailFor = ({ unit }: MakePlan, pieces: readonly MakePiece[]): string =>
  writePairs([
    ['v', FORMAT],
    ['thing', 'own'],
    ['in', unit],
    ['pieces', encodePieces(coverPieces(pieces))],
  ]);
