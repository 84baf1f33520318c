/** Pieces packed anew into a sheet fewer: what comes out can be cut, and a layout that is known to be there is found. */
import { describe, expect, test } from 'vitest';
import { atOnce } from '../../../src/core/base/turns';
import { Best, grouped } from '../../../src/core/cut/layout-best';
import { piecesHeld } from '../../../src/core/cut/layout-bound';
import { packInto } from '../../../src/core/cut/layout-forest';
import { sheetPlan } from '../../../src/core/cut/layout-parts';
import { repack } from '../../../src/core/cut/layout-repack';
import { layOut, layOutInTurns } from '../../../src/core/cut/layout';
import { treeText, within, type Pattern } from '../../../src/core/cut/layout-tree';
import type { PieceGrain, SheetPiece, StockSheet } from '../../../src/core/cut/layout-types';
import { kindsOf, roomOf } from '../../../src/core/cut/layout-units';
import { KINDS, knownJob } from '../../measure/known-layouts';
import { faultsOf } from '../support/cutting';

const piece = (widthMm: number, heightMm: number, count = 1, grain: PieceGrain = 'height'): SheetPiece => ({
  name: '',
  widthMm,
  heightMm,
  count,
  grain,
});
const square: StockSheet = { widthMm: 100, heightMm: 100, grain: 'long' };

function packed(stock: StockSheet, pieces: readonly SheetPiece[], sheets: number, left = 300_000) {
  const kinds = kindsOf(pieces, stock, 1);
  const each = kinds.flatMap(({ count }, k) => Array.from({ length: count }, () => k));
  const steps = { left };
  const patterns = atOnce(packInto(sheets, each, kinds, roomOf(stock), steps));
  return { patterns, kinds, used: left - steps.left };
}

/** Everything wrong with what was packed: each piece once, apart, whole, with its grain, parted by straight cuts. */
function faults(stock: StockSheet, pieces: readonly SheetPiece[], patterns: readonly Pattern[]): readonly string[] {
  const kinds = kindsOf(pieces, stock, 1);
  const cut = pieces.map(() => 0);
  const found = patterns.flatMap(({ tree, counts, area }) => {
    const held = piecesHeld(tree, kinds);
    held.forEach((n, k) => (cut[k]! += n));
    return [
      ...faultsOf(sheetPlan({ tree, times: 1 }, pieces, stock).placements, stock, pieces),
      ...(held.join() === counts.join() ? [] : ['says that it holds other pieces']),
      ...(area === held.reduce((sum, n, k) => sum + n * kinds[k]!.area, 0) ? [] : ['says another area']),
    ];
  });
  return [...found, ...(cut.every((n, k) => n === pieces[k]!.count) ? [] : ['a piece is missing'])];
}

describe('all of the pieces on so many sheets', () => {
  test('four that fill a sheet whichever way they are joined at first: 60 × 40 and 40 × 60 about two strips', () => {
    // by hand: 60 × 40 beside 40 × 40, and below them 30 × 60 beside 70 × 60
    const pieces = [piece(60, 40), piece(40, 40), piece(30, 60), piece(70, 60)];
    const { patterns } = packed(square, pieces, 1);
    expect(patterns).toHaveLength(1);
    expect(faults(square, pieces, patterns!)).toEqual([]);
  });
  test('a piece is turned where its grain allows it, and not where it does not', () => {
    const pieces = (grain: PieceGrain) => [piece(100, 40), piece(60, 100, 1, grain)];
    expect(packed(square, pieces('either'), 1).patterns).toHaveLength(1);
    // two pieces can be joined in a handful of ways, which so many steps try many times over
    expect(packed(square, pieces('height'), 1, 2_000).patterns).toBeUndefined();
  });
  test('what cannot be is given up when the steps are used, and not before', () => {
    // no two of 60 × 60 lie on a sheet of 100 × 100
    const { patterns, used } = packed(square, [piece(60, 60, 3)], 2, 20_000);
    expect(patterns).toBeUndefined();
    expect(used).toBeGreaterThanOrEqual(20_000);
    expect(used).toBeLessThan(20_100);
  });
  test('a kerf and a trim are kept, and a hair too much is too much', () => {
    const stock = { ...square, trimMm: 5, kerfMm: 2 };
    // within the trim 90: two of 44 and a cut
    expect(packed(stock, [piece(44, 44, 4)], 1).patterns).toHaveLength(1);
    expect(faults(stock, [piece(44, 44, 4)], packed(stock, [piece(44, 44, 4)], 1).patterns!)).toEqual([]);
    expect(packed(stock, [piece(44.1, 44, 4)], 1, 20_000).patterns).toBeUndefined();
  });
  test('the same each time; another seed makes another plan', () => {
    const { stock, pieces } = knownJob({ wastePercent: 15, pieces: 20, sheets: 2 }, 0);
    const kinds = kindsOf(pieces, stock, 1);
    const texts = (seed: number) =>
      atOnce(
        packInto(
          2,
          kinds.map((_, k) => k),
          kinds,
          roomOf(stock),
          { left: 6e6 },
          seed,
        ),
      )?.map(({ tree }) => treeText(tree));
    expect(texts(1)).toEqual(texts(1));
    expect(texts(1)).not.toEqual(texts(2));
  });
});

describe('jobs cut back from a known layout', () => {
  test.for(KINDS.filter(({ wastePercent }) => wastePercent > 8))(
    'with $wastePercent % waste, $pieces pieces of $sheets sheets: the count is met, and every piece is there',
    (kind) => {
      for (const number of [0, 1]) {
        const { stock, pieces } = knownJob(kind, number);
        const found = layOut(stock, pieces);
        if (!found.ok) throw new Error(found.errors[0]!.message);
        expect(found.value.sheets).toBeLessThanOrEqual(kind.sheets);
        for (const { placements } of found.value.plans) expect(faultsOf(placements, stock, pieces)).toEqual([]);
      }
    },
  );
  test('with 8 % waste, in three of four at least', () => {
    const kinds = KINDS.filter(({ wastePercent }) => wastePercent === 8);
    const met = kinds.filter((kind) => {
      const { stock, pieces } = knownJob(kind, 3);
      const found = layOut(stock, pieces);
      return found.ok && found.value.sheets <= kind.sheets;
    });
    expect(met.length).toBeGreaterThanOrEqual(7);
  });
  test('are what they say: the waste, the pieces, and every piece within its sheet', () => {
    for (const kind of KINDS) {
      const { stock, pieces } = knownJob(kind, 5);
      const area = pieces.reduce((sum, { widthMm, heightMm }) => sum + widthMm * heightMm, 0);
      expect(pieces).toHaveLength(kind.pieces);
      expect(1 - area / (kind.sheets * stock.widthMm * stock.heightMm)).toBeCloseTo(kind.wastePercent / 100, 2);
    }
  });
});

describe('the poorest sheets of a plan', () => {
  /** Three sheets, one piece on each, for four pieces that go on one and a fifth that does not. */
  const pieces = [piece(60, 40), piece(40, 40), piece(30, 60), piece(70, 60), piece(90, 90)];
  const kinds = kindsOf(pieces, square, 1);
  const room = roomOf(square);
  const alone = (k: number): Pattern => {
    const [way] = kinds[k]!.ways;
    const tree = within({ kind: 'piece', piece: k, way: way! }, way!.w, way!.h, room.w, room.h);
    return { tree, counts: kinds.map((_, i) => (i === k ? 1 : 0)), area: kinds[k]!.area };
  };
  const plan = () => {
    const best = new Best(room);
    best.offer(grouped([0, 1, 2, 3, 4].map(alone)));
    return best;
  };
  test('are packed into fewer, one after another, down to what is proved', () => {
    const best = plan();
    expect(best.sheets).toBe(5);
    atOnce(repack(kinds, room, 2, best, { left: 1e6 }));
    expect(best.sheets).toBe(2);
    const cut = best.plan.flatMap(({ tree, times }) => Array.from({ length: times }, () => piecesHeld(tree, kinds)));
    expect(kinds.map((_, k) => cut.reduce((sum, held) => sum + held[k]!, 0))).toEqual([1, 1, 1, 1, 1]);
  });
  test('are left alone where nothing is to be gained, or no steps are left', () => {
    const [proved, spent] = [plan(), plan()];
    atOnce(repack(kinds, room, 5, proved, { left: 1e6 }));
    atOnce(repack(kinds, room, 2, spent, { left: 0 }));
    expect([proved.sheets, spent.sheets]).toEqual([5, 5]);
  });
});

test('a plan in turns is the plan in one go, and takes many turns', () => {
  const { stock, pieces } = knownJob({ wastePercent: 8, pieces: 20, sheets: 1 }, 0);
  const work = layOutInTurns(stock, pieces);
  let turns = 0;
  for (;;) {
    const { done, value } = work.next();
    if (!done) turns += 1;
    else {
      expect(value).toEqual(layOut(stock, pieces));
      break;
    }
  }
  expect(turns).toBeGreaterThan(50);
});
