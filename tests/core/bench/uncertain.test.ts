import { describe, expect, it, test } from 'vitest';
import { standardDeviation } from 'simple-statistics';
import { carried, endsOf, logStandardOf, narrow, ofStep } from '../../../src/core/bench/uncertain';
import { at } from '../../../src/core/base/quantity';
import { lowDiscrepancyPoints } from '../../../src/core/base/random';

describe('what a reading leaves open', () => {
  // JCGM 100:2008, F.2.2.1: u = 0.29 δx for a display that steps by δx.
  it('is 0.29 of the step of a display', () => {
    expect(ofStep(1)).toBeCloseTo(0.29, 2);
    expect(ofStep(0.1)).toBeCloseTo(0.029, 3);
  });
});

describe('a range and its standard uncertainty', () => {
  // JCGM 100:2008, 4.3.9: a symmetric triangle of half-width a has u = a/√6.
  it('a triangle in the logarithm, there and back', () => {
    const ends = endsOf({ value: 60, standard: 6 });
    expect(Math.log(ends.high / 60)).toBeCloseTo(0.1 * Math.sqrt(6), 10);
    expect(ends.low * ends.high).toBeCloseTo(3600, 8);
    expect(logStandardOf(ends)).toBeCloseTo(0.1, 10);
  });
  test('is that of the numbers which the model draws from it', () => {
    const range = { low: 58, middle: 63, high: 69, basis: 'measured' as const };
    const points = lowDiscrepancyPoints(4000, 1);
    const drawn = Array.from(points, (point) => Math.log(at(range, point)));
    expect(standardDeviation(drawn) / logStandardOf(range)).toBeCloseTo(1, 1);
  });
  it.for([0, -1])('nothing is drawn from a range that begins at %d', (low) => {
    expect(() => logStandardOf({ low, middle: 1, high: 2 })).toThrow(RangeError);
  });
});

describe('set against what is usual', () => {
  // By hand, in logarithms: weights 1/0.1² = 100 and 1/0.2² = 25; mean (100 ln 50 + 25 ln 80)/125 = ln 54.93; u = 1/√125 = 0.0894.
  it('each counts by how sure it is', () => {
    const half = Math.exp(0.2 * Math.sqrt(6));
    const { ends, isFar } = narrow({ value: 50, standard: 5 }, { low: 80 / half, middle: 80, high: 80 * half });
    expect(isFar).toBe(false);
    expect(ends.middle).toBeCloseTo(54.93, 2);
    expect(logStandardOf(ends)).toBeCloseTo(0.0894, 4);
  });
  it('is never wider than either', () => {
    const usual = { low: 40, middle: 65, high: 110 };
    for (const standard of [0.5, 5, 20]) {
      const { ends } = narrow({ value: 62, standard }, usual);
      expect(logStandardOf(ends)).toBeLessThan(Math.min(standard / 62, logStandardOf(usual)));
    }
  });
  it('a measurement far from it stands alone, and that is said', () => {
    const { ends, isFar } = narrow({ value: 300, standard: 10 }, { low: 40, middle: 65, high: 110 });
    expect(isFar).toBe(true);
    expect(ends.middle).toBe(300);
  });
});

describe('carried through a sum', () => {
  // JCGM 100:2008, 5.1.6: for a product of powers the relative uncertainties add as squares.
  it('of a quotient as its parts’ shares', () => {
    const found = carried(([a, b]) => a! / b!, [10, 4], [0.1, 0.04]);
    expect(found).toBeCloseTo(2.5 * Math.hypot(0.01, 0.01), 4);
  });
  it('of a sum as the root of the squares', () => {
    expect(carried(([a, b]) => a! - b!, [10, 4], [3, 4])).toBeCloseTo(5, 12);
  });
});
