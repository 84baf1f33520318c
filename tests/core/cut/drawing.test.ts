/** A cut sheet as it is drawn. */
import { describe, expect, it } from 'vitest';
import { drawSheet } from '../../../src/core/cut/drawing';
import type { CutStep } from '../../../src/core/cut/layout-order';
import type { SheetPlan, StockSheet } from '../../../src/core/cut/layout-types';

describe('a sheet of 190 × 200 mm, drawn at two units to the millimetre from (30, 30)', () => {
  const stock: StockSheet = { widthMm: 190, heightMm: 200, grain: 'long', trimMm: 5 };
  const place = (piece: number, x: number, y: number, width: number, height: number) => ({
    piece,
    x,
    y,
    width,
    height,
    turned: false,
  });
  const cutLine = (number: number, x1: number, y1: number, x2: number, y2: number): CutStep => ({
    number,
    text: '',
    lines: [{ x1, y1, x2, y2 }],
  });
  const draw = (
    change: Partial<StockSheet> = {},
    steps: readonly CutStep[] = [],
    placements = [place(0, 5, 5, 100, 50)],
  ) => drawSheet({ placements } as unknown as SheetPlan, { ...stock, ...change }, steps, 'mm');

  it('the sheet, its trim, its measures and the box round it', () => {
    const drawn = draw();
    expect(drawn.sheet).toEqual({ x: 30, y: 30, width: 380, height: 400 });
    expect(drawn.trimmed).toEqual({ x: 40, y: 40, width: 360, height: 380 });
    expect(drawn.viewBox).toBe('0 0 466 456');
    expect(drawn.width).toEqual({ x: 220, y: 446, text: '190 mm' });
    expect(drawn.height).toEqual({ x: 417, y: 44, text: '200' });
    const { trimMm: _trim, ...whole } = stock;
    expect(drawSheet({ placements: [] } as unknown as SheetPlan, whole, [], 'mm')).not.toHaveProperty('trimmed');
    // a wide sheet goes by its width, a tall one by its height
    expect(draw({ widthMm: 380, heightMm: 100 }).sheet).toEqual({ x: 30, y: 30, width: 380, height: 100 });
    expect(draw({ widthMm: 100, heightMm: 800 }).sheet).toEqual({ x: 30, y: 30, width: 50, height: 400 });
  });
  it('each piece with its number in the middle, but none where it is narrower than nine', () => {
    const drawn = draw({}, [], [place(0, 5, 5, 100, 50), place(1, 105, 5, 4.4, 50), place(2, 120, 5, 50, 4.5)]);
    expect(drawn.pieces).toEqual([
      { x: 40, y: 40, width: 200, height: 100 },
      { x: 240, y: 40, width: 8.8, height: 100 },
      { x: 270, y: 40, width: 100, height: 9 },
    ]);
    expect(drawn.labels).toEqual([
      { x: 140, y: 94, text: '1' },
      { x: 320, y: 48.5, text: '3' },
    ]);
  });
  it('each cut with its number outside the sheet where it begins at the edge, else beside its line', () => {
    const drawn = draw({}, [
      cutLine(2, 105, 5, 105, 195),
      cutLine(3, 5, 55, 105, 55),
      cutLine(4, 50, 55, 50, 195),
      cutLine(5, 105, 100, 185, 100),
    ]);
    expect(drawn.cuts).toEqual([
      { x1: 240, y1: 40, x2: 240, y2: 420 },
      { x1: 40, y1: 140, x2: 240, y2: 140 },
      { x1: 130, y1: 140, x2: 130, y2: 420 },
      { x1: 240, y1: 230, x2: 400, y2: 230 },
    ]);
    expect(drawn.cutNumbers).toEqual([
      { x: 240, y: 25, text: '2' },
      { x: 20, y: 143.5, text: '3' },
      { x: 130, y: 149, text: '4' },
      { x: 248, y: 233.5, text: '5' },
    ]);
  });
  it('of equal numbers that would run into each other the first stays', () => {
    const numbers = (...steps: CutStep[]) => draw({}, steps).cutNumbers.map(({ x }) => x);
    expect(numbers(cutLine(2, 100, 5, 100, 195), cutLine(2, 105.9, 5, 105.9, 195))).toEqual([230]);
    expect(numbers(cutLine(2, 100, 5, 100, 195), cutLine(2, 106, 5, 106, 195))).toEqual([230, 242]);
    expect(numbers(cutLine(2, 100, 5, 100, 195), cutLine(3, 101, 5, 101, 195))).toEqual([230, 232]);
    expect(numbers(cutLine(2, 5, 50, 99, 50), cutLine(2, 5, 55, 99, 55))).toEqual([20]);
    expect(numbers(cutLine(2, 5, 50, 99, 50), cutLine(2, 5, 55.5, 99, 55.5))).toEqual([20, 20]);
  });
  it('the arrow of the grain up, across, or not at all', () => {
    expect(draw().grain).toEqual({
      path: 'M428 196V264M424 203L428 196l4 7M424 257L428 264l4 -7',
      word: { x: 418, y: 280, text: 'grain' },
    });
    expect(draw({ grain: 'short' }).grain).toEqual({
      path: 'M418 230H458M425 226L418 230l7 4M451 226L458 230l-7 4',
      word: { x: 420, y: 248, text: 'grain' },
    });
    expect(draw({ grain: 'none' })).not.toHaveProperty('grain');
  });
});
