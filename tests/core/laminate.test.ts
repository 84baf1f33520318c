/** Two plies that grow by different amounts, against Timoshenko (J. Opt. Soc. Am. 11 (1925) 233). */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bowHeight, twoPlyCurvature } from '../../src/core/laminate';

const thickness = fc.double({ min: 0.01, max: 10, noNaN: true });
const modulus = fc.double({ min: 1, max: 1e5, noNaN: true });
const strain = fc.double({ min: -0.05, max: 0.05, noNaN: true });

/**
 * The same bow worked out another way: the strain over the depth of a laminate is e + κ·z, and neither the
 * forces nor the moments of the two plies leave anything over. Two linear equations, solved here.
 */
function curvatureFromBalance(t1: number, e1: number, t2: number, e2: number, mismatch: number): number {
  const [top1, top2] = [t1, t1 + t2];
  const integral = (n: number, from: number, to: number) => (to ** (n + 1) - from ** (n + 1)) / (n + 1);
  const [a0, a1, a2] = [0, 1, 2].map((n) => e1 * integral(n, 0, top1) + e2 * integral(n, top1, top2)) as [
    number,
    number,
    number,
  ];
  const [f0, f1] = [0, 1].map((n) => mismatch * e1 * integral(n, 0, top1)) as [number, number];
  return (a0 * f1 - a1 * f0) / (a0 * a2 - a1 * a1);
}

describe('curvature', () => {
  test('equal plies: 1.5 strains per thickness (published)', () => {
    const ply = { thickness: 1, modulus: 4 };
    expect(twoPlyCurvature(ply, ply, 0.01)).toBeCloseTo((1.5 * 0.01) / 2, 15);
  });
  test('it is what the balance of forces and moments gives, for any two plies', () => {
    fc.assert(
      fc.property(thickness, modulus, thickness, modulus, strain, (t1, e1, t2, e2, mismatch) => {
        const ours = twoPlyCurvature({ thickness: t1, modulus: e1 }, { thickness: t2, modulus: e2 }, mismatch);
        const theirs = curvatureFromBalance(t1, e1, t2, e2, mismatch);
        expect(Math.abs(Math.abs(ours) - Math.abs(theirs))).toBeLessThanOrEqual(1e-6 * Math.abs(ours) + 1e-12);
      }),
    );
  });
  test('plies that grow alike stay flat, and the bow turns with the sign', () => {
    fc.assert(
      fc.property(thickness, modulus, strain, (t, e, mismatch) => {
        const [one, other] = [
          { thickness: t, modulus: e },
          { thickness: 2, modulus: 3000 },
        ];
        expect(twoPlyCurvature(one, other, 0)).toBe(0);
        expect(twoPlyCurvature(one, other, -mismatch)).toBeCloseTo(-twoPlyCurvature(one, other, mismatch), 12);
      }),
    );
  });
  test('covered the same on both faces, the bows cancel', () => {
    const sheet = { thickness: 0.15, modulus: 3000 };
    const board = { thickness: 2, modulus: 2500 };
    const face = twoPlyCurvature(sheet, board, 0.006);
    const back = twoPlyCurvature(sheet, board, -0.006);
    expect(face).toBeGreaterThan(0);
    expect(face + back).toBe(0);
  });
  test('nonsense throws', () => {
    const ply = { thickness: 1, modulus: 1 };
    expect(() => twoPlyCurvature({ ...ply, thickness: 0 }, ply, 0.01)).toThrow(/thickness/);
    expect(() => twoPlyCurvature(ply, { ...ply, modulus: -1 }, 0.01)).toThrow(/modulus/);
    expect(() => twoPlyCurvature(ply, ply, NaN)).toThrow(/mismatch/);
  });
});

describe('height of the bow', () => {
  test('a shallow arc stands as high as a true circle, to 1 in 1000', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1000, noNaN: true }), (spanMm) => {
        const radius = 10 * spanMm;
        const sagitta = radius - Math.sqrt(radius ** 2 - (spanMm / 2) ** 2);
        expect(Math.abs(bowHeight(1 / radius, spanMm) / sagitta - 1)).toBeLessThan(0.001);
      }),
    );
  });
  test('twice the span bows four times as high; either way up it has a height', () => {
    expect(bowHeight(1e-4, 400) / bowHeight(1e-4, 200)).toBeCloseTo(4, 12);
    expect(bowHeight(-1e-4, 400)).toBe(bowHeight(1e-4, 400));
    expect(() => bowHeight(1e-4, -1)).toThrow(/spanMm/);
  });
});
