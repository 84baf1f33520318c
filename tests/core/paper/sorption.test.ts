/** How a sheet drinks: the root of time, and what the tests of it can and cannot say. */
import fc from 'fast-check';
import { describe, expect, test, it } from 'vitest';
import {
  LONGEST_DROP_SECONDS,
  sorptivityFromCobb,
  sorptivityFromDrop,
  uptake,
  dropFromSorptivity,
} from '../../../src/core/paper/sorption';

const sorptivity = fc.double({ min: 0.1, max: 60, noNaN: true });
const seconds = fc.double({ min: 0.01, max: 3600, noNaN: true });

describe('uptake goes with the root of time (Lucas–Washburn)', () => {
  test('four times as long takes in twice as much, whatever the sheet', () => {
    fc.assert(
      fc.property(sorptivity, seconds, (s, t) => {
        expect(uptake({ sorptivity: s, seconds: 4 * t }) / uptake({ sorptivity: s, seconds: t })).toBeCloseTo(2, 10);
      }),
    );
  });
  test('a Cobb figure gives itself back after 60 s', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 400, noNaN: true }), (cobb) => {
        expect(uptake({ sorptivity: sorptivityFromCobb(cobb), seconds: 60 }) / cobb).toBeCloseTo(1, 12);
      }),
    );
  });
  test('a sheet never takes in more than it can hold', () => {
    expect(uptake({ sorptivity: 10, seconds: 100, capacity: 30 })).toBe(30); // 10·√100 = 100, by hand
    expect(uptake({ sorptivity: 10, seconds: 100, capacity: 300 })).toBeCloseTo(100, 12);
    expect(uptake({ sorptivity: 10, seconds: 100, mobility: 0.25 })).toBeCloseTo(25, 12);
    expect(uptake({ sorptivity: 10, seconds: 0 })).toBe(0);
  });
  test('values that no sheet can have throw', () => {
    expect(() => uptake({ sorptivity: -1, seconds: 1 })).toThrow(/sorptivity/);
    expect(() => uptake({ sorptivity: 1, seconds: -1 })).toThrow(/seconds/);
    expect(() => uptake({ sorptivity: 1, seconds: 1, mobility: 1.1 })).toThrow(/mobility/);
    expect(() => uptake({ sorptivity: NaN, seconds: 1 })).toThrow(RangeError);
  });
});

describe('a drop of water', () => {
  test('a slower drop is a slower sheet: four times the seconds halve the sorptivity', () => {
    expect(sorptivityFromDrop(5) / sorptivityFromDrop(20)).toBeCloseTo(2, 12);
  });
  test('a measured stain counts: 0.05 ml in a stain 25 mm across is 101.9 g/m² (by hand)', () => {
    // area π·25²/4 = 490.87 mm², so 0.05 g over it is 101.86 g/m²; over √16 s that is 25.46
    expect(sorptivityFromDrop(16, { dropMillilitres: 0.05, stainMm: 25 })).toBeCloseTo(25.465, 2);
  });
  test('past 120 s a drop says nothing (ASTM D824, scope), nor does one of no time', () => {
    expect(LONGEST_DROP_SECONDS).toBe(120);
    expect(sorptivityFromDrop(120)).toBeGreaterThan(0);
    for (const bad of [120.01, 0, 0.09, -5, NaN, Infinity]) expect(() => sorptivityFromDrop(bad)).toThrow(/seconds/);
    expect(() => sorptivityFromDrop(10, { dropMillilitres: 0, stainMm: 20 })).toThrow(/dropMillilitres/);
    expect(() => sorptivityFromDrop(10, { dropMillilitres: 0.05, stainMm: -1 })).toThrow(/stainMm/);
  });
  test('a Cobb figure has its limits too', () => {
    for (const bad of [0, -1, 1001, NaN]) expect(() => sorptivityFromCobb(bad)).toThrow(/gsm60/);
  });
});

describe('drops and what they say', () => {
  it('takes what a stain holds only where both drop and stain were measured', () => {
    // 0.05 ml on a spot of 10 mm: 0.05 g / 78.54 mm² is 636.6 g/m², over √25
    const measured = { dropMillilitres: 0.05, stainMm: 10 };
    expect(sorptivityFromDrop(25, measured)).toBeCloseTo(0.05 / (Math.PI * 25e-6) / 5, 6);
    const ordinary = sorptivityFromDrop(25);
    expect(sorptivityFromDrop(25, { dropMillilitres: 0.05 })).toBe(ordinary);
    expect(sorptivityFromDrop(25, { stainMm: 10 })).toBe(ordinary);
  });
  it('turns round: the drop of a sorptivity is the drop it came from', () => {
    for (const seconds of [1, 8, 60]) expect(dropFromSorptivity(sorptivityFromDrop(seconds))).toBeCloseTo(seconds, 9);
    expect(dropFromSorptivity(0)).toBe(Infinity);
    expect(() => dropFromSorptivity(-1)).toThrow(/sorptivity/);
    expect(() => dropFromSorptivity(1001)).toThrow(/sorptivity/);
  });
});
