/** The best pattern for one sheet. */
import { describe, expect, it } from 'vitest';
import { atOnce } from '../../../src/core/base/turns';
import { Best, cutAll, type SheetsTaken } from '../../../src/core/cut/layout-best';
import { piecesHeld } from '../../../src/core/cut/layout-bound';
import { OFFCUT, treeText, within, type Tree } from '../../../src/core/cut/layout-tree';
import type { PieceGrain, SheetPiece, StockSheet } from '../../../src/core/cut/layout-types';
import { kindsOf } from '../../../src/core/cut/layout-units';
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

describe('patterns', () => {
  it('a piece in the corner of more: cut off beside and below, unless next to nothing is left', () => {
    const inner = leaf(0, 30, 20);
    expect(within(inner, 30_000, 20_000, 30_050, 20_050)).toBe(inner);
    expect(treeText(within(inner, 30_000, 20_000, 30_051, 20_000))).toBe('x30000(0,-)');
    expect(treeText(within(inner, 30_000, 20_000, 30_000, 20_051))).toBe('y20000(0,-)');
    expect(treeText(within(leaf(1, 30, 20, true), 30_000, 20_000, 50_000, 50_000))).toBe('y20000(x30000(1t,-),-)');
  });
  it('hold so many of each', () => {
    const tree = cut('x', 30, leaf(0, 30, 20), cut('y', 20, leaf(1, 20, 20), cut('y', 20, leaf(0, 30, 20), OFFCUT)));
    expect(piecesHeld(tree, kinds(piece(30, 20, 9), piece(20, 20, 9), piece(5, 5, 9)))).toEqual([2, 1, 0]);
  });
  it('are cut as often as the pieces allow, until all is cut; not past the most', () => {
    const by = (counts: number[]) => ({ tree: OFFCUT, counts, area: 1 });
    const choose = (left: readonly number[]) => (left[0]! >= 2 ? by([2, 1]) : left[1]! > 0 ? by([0, 1]) : by([1, 0]));
    const cut = (demand: number[], take: (left: readonly number[]) => ReturnType<typeof by>, most: number) =>
      atOnce(
        cutAll(
          demand,
          function* (left) {
            yield;
            return take(left);
          },
          most,
        ),
      );
    expect(cut([5, 4], choose, 9)?.map(({ times }) => times)).toEqual([2, 2, 1]);
    expect(cut([5, 4], choose, 5)).toHaveLength(3);
    expect(cut([5, 4], choose, 4)).toBeUndefined();
    expect(cut([0, 0], choose, 4)).toEqual([]);
    expect(cut([1], () => by([0]), 4)).toBeUndefined();
  });
  it('the best plan has fewer sheets, then fewer that differ, then the bigger offcut', () => {
    const best = new Best({ w: 100_000, h: 100_000, kerf: 0 });
    const plan = (offcut: number, ...times: number[]): SheetsTaken[] =>
      times.map((n) => ({ tree: cut('x', 100 - offcut, leaf(0, 1, 1), OFFCUT), times: n }));
    const now = () => [best.sheets, best.plan.length, best.plan[0]!.tree];
    best.offer(undefined);
    expect(best.sheets).toBe(Infinity);
    const offers = [
      plan(10, 2, 2),
      plan(50, 3, 2),
      plan(20, 2, 2),
      plan(15, 2, 2),
      plan(5, 4),
      plan(90, 2, 2),
      plan(6, 4),
    ];
    const kept = offers.map((one) => {
      best.offer(one);
      return best.plan === one;
    });
    expect(kept).toEqual([true, false, true, false, true, false, true]);
    expect(now().slice(0, 2)).toEqual([4, 1]);
    best.offer(plan(1, 1, 1, 1));
    expect(now().slice(0, 2)).toEqual([3, 3]);
    // the offcut on either side of either cut: 30 of 100 across, 20 of 100 down
    const down: SheetsTaken[] = [{ tree: cut('y', 30, OFFCUT, leaf(0, 1, 1)), times: 1 }];
    const across: SheetsTaken[] = [{ tree: cut('x', 20, OFFCUT, leaf(0, 1, 1)), times: 1 }];
    best.offer(across);
    best.offer(down);
    expect(best.plan).toBe(down);
    best.offer(across);
    expect(best.plan).toBe(down);
    const deep: SheetsTaken[] = [{ tree: cut('y', 30, leaf(0, 1, 1), cut('x', 20, leaf(0, 1, 1), OFFCUT)), times: 1 }];
    best.offer(deep);
    // 70 × 80 is more than 30 × 100
    expect(best.plan).toBe(deep);
  });
});
