/** Pieces laid out in rows, largest first. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shelve } from '../../../src/core/make/shelve';

describe('pieces on shelves', () => {
  it('sets two small pieces side by side and a third below them', () => {
    // widest 200 mm in a drawing of 100: half size, for 150 / 100 mm of height would be more
    const { places, height } = shelve(
      [
        { widthMm: 80, heightMm: 60, count: 2 },
        { widthMm: 100, heightMm: 100, count: 1 },
        { widthMm: 200, heightMm: 40, count: 3 },
      ],
      100,
    );
    expect(places.map(({ x, y, width, height: high }) => [x, y, width, high])).toEqual([
      [0, 0, 40, 30],
      [50, 0, 50, 50],
      [0, 60, 100, 20],
    ]);
    expect(places.map(({ row, times }) => [row, times])).toEqual([
      [0, 2],
      [1, 1],
      [2, 3],
    ]);
    expect(height).toBe(80);
  });
  it('counts turn-ins into the room a piece takes, one for all sides or each its own', () => {
    const { places, height } = shelve(
      [
        { widthMm: 70, heightMm: 40, count: 1, turnInMm: 15 },
        { widthMm: 60, heightMm: 50, count: 1, turnInMm: { top: 10, right: 20, bottom: 30, left: 20 } },
      ],
      100,
    );
    // both are 100 mm wide with their turn-ins: full size, and no room beside the first
    expect(places[0]!.turn).toEqual({ top: 15, right: 15, bottom: 15, left: 15 });
    expect(places[1]).toMatchObject({ x: 0, y: 80, width: 60, height: 50 });
    expect(places[1]!.turn).toEqual({ top: 10, right: 20, bottom: 30, left: 20 });
    expect(height).toBe(170);
  });
  it('is held by its height when a piece is tall', () => {
    const { places, height } = shelve([{ widthMm: 100, heightMm: 300, count: 1 }], 400);
    expect(places[0]).toMatchObject({ width: 50, height: 150 });
    expect(height).toBe(150);
  });
  it('has no height without pieces', () => expect(shelve([], 100)).toEqual({ places: [], height: 0 }));
  it('keeps every piece in the drawing and off every other', () => {
    const side = fc.integer({ min: 5, max: 900 });
    const piece = fc.record({ widthMm: side, heightMm: side, count: fc.constant(1), turnInMm: fc.nat(30) });
    fc.assert(
      fc.property(fc.array(piece, { minLength: 1, maxLength: 8 }), (pieces) => {
        const { places, height } = shelve(pieces, 300);
        const boxes = places.map(({ x, y, width, height: high, turn }) => ({
          left: x,
          top: y,
          right: x + width + turn.left + turn.right,
          bottom: y + high + turn.top + turn.bottom,
        }));
        for (const [i, a] of boxes.entries()) {
          expect(a.left).toBeGreaterThanOrEqual(0);
          expect(a.right).toBeLessThanOrEqual(300 + 1e-9);
          expect(a.bottom).toBeLessThanOrEqual(height + 1e-9);
          for (const b of boxes.slice(i + 1))
            expect(a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top).toBe(true);
        }
      }),
      { numRuns: 40 },
    );
  });
});
