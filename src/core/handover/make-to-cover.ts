/** From a project to the coverage of its glued pieces. */
import type { Piece } from '../base/piece';
import { writePairs } from '../link/pairs';
import { encodePieces, MOST_PIECES } from '../cover/pieces-link';
import { FORMAT } from '../link/plan-link';
import type { MakePlan } from '../make/fields';
import { gluedPieces, type MakePiece } from '../make/piece';

/** The glued pieces as the coverage calculator keeps them, lengths to a thousandth of a millimetre, as links carry them. */
export function coverPieces(pieces: readonly MakePiece[]): readonly Piece[] {
  const short = (mm: number) => Number(mm.toFixed(3));
  const rows = gluedPieces(pieces).map(({ widthMm, heightMm, count, turnInMm }) => ({
    widthMm: Math.max(1, short(widthMm)),
    heightMm: Math.max(1, short(heightMm)),
    count,
    turnInMm: {
      top: short(turnInMm.top),
      right: short(turnInMm.right),
      bottom: short(turnInMm.bottom),
      left: short(turnInMm.left),
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
