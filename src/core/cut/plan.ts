/** What the sheets calculator asks, and what stands there at first. */
import {
  CUT_PIECES_PATTERN,
  decodeCutPieces,
  decodeStocks,
  encodeCutPieces,
  encodeStocks,
  MOST_ROWS,
  STOCKS_PATTERN,
  type CutPiece,
  type Stock,
} from './codec';
import { parseCutPieces, parseStocks, showCutPieces, showStocks } from './rows';
import type { LengthUnit } from '../base/length-text';
import { usualOf, type FieldTable, type PlanOf } from '../link/fields';
import { LENGTH_UNIT, lengthField } from '../link/length-field';
import { encodePlan } from '../link/plan-link';
import type { SheetPiece } from './layout-types';

/** Fixed order: links are written in it. Lengths are mm here, whatever unit the reader types in. */
export const CUT_SPECS = {
  unit: LENGTH_UNIT,
  stocks: {
    kind: 'list',
    key: 'sheets',
    what: 'The sheets',
    pattern: STOCKS_PATTERN,
    parse: parseStocks,
    show: showStocks,
    usual: 'board~700x1000~long_cover paper~500x700~long_endpaper~450x640~short',
  },
  pieces: {
    kind: 'list',
    key: 'pieces',
    what: 'The pieces',
    pattern: CUT_PIECES_PATTERN,
    parse: parseCutPieces,
    show: showCutPieces,
    usual:
      '1~board~144x216x2~height_1~spine strip~17x216x1~height_2~cover~355x252x1~height_3~endpaper~296x210x2~height',
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

export type CutPlan = PlanOf<typeof CUT_SPECS>;
export type CutField = keyof typeof CUT_SPECS;
export const CUT_FIELDS = Object.keys(CUT_SPECS) as readonly CutField[];

/** A case in cloth for an A5 block, with its endpapers: by hand from the usual squares, joints and turn-ins. */
export const DEFAULT_CUT: CutPlan = usualOf(CUT_SPECS);

/** The stocks and pieces of a plan; a text that cannot be is an empty list. */
export const stocksOf = ({ stocks }: Pick<CutPlan, 'stocks'>): readonly Stock[] => decodeStocks(stocks) ?? [];
export const cutPiecesOf = ({ pieces }: Pick<CutPlan, 'pieces'>): readonly CutPiece[] => decodeCutPieces(pieces) ?? [];

/** Sheets that stand for a material until its owner says otherwise. Common practice, no source. */
export const USUAL_STOCKS = {
  board: { name: 'board', widthMm: 700, heightMm: 1000, grain: 'long', trimMm: 0 },
  paper: { name: 'paper', widthMm: 500, heightMm: 700, grain: 'long', trimMm: 0 },
  cloth: { name: 'cloth', widthMm: 700, heightMm: 1000, grain: 'long', trimMm: 0 },
  lining: { name: 'lining paper', widthMm: 450, heightMm: 640, grain: 'long', trimMm: 0 },
} as const satisfies Readonly<Record<string, Stock>>;
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
    readonly stocks?: Partial<Readonly<Record<Material, Stock>>>;
  } = {},
): CutPlan {
  if (pieces.length === 0 || pieces.length > MOST_ROWS)
    throw new RangeError(`a cutting plan takes from 1 to ${MOST_ROWS} rows of pieces; got ${pieces.length}`);
  const used = (Object.keys(USUAL_STOCKS) as Material[]).filter((material) =>
    pieces.some(({ stock }) => stock === material),
  );
  return {
    unit: given.unit ?? 'mm',
    stocks: encodeStocks(used.map((material) => given.stocks?.[material] ?? USUAL_STOCKS[material])),
    pieces: encodeCutPieces(pieces.map((piece) => ({ ...piece, stock: used.indexOf(piece.stock) }))),
    kits: given.kits ?? 1,
    kerf: given.kerfMm ?? 0,
  };
}

/** The tail of a link to the sheets calculator, without an answer. */
export const cutTailFor = (plan: CutPlan): string => encodePlan(plan, CUT_SPECS);
