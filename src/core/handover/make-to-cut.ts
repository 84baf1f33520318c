/** From a project to the sheets its pieces are cut from. */
import { cutPlanFor, cutTailFor, type ToCut } from '../cut/plan';
import type { MakePlan } from '../make/fields';
import { cutSizeOf, type MakePiece, type Stock } from '../make/piece';

/** Endpapers and strips are cut from the same sheets as linings, not from the covering. */
export const sheetStockOf = ({ stock, inside }: MakePiece): Stock => (inside ? 'lining' : stock);

/** All pieces of one kit as they are cut, turn-ins included. */
export const toCut = (pieces: readonly MakePiece[]): ToCut[] =>
  pieces.map((piece) => ({
    ...cutSizeOf(piece),
    name: piece.name,
    stock: sheetStockOf(piece),
    count: piece.count,
    grain: piece.grain,
  }));

/** Tail of a link to the cutting plan of one kit, from the usual sheets. */
export const cutTailOf = ({ unit }: MakePlan, pieces: readonly MakePiece[]): string =>
  cutTailFor(cutPlanFor(toCut(pieces), { unit }));
