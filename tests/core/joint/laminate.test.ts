/** Plies that grow by different amounts, against Timoshenko (J. Opt. Soc. Am. 11 (1925) 233). */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { curl, type GrainedPly } from '../../../src/core/joint/curl';
import { bowHeight, stripCurvature, twoPlyCurvature, type MovingPly } from '../../../src/core/joint/laminate';

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

const ply: fc.Arbitrary<MovingPly> = fc.record({ thickness, modulus, strain });
const plies = fc.array(ply, { minLength: 1, maxLength: 6 });
/** Equal to 1 part in a million of the curvature that the largest strain could bring. */
const alike = (a: number, b: number, of: readonly MovingPly[]) => {
  const depth = of.reduce((sum, one) => sum + one.thickness, 0);
  const most = Math.max(...of.map((one) => Math.abs(one.strain))) / depth;
  expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-6 * most + 1e-15);
};

describe('any number of plies', () => {
  test('two give the closed form that was published', () => {
    fc.assert(
      fc.property(ply, ply, (one, two) => {
        const ours = stripCurvature([one, two]);
        alike(ours, twoPlyCurvature(one, two, one.strain - two.strain), [one, two]);
      }),
    );
  });
  test('a symmetric lay-up stays flat', () => {
    fc.assert(
      fc.property(plies, ply, (half, core) => {
        const whole = [...half, core, ...half.toReversed()];
        alike(stripCurvature(whole), 0, whole);
      }),
    );
  });
  test('turned over, the bow turns its sign', () => {
    fc.assert(fc.property(plies, (of) => alike(stripCurvature(of.toReversed()), -stripCurvature(of), of)));
  });
  test('a ply split into two changes nothing', () => {
    fc.assert(
      fc.property(plies, fc.nat(), (of, which) => {
        const split = of.flatMap((one, i) => {
          const half = { ...one, thickness: one.thickness / 2 };
          return i === which % of.length ? [half, half] : [one];
        });
        alike(stripCurvature(split), stripCurvature(of), of);
      }),
    );
  });
  test('twice the size bows with half the curvature; the unit of stiffness does not matter', () => {
    fc.assert(
      fc.property(plies, fc.double({ min: 0.1, max: 10, noNaN: true }), (of, scale) => {
        const larger = of.map((one) => ({ ...one, thickness: one.thickness * scale }));
        alike(stripCurvature(larger) * scale, stripCurvature(of), of);
        const stiffer = of.map((one) => ({ ...one, modulus: one.modulus * scale }));
        alike(stripCurvature(stiffer), stripCurvature(of), of);
      }),
    );
  });
  test('plies that all grow alike stay flat, and what they all grow by makes no difference', () => {
    fc.assert(
      fc.property(plies, strain, (of, more) => {
        const grown = of.map((one) => ({ ...one, strain: one.strain + more }));
        alike(stripCurvature(grown), stripCurvature(of), [...of, ...grown]);
      }),
    );
  });
  test('nonsense throws', () => {
    const sound = { thickness: 1, modulus: 1, strain: 0 };
    expect(() => stripCurvature([])).toThrow(/plies/);
    expect(() => stripCurvature([sound, { ...sound, thickness: -1 }])).toThrow(/thickness/);
    expect(() => stripCurvature([sound, { ...sound, strain: 2 }])).toThrow(/strain/);
  });
});

describe('grain', () => {
  const sheet: GrainedPly = {
    thickness: 0.1,
    grain: 'height',
    moisture: -0.3,
    modulus: { along: 4000, across: 2300 },
    expansion: { along: 0.002, across: 0.02 },
  };
  const board: GrainedPly = {
    thickness: 2,
    grain: 'none',
    moisture: 0,
    modulus: { along: 2500, across: 2500 },
    expansion: { along: 0, across: 0 },
  };
  test('the board bends across the grain, towards the sheet that shrinks', () => {
    const across = curl({ plies: [sheet, board], widthMm: 200, direction: 'width' });
    const along = curl({ plies: [sheet, board], widthMm: 200, direction: 'height' });
    expect(across.towards).toBe('first');
    // a tenth of the growth, somewhat more stiffness
    expect(across.bowMm / along.bowMm).toBeGreaterThan(5);
    const turned = curl({ plies: [{ ...sheet, grain: 'width' }, board], widthMm: 200, direction: 'height' });
    expect(turned).toEqual(across);
  });
  test('a sheet that grows pushes the board the other way, and one that does neither leaves it', () => {
    const at = (moisture: number) => curl({ plies: [{ ...sheet, moisture }, board], widthMm: 200, direction: 'width' });
    expect(at(0.3).towards).toBe('last');
    expect(at(0)).toMatchObject({ bowMm: 0, towards: 'neither' });
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
