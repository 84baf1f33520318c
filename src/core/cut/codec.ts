/**
 * Stocks and pieces as a link carries them. A stock is name~size~grain~trim~price, a piece stock~name~size x count~
 * grain, lengths in mm: "board~700x1000~long~5" and "1~front board~150x216x2~height", rows apart by "_".
 */
import { PIECE_GRAINS, STOCK_GRAINS, type SheetPiece, type StockSheet } from './layout-types';

export interface StockRow extends StockSheet {
  readonly name: string;
  readonly trimMm: number;
  /** of one sheet */
  readonly price?: number;
}

export interface CutPiece extends SheetPiece {
  /** index of its stock */
  readonly stock: number;
}

export const MOST_STOCKS = 6;
export const MOST_ROWS = 24;
/** Lengths, mm; counts; a price, in the reader's own currency. */
export const CUT_LIMITS = {
  sheet: { low: 20, high: 5000 },
  piece: { low: 1, high: 5000 },
  trim: { low: 0, high: 500 },
  count: { low: 1, high: 999 },
  price: { low: 0, high: 100000 },
} as const;

const NAME_LENGTH = 28;

/** A name that a link can carry: one line, without the marks that part its cells. Half a character is dropped. */
export const tidyName = (name: string): string =>
  [
    ...name
      .replace(/\p{Cs}/gu, '')
      .replace(/[~_|]/g, '-')
      .replace(/[\p{Cc}\s]+/gu, ' ')
      .trim(),
  ]
    .slice(0, NAME_LENGTH)
    .join('')
    .trim();

const thousandth = (value: number): number => Number(value.toFixed(3));
const short = (value: number): string => String(thousandth(value));

/** Stocks as a link will give them back. */
export const tidyStocks = (stocks: readonly StockRow[]): readonly StockRow[] =>
  stocks.map(({ name, widthMm, heightMm, grain, trimMm, price }) => ({
    name: tidyName(name),
    widthMm: thousandth(widthMm),
    heightMm: thousandth(heightMm),
    grain,
    trimMm: thousandth(trimMm),
    ...(price !== undefined && { price: thousandth(price) }),
  }));

/** Pieces as a link will give them back. */
export const tidyCutPieces = (pieces: readonly CutPiece[]): readonly CutPiece[] =>
  pieces.map(({ stock, name, widthMm, heightMm, count, grain }) => ({
    stock,
    name: tidyName(name ?? ''),
    widthMm: thousandth(widthMm),
    heightMm: thousandth(heightMm),
    count,
    grain,
  }));

/** Sheets to be cut as one word of a link; `decodeStocks` reads them. */
export const encodeStocks = (stocks: readonly StockRow[]): string =>
  stocks
    .map(({ name, widthMm, heightMm, grain, trimMm, price }) => {
      const cells = [tidyName(name), `${short(widthMm)}x${short(heightMm)}`, grain];
      if (trimMm > 0 || price !== undefined) cells.push(short(trimMm));
      if (price !== undefined) cells.push(short(price));
      return cells.join('~');
    })
    .join('_');

/** Pieces to be cut as one word of a link; `decodeCutPieces` reads them. */
export const encodeCutPieces = (pieces: readonly CutPiece[]): string =>
  pieces
    .map(({ stock, name, widthMm, heightMm, count, grain }) =>
      [stock + 1, tidyName(name), `${short(widthMm)}x${short(heightMm)}x${count}`, grain].join('~'),
    )
    .join('_');

const NUMBER = '\\d{1,6}(?:\\.\\d{1,3})?';
const NAME = '[^~_|\\n]{0,40}';
const STOCK = `${NAME}~${NUMBER}x${NUMBER}~(?:${STOCK_GRAINS.join('|')})(?:~${NUMBER}){0,2}`;
const PIECE = `\\d~${NAME}~${NUMBER}x${NUMBER}x\\d{1,3}~(?:${PIECE_GRAINS.join('|')})`;
const rowsOf = (row: string, most: number): RegExp => new RegExp(`^${row}(?:_${row}){0,${most - 1}}$`);
const STOCKS_PATTERN = rowsOf(STOCK, MOST_STOCKS);
const CUT_PIECES_PATTERN = rowsOf(PIECE, MOST_ROWS);

const inside = (value: number, { low, high }: { low: number; high: number }): boolean => value >= low && value <= high;

/** Stocks from a link's text, whatever their size; undefined when it is none. */
export function readStocks(text: string): readonly StockRow[] | undefined {
  if (!STOCKS_PATTERN.test(text)) return undefined;
  return text.split('_').map((row): StockRow => {
    const [name = '', size = '', grain = '', trim = '0', price] = row.split('~');
    const [widthMm = 0, heightMm = 0] = size.split('x').map(Number);
    return {
      name: tidyName(name),
      widthMm,
      heightMm,
      grain: grain as StockRow['grain'],
      trimMm: Number(trim),
      ...(price !== undefined && { price: Number(price) }),
    };
  });
}

/** Whether every length and price is within its limits. */
export const stocksAreSound = (stocks: readonly StockRow[]): boolean =>
  stocks.every(
    ({ widthMm, heightMm, trimMm, price = 0 }) =>
      inside(widthMm, CUT_LIMITS.sheet) &&
      inside(heightMm, CUT_LIMITS.sheet) &&
      inside(trimMm, CUT_LIMITS.trim) &&
      inside(price, CUT_LIMITS.price),
  );

/** Pieces from a link's text; undefined as above. */
export function readCutPieces(text: string): readonly CutPiece[] | undefined {
  if (!CUT_PIECES_PATTERN.test(text)) return undefined;
  return text.split('_').map((row): CutPiece => {
    const [stock = '', name = '', size = '', grain = ''] = row.split('~');
    const [widthMm = 0, heightMm = 0, count = 0] = size.split('x').map(Number);
    const lies = { name: tidyName(name), widthMm, heightMm, count, grain: grain as CutPiece['grain'] };
    return { stock: Number(stock) - 1, ...lies };
  });
}

/** Whether every length and count is within its limits. A stock that is not there is the answer's to find. */
export const cutPiecesAreSound = (pieces: readonly CutPiece[]): boolean =>
  pieces.every(
    ({ stock, widthMm, heightMm, count }) =>
      stock >= 0 &&
      inside(widthMm, CUT_LIMITS.piece) &&
      inside(heightMm, CUT_LIMITS.piece) &&
      inside(count, CUT_LIMITS.count),
  );
