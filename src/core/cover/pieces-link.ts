/** Pieces as a link carries them; pieces-text.ts reads them back. */
import type { Piece } from '../base/piece';

export const MOST_PIECES = 20;
export const SIDES = ['top', 'right', 'bottom', 'left'] as const;

/** One turn-in for every side, or the four in the order of SIDES. */
export const sidesOf = ({ turnInMm = 0 }: Piece): readonly number[] =>
  typeof turnInMm === 'number' ? [turnInMm] : SIDES.map((side) => turnInMm[side]);

const short = (mm: number): string => String(Number(mm.toFixed(3)));

/** Pieces as one word of a link; `decodePieces` reads them. */
export const encodePieces = (pieces: readonly Piece[]): string =>
  pieces
    .map((piece) => {
      const sides = sidesOf(piece);
      const turn = sides.some((side) => side > 0) ? `t${sides.map(short).join('-')}` : '';
      return `${short(piece.widthMm)}x${short(piece.heightMm)}x${piece.count}${turn}`;
    })
    .join('_');
