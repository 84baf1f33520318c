/** Whether each piece can be cut from the sheet at all; if not, by how much it fails and what would help. */
import { inUnit, type LengthUnit } from '../base/length-text';
import type { InputError } from '../base/result';
import { MOST_TO_CUT, type SheetPiece, type StockSheet } from './layout-types';
import { fits, PER_MM, roomOf, SLACK, waysByGrain, type PieceWay } from './layout-units';

/** Empty when a plan can be made. Lengths in the messages are in `unit`. */
export function fitProblems(
  stock: StockSheet,
  pieces: readonly SheetPiece[],
  kits: number,
  unit: LengthUnit = 'mm',
): readonly InputError[] {
  const problem = (field: string, code: InputError['code'], message: string): InputError => ({ field, code, message });
  if (!Number.isInteger(kits) || kits < 1) return [problem('kits', 'too-small', 'Give at least one kit.')];
  const inAll = pieces.reduce((sum, { count }) => sum + count * kits, 0);
  if (inAll === 0) return [problem('pieces', 'empty', 'Give at least one piece.')];
  if (inAll > MOST_TO_CUT)
    return [
      problem(
        'pieces',
        'too-large',
        `That is ${inAll} pieces; one plan takes at most ${MOST_TO_CUT}. Give fewer kits.`,
      ),
    ];
  const room = roomOf(stock);
  if (room.w - room.kerf < PER_MM || room.h - room.kerf < PER_MM)
    return [
      problem('trim', 'too-large', 'The trim leaves nothing of the sheet: trim less than half its shorter side.'),
    ];
  return pieces.flatMap((piece, row) => tooLarge(piece, row, stock, unit) ?? []);
}

function tooLarge(piece: SheetPiece, row: number, stock: StockSheet, unit: LengthUnit): InputError | undefined {
  const room = roomOf(stock);
  const ways = waysByGrain(piece, stock, room.kerf);
  if (ways.some((way) => fits(way, room))) return undefined;
  const named = piece.name ? `“${piece.name}”` : `Piece ${row + 1}`;
  const free = waysByGrain({ ...piece, grain: 'either' }, stock, room.kerf).some((way) => fits(way, room));
  if (free)
    return {
      field: `${row}-grain`,
      code: 'contradiction',
      message: `${named} does not fit with its grain kept: as it must lie it is ${overBy(ways[0]!, room, unit)}. Turned, across the grain, it would fit.`,
    };
  // Of two ways to lie, the one that fails by less.
  const [way] = [...ways].sort((a, b) => overOf(a, room) - overOf(b, room));
  const side = way!.turned === way!.w > room.w ? 'high' : 'wide';
  return {
    field: `${row}-${side}`,
    code: 'too-large',
    message: `${named} is larger than the sheet: ${overBy(way!, room, unit)}. Turning it does not help.`,
  };
}

const overOf = ({ w, h }: PieceWay, room: { w: number; h: number }): number =>
  Math.max(0, w - room.w) + Math.max(0, h - room.h);

function overBy({ w, h }: PieceWay, room: { w: number; h: number }, unit: LengthUnit): string {
  const by = (over: number): string => `${inUnit(over / PER_MM, unit)} ${unit}`;
  return [
    ...(w > room.w ? [`${by(w - room.w + SLACK)} too long for the sheet’s width`] : []),
    ...(h > room.h ? [`${by(h - room.h + SLACK)} too long for the sheet’s height`] : []),
  ].join(' and ');
}
