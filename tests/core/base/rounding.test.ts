/** Amounts rounded to what a scale or a jug shows. */
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import {
  jugStep,
  roundUpForJug,
  roundUpToBuy,
  inTeaspoons,
  roundMix,
  roundToStep,
} from '../../../src/core/base/rounding';

describe('a jug', () => {
  it('has the steps of a jug (the module’s own, common practice)', () => {
    expect([49, 50, 499, 500, 1999, 2000].map(jugStep)).toEqual([1, 5, 5, 10, 10, 50]);
    expect([0, 1, 5, 5.1, 42, 101, 850, 851].map(roundUpForJug)).toEqual([0, 5, 5, 10, 45, 105, 850, 860]);
    // a twentieth is 50, 500.6, 49.95 and 5 million ml
    expect([1001, 10_012, 999, 100_000_001].map(roundUpForJug)).toEqual([1050, 10_500, 1000, 105_000_000]);
  });
});

describe('rounding', () => {
  test('4.7 g on a scale of whole grams is 5 g, and the strength says so', () => {
    const made = roundMix({ powderGrams: 4.7, waterMillilitres: 95.3, scaleStep: 1 });
    expect(made.solidsGrams).toBe(5);
    expect(made.waterMillilitres).toBe(95);
    expect(made.percent).toBe(5);
    expect(made.wanted).toBeCloseTo(4.7, 10);
    expect(made.shift).toBeCloseTo(5 / 4.7 - 1, 10);
  });
  test('a pinch is never rounded away', () => {
    expect(roundMix({ powderGrams: 0.2, waterMillilitres: 20, scaleStep: 1 }).solidsGrams).toBe(1);
  });
  test('steps of a tenth leave no tail', () => {
    expect(roundToStep(0.1 + 0.2, 0.1)).toBe(0.3);
    expect(roundToStep(7.349999, 0.05)).toBe(7.35);
  });
  test('a spoon is a stated estimate round what was asked', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 60, noNaN: true }), (grams) => {
        const { teaspoons, low, high } = inTeaspoons(grams, 'methylcellulose');
        expect((teaspoons * 4) % 1).toBe(0);
        expect(low).toBeLessThan(grams);
        expect(high).toBeGreaterThan(grams);
      }),
    );
  });
});

describe('what to ask for in a shop', () => {
  // round figures, as jars and bags are filled; common practice, no source
  it.each([
    [0, 10],
    [2.7, 10],
    [10, 10],
    [91.8, 100],
    [100, 100],
    [101, 150],
    [330, 400],
    [1450, 1500],
    [8100, 10000],
  ])('%d g is bought as %d g', (grams, bought) => {
    expect(roundUpToBuy(grams)).toBe(bought);
  });
});
