/** How a sheet drinks: the root of time, and what the tests of it can and cannot say. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evaporationRate } from '../../../src/core/joint/moisture';
import {
  dropDoubt,
  dropFromSorptivity,
  halfDriedAfter,
  OPEN_FACE_DRIES,
  readStain,
  sorptivityFromCobb,
  sorptivityFromDrop,
  STANDARD_DROP_SECONDS,
  uptake,
  USUAL_DROP_MICROLITRES,
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

describe('a drop of water, by the rule of thumb', () => {
  test('a slower drop is a slower sheet: four times the seconds halve the sorptivity', () => {
    expect(sorptivityFromDrop(5) / sorptivityFromDrop(20)).toBeCloseTo(2, 12);
  });
  test('60 s are ordinary writing paper: a Cobb figure of 20, between the 15 to 35 of sized papers', () => {
    expect(sorptivityFromDrop(60) * Math.sqrt(60)).toBeCloseTo(20, 12);
  });
  test('eight times the volume is twice the depth of a drop of one shape, so four times the seconds for one sheet', () => {
    expect(sorptivityFromDrop(30, 8 * USUAL_DROP_MICROLITRES)).toBeCloseTo(2 * sorptivityFromDrop(30), 12);
    expect(sorptivityFromDrop(120, 8 * USUAL_DROP_MICROLITRES)).toBeCloseTo(sorptivityFromDrop(30), 12);
    expect(sorptivityFromDrop(30, USUAL_DROP_MICROLITRES)).toBe(sorptivityFromDrop(30));
  });
  test('to 120 s as the standard (ASTM D824, scope), on to half an hour with a doubt that grows', () => {
    expect(STANDARD_DROP_SECONDS).toBe(120);
    expect(dropDoubt(1)).toBe(dropDoubt(120));
    const doubts = [120, 121, 300, 900, 1800].map(dropDoubt);
    expect(doubts).toEqual(doubts.toSorted((a, b) => a - b));
    expect(new Set(doubts).size).toBe(5);
    // sixteen times the time doubles it
    expect(dropDoubt(1800) / dropDoubt(112.5)).toBeCloseTo((1800 / 120) ** 0.25, 12);
    for (const bad of [1800.01, 0, 0.09, -5, NaN, Infinity]) expect(() => sorptivityFromDrop(bad)).toThrow(/seconds/);
    expect(() => sorptivityFromDrop(10, 0)).toThrow(/microlitres/);
  });
  test('turns round: the drop of a sorptivity is the drop it came from', () => {
    for (const seconds of [1, 8, 60, 600])
      expect(dropFromSorptivity(sorptivityFromDrop(seconds))).toBeCloseTo(seconds, 9);
    expect(dropFromSorptivity(0)).toBe(Infinity);
    expect(() => dropFromSorptivity(-1)).toThrow(/sorptivity/);
    expect(() => dropFromSorptivity(1001)).toThrow(/sorptivity/);
  });
  test('a Cobb figure has its limits too', () => {
    for (const bad of [0, -1, 1001, NaN]) expect(() => sorptivityFromCobb(bad)).toThrow(/gsm60/);
  });
});

describe('a drop and its stain', () => {
  test('0.05 ml in a stain 25 mm across is 101.9 g/m² (by hand), over √16 s', () => {
    // area π·25²/4 = 490.87 mm², so 0.05 g over it is 101.86 g/m²
    const { load, sorptivity, dried } = readStain({ seconds: 16, microlitres: 50, stainMm: 25 });
    expect(load).toBeCloseTo(101.86, 2);
    // of 101.86 some 0.055 · 16 ÷ 2 = 0.44 dry
    expect(dried).toBeCloseTo(0.44 / 101.86, 5);
    expect(sorptivity.middle).toBeCloseTo((101.86 - 0.44) / 4, 2);
    expect(sorptivity.low).toBeLessThan(sorptivity.middle);
    expect(sorptivity.high / sorptivity.middle).toBeCloseTo(1.3 * (101.86 / 101.42), 3);
  });
  test('what dries: a 50 mg drop of 8 mm loses a third of a milligram in 120 s, so drying is no reason to stop there', () => {
    const { dried } = readStain({ seconds: 120, microlitres: 50, stainMm: 8 });
    // 0.055 g/m²s · 50.27 mm² · 120 s = 0.332 mg if all of it were open from the start
    expect(2 * dried * 50).toBeCloseTo(0.332, 3);
    // by the rule of open water itself, at 20 °C and 50 % in still air
    expect(evaporationRate(20, 50) / OPEN_FACE_DRIES).toBeCloseTo(1, 1);
  });
  test('ends where half has dried, sooner for a small drop in a wide stain', () => {
    const small = { microlitres: 10, stainMm: 20 };
    const ends = halfDriedAfter(small);
    expect(readStain({ ...small, seconds: ends }).dried).toBeCloseTo(0.5, 12);
    // 10 mg ÷ (0.055 mg/s per 1000 mm² · 314.16 mm²)
    expect(ends).toBeCloseTo(10 / (0.055e-3 * 314.16), 0);
    expect(halfDriedAfter({ microlitres: 50, stainMm: 20 })).toBeCloseTo(5 * ends, 6);
  });
  test('what cannot be throws', () => {
    const good = { seconds: 10, microlitres: 50, stainMm: 20 };
    for (const seconds of [0, 1801, NaN]) expect(() => readStain({ ...good, seconds })).toThrow(/seconds/);
    expect(() => readStain({ ...good, microlitres: 0 })).toThrow(/microlitres/);
    expect(() => readStain({ ...good, stainMm: -1 })).toThrow(/stainMm/);
  });
});
