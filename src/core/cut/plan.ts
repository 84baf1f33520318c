/** What the sheets calculator asks, and what stands there at first. */
import {
  encodeCutPieces,
  encodeStocks,
  MOST_ROWS,
  readCutPieces,
  readStocks,
  tidyCutPieces,
  tidyStocks,
  type StockRow,
} from './codec';
import { parseCutPieces, parseStocks, showCutPieces, showStocks } from './rows';
import type { LengthUnit } from '../base/length-text';
import { usualOf, type FieldTable, type PlanOf } from '../link/fields';
import { LENGTH_UNIT, lengthField } from '../link/length-field';
import { encodePlan } from '../link/plan-link';
import type { SheetPiece } from './layout-types';

/** Fixed order: links are written in it. Lengths are mm here, whatever unit the reader types in. */
export const CUT_FIELDS = {
  unit: LENGTH_UNIT,
  stocks: {
    kind: 'rows',
    key: 'sheets',
    what: 'The sheets',
    parse: parseStocks,
    show: showStocks,
    read: readStocks,
    write: encodeStocks,
    usual: [
      { name: 'board', widthMm: 700, heightMm: 1000, grain: 'long', trimMm: 0 },
      { name: 'cover paper', widthMm: 500, heightMm: 700, grain: 'long', trimMm: 0 },
      { name: 'endpaper', widthMm: 450, heightMm: 640, grain: 'short', trimMm: 0 },
    ],
  },
  pieces: {
    kind: 'rows',
    key: 'pieces',
    what: 'The pieces',
    parse: parseCutPieces,
    show: showCutPieces,
    read: readCutPieces,
    write: encodeCutPieces,
    usual: [
      { stock: 0, name: 'board', widthMm: 144, heightMm: 216, count: 2, grain: 'height' },
      { stock: 0, name: 'spine strip', widthMm: 17, heightMm: 216, count: 1, grain: 'height' },
      { stock: 1, name: 'cover', widthMm: 355, heightMm: 252, count: 1, grain: 'height' },
      { stock: 2, name: 'endpaper', widthMm: 296, heightMm: 210, count: 2, grain: 'height' },
    ],
  },
  kits: {
    kind: 'number',
    key: 'kits',
    label: 'Kits',
    what: 'The number of kits',
    low: 1,
    high: 200,
    unit: '',
    whole: true,
    usual: 6,
  },
  kerf: lengthField({ key: 'kerf', label: 'A cut takes', what: 'What a cut takes away', low: 0, high: 10, usual: 0 }),
} as const satisfies FieldTable;

export type CutPlan = PlanOf<typeof CUT_FIELDS>;
export type CutField = keyof typeof CUT_FIELDS;

/** A case in cloth for an A5 block, with its endpapers: by hand from the usual squares, joints and turn-ins. */
export const DEFAULT_CUT: CutPlan = usualOf(CUT_FIELDS);

/** Sheets that stand for a material until its owner says otherwise, the same as in a class. Common practice, no source. */
export const USUAL_STOCKS = {
  board: { name: 'board', widthMm: 700, heightMm: 1000, grain: 'long', trimMm: 0 },
  paper: { name: 'paper', widthMm: 640, heightMm: 970, grain: 'long', trimMm: 0 },
  cloth: { name: 'cloth', widthMm: 700, heightMm: 1000, grain: 'long', trimMm: 0 },
  lining: { name: 'lining paper', widthMm: 700, heightMm: 1000, grain: 'long', trimMm: 0 },
} as const satisfies Readonly<Record<string, StockRow>>;
export type Material = keyof typeof USUAL_STOCKS;

export interface ToCut extends SheetPiece {
  readonly stock: Material;
}

/**
 * A plan for pieces from elsewhere: lengths in mm from 1 to 5000, counts 1 to 999 in one kit, kits 1 to 200. Only the
 * materials that are used get a stock; `stocks` says those that are known. Throws RangeError past 24 rows or at none.
 * Whether the pieces fit is the answer's to say.
 */
export function cutPlanFor(
  pieces: readonly ToCut[],
  given: {
    readonly kits?: number;
    readonly unit?: LengthUnit;
    readonly kerfMm?: number;
    readonly stocks?: Partial<Readonly<Record<Material, StockRow>>>;
  } = {},
): CutPlan {
  if (pieces.length === 0 || pieces.length > MOST_ROWS)
    throw new RangeError(`a cutting plan takes from 1 to ${MOST_ROWS} rows of pieces; got ${pieces.length}`);
  const used = (Object.keys(USUAL_STOCKS) as Material[]).filter((material) =>
    pieces.some(({ stock }) => stock === material),
  );
  return {
    unit: given.unit ?? 'mm',
    stocks: tidyStocks(used.map((material) => given.stocks?.[material] ?? USUAL_STOCKS[material])),
    pieces: tidyCutPieces(pieces.map((piece) => ({ ...piece, stock: used.indexOf(piece.stock) }))),
    kits: given.kits ?? 1,
    kerf: given.kerfMm ?? 0,
  };
}

/** The tail of a link to the sheets calculator, without an answer. */
export const cutTailFor = (plan: CutPlan): string => encodePlan(plan, CUT_FIELDS);
