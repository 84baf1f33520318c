/** What goes into the pot comes out of it. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gramsOf, mix, type Part } from '../../../src/core/adhesive/mixture';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const part: fc.Arbitrary<Part> = fc.oneof(
  fc.record({ grams: number(0.001, 1e4), solids: number(0, 1), density: number(0.6, 3) }),
  fc.record({ millilitres: number(0.001, 1e4), solids: number(0, 1), density: number(0.6, 3) }),
);
const parts = fc.array(part, { minLength: 1, maxLength: 8 });

/** Mass of a part, said again here: grams as they are, millilitres by their density. */
const massOf = (one: Part) => one.grams ?? one.millilitres! * one.density;
const near = (ours: number, theirs: number) =>
  expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(1e-12 * Math.max(1, Math.abs(theirs)));

describe('mass balance', () => {
  test('mass in is mass out, and it is solids and water and nothing else', () => {
    fc.assert(
      fc.property(parts, (pot) => {
        const whole = mix(pot);
        near(
          whole.mass,
          pot.reduce((sum, one) => sum + massOf(one), 0),
        );
        near(whole.solids + whole.water, whole.mass);
        near(
          whole.solids,
          pot.reduce((sum, one) => sum + massOf(one) * one.solids, 0),
        );
        near(whole.solidsFraction * whole.mass, whole.solids);
        near(whole.density * whole.volume, whole.mass);
      }),
    );
  });
  test('a mix lies between its parts, in solids and in density', () => {
    fc.assert(
      fc.property(parts, (pot) => {
        const { solidsFraction, density } = mix(pot);
        const within = (value: number, all: number[]) => {
          expect(value).toBeGreaterThanOrEqual(Math.min(...all) - 1e-12);
          expect(value).toBeLessThanOrEqual(Math.max(...all) + 1e-12);
        };
        within(
          solidsFraction,
          pot.map((one) => one.solids),
        );
        within(
          density,
          pot.map((one) => one.density),
        );
      }),
    );
  });
  test('the same amount by mass or by volume gives the same mix', () => {
    fc.assert(
      fc.property(number(0.01, 1000), number(0, 1), number(0.6, 3), (grams, solids, density) => {
        const byMass = mix([{ grams, solids, density }]);
        const byVolume = mix([{ millilitres: grams / density, solids, density }]);
        expect(byVolume.mass / byMass.mass).toBeCloseTo(1, 12);
        expect(byVolume.volume / byMass.volume).toBeCloseTo(1, 12);
      }),
    );
  });
  test('parts by volume differ from parts by mass where densities do (by hand)', () => {
    // 1:1 of 1.2 g/ml at 50 % and water: by mass 25 %; by volume (1.2·0.5)/(1.2+1) = 27.27 %
    const glue = { solids: 0.5, density: 1.2 };
    const water = { solids: 0, density: 1 };
    expect(
      mix([
        { ...glue, grams: 1 },
        { ...water, grams: 1 },
      ]).solidsFraction,
    ).toBeCloseTo(0.25, 12);
    expect(
      mix([
        { ...glue, millilitres: 1 },
        { ...water, millilitres: 1 },
      ]).solidsFraction,
    ).toBeCloseTo(0.6 / 2.2, 12);
  });
});

test('what is no part, or no mix, throws', () => {
  const sound = { solids: 0.5, density: 1 };
  expect(() => mix([])).toThrow(/whole mix/);
  expect(() => mix([{ ...sound, grams: 0 }])).toThrow(/whole mix/);
  expect(() => gramsOf({ ...sound, grams: -1 })).toThrow(/amount/);
  expect(() => gramsOf({ ...sound, grams: NaN })).toThrow(/amount/);
  expect(() => gramsOf({ ...sound, density: 0, grams: 1 })).toThrow(/density/);
  expect(() => gramsOf({ ...sound, solids: 1.01, grams: 1 })).toThrow(/solids/);
  expect(() => gramsOf({ ...sound, grams: 1, millilitres: 1 } as unknown as Part)).toThrow(/either/);
  expect(() => gramsOf(sound as unknown as Part)).toThrow(/either/);
});
