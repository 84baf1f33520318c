/** What a sheet yields, as rows of a table and in words. */
import type { CutPiece } from './codec';
import { inUnit, type LengthUnit } from '../base/length-text';
import { grainStands } from './drawing';
import { listed } from './layout-order';
import type { SheetPlan, StockSheet } from './layout-types';

export interface PlaceRow {
  readonly number: number;
  readonly name: string;
  /** on this sheet */
  readonly count: number;
  readonly size: string;
  /** which way it lies on the sheet */
  readonly lies: string;
}

/** A piece with its row among all of the plan's. */
export type Own = CutPiece & { readonly row: number };

/** "3 (board)", or the bare number when it has no name. */
export const pieceName = ({ row, name }: Own): string => (name ? `${row + 1} (${name})` : String(row + 1));

/** Where each piece lies on a sheet, as rows of a table. */
export function placeRows({ placements }: SheetPlan, own: readonly Own[], unit: LengthUnit): readonly PlaceRow[] {
  return own.flatMap((piece, i) => {
    const here = placements.filter((place) => place.piece === i);
    if (here.length === 0) return [];
    const turned = here.filter((place) => place.turned).length;
    return [
      {
        number: piece.row + 1,
        name: piece.name || `piece ${piece.row + 1}`,
        count: here.length,
        size: `${inUnit(piece.widthMm, unit)} × ${inUnit(piece.heightMm, unit)}`,
        lies: turned === 0 ? 'upright' : turned === here.length ? 'turned' : `${turned} turned`,
      },
    ];
  });
}

/** What is shorter than this on one side is for the bin. Our own line. */
const WORTH_KEEPING = 30;

/** What of a sheet is left and worth keeping, in words. */
export function offcutWords({ offcuts }: SheetPlan, unit: LengthUnit): string {
  const kept = offcuts.find(({ width, height }) => Math.min(width, height) >= WORTH_KEEPING);
  if (!kept) return 'No offcut is worth keeping.';
  return `The biggest offcut is ${inUnit(kept.width, unit)} × ${inUnit(kept.height, unit)} ${unit}.`;
}

/** The drawing in words, for those who do not see it. */
export function sheetLabel(name: string, stock: StockSheet, rows: readonly PlaceRow[], unit: LengthUnit): string {
  const size = `${inUnit(stock.widthMm, unit)} × ${inUnit(stock.heightMm, unit)} ${unit}`;
  const yields = listed(rows.map((row) => `${row.count} × ${row.name}`));
  const grain =
    stock.grain === 'none' ? '' : ` The grain runs ${grainStands(stock) ? 'from top to bottom' : 'from side to side'}.`;
  return `A sheet of ${name}, ${size}, cut into ${yields}.${grain}`;
}
