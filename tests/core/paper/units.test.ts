/** Conversions against a units library that knows nothing of ours. */
import fc from 'fast-check';
import Qty from 'js-quantities';
import { expect, test } from 'vitest';
import { squareMetresPerLitre } from '../../../src/core/adhesive/coverage';
import { MILLIMETRES, parseLength, type LengthUnit } from '../../../src/core/base/length-text';
import {
  basisWeightFromGrammage,
  BASIC_SHEETS,
  grammageFromBasisWeight,
  type Grade,
} from '../../../src/core/paper/paper';

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

test('pounds of a ream to grams a square metre, every grade', () => {
  for (const grade of Object.keys(BASIC_SHEETS) as Grade[]) {
    const [wide, high] = BASIC_SHEETS[grade];
    const area = Qty(wide, 'inch').mul(Qty(high, 'inch')).mul(500);
    const grammage = Qty(60, 'lb').div(area).to('g/m^2').scalar;
    expect(grammageFromBasisWeight(60, grade)).toBeCloseTo(grammage, 6);
    expect(basisWeightFromGrammage(grammage, grade)).toBeCloseTo(60, 6);
  }
});

test('the reach of a litre is that of a gallon in square feet', () => {
  for (const mils of [1, 4, 10, 25]) {
    const micrometres = Qty(mils / 1000, 'inch').to('um').scalar;
    const reach = Qty(1, 'gal')
      .div(Qty(mils / 1000, 'inch'))
      .to('ft^2').scalar;
    const perGallon = Qty(squareMetresPerLitre(micrometres), 'm^2').mul(Qty(1, 'gal').to('l').scalar).to('ft^2').scalar;
    expect(perGallon).toBeCloseTo(reach, 4);
    expect(perGallon).toBeCloseTo(1604.17 / mils, 1);
  }
});
