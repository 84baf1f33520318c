/** Rows of sheets and pieces as they are typed, and a sheet's yield in words: small cases made by hand. */
import { stocksIn, cutPiecesIn } from '../support/rows';
import { askedOf } from '../../../src/core/link/fields';
import { describe, expect, it } from 'vitest';
import { COVER_FIELDS, DEFAULT_COVER, type CoverPlan } from '../../../src/core/cover/plan';
import type { Result } from '../../../src/core/base/result';
import {
  encodeCutPieces,
  encodeStocks,
  MOST_ROWS,
  MOST_STOCKS,
  type CutPiece,
  type StockRow,
} from '../../../src/core/cut/codec';
import { cutPlanFor, type ToCut } from '../../../src/core/cut/plan';
import {
  joinCutPieces,
  joinStocks,
  NEW_PIECE,
  NEW_STOCK,
  parseCutPieces,
  parseStocks,
  showCutPieces,
  showStocks,
  splitCutPieces,
  type CutPieceText,
  type StockText,
} from '../../../src/core/cut/rows';
import { asTyped } from '../../../src/core/base/length-text';
import { offcutWords, pieceName, placeRows, sheetLabel, type Own } from '../../../src/core/cut/table';
import { EXAMPLE_MEASURE, MEASURE_FIELDS } from '../../../src/core/measure/plan';
import type { SheetPlan } from '../../../src/core/cut/layout-types';

const stock = (change: Partial<StockText> = {}) => ({
  ...NEW_STOCK,
  name: 'board',
  wide: '700',
  high: '1000',
  ...change,
});
const piece = (change: Partial<CutPieceText> = {}) => ({
  ...NEW_PIECE,
  name: 'side',
  wide: '150',
  high: '216',
  ...change,
});
const stocks = (...rows: Partial<StockText>[]) => parseStocks(joinStocks(rows.map(stock)), 'mm');
const pieces = (...rows: Partial<CutPieceText>[]) => parseCutPieces(joinCutPieces(rows.map(piece)), 'mm');
/** As a link carries what is kept. */
const kept = (found: Result<readonly StockRow[]> | Result<readonly CutPiece[]>) =>
  !found.ok
    ? found.errors
    : 'stock' in (found.value[0] ?? {})
      ? encodeCutPieces(found.value as readonly CutPiece[])
      : encodeStocks(found.value as readonly StockRow[]);
const faults = (found: Result<unknown>) =>
  found.ok ? [] : found.errors.map(({ field, message }) => `${field}: ${message}`);

describe('rows that are sound', () => {
  it('are kept as a link carries them', () => {
    expect(kept(stocks({}, { name: 'cloth', grain: 'short', trim: '5', price: '2.5' }))).toBe(
      'board~700x1000~long_cloth~700x1000~short~5~2.5',
    );
    expect(kept(stocks({ trim: '  ', price: ' ' }))).toBe('board~700x1000~long');
    expect(kept(pieces({}, { stock: '6', count: '12', grain: 'either' }))).toBe(
      '1~side~150x216x1~height_6~side~150x216x12~either',
    );
  });
  it('are shown again as they were typed, in any unit', () => {
    expect(showStocks(stocksIn('board~700x1000~long_cloth~254x508~short~12.7~2.5'), 'mm')).toBe(
      joinStocks([
        stock(),
        stock({ name: 'cloth', wide: '254', high: '508', grain: 'short', trim: '12.7', price: '2.5' }),
      ]),
    );
    expect(showCutPieces(cutPiecesIn('2~side~254x508x3~width'), 'in')).toBe(
      joinCutPieces([{ stock: '2', name: 'side', wide: '10', high: '20', count: '3', grain: 'width' }]),
    );
    expect(showStocks([], 'mm')).toBe('');
    expect(showCutPieces([], 'mm')).toBe('');
    expect(splitCutPieces('')).toEqual([]);
    expect(splitCutPieces('1|side')).toEqual([{ stock: '1', name: 'side', wide: '', high: '', count: '', grain: '' }]);
  });
  it('no more than a plan holds are read', () => {
    const many = <T>(n: number) => Array.from({ length: n }, (): Partial<T> => ({}));
    expect(String(kept(stocks(...many<StockText>(MOST_STOCKS + 1)))).split('_')).toHaveLength(MOST_STOCKS);
    expect(String(kept(pieces(...many<CutPieceText>(MOST_ROWS + 1)))).split('_')).toHaveLength(MOST_ROWS);
    const row: ToCut = { name: 'a', stock: 'board', widthMm: 10, heightMm: 10, count: 1, grain: 'either' };
    expect(cutPlanFor(Array.from({ length: MOST_ROWS }, () => row)).pieces).toHaveLength(MOST_ROWS);
  });
  it('lengths are said to a thousandth of a millimetre, to four places in other units', () => {
    expect(asTyped(123.456, 'mm')).toBe('123.456');
    expect(asTyped(123.456, 'cm')).toBe('12.3456');
    expect(asTyped(100, 'cm')).toBe('10');
  });
});

describe('rows that are not', () => {
  it('name the cell and the row, counted from one, and what is allowed', () => {
    expect(faults(stocks({}, { wide: 'wide', price: '-1' }))).toEqual([
      expect.stringMatching(/^stock-1-wide: The width of sheet 2 /),
      'stock-1-price: The price of sheet 2 must be a number from 0 to 100000.',
    ]);
    expect(faults(pieces({ count: '1.5' }, { count: '0', high: '' }))).toEqual([
      'piece-0-count: The number of piece 1 must be a whole number from 1 to 999.',
      expect.stringMatching(/^piece-1-high: The height of piece 2/),
      'piece-1-count: The number of piece 2 must be a whole number from 1 to 999.',
    ]);
    const found = pieces({ count: 'many' });
    expect(found.ok ? undefined : found.errors[0]?.limits).toEqual({ low: 1, high: 999, unit: '' });
  });
  it('say to choose from the list', () => {
    expect(faults(stocks({ grain: 'wavy' }))).toEqual([
      'stock-0-grain: The grain of sheet 1: choose one from the list.',
    ]);
    expect(faults(pieces({ stock: '7' }, { stock: '0', grain: '' }))).toEqual([
      'piece-0-stock: The stock of piece 1: choose one from the list.',
      'piece-1-stock: The stock of piece 2: choose one from the list.',
      'piece-1-grain: The grain of piece 2: choose one from the list.',
    ]);
  });
  it('at the limits still pass', () => {
    expect(faults(pieces({ count: '999' }, { count: '1' }))).toEqual([]);
    expect(faults(pieces({ count: '1000' }))).toHaveLength(1);
    expect(faults(stocks({ price: '100000' }, { price: '0' }, { price: '2.75' }))).toEqual([]);
    expect(faults(stocks({ price: '100001' }))).toHaveLength(1);
  });
  it('none at all is said so', () => {
    expect(faults(stocks())).toEqual(['stocks: Give at least one stock.']);
    expect(faults(pieces())).toEqual(['pieces: Give at least one piece.']);
  });
});

describe('what a sheet yields', () => {
  const own = (row: number, name: string): Own => ({
    row,
    name,
    stock: 0,
    widthMm: 50,
    heightMm: 80,
    count: 9,
    grain: 'either',
  });
  const place = (which: number, turned: boolean) => ({ piece: which, x: 0, y: 0, width: 1, height: 1, turned });
  const sheet = (placements: readonly unknown[], offcuts: readonly unknown[] = []) =>
    ({ placements, offcuts }) as unknown as SheetPlan;
  it('by piece: how many, of what size, which way they lie; none that are not on it', () => {
    const plan = sheet([
      place(0, false),
      place(0, false),
      place(1, true),
      place(3, true),
      place(3, false),
      place(3, false),
    ]);
    expect(placeRows(plan, [own(0, 'side'), own(2, ''), own(3, 'absent'), own(4, 'both')], 'mm')).toEqual([
      { number: 1, name: 'side', count: 2, size: '50 × 80', lies: 'upright' },
      { number: 3, name: 'piece 3', count: 1, size: '50 × 80', lies: 'turned' },
      { number: 5, name: 'both', count: 3, size: '50 × 80', lies: '1 turned' },
    ]);
    expect([pieceName(own(2, 'board')), pieceName(own(2, ''))]).toEqual(['3 (board)', '3']);
  });
  it('the first offcut that is 30 mm wide both ways', () => {
    const off = (...sizes: [number, number][]) =>
      sheet(
        [],
        sizes.map(([width, height]) => ({ width, height })),
      );
    expect(offcutWords(off([29, 900], [30, 40], [200, 200]), 'mm')).toBe('The biggest offcut is 30 × 40 mm.');
    expect(offcutWords(off([29.9, 900]), 'mm')).toBe('No offcut is worth keeping.');
    expect(offcutWords(off(), 'mm')).toBe('No offcut is worth keeping.');
  });
  it('in words, with the way its grain runs', () => {
    const rows = placeRows(sheet([place(0, false), place(0, false)]), [own(0, 'side')], 'mm');
    const said = (grain: 'long' | 'short' | 'none', widthMm = 700) =>
      sheetLabel('board', { widthMm, heightMm: 1000, grain }, rows, 'mm');
    expect(said('long')).toBe('A sheet of board, 700 × 1000 mm, cut into 2 × side. The grain runs from top to bottom.');
    expect(said('short')).toMatch(/from side to side\.$/);
    expect(said('long', 1400)).toMatch(/from side to side\.$/);
    expect(said('none')).toBe('A sheet of board, 700 × 1000 mm, cut into 2 × side.');
  });
});

describe('what is asked', () => {
  it('to cover: of a thing its sides, of loose pieces their rows; a thickness where it has one', () => {
    const asked = (thing: CoverPlan['thing'], coatFrom: CoverPlan['coatFrom'] = 'tool') =>
      askedOf({ ...DEFAULT_COVER, thing, coatFrom }, COVER_FIELDS);
    expect(asked('notebook')).toEqual([
      ...['thing', 'unit', 'width', 'height', 'thickness', 'turnIn', 'faces', 'passes', 'adhesive', 'coatFrom', 'tool'],
      ...['loss', 'paper', 'makers', 'spare', 'bottle', 'price', 'bench'],
    ]);
    for (const flat of ['lining', 'accordion'] as const) {
      expect(asked(flat)).not.toContain('thickness');
      expect(asked(flat)).toContain('width');
    }
    expect(asked('own')).toContain('pieces');
    expect(asked('own')).not.toContain('width');
    expect(asked('notebook')).not.toContain('pieces');
    expect(asked('own', 'weighed')).toEqual(expect.arrayContaining(['before', 'after', 'trialArea']));
    expect(asked('own', 'weighed')).not.toContain('tool');
  });
  it('to know a paper: what each way of knowing needs', () => {
    const asked = (change: Partial<typeof EXAMPLE_MEASURE>) =>
      askedOf({ ...EXAMPLE_MEASURE, ...change }, MEASURE_FIELDS);
    expect(asked({ weightBy: 'kind', thickBy: 'kind', drinkBy: 'kind' })).toEqual([
      ...['family', 'name', 'weightBy', 'thickBy', 'drinkBy', 'bend', 'strips', 'damp', 'tear'],
      ...['shape', 'surface', 'sizing', 'colours'],
    ]);
    expect(asked({ weightBy: 'pounds' })).toEqual(expect.arrayContaining(['pounds', 'grade']));
    expect(asked({ weightBy: 'weighed', thickBy: 'stack', drinkBy: 'cobb' })).toEqual(
      expect.arrayContaining(['grams', 'pieces', 'step', 'stackMm', 'cobb']),
    );
  });
});
