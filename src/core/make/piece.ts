/** One row of pieces to cut for a project. */
import type { Piece, Sides } from '../base/piece';

export type Stock = 'board' | 'paper' | 'cloth' | 'lining';
/** along which side the grain should run */
export type Grain = 'height' | 'width' | 'either';

export interface MakePiece {
  readonly name: string;
  readonly stock: Stock;
  /** finished size without turn-ins, mm, above 0 */
  readonly widthMm: number;
  readonly heightMm: number;
  readonly count: number;
  readonly grain: Grain;
  /** cut beyond the finished size on each side, mm */
  readonly turnIn: Sides;
  /** not of the covering: endpapers, the folded strip, what lines the back */
  readonly inside?: true;
  /** faces that are spread with adhesive; 0 for what others are glued on */
  readonly gluedFaces: 0 | 1 | 2;
  /** where only a part of the face is spread: a tab, one leaf of a fold */
  readonly gluedPart?: { readonly widthMm: number; readonly heightMm: number };
}

export const NO_TURN: Sides = { top: 0, right: 0, bottom: 0, left: 0 };
/** The same turn-in on all four sides, mm. */
export const allRound = (mm: number): Sides => ({ top: mm, right: mm, bottom: mm, left: mm });

/** What a piece is cut to, turn-ins included, mm. */
export const cutSizeOf = ({ widthMm, heightMm, turnIn }: MakePiece) => ({
  widthMm: widthMm + turnIn.left + turnIn.right,
  heightMm: heightMm + turnIn.top + turnIn.bottom,
});

/** A glued piece as the coverage calculator takes it, with its name. */
export interface GluedPiece extends Piece {
  readonly name: string;
  readonly turnInMm: Sides;
}

/** What gets adhesive, for the coverage computation: one row of pieces each, a face that is spread twice counted twice. */
export const gluedPieces = (pieces: readonly MakePiece[]): GluedPiece[] =>
  pieces.flatMap(({ name, widthMm, heightMm, count, turnIn, gluedFaces, gluedPart }) => {
    if (gluedFaces === 0) return [];
    const times = count * gluedFaces;
    return gluedPart
      ? [{ name, ...gluedPart, count: times, turnInMm: NO_TURN }]
      : [{ name, widthMm, heightMm, count: times, turnInMm: turnIn }];
  });

type Usual = 'count' | 'grain' | 'turnIn' | 'gluedFaces';

/** A piece with what goes without saying: one, grain with the height, no turn-in, spread on one face. */
export const piece = (
  name: string,
  stock: Stock,
  widthMm: number,
  heightMm: number,
  rest: Partial<Pick<MakePiece, Usual | 'gluedPart' | 'inside'>> = {},
): MakePiece => ({
  name,
  stock,
  widthMm,
  heightMm,
  count: 1,
  grain: 'height',
  turnIn: NO_TURN,
  gluedFaces: stock === 'board' ? 0 : 1,
  ...rest,
});
