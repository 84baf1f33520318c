/** The fewest sheets that any plan needs: bounds worked by hand. */
import { describe, expect, it } from 'vitest';
import { atOnce } from '../../../src/core/base/turns';
import { areaBound, oneKindBound, patternBound, weighedBound } from '../../../src/core/cut/layout-bound';
import { type Tree } from '../../../src/core/cut/layout-tree';
import type { PieceGrain, SheetPiece, StockSheet } from '../../../src/core/cut/layout-types';
import { kindsOf, roomOf } from '../../../src/core/cut/layout-units';
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

const fixed = sheet(100, 100, { grain: 'long' });

const kinds = (...pieces: SheetPiece[]) => kindsOf(pieces, fixed, 1);

const room = roomOf(fixed);

describe('bounds', () => {
  const bounds = (...pieces: SheetPiece[]) => {
    const all = kinds(...pieces);
    return [areaBound(all, room), weighedBound(all, room), atOnce(oneKindBound(all, room, { left: 1e7 }))];
  };
  const up = (w: number, h: number, count: number) => piece(w, h, count, 'height');
  it('by area: three halves are two sheets, four are two', () => {
    expect(bounds(up(50, 100, 3))).toEqual([2, 2, 2]);
    expect(bounds(up(50, 100, 4))).toEqual([2, 2, 2]);
  });
  it('no two past the middle lie side by side: four of 60 × 60 are four sheets, though their area is less than two', () => {
    expect(bounds(up(60, 60, 4))).toEqual([2, 4, 4]);
    // nor is there room for 50 × 50 beside or below 60 × 60: two sheets, and one for the others
    expect(bounds(up(60, 60, 2), up(50, 50, 2))[1]).toBe(3);
  });
  it('two of 34 lie in a length, so nine of 34 × 34 are three sheets; and 30 beside 70 fill it', () => {
    expect(bounds(up(34, 34, 9))).toEqual([2, 3, 3]);
    expect(bounds(up(71, 100, 2), up(30, 100, 2))[1]).toBe(3);
    expect(bounds(up(70, 100, 2), up(30, 100, 2))[1]).toBe(2);
  });
  it('by whole patterns: what is left out of the best weighs more in the next, and never more than can be proved', () => {
    const all = kinds(up(60, 60, 3), up(40, 40, 3));
    const seen: Tree[] = [];
    const found = atOnce(patternBound(all, room, 9, { left: 1e7 }, (tree) => seen.push(tree)));
    // one large and three small go on a sheet, so three sheets; more than three would be wrong
    expect(found).toBe(3);
    expect(seen.length).toBeGreaterThan(0);
    expect(atOnce(patternBound(all, room, 9, { left: 0 }, () => undefined))).toBe(0);
    expect(atOnce(patternBound(all, room, 2, { left: 1e7 }, () => undefined))).toBeLessThanOrEqual(3);
  });
  it('what fills a length to the last hair does not fill it past that: 50.025 twice, 33.35 thrice, 70 and 30.05', () => {
    // the room is 0.05 mm longer than the sheet
    expect(weighedBound(kinds(up(50.025, 100, 2)), room)).toBe(1);
    expect(weighedBound(kinds(up(33.35, 100, 3)), room)).toBe(1);
    expect(weighedBound(kinds(up(70, 100, 1), up(30.05, 100, 1)), room)).toBe(1);
    expect(weighedBound(kinds(up(100, 50.025, 2)), room)).toBe(1);
  });
  it('what one pattern leaves out presses in the next: five of 70 × 30 and one of 40 × 50 ask for three sheets', () => {
    // strips lie one below the other, three to a sheet; beside them 30 mm are left, below two of them 40: no room for 40 × 50
    const all = kinds(up(40, 50, 1), up(70, 30, 5));
    const rounds = (target: number) => {
      const seen: Tree[] = [];
      const bound = atOnce(patternBound(all, room, target, { left: 1e8 }, (tree) => seen.push(tree)));
      return [bound, seen.length] as const;
    };
    const [bound, tried] = rounds(3);
    expect(bound).toBe(3);
    expect(tried).toBeGreaterThan(1);
    // no more than is asked for, and no more than twelve
    expect(rounds(1)[1]).toBe(1);
    expect(rounds(9)).toEqual([3, 12]);
    // 80 × 40 lie two to a sheet and leave 20 mm beside and below: 20 × 40 has room there, 30 × 30 has not
    const others = kinds(up(30, 30, 1), up(20, 40, 2), up(80, 40, 4));
    expect(atOnce(patternBound(others, room, 9, { left: 1e8 }, () => undefined))).toBe(3);
  });
  it('nothing is said of a kind that no sheet holds, nor where there are too many lengths', () => {
    const none = kinds(up(101, 10, 5));
    expect(atOnce(patternBound(none, room, 9, { left: 1e8 }, () => undefined))).toBe(0);
    expect(atOnce(oneKindBound(none, room, { left: 1e8 }))).toBe(1);
    const many = kinds(...Array.from({ length: 12 }, (_, i) => up(1.001 + i * 0.137, 50, 60)));
    expect(atOnce(patternBound(many, room, 99, { left: 1e8 }, () => undefined))).toBe(0);
  });
  it('a kind without a way to lie, or no kinds, asks for nothing wrong', () => {
    expect(atOnce(oneKindBound([], room, { left: 1e7 }))).toBe(0);
    expect(atOnce(oneKindBound(kinds(up(30, 30, 1)), room, { left: 0 }))).toBe(1);
  });
});
