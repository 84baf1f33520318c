/** A layout as parts and cuts, in the order they are made. */
import { describe, expect, it } from 'vitest';
import { cutOrder, listed } from '../../../src/core/cut/layout-order';
import { sheetPlan } from '../../../src/core/cut/layout-parts';
import { OFFCUT, type Tree } from '../../../src/core/cut/layout-tree';
import type { SheetPart, PieceGrain, SheetPiece, SheetPlan, StockSheet } from '../../../src/core/cut/layout-types';
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

const way = (w: number, h: number, turned = false) => ({ w: w * 1000, h: h * 1000, turned });

const leaf = (which: number, w: number, h: number, turned = false): Tree => ({
  kind: 'piece',
  piece: which,
  way: way(w, h, turned),
});

const cut = (axis: 'x' | 'y', at: number, first: Tree, second: Tree): Tree => ({
  kind: 'cut',
  axis,
  at: at * 1000,
  first,
  second,
});

describe('parts and cuts', () => {
  const pieces = [piece(30, 20), piece(40, 60)];
  const box = ({ x, y, width, height }: { x: number; y: number; width: number; height: number }) =>
    [x, y, width, height].map((one) => Number(one.toFixed(2))).join(' ');
  it('cuts that follow each other the same way are one step, with the kerf between; offcuts side by side are one', () => {
    // lengths with a kerf of 1: 31 and 31, then two offcuts of which nobody parts the one from the other
    const tree = cut('x', 31, leaf(0, 31, 21), cut('x', 31, leaf(0, 31, 21), cut('x', 10, OFFCUT, OFFCUT)));
    const plan = sheetPlan({ tree, times: 2 }, pieces, sheet(100, 20, { kerfMm: 1 }));
    expect(plan.times).toBe(2);
    const { becomes } = plan.part;
    if (becomes.kind !== 'cut') throw new Error('no cut');
    expect(becomes.axis).toBe('x');
    expect(becomes.at).toEqual([30, 61]);
    expect(becomes.parts.map(box)).toEqual(['0 0 30 20', '31 0 30 20', '62 0 38 20']);
    expect(plan.offcuts.map(box)).toEqual(['62 0 38 20']);
    expect(
      plan.placements.map(({ piece: row, x, y, width, height, turned }) => [row, x, y, width, height, turned]),
    ).toEqual([
      [0, 0, 0, 30, 20, false],
      [0, 31, 0, 30, 20, false],
    ]);
  });
  it('within the trim, a cut from side to side, a piece that lies turned, the larger offcut first', () => {
    // 90 × 90 within the trim: 40 of its height for piece 1 lying down, 60 wide; 50 below
    const tree = cut('y', 40, cut('x', 60, leaf(1, 60, 40, true), OFFCUT), OFFCUT);
    const plan = sheetPlan({ tree, times: 1 }, pieces, sheet(100, 100, { trimMm: 5 }));
    expect(box(plan.part)).toBe('5 5 90 90');
    expect(plan.offcuts.map(box)).toEqual(['5 45 90 50', '65 5 30 40']);
    expect(plan.placements).toEqual([{ piece: 1, x: 5, y: 5, width: 60, height: 40, turned: true }]);
  });

  const at = (x: number, y: number, width: number, height: number, becomes: SheetPart['becomes']): SheetPart => ({
    x,
    y,
    width,
    height,
    becomes,
  });
  const placed = (which: number): SheetPart['becomes'] => ({
    kind: 'piece',
    placement: { piece: which, x: 0, y: 0, width: 0, height: 0, turned: false },
  });
  const told = (part: SheetPart) => cutOrder({ part } as SheetPlan, (which) => String(which + 1), 'mm');
  it('parts that are alike are cut alike, in one step for all of them', () => {
    const strip = (x: number) =>
      at(x, 0, 50, 100, {
        kind: 'cut',
        axis: 'y',
        at: [40, 80],
        parts: [at(x, 0, 50, 40, placed(0)), at(x, 40, 50, 40, placed(0)), at(x, 80, 50, 20, { kind: 'offcut' })],
      });
    const steps = told(at(0, 0, 100, 100, { kind: 'cut', axis: 'x', at: [50], parts: [strip(0), strip(50)] }));
    expect(steps.map(({ number, text }) => `${number} ${text}`)).toEqual([
      '1 Cut the sheet from top to bottom, 50 mm from the left edge: 2 parts A, each 50 × 100 mm.',
      '2 Cut each of the 2 parts A from side to side, 40 and 80 mm from the top edge: 2 × piece 1 and an offcut of 50 × 20 mm, from each.',
    ]);
    expect(steps[0]!.lines).toEqual([{ x1: 50, y1: 0, x2: 50, y2: 100 }]);
    expect(steps[1]!.lines).toEqual([
      { x1: 0, y1: 40, x2: 50, y2: 40 },
      { x1: 0, y1: 80, x2: 50, y2: 80 },
      { x1: 50, y1: 40, x2: 100, y2: 40 },
      { x1: 50, y1: 80, x2: 100, y2: 80 },
    ]);
  });
  it('parts that are not alike have letters of their own, and two offcuts are counted', () => {
    const half = (x: number, which: number) =>
      at(x, 0, 40, 100, {
        kind: 'cut',
        axis: 'y',
        at: [50],
        parts: [at(x, 0, 40, 50, placed(which)), at(x, 50, 40, 50, { kind: 'offcut' })],
      });
    const off = (x: number) => at(x, 0, 10, 100, { kind: 'offcut' });
    const steps = told(
      at(3, 3, 100, 100, {
        kind: 'cut',
        axis: 'x',
        at: [40, 80, 90],
        parts: [half(3, 0), half(43, 1), off(83), off(93)],
      }),
    );
    expect(steps.map(({ number, text }) => `${number} ${text}`)).toEqual([
      '1 Trim 3 mm off each of the four edges.',
      '2 Cut the sheet from top to bottom, 40, 80 and 90 mm from the left edge: part A, 40 × 100 mm, part B, 40 × 100 mm and 2 offcuts of 10 × 100 mm.',
      '3 Cut part A from side to side, 50 mm from its top edge: piece 1 and an offcut of 40 × 50 mm.',
      '4 Cut part B from side to side, 50 mm from its top edge: piece 2 and an offcut of 40 × 50 mm.',
    ]);
    expect(steps[0]!.lines).toEqual([]);
  });
  it('the same part met again keeps its letter', () => {
    const half = (x: number) =>
      at(x, 0, 40, 100, {
        kind: 'cut',
        axis: 'y',
        at: [50],
        parts: [at(x, 0, 40, 50, placed(0)), at(x, 50, 40, 50, placed(1))],
      });
    const steps = told(
      at(0, 0, 100, 100, {
        kind: 'cut',
        axis: 'x',
        at: [40, 60],
        parts: [half(0), at(40, 0, 20, 100, placed(2)), half(60)],
      }),
    );
    expect(steps.map(({ text }) => text)).toEqual([
      'Cut the sheet from top to bottom, 40 and 60 mm from the left edge: part A, 40 × 100 mm, piece 3 and part A, 40 × 100 mm.',
      'Cut each of the 2 parts A from side to side, 50 mm from the top edge: piece 1 and piece 2, from each.',
    ]);
    expect([listed([]), listed(['a']), listed(['a', 'b']), listed(['a', 'b', 'c'])]).toEqual([
      '',
      'a',
      'a and b',
      'a, b and c',
    ]);
  });
});
