/**
 * The cutting plan's own arithmetic: whole thousandths of a millimetre, so that sums of lengths are exact, and
 * every length a kerf longer than it is, so that pieces and cuts add up without a special case.
 */
import type { SheetPiece, StockSheet } from './layout-types';

export const PER_MM = 1000;
/**
 * What a fit may be short of, and a strip that is no strip: fractions of an inch are not whole thousandths, and
 * nobody cuts paper to 0.05 mm.
 */
export const SLACK = 0.05 * PER_MM;

const units = (mm: number): number => Math.round(mm * PER_MM);

/** One way that a kind of piece may lie; its lengths are a kerf longer than the piece. */
export interface PieceWay {
  readonly w: number;
  readonly h: number;
  readonly turned: boolean;
}

export interface PieceKind {
  /** row among the pieces asked for */
  readonly row: number;
  /** of all kits */
  readonly count: number;
  readonly ways: readonly PieceWay[];
  /** with its kerf */
  readonly area: number;
}

/** The sheet within its trim, a kerf and the slack longer than it is. */
export interface Cuttable {
  readonly w: number;
  readonly h: number;
  readonly kerf: number;
}

/** What of a sheet can be cut from, once its edges are trimmed, in whole units of the search. */
export function roomOf({ widthMm, heightMm, trimMm = 0, kerfMm = 0 }: StockSheet): Cuttable {
  const kerf = units(kerfMm);
  const more = kerf + SLACK - 2 * units(trimMm);
  return { w: units(widthMm) + more, h: units(heightMm) + more, kerf };
}

/** Ways a piece may lie on this stock by its grain, whether or not they fit. */
export function waysByGrain(piece: SheetPiece, stock: StockSheet, kerf = 0): readonly PieceWay[] {
  const [w, h] = [units(piece.widthMm) + kerf, units(piece.heightMm) + kerf];
  const straight = { w, h, turned: false };
  const turned = { w: h, h: w, turned: true };
  if (piece.grain === 'either' || stock.grain === 'none') return w === h ? [straight] : [straight, turned];
  const tall = stock.heightMm >= stock.widthMm;
  const stockAlong = (stock.grain === 'long') === tall ? 'height' : 'width';
  return piece.grain === stockAlong ? [straight] : [turned];
}

/** Whether a piece fits into a room, both in units of the search. */
export const fits = ({ w, h }: { readonly w: number; readonly h: number }, room: { w: number; h: number }): boolean =>
  w <= room.w && h <= room.h;

/** The kinds of piece that `kits` sets ask for, each with the ways that fit; a kind that cannot be cut has none. */
export function kindsOf(pieces: readonly SheetPiece[], stock: StockSheet, kits: number): readonly PieceKind[] {
  const room = roomOf(stock);
  return pieces.map((piece, row) => {
    const ways = waysByGrain(piece, stock, room.kerf).filter((way) => fits(way, room));
    const area = (units(piece.widthMm) + room.kerf) * (units(piece.heightMm) + room.kerf);
    return { row, count: piece.count * kits, ways, area };
  });
}
