import { describe, expect, it, test } from 'vitest';
import { standardDeviation } from 'simple-statistics';
import { solidsOfSheet, solidsOfSmear } from '../../../src/core/bench/solids';
import { seededUniform } from '../../../src/core/base/random';

const SMEAR = { dish: 1.2, wet: 6.2, dry: 3.9, stepGrams: 0.1 };

describe('a smear weighed wet and dry', () => {
  // By hand: (3.9 − 1.2) ÷ (6.2 − 1.2) = 2.7 ÷ 5 = 0.54, as ISO 3251 has it: what stays ÷ what was weighed in.
  it('what stays over what was spread', () => {
    expect(solidsOfSmear(SMEAR).value).toBeCloseTo(0.54, 12);
  });
  // By hand, u = 0.1/√12 = 0.0289 g: ∂s/∂dry = 0.2, ∂s/∂wet = −0.108, ∂s/∂dish = −0.092; root of squares 0.245 · 0.0289 = 0.00708; with 0.006 kept back, 0.0093.
  it('uncertain by its three readings', () => {
    expect(solidsOfSmear(SMEAR).standard).toBeCloseTo(0.0093, 4);
  });
  test('as much as ten thousand invented readings scatter', () => {
    const uniform = seededUniform(7);
    const read = (grams: number) => grams + (uniform() - 0.5) * SMEAR.stepGrams;
    const drawn = Array.from({ length: 10_000 }, () => {
      const [dish, wet, dry] = [read(SMEAR.dish), read(SMEAR.wet), read(SMEAR.dry)];
      return (dry - dish) / (wet - dish);
    });
    const byReadings = Math.sqrt(solidsOfSmear(SMEAR).standard ** 2 - 0.006 ** 2);
    expect(standardDeviation(drawn) / byReadings).toBeCloseTo(1, 1);
  });
  it.for([
    ['dry not lighter than wet', { dry: 6.2 }],
    ['nothing left', { dry: 1.2 }],
    ['a scale without steps', { stepGrams: 0 }],
  ] as const)('throws on %s', ([, change]) => {
    expect(() => solidsOfSmear({ ...SMEAR, ...change })).toThrow(RangeError);
  });
});

it('a data sheet is kept to one in a hundred', () => {
  const { value, standard } = solidsOfSheet(54);
  expect(value).toBe(0.54);
  expect(standard).toBeCloseTo(0.01 / Math.sqrt(3), 12);
  expect(() => solidsOfSheet(0)).toThrow(RangeError);
});
