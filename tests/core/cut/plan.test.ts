/** The sheets calculator's plan: typed, carried in links, handed over by others, and answered in words. */
import { decodeCutPieces, decodeStocks, stocksIn, cutPiecesIn } from '../support/rows';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cutAnswer, type CutAnswer } from '../../../src/core/cut/answer';
import { encodeCutPieces, encodeStocks, tidyName, tidyStocks } from '../../../src/core/cut/codec';
import { CUT_FIELDS, cutPlanFor, cutTailFor, DEFAULT_CUT, type CutPlan, type ToCut } from '../../../src/core/cut/plan';
import {
  joinCutPieces,
  joinStocks,
  NEW_PIECE,
  parseCutPieces,
  splitCutPieces,
  splitStocks,
} from '../../../src/core/cut/rows';
import { asTyped } from '../../../src/core/base/length-text';
import { readTexts, textsOf } from '../../../src/core/link/fields';
import { encodePlan } from '../../../src/core/link/plan-link';
import { decodePlan } from '../../../src/core/link/read-plan-link';
import { letter } from '../../../src/core/cut/layout-order';
import { SHEET_SIZES, sizeTyped, typedSize } from '../../../src/core/cut/sheet-sizes';

const NONSENSE = /NaN|undefined|Infinity|not known|\[object/;

function answerTo(plan: CutPlan): CutAnswer {
  const found = cutAnswer(plan);
  if (!found.ok) throw new Error(found.errors.map(({ message }) => message).join(' '));
  return found.value;
}

/** All that a reader would see of an answer. */
const shown = (answer: CutAnswer): string =>
  JSON.stringify([answer.sentence, answer.brief, answer.facts, answer.warnings, answer.stocks]);

const mm = (low: number, high: number) =>
  fc.integer({ min: low * 10, max: high * 10 }).map((tenths) => Number((tenths / 10).toFixed(1)));
const name = fc.string({ maxLength: 40, unit: 'grapheme' });
const stocks = fc.array(
  fc.record(
    {
      name: name.map(tidyName),
      widthMm: mm(20, 2000),
      heightMm: mm(20, 2000),
      trimMm: mm(0, 30),
      grain: fc.constantFrom('long' as const, 'short' as const, 'none' as const),
      price: mm(0, 99),
    },
    { requiredKeys: ['name', 'widthMm', 'heightMm', 'trimMm', 'grain'] },
  ),
  { minLength: 1, maxLength: 6 },
);
const pieces = fc.array(
  fc.record({
    stock: fc.integer({ min: 0, max: 5 }),
    name: name.map(tidyName),
    widthMm: mm(1, 900),
    heightMm: mm(1, 900),
    count: fc.integer({ min: 1, max: 20 }),
    grain: fc.constantFrom('height' as const, 'width' as const, 'either' as const),
  }),
  { minLength: 1, maxLength: 24 },
);

describe('a link is a promise', () => {
  test('rows come back as they went, whatever they are called', () => {
    fc.assert(
      fc.property(stocks, pieces, (some, others) => {
        expect(decodeStocks(encodeStocks(some))).toEqual(some);
        expect(decodeCutPieces(encodeCutPieces(others))).toEqual(others);
      }),
    );
  });
  test('a plan comes back from its link', () => {
    const short = stocks.map((all) => all.map((one) => ({ ...one, name: one.name.replace(/[^ -}]/g, '') })));
    fc.assert(
      fc.property(short, fc.integer({ min: 1, max: 200 }), (some, kits) => {
        const plan: CutPlan = { ...DEFAULT_CUT, stocks: tidyStocks(some), kits };
        const { plan: back, dropped } = decodePlan(cutTailFor(plan), CUT_FIELDS);
        expect({ back, dropped }).toEqual({ back: plan, dropped: [] });
      }),
    );
  });
  test('it is readable', () => {
    expect(
      decodeURIComponent(cutTailFor({ ...DEFAULT_CUT, pieces: cutPiecesIn('1~front board~150x216x2~height') })),
    ).toBe(
      'v=1&in=mm&sheets=board~700x1000~long_cover paper~500x700~long_endpaper~450x640~short&pieces=1~front board~150x216x2~height&kits=6&kerf=0',
    );
  });
  test('any text is a plan or is named, and what can be answered is answered without nonsense', () => {
    const near = fc
      .tuple(fc.constantFrom('in', 'sheets', 'pieces', 'kits', 'kerf', 'v', 'seen'), fc.string())
      .map(([key, value]) => `${key}=${value}`);
    const rows = fc.tuple(stocks, pieces).map(([a, b]) => `sheets=${encodeStocks(a)}&pieces=${encodeCutPieces(b)}`);
    fc.assert(
      fc.property(fc.oneof(fc.string(), near, rows), (text) => {
        const { plan } = decodePlan(text, CUT_FIELDS);
        const found = cutAnswer(plan);
        if (found.ok) expect(shown(found.value)).not.toMatch(NONSENSE);
        else
          for (const { field, message } of found.errors) {
            expect(message).not.toMatch(NONSENSE);
            expect(field).toMatch(/^(kits|pieces|stock-\d-trim|piece-\d+-(wide|high|grain|stock))$/);
          }
      }),
      { numRuns: 200 },
    );
  });
});

describe('what is typed', () => {
  test('is read back as it was, in every unit, to a few thousandths of a millimetre', () => {
    fc.assert(
      fc.property(stocks, fc.constantFrom('mm' as const, 'cm' as const, 'in' as const), (some, unit) => {
        const plan: CutPlan = { ...DEFAULT_CUT, unit, stocks: tidyStocks(some) };
        const { plan: back, problems } = readTexts(textsOf(plan, CUT_FIELDS), CUT_FIELDS, DEFAULT_CUT);
        // A length at its very limit may be a hair outside it in another unit.
        if (problems.length > 0) return;
        back.stocks.forEach((stock, i) => {
          expect(Math.abs(stock.widthMm - some[i]!.widthMm)).toBeLessThan(0.003);
          expect(Math.abs(stock.trimMm - some[i]!.trimMm)).toBeLessThan(0.003);
          expect(stock.price).toBe(some[i]!.price);
        });
      }),
    );
  });
  test('lengths keep fitting in inches: 210 mm is not rounded to a 32nd, 9 1/4 in is', () => {
    expect(asTyped(210, 'in')).toBe('8.26772');
    expect(asTyped(9.25 * 25.4, 'in')).toBe('9 1/4');
  });
  test('anything at all is a plan or a message beside its own field', () => {
    const cell = fc.string({ maxLength: 8 });
    const row = fc.record({ stock: cell, name: cell, wide: cell, high: cell, count: cell, grain: cell });
    const sheet = fc.record({ name: cell, wide: cell, high: cell, grain: cell, trim: cell, price: cell });
    fc.assert(
      fc.property(fc.array(row, { maxLength: 4 }), fc.array(sheet, { maxLength: 3 }), (some, sheets) => {
        const texts = { ...textsOf(DEFAULT_CUT, CUT_FIELDS), pieces: joinCutPieces(some), stocks: joinStocks(sheets) };
        expect(splitCutPieces(texts.pieces)).toHaveLength(some.length);
        expect(splitStocks(texts.stocks)).toHaveLength(sheets.length);
        const { problems } = readTexts(texts, CUT_FIELDS, DEFAULT_CUT);
        for (const { field } of problems) expect(field).toMatch(/^(pieces|stocks|(piece|stock)-\d-[a-z]+)$/);
      }),
    );
  });
  test('names that a link could not carry are refused, and none that it can', () => {
    const long = (text: string) =>
      joinCutPieces(Array.from({ length: 24 }, () => ({ ...NEW_PIECE, name: text, wide: '10', high: '10' })));
    expect(parseCutPieces(long('a plain name of 28 letters..'), 'mm').ok).toBe(true);
    const refused = parseCutPieces(long('見返し'.repeat(9)), 'mm');
    expect(refused.ok ? '' : refused.errors[0]?.message).toMatch(/shorter names/);
  });
  test('a size is found by its lengths, in every unit', () => {
    for (const { id } of SHEET_SIZES)
      for (const unit of ['mm', 'cm', 'in'] as const) {
        const { wide, high } = typedSize(id, unit)!;
        expect(sizeTyped(wide, high, unit)).toBe(id);
      }
    expect(sizeTyped('', '700', 'mm')).toBe('own');
    expect(typedSize('own', 'mm')).toBeUndefined();
  });
});

describe('handed over by others', () => {
  const some: readonly ToCut[] = [
    { name: 'front', stock: 'board', widthMm: 150, heightMm: 216, count: 2, grain: 'height' },
    { name: 'cover', stock: 'cloth', widthMm: 360, heightMm: 250, count: 1, grain: 'height' },
  ];
  test('the plan has the stocks that are used, and the pieces as they were', () => {
    const plan = cutPlanFor(some, { kits: 8 });
    expect(plan.stocks.map((stock) => stock.name)).toEqual(['board', 'cloth']);
    expect(plan.pieces).toEqual([
      { ...some[0], stock: 0 },
      { ...some[1], stock: 1 },
    ]);
    // By hand: 4 × 4 boards a sheet; covers one across and four down.
    expect(answerTo(plan).stocks.map(({ layout }) => layout.sheets)).toEqual([1, 2]);
    expect(decodePlan(cutTailFor(plan), CUT_FIELDS)).toEqual({ plan, dropped: [] });
  });
  test('a known sheet takes the place of the usual one; none and too many are refused', () => {
    const stocks = { board: { name: 'grey', widthMm: 500, heightMm: 700, grain: 'short', trimMm: 5 } } as const;
    expect(cutPlanFor(some, { stocks }).stocks[0]).toEqual(stocks.board);
    expect(() => cutPlanFor([])).toThrow(RangeError);
    expect(() => cutPlanFor(Array.from({ length: 25 }, () => some[0]!))).toThrow(RangeError);
  });
});

describe('the answer', () => {
  test('in a sentence, with what is left and whether fewer would do', () => {
    // By hand: 3 boards of 50 × 100 out of 100 × 100 take two sheets, and a quarter is left.
    const plan: CutPlan = {
      ...DEFAULT_CUT,
      stocks: stocksIn('board~100x100~long~0~2.5'),
      pieces: cutPiecesIn('1~half~50x100x3~height'),
      kits: 1,
    };
    const { sentence, facts, figures } = answerTo(plan);
    expect(sentence).toBe(
      '2 sheets of board. Left over: 25\u00a0% of the board. Proved: no plan of straight-through cuts needs fewer.',
    );
    expect(facts.find(({ label }) => label.startsWith('Price'))?.value).toBe('5');
    expect(figures).toEqual([2, 2]);
  });
  test('a person can follow the cuts: every step says where, and what comes of it', () => {
    const plan: CutPlan = {
      ...DEFAULT_CUT,
      stocks: stocksIn('board~320x220~short~10'),
      pieces: cutPiecesIn('1~big~150x200x1~height_1~small~150x100x2~height'),
      kits: 1,
    };
    const [sheet] = answerTo(plan).stocks[0]!.sheets;
    expect(sheet!.steps.map(({ number, text }) => `${number} ${text}`)).toEqual([
      '1 Trim 10 mm off each of the four edges.',
      '2 Cut the sheet from top to bottom, 150 mm from the left edge: piece 1 (big) and part A, 150 × 200 mm.',
      '3 Cut part A from side to side, 100 mm from its top edge: 2 × piece 2 (small).',
    ]);
    expect(sheet!.rows.map(({ number, count, lies }) => [number, count, lies])).toEqual([
      [1, 1, 'upright'],
      [2, 2, 'upright'],
    ]);
    expect(sheet!.offcut).toBe('No offcut is worth keeping.');
  });
  test('every cut that is drawn belongs to a step, and every step but the trim draws its cuts', () => {
    for (const { sheets } of answerTo({ ...DEFAULT_CUT, kits: 7 }).stocks)
      for (const { steps, drawing } of sheets) {
        expect(drawing.cuts).toHaveLength(steps.reduce((sum, { lines }) => sum + lines.length, 0));
        for (const { lines } of steps) expect(lines.length).toBeGreaterThan(0);
      }
  });
  test('a wrong piece is named by its own row, however the rows are shared out', () => {
    const found = cutAnswer({
      ...DEFAULT_CUT,
      pieces: cutPiecesIn('1~a~100x100x1~height_2~b~900x100x1~either_7~c~10x10x1~either'),
    });
    expect(found.ok).toBe(false);
    if (found.ok) return;
    expect(found.errors.map(({ field }) => field)).toEqual(['piece-2-stock', 'piece-1-wide']);
    expect(found.errors[1]!.message).toContain('200 mm too long for the sheet’s height');
  });
  test('a grain that is asked for and not minded is pointed out', () => {
    const plan: CutPlan = {
      ...DEFAULT_CUT,
      stocks: stocksIn('board~700x1000~none'),
      pieces: cutPiecesIn('1~a~100x100x1~height'),
    };
    expect(answerTo(plan).warnings).toHaveLength(1);
  });
  test('links written from a plan with an answer keep the figures that were seen', () => {
    const { figures } = answerTo(DEFAULT_CUT);
    const tail = encodePlan(DEFAULT_CUT, CUT_FIELDS, ['1', ...figures].join('_'));
    expect(decodePlan(tail, CUT_FIELDS).seen).toBe('1_7_1_3_3');
  });
  test('parts have letters past Z', () => {
    expect([0, 25, 26, 27, 52].map(letter)).toEqual(['A', 'Z', 'AA', 'AB', 'BA']);
  });
});
