/** The eighth-root law, Krieger–Dougherty, and what is left of a viscosity under a brush. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  brushingViscosity,
  celluloseEtherViscosity,
  dispersionViscosity,
  RANDOM_PACKING,
  solutionViscosity,
  thickeningPower,
} from '../../../src/core/adhesive/viscosity';

describe('the eighth-root law: η^(1/8) = 1 + α·C', () => {
  test('at 2 % the solution is as thick as its grade says, for any grade', () => {
    fc.assert(
      fc.property(fc.double({ min: 3, max: 200_000, noNaN: true }), (grade) => {
        const ours = celluloseEtherViscosity({ gradeMilliPascalSeconds: grade, percent: 2 });
        expect(ours / grade).toBeCloseTo(1, 9);
      }),
    );
  });
  test('read back from any point of it, the grade is the same', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 50_000, noNaN: true }),
        fc.double({ min: 0.5, max: 4, noNaN: true }),
        (grade, percent) => {
          const there = celluloseEtherViscosity({ gradeMilliPascalSeconds: grade, percent });
          const back = solutionViscosity(thickeningPower(there, percent) * 2);
          expect(back / grade).toBeCloseTo(1, 8);
        },
      ),
    );
  });
  test('the eighth root rises evenly with the percentage', () => {
    const root = (percent: number) =>
      Math.pow(celluloseEtherViscosity({ gradeMilliPascalSeconds: 4000, percent }), 1 / 8);
    expect(root(3) - root(2)).toBeCloseTo(root(2) - root(1), 10);
    expect(root(1) - root(0)).toBeCloseTo(root(4) - root(3), 10);
  });
  test('nonsense throws', () => {
    expect(() => celluloseEtherViscosity({ gradeMilliPascalSeconds: 0, percent: 2 })).toThrow(/grade/);
    expect(() => celluloseEtherViscosity({ gradeMilliPascalSeconds: 4000, percent: -1 })).toThrow(/percent/);
    expect(() => celluloseEtherViscosity({ gradeMilliPascalSeconds: 4000, percent: 11 })).toThrow(/percent/);
    expect(() => thickeningPower(400, 0)).toThrow(/percent/);
    expect(() => solutionViscosity(NaN)).toThrow(RangeError);
  });
});

describe('Krieger–Dougherty', () => {
  test('few particles: 1 + 2.5 φ (Einstein 1906), and the error falls as φ²', () => {
    for (const phi of [1e-2, 1e-3, 1e-4]) {
      const beyond = dispersionViscosity({ volumeFraction: phi }) - (1 + 2.5 * phi);
      expect(beyond).toBeGreaterThan(0);
      expect(beyond).toBeLessThan(6 * phi * phi);
    }
  });
  test('no particles leave the liquid as it was', () => {
    expect(dispersionViscosity({ volumeFraction: 0, continuousMilliPascalSeconds: 37 })).toBe(37);
  });
  test('the liquid between the particles multiplies it', () => {
    const relative = dispersionViscosity({ volumeFraction: 0.4 });
    expect(dispersionViscosity({ volumeFraction: 0.4, continuousMilliPascalSeconds: 50 })).toBeCloseTo(
      50 * relative,
      9,
    );
  });
  test('it grows without end towards packing, and has no value there', () => {
    expect(RANDOM_PACKING).toBe(0.64); // random close packing of spheres, published: about 0.64
    expect(dispersionViscosity({ volumeFraction: 0.639 })).toBeGreaterThan(1e4);
    for (const bad of [0.64, 0.7, 1, -0.01, NaN])
      expect(() => dispersionViscosity({ volumeFraction: bad })).toThrow(/volumeFraction/);
    expect(() => dispersionViscosity({ volumeFraction: 0.5, maximumPacking: 0.5 })).toThrow(/volumeFraction/);
    expect(() => dispersionViscosity({ volumeFraction: 0.1, continuousMilliPascalSeconds: 0 })).toThrow(RangeError);
  });
  test('more particles never thin it', () => {
    const share = fc.double({ min: 0, max: 0.63, noNaN: true });
    fc.assert(
      fc.property(share, share, (a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        expect(dispersionViscosity({ volumeFraction: high })).toBeGreaterThanOrEqual(
          dispersionViscosity({ volumeFraction: low }),
        );
      }),
    );
  });
});

describe('under the brush', () => {
  const atRest = fc.double({ min: 1, max: 1e7, noNaN: true });
  test('every liquid thins, and what is thicker at rest stays thicker, by less', () => {
    fc.assert(
      fc.property(atRest, fc.double({ min: 1.001, max: 100, noNaN: true }), (eta, times) => {
        const thin = brushingViscosity(eta);
        const thick = brushingViscosity(eta * times);
        expect(thin).toBeLessThan(eta);
        expect(thick).toBeGreaterThan(thin);
        expect(thick / thin).toBeLessThan(times);
      }),
    );
  });
  test('water hardly changes: its stress of 2.5 Pa is far below where such liquids thin', () => {
    expect(brushingViscosity(1)).toBeGreaterThan(0.9);
    expect(brushingViscosity(1)).toBeLessThanOrEqual(1);
    expect(() => brushingViscosity(0)).toThrow(/atRest/);
  });
});
