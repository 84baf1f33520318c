/** Lengths as they are typed. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inUnit, MILLIMETRES, parseLength, type LengthUnit } from '../../../src/core/base/length-text';

const read = (text: string, unit: LengthUnit) =>
  parseLength(text, { unit, field: 'width', what: 'The width', low: 1, high: 3000 });

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
