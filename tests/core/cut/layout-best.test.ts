/** The fewest sheets for small jobs, against counts by hand. */
import { describe, expect, it } from 'vitest';
import { atOnce } from '../../../src/core/base/turns';
import { piecesHeld } from '../../../src/core/cut/layout-bound';
import { fewestSheets, mostWorth } from '../../../src/core/cut/layout-exact';
import { bestPattern, tableOf } from '../../../src/core/cut/layout-pattern';
import { eachPart, selectionsOf, shapesOf } from '../../../src/core/cut/layout-shapes';
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

describe('the best of one sheet', () => {
  const up = (w: number, h: number, count = 9) => piece(w, h, count, 'height');
  it('out of any number: four quarters, or what is worth more', () => {
    const all = kinds(up(50, 50), up(100, 30));
    const table = tableOf(all, room)!;
    const found = (worth: number[]) => bestPattern(all, worth, room, table, { left: 1e7 })!;
    expect(found([1, 1]).worth).toBe(4);
    expect(piecesHeld(found([1, 1]).tree, all)).toEqual([4, 0]);
    expect(found([1, 3]).worth).toBe(9);
    expect(piecesHeld(found([1, 3]).tree, all)).toEqual([0, 3]);
    // 50 high of quarters and one strip of 30: 2 + 5 is less than three strips; strips of 2.5 and two quarters of 3: 6 + 2.5
    expect(found([3, 2.5]).worth).toBe(12);
    expect(found([0, 0]).worth).toBe(0);
    expect(bestPattern(all, [1, 1], room, table, { left: 1 })).toBeUndefined();
  });
  it('no table of more than six hundred lengths', () => {
    const many = Array.from({ length: 12 }, (_, i) => up(1.001 + i * 0.137, 50, 60));
    expect(tableOf(kinds(...many), room)).toBeUndefined();
  });
  it('outright: selections counted in mixed radix, and every part of one', () => {
    const all = selectionsOf(kinds(up(50, 50, 2), up(30, 30, 1)))!;
    expect(all).toMatchObject({ size: 6, step: [1, 3] });
    expect([0, 1, 2, 3, 4, 5].map((code) => all.counts(code).join(''))).toEqual(['00', '10', '20', '01', '11', '21']);
    const parts: number[] = [];
    eachPart([2, 1], all.step, (part) => parts.push(part));
    expect(parts).toEqual([1, 2, 3, 4, 5]);
    const some: number[] = [];
    eachPart([0, 1], all.step, (part) => some.push(part));
    expect(some).toEqual([3]);
    expect(selectionsOf(kinds(up(1, 1, 141), up(1, 1, 140)))).toBeUndefined();
    expect(selectionsOf(kinds(up(1, 1, 199), up(1, 1, 99)))!.size).toBe(20_000);
  });
  it('outright: the smallest rectangles of two pieces are side by side and one below the other', () => {
    const pair = kinds(up(50, 20, 1), up(30, 40, 1));
    const shapes = atOnce(shapesOf(pair, room, selectionsOf(pair)!, { left: 1e6 }))!;
    const sizes = shapes.map((found) => found.map(({ w, h }) => `${w / 1000}×${h / 1000}`).sort());
    expect(sizes).toEqual([[], ['50×20'], ['30×40'], ['50×60', '80×40']]);
    expect(atOnce(shapesOf(pair, room, selectionsOf(pair)!, { left: 0 }))).toBeUndefined();
    // 50 + 51 is past the sheet both ways
    const large = kinds(up(50, 50, 1), up(51, 51, 1));
    expect(atOnce(shapesOf(large, room, selectionsOf(large)!, { left: 1e6 }))!.at(-1)).toEqual([]);
  });
  it('outright: counts a step for each selection and each part of one, and two for each pair, and stops past what is allowed', () => {
    const pair = kinds(up(50, 20, 1), up(30, 40, 1));
    const used = (left: number) => {
      const steps = { left };
      const found = atOnce(shapesOf(pair, room, selectionsOf(pair)!, steps));
      return [found !== undefined, left - steps.left];
    };
    // three selections with one, one and three parts, and one pair: 3 + 5 + 2
    expect(used(1000)).toEqual([true, 10]);
    expect(used(10)).toEqual([true, 10]);
    expect(used(9)[0]).toBe(false);
    // (2 · 3 ÷ 2)² ÷ 2 = 4.5 ways to part them in two: more than is allowed, and nothing is begun
    expect(used(4)).toEqual([false, 0]);
    expect(used(5)[1]).toBeGreaterThan(0);
  });
  it('outright: of many ways to put three together, the smallest, each once', () => {
    const sizes = (...pieces: SheetPiece[]) => {
      const all = kinds(...pieces);
      const last = atOnce(shapesOf(all, room, selectionsOf(all)!, { left: 1e6 }))!.at(-1)!;
      return last.map(({ w, h }) => `${w / 1000}×${h / 1000}`).sort();
    };
    expect(sizes(up(30, 30, 1), up(30, 30, 1), up(30, 30, 1))).toEqual(['30×90', '60×60', '90×30']);
    // two of 50 × 20 one below the other are as high as 30 × 40: beside it 80 × 40, which is within 80 × 60 and 100 × 60
    expect(sizes(up(50, 20, 1), up(50, 20, 1), up(30, 40, 1))).toEqual(['50×80', '80×40']);
  });
  it('outright: the fewest sheets, and the most worth of one', () => {
    const all = kinds(up(60, 60, 2), up(40, 100, 2), up(60, 40, 2));
    const found = atOnce(fewestSheets(all, room, { left: 1e6 }))!;
    expect(found).toHaveLength(2);
    const held = found.map(({ tree }) => piecesHeld(tree, all));
    expect(held[0]!.map((n, k) => n + held[1]![k]!)).toEqual([2, 2, 2]);
    for (const { counts, area, tree } of found) {
      expect(piecesHeld(tree, all)).toEqual(counts);
      expect(area).toBe(counts.reduce((sum, n, k) => sum + n * all[k]!.area, 0));
    }
    expect(mostWorth(all, [5, 1, 1], room, { left: 1e6 })).toBe(7);
    expect(mostWorth(all, [1, 4, 0], room, { left: 1e6 })).toBe(8);
    expect(atOnce(fewestSheets(all, room, { left: 3 }))).toBeUndefined();
    expect(mostWorth(all, [1, 1, 1], room, { left: 3 })).toBeUndefined();
  });
});
