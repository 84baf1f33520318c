/** Numbers as a reader should see them, and as people type them. */
import fc from 'fast-check';
import { describe, expect, test, it } from 'vitest';
import {
  chanceInTen,
  duration,
  durationSpan,
  figure,
  keepUnits,
  lowerFirst,
  span,
  withUnit,
} from '../../../src/core/base/format';
import { parseNumber } from '../../../src/core/base/number-text';

const THIN = '\u202f';
const HARD = '\u00a0';

describe('a figure has as many digits as it deserves', () => {
  test.for([
    [0, 2, '0'],
    [-0, 2, '0'],
    [7, 2, '7'],
    [0.07, 2, '0.07'],
    [0.0714, 2, '0.071'],
    [3.14159, 2, '3.1'],
    [3.04, 2, '3'],
    [3.14159, 3, '3.14'],
    [3, 3, '3.00'],
    [75.194607, 2, '75'],
    [75.194607, 4, '75.19'],
    [99.9, 2, '100'],
    [9.96, 2, '10'],
    [0.999, 2, '1'],
    [1234, 2, `1${THIN}200`],
    [37480, 3, `37${THIN}500`],
    [1234567, 2, `1${THIN}200${THIN}000`],
    [-1234, 2, `-1${THIN}200`],
    [-0.5, 2, '-0.5'],
    [1000.4, 6, `1${THIN}000.40`],
  ] as const)('%f to %i digits is %s', ([value, digits, text]) => {
    expect(figure(value, digits)).toBe(text);
  });
  test('what is no number says so', () => {
    for (const odd of [NaN, Infinity, -Infinity]) expect(figure(odd)).toBe('not known');
  });
  test('read back, it is the number to those digits, without exponents', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 1e12, noNaN: true }), fc.integer({ min: 1, max: 6 }), (value, digits) => {
        const text = figure(value, digits);
        expect(text).toMatch(/^\d{1,3}(\u202f\d{3})*(\.\d+)?$/);
        const back = Number(text.replaceAll(THIN, ''));
        expect(Math.abs(back / value - 1)).toBeLessThanOrEqual(0.5 * 10 ** (1 - digits) * 1.0001);
      }),
    );
  });
  test.for([1e-150, 5e-324])('%d, too small to write out, is still a number', (value) => {
    expect(figure(value)).toMatch(/^0\.0+$|^0$/);
  });
});

describe('a unit never stands alone on the next line', () => {
  test('one figure, or two with the unit once', () => {
    expect(withUnit(80, 'g/m²')).toBe(`80${HARD}g/m²`);
    expect(span(50, 110, 's')).toBe(`50 to 110${HARD}s`);
    expect(span(50.1, 50.2, 's')).toBe(`50${HARD}s`);
    expect(span(NaN, 3, 's')).not.toMatch(/NaN/);
  });
});

describe('time as people say it', () => {
  test.for([
    [0, `under 1${HARD}s`],
    [0.99, `under 1${HARD}s`],
    [1, `1${HARD}s`],
    [8.4, `8${HARD}s`],
    [9.6, `10${HARD}s`],
    [12, `10${HARD}s`],
    [58, `60${HARD}s`],
    [119, `2${HARD}min`],
    [120, `2${HARD}min`],
    [170, `3${HARD}min`],
    [1130, `19${HARD}min`],
    [1500, `25${HARD}min`],
    [1920, `30${HARD}min`],
    [3600, 'an hour or more'],
    [86_400, 'an hour or more'],
  ] as const)('%f s: %s', ([seconds, words]) => expect(duration(seconds)).toBe(words));
  test.for([
    [62, `60${HARD}s`],
    [66, `70${HARD}s`],
    [104, `100${HARD}s`],
    [105, `2${HARD}min`],
  ] as const)('%f s: %s', ([seconds, words]) => expect(duration(seconds)).toBe(words));
  test.for([
    [50, 98, `50 to 100${HARD}s`],
    [50, 110, `50${HARD}s to 2${HARD}min`],
    [40, 180, `40${HARD}s to 3${HARD}min`],
    [120, 300, `2 to 5${HARD}min`],
    [52, 53, `50 to 55${HARD}s`],
    [51, 52, `50${HARD}s`],
    [0.2, 3, `under 1${HARD}s to 3${HARD}s`],
    [0.1, 0.2, `under 1${HARD}s`],
    [1800, 5000, `30${HARD}min or more`],
    [3600, 3600, 'an hour or more'],
  ] as const)('%f to %f s: %s', ([low, high, words]) => expect(durationSpan(low, high)).toBe(words));
  test('any span has words and no nonsense', () => {
    const seconds = fc.double({ min: 0, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(seconds, seconds, (a, b) => {
        const words = durationSpan(Math.min(a, b), Math.max(a, b));
        expect(words).toMatch(/\S/);
        expect(words).not.toMatch(/NaN|Infinity|undefined|e\+/);
      }),
    );
    for (const odd of [NaN, Infinity]) expect(duration(odd)).not.toMatch(/NaN|Infinity/);
  });
});

describe('a chance does not overclaim', () => {
  test.for([
    [0, 'less than 1 in 10'],
    [0.05, 'less than 1 in 10'],
    [0.06, 'about 1 in 10'],
    [0.5, 'about 5 in 10'],
    [0.68, 'about 7 in 10'],
    [0.94, 'about 9 in 10'],
    [0.95, 'more than 9 in 10'],
    [1, 'more than 9 in 10'],
  ] as const)('%f is %s', ([chance, words]) => expect(chanceInTen(chance)).toBe(words));
});

describe('numbers as people type them', () => {
  test.for([
    ['80', 80],
    [' 80 ', 80],
    ['0,097', 0.097],
    ['2.5', 2.5],
    ['.5', 0.5],
    [',5', 0.5],
    ['5.', 5],
    ['1 200', 1200],
    ['1\u202f200,5', 1200.5],
    ['1\u00a0200', 1200],
    ['1\u2009200', 1200],
    ['+3', 3],
    ['-3', -3],
    ['\u22123', -3],
    ['007', 7],
  ] as const)('"%s" is %f', ([text, value]) => expect(parseNumber(text)).toBe(value));
  test.for([
    '',
    ' ',
    'abc',
    '80 g',
    '1e9',
    '0x10',
    '1,2,3',
    '1.2.3',
    '1,234.5',
    '--3',
    '3-',
    '½',
    '٣',
    'NaN',
    'Infinity',
    '.',
    ',',
    '-',
  ])('"%s" is none', (text) => expect(parseNumber(text)).toBeUndefined());
  test('any figure, written with a point or a comma, is read back', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e9, max: 1e9 }), fc.constantFrom('.', ','), fc.nat(999), (whole, mark, part) => {
        const text = `${whole}${mark}${String(part).padStart(3, '0')}`;
        expect(parseNumber(text)).toBe(Number(`${whole}.${String(part).padStart(3, '0')}`));
      }),
    );
  });
  test('what we show can be typed back', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e9, noNaN: true }), (value) => {
        expect(parseNumber(figure(value, 6))).toBeCloseTo(Number(value.toPrecision(6)), 6);
      }),
    );
  });
  test('any text gives a number or nothing', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const value = parseNumber(text);
        expect(value === undefined || Number.isFinite(value)).toBe(true);
      }),
    );
    expect(parseNumber('9'.repeat(400))).toBeUndefined();
  });
});

describe('numbers as they are shown', () => {
  it('shows no more digits than asked, and no noughts that say nothing', () => {
    expect([figure(0), figure(2.0004), figure(100), figure(0.1 + 0.2)]).toEqual(['0', '2', '100', '0.3']);
    expect([figure(2, 3), figure(NaN), figure(-0.5)]).toEqual(['2.00', 'not known', '-0.5']);
  });
  it('says seconds, minutes and hours at their turning points', () => {
    const said = (seconds: number) => duration(seconds).replace('\u00a0', ' ');
    expect([0.9, 1, 9.4, 10, 12, 104, 105, 3599, 3600].map(said)).toEqual([
      ...['under 1 s', '1 s', '9 s', '10 s', '10 s', '100 s', '2 min', '60 min', 'an hour or more'],
    ]);
    const span = (low: number, high: number) => durationSpan(low, high).replaceAll('\u00a0', ' ');
    expect(span(50, 110)).toBe('50 s to 2 min');
    expect(span(0.5, 30)).toBe('under 1 s to 30 s');
    expect(span(40, 180)).toBe('40 s to 3 min');
    expect(span(600, 3600)).toBe('10 min or more');
    expect(span(3600, 7200)).toBe('an hour or more');
  });
});

const NO_BREAK = '\u00a0';

test.each([
  ['cut 12 mm off', `cut 12${NO_BREAK}mm off`],
  ['3 of 148 × 210 × 12 mm, twice', `3 of 148${NO_BREAK}×${NO_BREAK}210${NO_BREAK}×${NO_BREAK}12${NO_BREAK}mm, twice`],
  ['4 × piece 1', '4 × piece 1'],
])('"%s" holds its numbers together', (said, held) => {
  expect(keepUnits(said)).toBe(held);
});

test('a first capital goes, that of an abbreviation stays', () => {
  expect(
    ['White PVA dispersion', 'PVA', 'EVA dispersion', 'A thin coat', 'A4 card', 'Écru', ''].map(lowerFirst),
  ).toEqual(['white PVA dispersion', 'PVA', 'EVA dispersion', 'a thin coat', 'A4 card', 'écru', '']);
});
