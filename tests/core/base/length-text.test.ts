/** Lengths as they are typed. */
import { piecesIn, stocksIn } from '../support/rows';
import fc from 'fast-check';
import { describe, expect, test, it } from 'vitest';
import { COVER_FIELDS } from '../../../src/core/cover/plan';
import { tidyCutPieces } from '../../../src/core/cut/codec';
import { CUT_FIELDS } from '../../../src/core/cut/plan';
import { parseCutPieces, parseStocks, showCutPieces, showStocks } from '../../../src/core/cut/rows';
import { MEASURE_FIELDS } from '../../../src/core/measure/plan';
import { inUnit, MILLIMETRES, parseLength, type LengthUnit, asTyped } from '../../../src/core/base/length-text';
import { MIX_FIELDS } from '../../../src/core/mix/plan';
import { encodePieces } from '../../../src/core/cover/pieces-link';
import { parseRows, showRows } from '../../../src/core/cover/pieces-text';
import type { FieldTable } from '../../../src/core/link/fields';
import { lengthField } from '../../../src/core/link/length-field';
import { MAKE_FIELDS } from '../../../src/core/make/fields';
import { FLAT_FIELDS } from '../../../src/core/flat/plan';
import { CLASS_FIELDS } from '../../../src/core/class/plan';
import Qty from 'js-quantities';
const read = (text: string, unit: LengthUnit) =>
  parseLength(text, { unit, field: 'width', what: 'The width', low: 1, high: 3000 });

/** Every table of fields that lengths are typed into. */
const TABLES: Readonly<Record<string, FieldTable>> = {
  COVER_FIELDS,
  CUT_FIELDS,
  MEASURE_FIELDS,
  MIX_FIELDS,
  MAKE_FIELDS,
  FLAT_FIELDS,
  CLASS_FIELDS,
};

const UNITS = Object.keys(MILLIMETRES) as LengthUnit[];

const FIELDS = Object.entries(TABLES).flatMap(([table, specs]) =>
  Object.entries(specs).flatMap(([field, spec]) =>
    spec.kind === 'length' ? [{ name: `${table} ${field}`, spec }] : [],
  ),
);

/** "from 3/16 to 118 1/8 in", as a message prints it. */
const printed = (message: string) => {
  const [, low = '', high = ''] = /from (.+?) to (.+?) (?:mm|cm|in)\b/.exec(message) ?? [];
  return [low, high];
};

describe('is read', () => {
  test.for([
    ['9 1/4', 'in', 234.95],
    ['9 1/4 in', 'mm', 234.95],
    ['9¼″', 'mm', 234.95],
    ['9-1/4"', 'mm', 234.95],
    ['3/4', 'in', 19.05],
    ['23,5 cm', 'mm', 235],
    ['23.5', 'cm', 235],
    ['235', 'mm', 235],
    ['1 200', 'mm', 1200],
    ['  8.5 inches ', 'cm', 215.9],
    ['½', 'in', 12.7],
    ['25/64 in', 'mm', 9.921875],
  ] as const)('%s in a field of %s', ([text, unit, millimetres]) => {
    const found = read(text, unit);
    expect(found.ok ? found.value : found.errors).toBeCloseTo(millimetres, 9);
  });
});

describe('is refused, with what is allowed', () => {
  test.for([
    ['', 'empty'],
    ['wide', 'not-a-number'],
    ['9 5/4', 'not-a-number'],
    ['1/0', 'not-a-number'],
    ['12 ft', 'not-a-number'],
    ['NaN', 'not-a-number'],
    ['1e5', 'not-a-number'],
    ['-3', 'too-small'],
    ['0', 'too-small'],
    ['99999', 'too-large'],
  ] as const)('"%s"', ([text, code]) => {
    const found = read(text, 'mm');
    expect(found.ok ? found.value : found.errors[0]?.code).toBe(code);
    expect(found.ok ? '' : found.errors[0]?.message).toMatch(/The width/);
  });
  test('a length typed in another unit is said back in the field’s own', () => {
    const found = read('200 in', 'mm');
    expect(found.ok ? '' : found.errors[0]?.message).toContain('5080 mm');
  });
});

test('what is written for people is read back as the same length', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 32, max: 32 * 100 }),
      fc.constantFrom('mm', 'cm', 'in' as LengthUnit),
      (parts, unit) => {
        const millimetres = (parts / 32) * 25.4;
        const found = read(inUnit(millimetres, unit as LengthUnit), unit as LengthUnit);
        expect(found.ok ? found.value : NaN).toBeCloseTo(millimetres, 0);
      },
    ),
  );
});

test('arbitrary text never throws and never yields anything but a length within the limits', () => {
  fc.assert(
    fc.property(fc.string(), fc.constantFrom(...(Object.keys(MILLIMETRES) as LengthUnit[])), (text, unit) => {
      const found = read(text, unit);
      if (found.ok) expect(found.value >= 1 && found.value <= 3000).toBe(true);
      else expect(found.errors[0]!.message.length).toBeGreaterThan(10);
    }),
  );
});

describe('a limit typed as it is printed is taken', () => {
  test('there are tables to look at', () => {
    expect(FIELDS.length).toBeGreaterThan(20);
  });
  test.for(FIELDS)('$name', ({ spec }) => {
    for (const unit of UNITS) {
      const said = spec.parse('', unit, 'field');
      const texts = printed(said.ok ? '' : said.errors[0]!.message);
      expect(
        texts.every((text) => /^[\d/. ]+$/.test(text)),
        texts.join(),
      ).toBe(true);
      const taken = texts.map((text) => spec.parse(text, unit, 'field'));
      expect(taken.map((found) => (found.ok ? 'taken' : found.errors[0]!.message))).toEqual(['taken', 'taken']);
      // nor is it printed so far inside that a length is kept from whoever reads it: 1 in is 25.4 mm
      const [low, high] = taken.map((found) => (found.ok ? found.value : NaN));
      expect(Math.abs(low! - spec.low)).toBeLessThan(0.026);
      expect(Math.abs(high! - spec.high)).toBeLessThan(0.026);
    }
  });
  test.for(UNITS)('in the rows of pieces and of sheets, in %s', (unit) => {
    const messages = [
      parseRows('||1|x', unit),
      parseRows('|1|1|', unit),
      parseStocks('board|||long|x|', unit),
      parseCutPieces('1|lid|||1|height', unit),
    ].flatMap((found) => (found.ok ? [] : found.errors.map(({ message }) => printed(message))));
    const limits = messages.filter(([low]) => low !== '');
    expect(limits.length).toBeGreaterThanOrEqual(7);
    for (const [low, high] of limits)
      for (const text of [low!, high!]) {
        const found = parseLength(text, { unit, field: '', what: '', low: 0, high: 1e4 });
        // the rows take from 1, the sheets from 20, both to 5000 mm
        const millimetres = found.ok ? found.value : NaN;
        expect(
          [1, 20].some((least) => millimetres >= least && millimetres < least + 0.026) || millimetres <= 5000,
        ).toBe(true);
      }
  });
});

test('what is shown of pieces in another unit is read back as the same pieces, to a thousandth of a millimetre', () => {
  const side = fc.integer({ min: 1000, max: 4_999_999 }).map((thousandths) => thousandths / 1000);
  const turn = fc.integer({ min: 0, max: 199_999 }).map((thousandths) => thousandths / 1000);
  const piece = fc.record({ widthMm: side, heightMm: side, count: fc.integer({ min: 1, max: 999 }), turnInMm: turn });
  const lies = fc.record({ wide: side, high: side });
  fc.assert(
    fc.property(
      fc.array(piece, { minLength: 1, maxLength: 4 }),
      lies,
      fc.constantFrom(...UNITS),
      (pieces, sheet, unit) => {
        const kept = piecesIn(encodePieces(pieces));
        expect(parseRows(showRows(kept, unit), unit)).toEqual({ ok: true, value: kept });
        const cut = tidyCutPieces(
          pieces.map(({ widthMm, heightMm, count }) => ({
            stock: 0,
            name: 'lid',
            widthMm,
            heightMm,
            count,
            grain: 'either' as const,
          })),
        );
        expect(parseCutPieces(showCutPieces(cut, unit), unit)).toEqual({ ok: true, value: cut });
        const stocks = stocksIn(
          `board~${sheet.wide + 20 > 5000 ? 5000 : Number((sheet.wide + 19).toFixed(3))}x${Math.max(20, sheet.high)}~long`,
        );
        expect(parseStocks(showStocks(stocks, unit), unit)).toEqual({ ok: true, value: stocks });
      },
    ),
  );
});

describe('lengths in words', () => {
  const limits = { field: 'wide', what: 'The width', low: 25.4, high: 254 };
  const typed = (text: string, unit: 'mm' | 'cm' | 'in') => {
    const found = parseLength(text, { ...limits, unit });
    return found.ok ? Number(found.value.toFixed(6)) : found.errors[0]!;
  };
  it('takes both limits, in whatever unit', () => {
    expect([typed('1', 'in'), typed('10', 'in'), typed(' 10 in ', 'mm')]).toEqual([25.4, 254, 254]);
    expect([typed('2.54', 'cm'), typed('25.4', 'cm'), typed('25,4 cm', 'in')]).toEqual([25.4, 254, 254]);
  });
  it('says the limits in the unit that was asked for', () => {
    // an inch is 25.4 mm
    expect(typed('11', 'in')).toMatchObject({
      field: 'wide',
      code: 'too-large',
      limits: { low: 1, high: 10, unit: 'in' },
    });
    expect(typed('1', 'cm')).toMatchObject({ code: 'too-small', limits: { low: 2.54, high: 25.4, unit: 'cm' } });
    expect(typed('', 'mm')).toMatchObject({ limits: { low: 25.4, high: 254, unit: 'mm' } });
  });
  it('reads fractions whole: nothing before them, nothing after, and no top as great as its bottom', () => {
    expect([typed('2 1/2', 'in'), typed('2-1/2', 'in'), typed('2   1 / 2', 'in'), typed('5/4', 'in')]).toEqual([
      ...[63.5, 63.5, 63.5, 31.75],
    ]);
    for (const bad of ['2 2/2', '2 3/2', '1/0', 'x 1/2', '1/2 3', '1/2/3', '5 mm 2'])
      expect(typed(bad, 'in'), bad).toHaveProperty('code');
  });
  it('shows millimetres to a tenth, centimetres to a hundredth, inches by the 32nd where they are near one', () => {
    expect([inUnit(12.345, 'mm'), inUnit(123.45, 'cm')]).toEqual(['12.3', '12.35']);
    expect([inUnit(25.4 / 32, 'in'), inUnit(25.4 * 1.5, 'in'), inUnit(254, 'in')]).toEqual(['1/32', '1 1/2', '10']);
    // 0.1 mm is 0.004 in, for which no 32nd stands
    expect(inUnit(0.1, 'in')).toBe('0.004');
    expect(inUnit(0, 'in')).toBe('0');
  });
  it('shows what was typed exactly where the rounded figure would be another', () => {
    expect([asTyped(12.345, 'mm'), asTyped(12.3, 'mm'), asTyped(123.456, 'cm')]).toEqual(['12.345', '12.3', '12.3456']);
    expect([asTyped(38.1, 'in'), asTyped(38, 'in')]).toEqual(['1 1/2', '1.49606']);
  });
  it('is a field of a plan that reads and shows itself', () => {
    const spec = lengthField({ key: 'w', what: 'The width', low: 25.4, high: 254 });
    expect(spec.parse('10', 'in', 'wide')).toEqual({ ok: true, value: 254 });
    const found = spec.parse('11', 'in', 'wide');
    expect(found.ok ? undefined : found.errors[0]).toMatchObject({ field: 'wide', limits: { low: 1, high: 10 } });
    expect(spec).toMatchObject({ kind: 'length', key: 'w', low: 25.4, high: 254, unit: 'mm' });
    expect(spec.show(254, 'in')).toBe('10');
  });
});

test('lengths in mm, cm and inches', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 1000 }),
      fc.constantFrom(...(Object.keys(MILLIMETRES) as LengthUnit[])),
      (tenths, unit) => {
        const found = parseLength(`${tenths / 10} ${unit}`, {
          unit: 'mm',
          field: 'width',
          what: 'The width',
          low: 0.01,
          high: 1e6,
        });
        expect(found.ok ? found.value : NaN).toBeCloseTo(
          Qty(tenths / 10, unit === 'in' ? 'inch' : unit).to('mm').scalar,
          9,
        );
      },
    ),
  );
});
