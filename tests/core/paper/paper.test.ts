/** Weight, thickness and weighing, against definitions that stand outside this project. */
import fc from 'fast-check';
import { describe, expect, test, it } from 'vitest';
import {
  apparentDensity,
  BASIC_SHEETS,
  basisWeightFromGrammage,
  grammageFromBasisWeight,
  grammageFromWeighing,
  porosity,
  poreVolume,
  type Grade,
  densityIsPossible,
  grammageFromThousand,
  thousandFromGrammage,
} from '../../../src/core/paper/paper';
import Qty from 'js-quantities';
/**
 * The paper weights as GNU units 2.22 states them ("lb / 17 inch 22 inch ream"), retold line by line
 * from its definitions; none of it is read from the code under test.
 */
const GNU_UNITS = `
  bond, writing, ledger, copy:               17   inch  22   inch  ream
  book, text, offset:                        25   inch  38   inch  ream
  cover:                                     20   inch  26   inch  ream
  index:                                     25.5 inch  30.5 inch  ream
  tag, newsprint, tissue, wrapping, glassine: 24  inch  36   inch  ream
  bristol:                                   22.5 inch  28.5 inch  ream
  blotting:                                  19   inch  24   inch  ream
  blanks:                                    22   inch  28   inch  ream`;

const POUND_KG = 0.45359237;

// exact, international yard and pound agreement of 1959
const INCH_M = 0.0254;

// exact, the same

const DEFINED = GNU_UNITS.trim()
  .split('\n')
  .flatMap((line) => {
    const [names = '', sizes = ''] = line.split(':');
    const [wide = 0, high = 0] = sizes.split('inch').map(Number);
    return names.split(',').map((name) => [name.trim() as Grade, wide, high] as const);
  });

const anyGrade = fc.constantFrom(...DEFINED.map(([grade]) => grade));

const weight = fc.double({ min: 1, max: 1000, noNaN: true });

describe('basis weight by grade, as GNU units defines it', () => {
  test('every grade is defined, and no other', () => {
    expect(Object.keys(BASIC_SHEETS).sort()).toEqual(DEFINED.map(([grade]) => grade).sort());
  });
  test.for(DEFINED)('%s: %f × %f in', ([grade, wide, high]) => {
    const gramsPerSquareMetre = (POUND_KG * 1000) / (500 * wide * INCH_M * high * INCH_M);
    expect(grammageFromBasisWeight(1, grade)).toBeCloseTo(gramsPerSquareMetre, 12);
    expect(grammageFromBasisWeight(100, grade) / (100 * gramsPerSquareMetre)).toBeCloseTo(1, 13);
  });
  test('there and back gives the same weight', () => {
    fc.assert(
      fc.property(anyGrade, weight, (grade, pounds) => {
        const back = basisWeightFromGrammage(grammageFromBasisWeight(pounds, grade), grade);
        expect(Math.abs(back / pounds - 1)).toBeLessThan(1e-12);
      }),
    );
  });
  test.for([0, -1, NaN, Infinity])('%d pounds or grams throw', (value) => {
    expect(() => grammageFromBasisWeight(value, 'bond')).toThrow(RangeError);
    expect(() => basisWeightFromGrammage(value, 'bond')).toThrow(RangeError);
  });
  test.for(['wallpaper', 'toString', '__proto__', '', 'Bond'])(
    'an unknown grade "%s" throws and says which',
    (grade) => {
      expect(() => grammageFromBasisWeight(20, grade as Grade)).toThrow(/grade must be one of bond, /);
    },
  );
});

describe('thickness (ISO 534: density is mass per area over thickness)', () => {
  test('a dense sheet leaves few pores and a lofty one many', () => {
    // by hand: 150 g/m² at 100 µm is 1.5 g/cm³, cellulose itself: no pores; 75 at 100 is half full
    expect(porosity(150, 100)).toBeCloseTo(0, 12);
    expect(porosity(75, 100)).toBeCloseTo(0.5, 12);
    expect(poreVolume(75, 100)).toBeCloseTo(50, 12);
  });
  test('pores and fibre fill the sheet: pore + grammage ÷ 1.5 is the caliper', () => {
    fc.assert(
      fc.property(weight, fc.double({ min: 0.05, max: 1.49, noNaN: true }), (gsm, density) => {
        const micrometres = gsm / density;
        expect(poreVolume(gsm, micrometres) + gsm / 1.5).toBeCloseTo(micrometres, 6);
      }),
    );
  });
  test('nothing is denser than the fibre, and nothing has no thickness', () => {
    expect(() => porosity(151, 100)).toThrow(/apparent density/);
    expect(() => poreVolume(151, 100)).toThrow(RangeError);
    for (const bad of [0, -10, NaN, Infinity]) {
      expect(() => apparentDensity(80, bad)).toThrow(RangeError);
      expect(() => apparentDensity(bad, 80)).toThrow(RangeError);
    }
  });
});

describe('weighing your own', () => {
  const square = { widthMm: 100, heightMm: 100, scaleStepGrams: 1, cutMm: 0 };
  test('four times the sheets quarter what the scale leaves uncertain', () => {
    const one = grammageFromWeighing({ ...square, grams: 8, sheets: 10 });
    const four = grammageFromWeighing({ ...square, grams: 32, sheets: 40 });
    expect(four.value).toBeCloseTo(one.value, 10);
    expect(one.uncertainty / four.uncertainty).toBeCloseTo(4, 10);
  });
  test('with an uncertain cut as well, a stack helps less and less', () => {
    const cut = { ...square, cutMm: 0.5 };
    const share = (sheets: number) => grammageFromWeighing({ ...cut, grams: 0.8 * sheets, sheets }).uncertainty / 80;
    expect(share(10)).toBeGreaterThan(share(40));
    // the cut alone: k = 2, √2 · (0.5 mm ÷ √3) ÷ 100 mm
    expect(share(1_000_000)).toBeCloseTo((2 * Math.SQRT2 * 0.5) / Math.sqrt(3) / 100, 6);
  });
  test('the ± figure is twice the standard uncertainty (JCGM 100, coverage factor 2)', () => {
    const { standard, uncertainty } = grammageFromWeighing({ grams: 5, widthMm: 210, heightMm: 297 });
    expect(uncertainty).toBeCloseTo(2 * standard, 12);
  });
  test('one A4 sheet of 80 g/m² weighs 4.99 g (ISO 216: 210 × 297 mm), and a 1 g scale hardly tells', () => {
    const { value, uncertainty } = grammageFromWeighing({ grams: 4.9896, widthMm: 210, heightMm: 297 });
    expect(value).toBeCloseTo(80, 9);
    expect(uncertainty).toBeGreaterThan(10);
  });
  test('a finer scale never leaves more uncertain, and every answer is a number', () => {
    const positive = (max: number) => fc.double({ min: 0.01, max, noNaN: true });
    fc.assert(
      fc.property(positive(1000), positive(2000), positive(2000), positive(10), (grams, widthMm, heightMm, step) => {
        const coarse = grammageFromWeighing({ grams, widthMm, heightMm, scaleStepGrams: step });
        const fine = grammageFromWeighing({ grams, widthMm, heightMm, scaleStepGrams: step / 10 });
        expect(Number.isFinite(coarse.uncertainty)).toBe(true);
        expect(fine.uncertainty).toBeLessThanOrEqual(coarse.uncertainty);
      }),
    );
  });
  test.for(['grams', 'widthMm', 'heightMm', 'sheets', 'scaleStepGrams'] as const)('%s must be above 0', (field) => {
    for (const bad of [0, -1, NaN, Infinity])
      expect(() => grammageFromWeighing({ ...square, grams: 8, [field]: bad })).toThrow(new RegExp(field));
  });
  test('a cut cannot be out by less than nothing or by more than 10 mm', () => {
    expect(() => grammageFromWeighing({ ...square, grams: 8, cutMm: -0.1 })).toThrow(/cutMm/);
    expect(() => grammageFromWeighing({ ...square, grams: 8, cutMm: 11 })).toThrow(/cutMm/);
  });
});

describe('sheets that cannot be', () => {
  it('refuses sheets and weights that are none', () => {
    for (const bad of [0, -1, NaN]) {
      expect(() => grammageFromThousand(bad, 788, 1091)).toThrow(/kilograms/);
      expect(() => grammageFromThousand(70, bad, 1091)).toThrow(/widthMm/);
      expect(() => grammageFromThousand(70, 788, bad)).toThrow(/heightMm/);
      expect(() => thousandFromGrammage(bad)).toThrow(/gsm/);
      expect(() => thousandFromGrammage(80, bad)).toThrow(/widthMm/);
    }
  });
  it('takes a density up to that of cellulose itself', () => {
    // published: 1.5 g/cm³, so 150 g/m² cannot be thinner than 100 µm
    expect(densityIsPossible(150, 100)).toBe(true);
    expect(densityIsPossible(150, 99)).toBe(false);
  });
});

test('pounds of a ream to grams a square metre, every grade', () => {
  for (const grade of Object.keys(BASIC_SHEETS) as Grade[]) {
    const [wide, high] = BASIC_SHEETS[grade];
    const area = Qty(wide, 'inch').mul(Qty(high, 'inch')).mul(500);
    const grammage = Qty(60, 'lb').div(area).to('g/m^2').scalar;
    expect(grammageFromBasisWeight(60, grade)).toBeCloseTo(grammage, 6);
    expect(basisWeightFromGrammage(grammage, grade)).toBeCloseTo(60, 6);
  }
});
