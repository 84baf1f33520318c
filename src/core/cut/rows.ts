/** Rows of stocks and pieces as a reader types them: cells apart by "|", rows by line, so that a form holds each as one text. */
import {
  CUT_LIMITS,
  encodeCutPieces,
  encodeStocks,
  MOST_ROWS,
  MOST_STOCKS,
  tidyCutPieces,
  tidyName,
  tidyStocks,
  type CutPiece,
  type StockRow,
} from './codec';
import { asTyped, parseLength, type LengthUnit } from '../base/length-text';
import { parseNumber } from '../base/number-text';
import { fail, ok, type InputError, type Result } from '../base/result';
import { PIECE_GRAINS, STOCK_GRAINS } from './layout-types';

export const STOCK_CELLS = ['name', 'wide', 'high', 'grain', 'trim', 'price'] as const;
export const PIECE_CELLS = ['stock', 'name', 'wide', 'high', 'count', 'grain'] as const;
export type StockText = Readonly<Record<(typeof STOCK_CELLS)[number], string>>;
export type CutPieceText = Readonly<Record<(typeof PIECE_CELLS)[number], string>>;

export const NEW_STOCK: StockText = { name: '', wide: '', high: '', grain: 'long', trim: '0', price: '' };
export const NEW_PIECE: CutPieceText = { stock: '1', name: '', wide: '', high: '', count: '1', grain: 'height' };

const join = (rows: readonly Readonly<Record<string, string>>[], cells: readonly string[]): string =>
  rows.map((row) => cells.map((cell) => row[cell]!.replace(/[|\n\r]/g, ' ')).join('|')).join('\n');
const split = (text: string, cells: readonly string[]): Record<string, string>[] =>
  text === ''
    ? []
    : text.split('\n').map((line) => {
        const typed = line.split('|');
        return Object.fromEntries(cells.map((cell, i) => [cell, typed[i] ?? '']));
      });

/** Rows of sheets as one text, as they were typed. */
export const joinStocks = (rows: readonly StockText[]): string => join(rows, STOCK_CELLS);
/** Rows of pieces as one text, as they were typed. */
export const joinCutPieces = (rows: readonly CutPieceText[]): string => join(rows, PIECE_CELLS);
/** The rows of sheets in a text. */
export const splitStocks = (text: string): StockText[] => split(text, STOCK_CELLS) as StockText[];
/** The rows of pieces in a text. */
export const splitCutPieces = (text: string): CutPieceText[] => split(text, PIECE_CELLS) as CutPieceText[];

/** Reads cells and gathers what is wrong, each under its own field. */
class Reader {
  readonly problems: InputError[] = [];

  constructor(
    private readonly unit: LengthUnit,
    private readonly kind: 'stock' | 'piece',
    private readonly called: 'sheet' | 'piece',
  ) {}

  length(row: number, cell: string, what: string, text: string, limits: { low: number; high: number }): number {
    const of = { unit: this.unit, field: `${this.kind}-${row}-${cell}`, what: `${what} of ${this.called} ${row + 1}` };
    const found = parseLength(text, { ...of, ...limits });
    if (found.ok) return found.value;
    this.problems.push(...found.errors);
    return limits.low;
  }

  number(
    row: number,
    cell: string,
    what: string,
    text: string,
    limits: { low: number; high: number },
    whole: boolean,
  ): number {
    const value = parseNumber(text);
    const { low, high } = limits;
    if (value !== undefined && value >= low && value <= high && (!whole || Number.isInteger(value))) return value;
    this.problems.push({
      field: `${this.kind}-${row}-${cell}`,
      code: 'not-a-number',
      message: `${what} of ${this.called} ${row + 1} must be a ${whole ? 'whole ' : ''}number from ${low} to ${high}.`,
      limits: { low, high, unit: '' },
    });
    return low;
  }

  one<T extends string>(row: number, cell: string, what: string, text: string, of: readonly T[]): T {
    const found = of.find((value) => value === text);
    if (found !== undefined) return found;
    const message = `${what} of ${this.called} ${row + 1}: choose one from the list.`;
    this.problems.push({ field: `${this.kind}-${row}-${cell}`, code: 'unknown-id', message });
    return of[0]!;
  }
}

/** A link is read to 4000 signs: what would be longer is refused here, where it can be mended. */
function carried<T>(field: string, kept: T, text: string, most: number): Result<T> {
  if (encodeURIComponent(text).length <= most) return ok(kept);
  return fail([{ field, code: 'too-large', message: 'These rows are too long for a link: give them shorter names.' }]);
}

/** Typed stocks to what a plan keeps. */
export function parseStocks(typed: string, unit: LengthUnit): Result<readonly StockRow[]> {
  const read = new Reader(unit, 'stock', 'sheet');
  const rows = splitStocks(typed).slice(0, MOST_STOCKS);
  const stocks = rows.map(({ name, wide, high, grain, trim, price }, i): StockRow => ({
    name: tidyName(name),
    widthMm: read.length(i, 'wide', 'The width', wide, CUT_LIMITS.sheet),
    heightMm: read.length(i, 'high', 'The height', high, CUT_LIMITS.sheet),
    grain: read.one(i, 'grain', 'The grain', grain, STOCK_GRAINS),
    trimMm: trim.trim() === '' ? 0 : read.length(i, 'trim', 'The trim', trim, CUT_LIMITS.trim),
    ...(price.trim() !== '' && { price: read.number(i, 'price', 'The price', price, CUT_LIMITS.price, false) }),
  }));
  if (rows.length === 0) return fail([{ field: 'stocks', code: 'empty', message: 'Give at least one stock.' }]);
  return read.problems.length > 0
    ? fail(read.problems)
    : carried('stocks', tidyStocks(stocks), encodeStocks(stocks), 1000);
}

/** What was typed as rows of pieces, or what is wrong with a row. */
export function parseCutPieces(typed: string, unit: LengthUnit): Result<readonly CutPiece[]> {
  const read = new Reader(unit, 'piece', 'piece');
  const rows = splitCutPieces(typed).slice(0, MOST_ROWS);
  const numbers = Array.from({ length: MOST_STOCKS }, (_, i) => String(i + 1));
  const pieces = rows.map(({ stock, name, wide, high, count, grain }, i): CutPiece => ({
    stock: Number(read.one(i, 'stock', 'The stock', stock, numbers)) - 1,
    name: tidyName(name),
    widthMm: read.length(i, 'wide', 'The width', wide, CUT_LIMITS.piece),
    heightMm: read.length(i, 'high', 'The height', high, CUT_LIMITS.piece),
    count: read.number(i, 'count', 'The number', count, CUT_LIMITS.count, true),
    grain: read.one(i, 'grain', 'The grain', grain, PIECE_GRAINS),
  }));
  if (rows.length === 0) return fail([{ field: 'pieces', code: 'empty', message: 'Give at least one piece.' }]);
  return read.problems.length > 0
    ? fail(read.problems)
    : carried('pieces', tidyCutPieces(pieces), encodeCutPieces(pieces), 2700);
}

/** What a plan keeps as a reader would have typed it. */
export const showStocks = (stocks: readonly StockRow[], unit: LengthUnit): string =>
  joinStocks(
    stocks.map(({ name, widthMm, heightMm, grain, trimMm, price }) => ({
      name,
      wide: asTyped(widthMm, unit),
      high: asTyped(heightMm, unit),
      grain,
      trim: asTyped(trimMm, unit),
      price: price === undefined ? '' : String(price),
    })),
  );

/** Pieces as their reader would have typed them in this unit. */
export const showCutPieces = (pieces: readonly CutPiece[], unit: LengthUnit): string =>
  joinCutPieces(
    pieces.map(({ stock, name, widthMm, heightMm, count, grain }) => ({
      stock: String(stock + 1),
      name,
      wide: asTyped(widthMm, unit),
      high: asTyped(heightMm, unit),
      count: String(count),
      grain,
    })),
  );
