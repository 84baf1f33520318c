/** Pieces and sheets in whole hundredths of a millimetre, with the ways they may lie. */
import { describe, expect, it } from 'vitest';
import type { PieceGrain, SheetPiece, StockSheet } from '../../../src/core/cut/layout-types';
import { fits, kindsOf, roomOf, waysByGrain } from '../../../src/core/cut/layout-units';
const piece = (widthMm: number, heightMm: number, count = 1, grain: PieceGrain = 'either', name = ''): SheetPiece => ({
  name,
  widthMm,
  heightMm,
  count,
  grain,
});

const sheet = (widthMm: number, heightMm: number, more: Partial<StockSheet> = {}): StockSheet => ({
  widthMm,
  heightMm,
  grain: 'none',
  ...more,
});

describe('units', () => {
  it('the room is the sheet less two trims, a kerf and 0.05 mm longer', () => {
    expect(roomOf(sheet(100, 50, { trimMm: 5, kerfMm: 1 }))).toEqual({ w: 91_050, h: 41_050, kerf: 1000 });
    expect(roomOf(sheet(100, 50))).toEqual({ w: 100_050, h: 50_050, kerf: 0 });
  });
  it('the ways a piece may lie by its grain and the sheet’s', () => {
    const ways = (grain: PieceGrain, stock: StockSheet, side = 20) =>
      waysByGrain(piece(30, side, 1, grain), stock, 1000).map(
        ({ w, h, turned }) => `${w / 1000}×${h / 1000}${turned ? ' turned' : ''}`,
      );
    const [straight, turned] = ['31×21', '21×31 turned'];
    const [tall, wide, square] = [sheet(50, 70), sheet(70, 50), sheet(70, 70)];
    expect(ways('either', { ...tall, grain: 'long' })).toEqual([straight, turned]);
    expect(ways('height', { ...tall, grain: 'none' })).toEqual([straight, turned]);
    expect(ways('either', tall, 30)).toEqual(['31×31']);
    expect(ways('height', { ...tall, grain: 'long' })).toEqual([straight]);
    expect(ways('width', { ...tall, grain: 'long' })).toEqual([turned]);
    expect(ways('height', { ...tall, grain: 'short' })).toEqual([turned]);
    expect(ways('height', { ...wide, grain: 'long' })).toEqual([turned]);
    expect(ways('height', { ...wide, grain: 'short' })).toEqual([straight]);
    // in a square sheet long is up its height
    expect(ways('height', { ...square, grain: 'long' })).toEqual([straight]);
    expect(ways('height', { ...square, grain: 'short' })).toEqual([turned]);
  });
  it('kinds: of all kits, with the ways that fit, and their area with the kerf', () => {
    const [first, second] = kindsOf([piece(99, 10, 2), piece(101, 10)], sheet(100, 50, { kerfMm: 1 }), 3);
    expect(first).toMatchObject({ row: 0, count: 6, area: 100_000 * 11_000 });
    expect(first!.ways).toEqual([{ w: 100_000, h: 11_000, turned: false }]);
    expect(second!.ways).toEqual([]);
    expect(fits({ w: 5, h: 5 }, { w: 5, h: 5 })).toBe(true);
    expect(fits({ w: 6, h: 5 }, { w: 5, h: 5 })).toBe(false);
    expect(fits({ w: 5, h: 6 }, { w: 5, h: 5 })).toBe(false);
  });
});
