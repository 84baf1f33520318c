/** What a cutting plan is made of, on cases small enough for a hand: lengths in whole thousandths of a millimetre. */
import { describe, expect, it } from 'vitest';
import { atOnce } from '../../../src/core/base/turns';
import { Best, cutAll, type Sheets } from '../../../src/core/cut/layout-best';
import { areaBound, heldBy, oneKindBound, patternBound, weighedBound } from '../../../src/core/cut/layout-bound';
import { fewestSheets, mostWorth } from '../../../src/core/cut/layout-exact';
import { fitProblems } from '../../../src/core/cut/layout-fit';
import { cutOrder, listed } from '../../../src/core/cut/layout-order';
import { sheetPlan } from '../../../src/core/cut/layout-parts';
import { bestPattern, tableOf } from '../../../src/core/cut/layout-pattern';
import { eachPart, selectionsOf, shapesOf } from '../../../src/core/cut/layout-shapes';
import { OFFCUT, treeText, within, type Tree } from '../../../src/core/cut/layout-tree';
import type { Part, PieceGrain, SheetPiece, SheetPlan, StockSheet } from '../../../src/core/cut/layout-types';
import { fits, kindsOf, roomOf, waysByGrain } from '../../../src/core/cut/layout-units';

const piece = (widthMm: number, heightMm: number, count = 1, grain: PieceGrain = 'either', name = ''): SheetPiece => ({
  ...{ name, widthMm, heightMm, count, grain },
});
const sheet = (widthMm: number, heightMm: number, more: Partial<StockSheet> = {}): StockSheet => ({
  ...{ widthMm, heightMm, grain: 'none', ...more },
});
const fixed = sheet(100, 100, { grain: 'long' });
const kinds = (...pieces: SheetPiece[]) => kindsOf(pieces, fixed, 1);
const room = roomOf(fixed);

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

describe('what does not fit', () => {
  const said = (stock: StockSheet, pieces: readonly SheetPiece[], kits = 1) =>
    fitProblems(stock, pieces, kits).map(({ field, message }) => `${field}: ${message}`);
  it('fits to the last hair', () => {
    expect(said(sheet(100, 50), [piece(100, 50), piece(50, 100)])).toEqual([]);
    expect(said(sheet(100, 50), [piece(100.1, 50)])).toHaveLength(1);
  });
  it('whole kits from one, two thousand pieces at most, and a millimetre within the trim', () => {
    expect(said(sheet(100, 50), [piece(1, 1)], 1.5)[0]).toMatch(/^kits: /);
    expect(said(sheet(100, 50), [piece(1, 1, 1000)], 2)).toEqual([]);
    expect(said(sheet(100, 50), [piece(1, 1, 2001)])[0]).toMatch(/^pieces: That is 2001 pieces/);
    expect(said(sheet(100, 50), [piece(1, 1, 0)])[0]).toMatch(/^pieces: Give at least one/);
    expect(said(sheet(100, 50, { trimMm: 24.5 }), [piece(1, 1)])).toEqual([]);
    expect(said(sheet(100, 50, { trimMm: 24.6 }), [piece(0.1, 0.1)])[0]).toMatch(/^trim: /);
    expect(said(sheet(50, 100, { trimMm: 24.6 }), [piece(0.1, 0.1)])[0]).toMatch(/^trim: /);
  });
  it('each by the side that is too long, said in the way that fails by less, with its name', () => {
    const stock = sheet(200, 300);
    expect(said(stock, [piece(150, 310, 1, 'either', 'spine')])[0]).toMatch(
      /^0-high: “spine” is larger.*10 mm too long for the sheet’s height/,
    );
    expect(said(stock, [piece(310, 150)])[0]).toMatch(/^0-wide: Piece 1 .*10 mm too long for the sheet’s height/);
    expect(said(stock, [piece(1, 1), piece(210, 299)])[0]).toMatch(
      /^1-wide: Piece 2 .*: 10 mm too long for the sheet’s width/,
    );
    expect(said({ ...stock, grain: 'long' }, [piece(150, 250, 1, 'width')])[0]).toMatch(
      /^0-grain: .* it is 50 mm too long for the sheet’s width\. Turned/,
    );
  });
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
    expect(heldBy(tree, kinds(piece(30, 20, 9), piece(20, 20, 9), piece(5, 5, 9)))).toEqual([2, 1, 0]);
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
    const plan = (offcut: number, ...times: number[]): Sheets[] =>
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
    const down: Sheets[] = [{ tree: cut('y', 30, OFFCUT, leaf(0, 1, 1)), times: 1 }];
    const across: Sheets[] = [{ tree: cut('x', 20, OFFCUT, leaf(0, 1, 1)), times: 1 }];
    best.offer(across);
    best.offer(down);
    expect(best.plan).toBe(down);
    best.offer(across);
    expect(best.plan).toBe(down);
    const deep: Sheets[] = [{ tree: cut('y', 30, leaf(0, 1, 1), cut('x', 20, leaf(0, 1, 1), OFFCUT)), times: 1 }];
    best.offer(deep);
    // 70 × 80 is more than 30 × 100
    expect(best.plan).toBe(deep);
  });
});

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

describe('the best of one sheet', () => {
  const up = (w: number, h: number, count = 9) => piece(w, h, count, 'height');
  it('out of any number: four quarters, or what is worth more', () => {
    const all = kinds(up(50, 50), up(100, 30));
    const table = tableOf(all, room)!;
    const found = (worth: number[]) => bestPattern(all, worth, room, table, { left: 1e7 })!;
    expect(found([1, 1]).worth).toBe(4);
    expect(heldBy(found([1, 1]).tree, all)).toEqual([4, 0]);
    expect(found([1, 3]).worth).toBe(9);
    expect(heldBy(found([1, 3]).tree, all)).toEqual([0, 3]);
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
    const held = found.map(({ tree }) => heldBy(tree, all));
    expect(held[0]!.map((n, k) => n + held[1]![k]!)).toEqual([2, 2, 2]);
    for (const { counts, area, tree } of found) {
      expect(heldBy(tree, all)).toEqual(counts);
      expect(area).toBe(counts.reduce((sum, n, k) => sum + n * all[k]!.area, 0));
    }
    expect(mostWorth(all, [5, 1, 1], room, { left: 1e6 })).toBe(7);
    expect(mostWorth(all, [1, 4, 0], room, { left: 1e6 })).toBe(8);
    expect(atOnce(fewestSheets(all, room, { left: 3 }))).toBeUndefined();
    expect(mostWorth(all, [1, 1, 1], room, { left: 3 })).toBeUndefined();
  });
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

  const at = (x: number, y: number, width: number, height: number, becomes: Part['becomes']): Part => ({
    x,
    y,
    width,
    height,
    becomes,
  });
  const placed = (which: number): Part['becomes'] => ({
    kind: 'piece',
    placement: { piece: which, x: 0, y: 0, width: 0, height: 0, turned: false },
  });
  const told = (part: Part) => cutOrder({ part } as SheetPlan, (which) => String(which + 1), 'mm');
  it('parts that are alike are cut alike, in one step for all of them', () => {
    const strip = (x: number) =>
      at(x, 0, 50, 100, {
        ...{ kind: 'cut', axis: 'y', at: [40, 80] },
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
