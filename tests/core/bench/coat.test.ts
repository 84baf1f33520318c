import { describe, expect, it, test } from 'vitest';
import { mean, sampleStandardDeviation } from 'simple-statistics';
import { coatOfSpoon, coatOfWeighings, HAND_SPREAD } from '../../../src/core/bench/coat';
import { OPEN_FACE_DRIES } from '../../../src/core/paper/sorption';

const A5 = { widthMm: 148, heightMm: 210, stepGrams: 0.1, seconds: 0 };

describe('boards weighed before and after', () => {
  // By hand: 2 g on 200 × 250 mm, which is 0.05 m², is 40 g/m².
  it('what was gained over the area', () => {
    const { value } = coatOfWeighings({ ...A5, before: [41], after: [43], widthMm: 200, heightMm: 250 });
    expect(value).toBeCloseTo(40, 10);
  });
  it('with what dried on the way put back', () => {
    const at = (seconds: number) => coatOfWeighings({ ...A5, before: [41], after: [43], seconds });
    expect(at(30).value - at(0).value).toBeCloseTo(30 * OPEN_FACE_DRIES, 10);
    expect(at(30).standard).toBeGreaterThan(at(0).standard);
  });
  test('of several boards the mean, and how they differ tells of the next', () => {
    const gained = [1.9, 2.2, 1.7, 2.1, 1.8, 2.3, 2, 1.9, 2.1, 2];
    const before = gained.map(() => 41);
    const area = (148 * 210) / 1e6;
    const coats = gained.map((grams) => grams / area);
    const found = coatOfWeighings({ ...A5, before, after: gained.map((grams) => 41 + grams), stepGrams: 0.001 });
    expect(found.value).toBeCloseTo(mean(coats), 8);
    // mostly by the coats themselves: simple-statistics gives their sample standard deviation
    const spread = Math.sqrt((9 * sampleStandardDeviation(coats) ** 2 + 2 * (HAND_SPREAD * found.value) ** 2) / 11);
    expect(found.standard / (spread * Math.sqrt(1.1))).toBeCloseTo(1, 2);
  });
  it('one board leaves the spread of the hand open, and three less of it', () => {
    const one = coatOfWeighings({ ...A5, before: [41], after: [43] });
    const three = coatOfWeighings({ ...A5, before: [41, 41, 41], after: [43, 43, 43] });
    expect(three.standard).toBeLessThan(one.standard * 0.8);
  });
  it('a coarse scale is what is uncertain on a small board', () => {
    const at = (stepGrams: number) => coatOfWeighings({ ...A5, before: [41], after: [43], stepGrams }).standard;
    // by hand: 1 g/√12·√2 ÷ 0.03108 m² = 13.1 g/m²
    expect(Math.sqrt(at(1) ** 2 - at(0.001) ** 2)).toBeCloseTo(13.1, 1);
  });
  it.for([
    ['no board', { before: [], after: [] }],
    ['one reading missing', { before: [41, 41], after: [43] }],
    ['a board that became lighter', { before: [43], after: [41] }],
    ['no area', { widthMm: 0 }],
    ['a scale without steps', { stepGrams: 0 }],
  ] as const)('throws on %s', ([, change]) => {
    expect(() => coatOfWeighings({ ...A5, before: [41], after: [43], ...change })).toThrow(RangeError);
  });
});

describe('a spoon, without scales', () => {
  // By hand: 5 ml of 1.08 g/ml over 300 × 300 mm is 5.4 g on 0.09 m², 60 g/m².
  it('what it held over what it covered', () => {
    const { value, standard } = coatOfSpoon({ millilitres: 5, density: 1.08, widthMm: 300, heightMm: 300 });
    expect(value).toBeCloseTo(60, 10);
    expect(standard / value).toBeGreaterThan(0.15);
    expect(standard / value).toBeLessThan(0.25);
  });
  it('throws on nothing spread', () => {
    expect(() => coatOfSpoon({ millilitres: 0, density: 1, widthMm: 100, heightMm: 100 })).toThrow(RangeError);
  });
});
