/** Cutting plans: sound whatever is asked, as few sheets as can be where that can be known, and said in cuts. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { atOnce } from '../../../src/core/base/turns';
import { layOut } from '../../../src/core/cut/layout';
import { fewestSheets, mostWorth } from '../../../src/core/cut/layout-exact';
import { areaBound, oneKindBound, weighedBound } from '../../../src/core/cut/layout-bound';
import { kindsOf, roomOf } from '../../../src/core/cut/layout-units';
import type { SheetPart, PieceGrain, SheetLayout, SheetPiece, StockSheet } from '../../../src/core/cut/layout-types';
import { anyJob, faultsOf, fewestByTrying, isGuillotine, type Loose } from '../support/cutting';

const piece = (widthMm: number, heightMm: number, count: number, grain: PieceGrain = 'either'): SheetPiece => ({
  name: '',
  widthMm,
  heightMm,
  count,
  grain,
});
const sheet = (widthMm: number, heightMm: number, grain: StockSheet['grain'] = 'none'): StockSheet => ({
  widthMm,
  heightMm,
  grain,
});

function planOf(stock: StockSheet, pieces: readonly SheetPiece[], kits = 1): SheetLayout {
  const found = layOut(stock, pieces, kits);
  if (!found.ok) throw new Error(found.errors.map(({ message }) => message).join(' '));
  return found.value;
}

/** Every part of a cut lies in the part it is cut from, none over another, and the cuts fall between them. */
function treeFaults(part: SheetPart, kerf: number): string[] {
  const { becomes, x, y, width, height } = part;
  if (becomes.kind !== 'cut') return [];
  const { axis, at, parts } = becomes;
  const faults: string[] = [];
  const [start, whole] = axis === 'x' ? [x, width] : [y, height];
  if (at.length === 0) faults.push('a cut nowhere');
  at.forEach((distance, i) => {
    if (distance <= (at[i - 1] ?? 0) || distance >= whole) faults.push(`a cut at ${distance} of ${whole}`);
  });
  for (const one of parts) {
    const [from, to] = axis === 'x' ? [one.x, one.x + one.width] : [one.y, one.y + one.height];
    for (const distance of at)
      if (from < start + distance - 1e-6 && to > start + distance + 1e-6) faults.push('a cut goes through a part');
    const across = axis === 'x' ? [one.y, one.height, y, height] : [one.x, one.width, x, width];
    if (across[0] !== across[2] || across[1] !== across[3]) faults.push('a cut does not go from edge to edge');
    if (from < start - 1e-6 || to > start + whole + 1e-6) faults.push('a part lies outside');
    faults.push(...treeFaults(one, kerf));
  }
  return faults;
}

describe('any plan', () => {
  test('keeps every piece in the sheet, apart, whole, once, with its grain; straight cuts part it; no fewer than the bound', () => {
    fc.assert(
      fc.property(anyJob, ({ stock, pieces, kits }) => {
        const layout = planOf(stock, pieces, kits);
        const cut = pieces.map(() => 0);
        for (const { times, placements, part } of layout.plans) {
          expect(faultsOf(placements, stock, pieces)).toEqual([]);
          expect(treeFaults(part, stock.kerfMm ?? 0)).toEqual([]);
          for (const one of placements) cut[one.piece]! += times;
        }
        expect(cut).toEqual(pieces.map(({ count }) => count * kits));
        expect(layout.plans.reduce((sum, { times }) => sum + times, 0)).toBe(layout.sheets);
        expect(layout.sheets).toBeGreaterThanOrEqual(layout.bound);
        expect(layout.bound).toBeGreaterThanOrEqual(layout.areaBound);
        expect(layout.proved).toBe(layout.sheets === layout.bound);
        expect(layout.waste).toBeGreaterThanOrEqual(0);
        expect(layout.waste).toBeLessThan(1);
      }),
      { numRuns: 40 },
    );
  });
  test('is the same each time, and the judge of straight cuts knows a pinwheel', () => {
    const job = [sheet(700, 1000, 'long'), [piece(150, 216, 2, 'height'), piece(90, 120, 3)], 5] as const;
    expect(layOut(...job)).toEqual(layOut(...job));
    const pinwheel = [
      { x: 0, y: 0, w: 2, h: 1 },
      { x: 2, y: 0, w: 1, h: 2 },
      { x: 1, y: 2, w: 2, h: 1 },
      { x: 0, y: 1, w: 1, h: 2 },
    ];
    expect(isGuillotine(pinwheel, 0)).toBe(false);
    expect(isGuillotine(pinwheel.slice(0, 3), 0)).toBe(true);
  });
});

/** Few, small, whole-numbered: what trying everything can still do. */
const tiny = fc.record({
  wide: fc.integer({ min: 4, max: 7 }),
  high: fc.integer({ min: 4, max: 7 }),
  grain: fc.constantFrom('long', 'none'),
  sizes: fc.array(fc.tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 4 }), fc.boolean()), {
    minLength: 1,
    maxLength: 4,
  }),
});

describe('the fewest sheets', () => {
  test('as found by trying everything, on tiny jobs', () => {
    fc.assert(
      fc.property(tiny, ({ wide, high, grain, sizes }) => {
        const stock = sheet(wide, high, grain as StockSheet['grain']);
        const upright = high >= wide;
        const pieces = sizes.map(([w, h, free]) => piece(w, h, 1, free ? 'either' : upright ? 'height' : 'width'));
        const loose = sizes.map(([w, h, free]): Loose =>
          free || grain === 'none'
            ? [
                [w, h],
                [h, w],
              ]
            : [[w, h]],
        );
        const fewest = fewestByTrying(loose, wide, high);
        const kinds = kindsOf(pieces, stock, 1);
        const outright = atOnce(fewestSheets(kinds, roomOf(stock), { left: 1e7 }));
        expect(outright?.length).toBe(fewest);
        const { sheets, bound } = planOf(stock, pieces);
        expect({ sheets, bound }).toEqual({ sheets: fewest, bound: fewest });
        for (const least of [
          areaBound(kinds, roomOf(stock)),
          weighedBound(kinds, roomOf(stock)),
          atOnce(oneKindBound(kinds, roomOf(stock), { left: 1e7 })),
        ])
          expect(least).toBeLessThanOrEqual(fewest);
      }),
      { numRuns: 60 },
    );
  });
  test('is never more than a rule of thumb finds', () => {
    fc.assert(
      fc.property(anyJob, ({ stock, pieces }) => {
        const kinds = kindsOf(pieces, stock, 1);
        const outright = atOnce(fewestSheets(kinds, roomOf(stock), { left: 400_000 }));
        if (!outright) return;
        const { sheets } = planOf(stock, pieces);
        expect(sheets).toBe(outright.length);
      }),
      { numRuns: 30 },
    );
  });
  test('out of one sheet, the published best of the first constrained instance: worth 244', () => {
    // Christofides & Whitlock 1977, table 2, first problem: 15 × 10, pieces not turned; optimum from memory.
    const rows = [
      [8, 4, 66, 2],
      [3, 7, 35, 1],
      [8, 2, 24, 3],
      [3, 4, 17, 5],
      [3, 3, 11, 2],
      [3, 2, 8, 2],
      [2, 1, 2, 1],
    ] as const;
    const stock = sheet(15, 10, 'long');
    const kinds = kindsOf(
      rows.map(([w, h, , count]) => piece(w, h, count, 'width')),
      stock,
      1,
    );
    expect(
      mostWorth(
        kinds,
        rows.map(([, , worth]) => worth),
        roomOf(stock),
        { left: 1e9 },
      ),
    ).toBe(244);
  });
});

describe('small things', () => {
  test('a fraction of an inch that adds up to the sheet fits it', () => {
    // 22 in are sixty-four times 11/32 in: by hand.
    const { sheets, proved } = planOf(sheet(22 * 25.4, 28 * 25.4), [piece((11 / 32) * 25.4, 28 * 25.4, 64)]);
    expect({ sheets, proved }).toEqual({ sheets: 1, proved: true });
  });
  test('a kerf that leaves no room takes another sheet: two halves and a cut are more than the whole', () => {
    const halves = [piece(50, 100, 2, 'height')];
    expect(planOf({ ...sheet(100, 100), kerfMm: 0 }, halves).sheets).toBe(1);
    expect(planOf({ ...sheet(100, 100), kerfMm: 1 }, halves).sheets).toBe(2);
    expect(planOf({ ...sheet(101, 100), kerfMm: 1 }, halves).sheets).toBe(1);
  });
  test('equal sheets are one plan cut several times', () => {
    const { plans, sheets } = planOf(sheet(100, 100), [piece(60, 60, 4)]);
    expect(sheets).toBe(4);
    expect(plans.map(({ times }) => times)).toEqual([4]);
  });
  test('the biggest offcut is named first: 100 × 100 less one 60 × 60 leaves 40 × 100', () => {
    const [plan] = planOf(sheet(100, 100), [piece(60, 60, 1)]).plans;
    const { width, height } = plan!.offcuts[0]!;
    expect(Math.round(width * height)).toBe(4000);
  });
});

describe('what cannot be cut says why', () => {
  const messages = (stock: StockSheet, pieces: readonly SheetPiece[], kits = 1) => {
    const found = layOut(stock, pieces, kits);
    return found.ok ? [] : found.errors.map(({ field, message }) => `${field}: ${message}`);
  };
  test('too large: by how much and which way', () => {
    expect(messages(sheet(200, 300), [piece(210, 310, 1)])).toEqual([
      '0-wide: Piece 1 is larger than the sheet: 10 mm too long for the sheet’s width and 10 mm too long for the sheet’s height. Turning it does not help.',
    ]);
    expect(messages(sheet(200, 300), [piece(310, 150, 1)])[0]).toMatch(
      /^0-wide: .*10 mm too long for the sheet’s height/,
    );
  });
  test('the grain is what keeps it out', () => {
    expect(messages(sheet(200, 300, 'long'), [piece(250, 150, 1, 'height')])).toEqual([
      '0-grain: Piece 1 does not fit with its grain kept: as it must lie it is 50 mm too long for the sheet’s width. Turned, across the grain, it would fit.',
    ]);
  });
  test('no pieces, no kits, too many, and a trim that eats the sheet', () => {
    expect(messages(sheet(200, 300), [])[0]).toMatch(/^pieces: Give at least one piece/);
    expect(messages(sheet(200, 300), [piece(10, 10, 1)], 0)[0]).toMatch(/^kits: /);
    expect(messages(sheet(200, 300), [piece(10, 10, 999)], 10)[0]).toMatch(/^pieces: That is 9990 pieces; .* 2000/);
    expect(messages({ ...sheet(200, 300), trimMm: 100 }, [piece(10, 10, 1)])[0]).toMatch(/^trim: /);
  });
});
