/** Areas, coats and films. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf, coatFromWeighing } from '../../../src/core/base/piece';
import {
  cover,
  dryFilmMicrometres,
  squareMetresPerLitre,
  wetFilmMicrometres,
} from '../../../src/core/adhesive/coverage';
import { accordionCovers, liddedBox, liningSheet, notebookCase, slipCase } from '../../../src/core/cover/pieces';
import { roundUpForJug } from '../../../src/core/base/rounding';
import Qty from 'js-quantities';
const A4 = { widthMm: 210, heightMm: 297, count: 1 };

const COAT = { low: 40, middle: 65, high: 110, basis: 'from-memory' } as const;

const side = fc.double({ min: 5, max: 3000, noNaN: true });

const piece = fc.record({ widthMm: side, heightMm: side, count: fc.integer({ min: 1, max: 50 }) });

describe('worked by hand', () => {
  test('a litre on a square metre stands a millimetre high', () => {
    expect(wetFilmMicrometres(1000)).toBe(1000);
    expect(squareMetresPerLitre(1000)).toBe(1);
    expect(dryFilmMicrometres(100, 0.4)).toBeCloseTo(40, 12);
  });
  test('turn-ins count on both sides of a measure', () => {
    expect(areaOf({ widthMm: 100, heightMm: 200, count: 3, turnInMm: 20 })).toBeCloseTo(0.14 * 0.24 * 3, 12);
    expect(
      areaOf({ widthMm: 100, heightMm: 200, count: 1, turnInMm: { top: 0, right: 15, bottom: 0, left: 5 } }),
    ).toBeCloseTo(0.024, 12);
  });
  test('60 g/m² at 1.08 g/ml over one square metre', () => {
    const all = cover({
      pieces: [{ widthMm: 1000, heightMm: 1000, count: 1 }],
      coat: 60,
      liquid: { density: 1.08, solids: 0.5, volumeSolids: 0.48 },
    });
    expect(all.wetGrams.middle).toBeCloseTo(60, 12);
    expect(all.wetMillilitres.middle).toBeCloseTo(60 / 1.08, 12);
    expect(all.wetMicrometres.middle).toBeCloseTo(55.5556, 3);
    expect(all.dryGrams?.middle).toBeCloseTo(30, 12);
    expect(all.dryMicrometres?.middle).toBeCloseTo(55.5556 * 0.48, 3);
    expect(all.waterPerSquareMetre?.middle).toBeCloseTo(30, 12);
  });
  test('loss is a share of what is mixed: 20 % lost of 100 g leaves 80 g on the work', () => {
    const all = cover({ pieces: [{ widthMm: 1000, heightMm: 1000, count: 1 }], coat: 80, lossPercent: 20 });
    expect(all.mixGrams.middle).toBeCloseTo(100, 10);
  });
  test('a class: twelve makers, a tenth spare, sold in 50 ml bottles at 9.50', () => {
    // 12 × 1.1 × 0.06237 m² × 110 g/m² = 90.6 ml at the heavy end
    const all = cover({
      pieces: [A4],
      coat: COAT,
      times: 12,
      sparePercent: 10,
      container: { millilitres: 50, price: 9.5 },
    });
    expect(all.mixMillilitres.high).toBeCloseTo(90.56, 2);
    expect(all.containers).toBe(2);
    expect(all.cost).toBeCloseTo(19, 10);
    expect(all.buyMillilitres).toBe(95);
  });
  test('weighed on the board', () => {
    expect(coatFromWeighing(112.4, 116.2, 0.0625)).toBeCloseTo(60.8, 6);
    expect(() => coatFromWeighing(112.4, 110, 0.0625)).toThrow(RangeError);
  });
});

describe('holds for any pieces', () => {
  test('linear in the number of pieces, in coats, in faces and in makers', () => {
    fc.assert(
      fc.property(piece, fc.integer({ min: 2, max: 9 }), (one, times) => {
        const single = cover({ pieces: [one], coat: COAT });
        const grams = single.wetGrams.middle * times;
        const ways = [
          cover({ pieces: [{ ...one, count: one.count * times }], coat: COAT }),
          cover({ pieces: Array.from({ length: times }, () => one), coat: COAT }),
          cover({ pieces: [one], coat: COAT, passes: times }),
          cover({ pieces: [one], coat: COAT, times }),
        ];
        for (const way of ways) expect(way.wetGrams.middle / grams).toBeCloseTo(1, 9);
        const both = cover({ pieces: [one], coat: COAT, faces: 2 });
        expect(both.wetGrams.high / single.wetGrams.high).toBeCloseTo(2, 9);
        expect(both.wetMicrometres.middle).toBeCloseTo(single.wetMicrometres.middle, 9);
      }),
    );
  });
  test('linear in area: twice as wide is twice as much', () => {
    fc.assert(
      fc.property(piece, (one) => {
        const wide = cover({ pieces: [{ ...one, widthMm: one.widthMm * 2 }], coat: COAT });
        expect(wide.wetGrams.middle / cover({ pieces: [one], coat: COAT }).wetGrams.middle).toBeCloseTo(2, 9);
      }),
    );
  });
  test('wet is dry and water: nothing is lost to 1e-12', () => {
    fc.assert(
      fc.property(piece, fc.double({ min: 0.01, max: 0.9, noNaN: true }), (one, solids) => {
        const all = cover({ pieces: [one], coat: COAT, liquid: { density: 1.05, solids, volumeSolids: solids } });
        const water = all.waterPerSquareMetre!.middle * all.squareMetres;
        expect(Math.abs((all.dryGrams!.middle + water) / all.wetGrams.middle - 1)).toBeLessThan(1e-12);
      }),
    );
  });
  test('the figure to buy is never less than is needed, nor much more', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 1e9, noNaN: true }), (millilitres) => {
        const buy = roundUpForJug(millilitres);
        expect(buy).toBeGreaterThanOrEqual(millilitres * (1 - 1e-8));
        expect(buy).toBeLessThanOrEqual(Math.max(millilitres + 5, millilitres * 1.05));
        expect(buy % 5).toBe(0);
      }),
    );
  });
});

describe('pieces of things', () => {
  const body = { widthMm: 148, heightMm: 210, thicknessMm: 15 };
  test('a case is as wide as its book laid open, with squares, and its cover turns in all round', () => {
    const [cover, pasteDown] = notebookCase({ ...body, turnInMm: 18, boardMm: 2 });
    // two boards of 148 + 3 − 7, two joints of 7, a spine of 15 + 2 × 2
    expect(cover?.widthMm).toBe(2 * 144 + 14 + 19);
    expect(cover?.heightMm).toBe(216);
    expect(areaOf(cover!)).toBeCloseTo((0.321 + 0.036) * (0.216 + 0.036), 10);
    expect(pasteDown?.count).toBe(2);
  });
  test('every thing has an area, larger for a larger body', () => {
    for (const made of [notebookCase, slipCase, liddedBox, accordionCovers, liningSheet]) {
      const area = (scale: number) =>
        made({ widthMm: 148 * scale, heightMm: 210 * scale, thicknessMm: 15 * scale }).reduce(
          (sum, one) => sum + areaOf(one),
          0,
        );
      expect(area(1)).toBeGreaterThan(0.148 * 0.21 * 0.99);
      expect(area(2)).toBeGreaterThan(area(1) * 2);
    }
  });
  test('the outside of a lidded box holds at least the five outer faces of the tray', () => {
    const area = liddedBox({ ...body, turnInMm: 0, boardMm: 0 })
      .slice(0, 2)
      .reduce((sum, one) => sum + areaOf(one), 0);
    // each side and the depth 2 mm larger than what goes in
    expect(area).toBeCloseTo(0.15 * 0.212 + 2 * (0.15 + 0.212) * 0.017, 9);
  });
});

test.for([
  ['a piece without width', { pieces: [{ ...A4, widthMm: 0 }], coat: 60 }],
  ['no coat', { pieces: [A4], coat: 0 }],
  ['three faces', { pieces: [A4], coat: 60, faces: 3 }],
  ['all of it lost', { pieces: [A4], coat: 60, lossPercent: 100 }],
  [
    'a range the wrong way round',
    { pieces: [A4], coat: { low: 90, middle: 60, high: 40, basis: 'estimate' } as const },
  ],
] as const)('%s is refused', ([, job]) => {
  expect(() => cover(job)).toThrow(RangeError);
});

describe('a range of coats', () => {
  const metre = { widthMm: 1000, heightMm: 1000, count: 1 };
  const half = { density: 2, solids: 0.25, volumeSolids: 0.2 };
  test('goes through passes, loss and density to both ends, by hand', () => {
    // 40 to 110 g/m², twice over on 1 m², at 2 g/ml, a fifth lost
    const all = cover({ pieces: [metre], coat: COAT, passes: 2, lossPercent: 20, liquid: half });
    const ends = ({ low, high }: { low: number; high: number }) => [low, high].map((value) => Number(value.toFixed(9)));
    expect(ends(all.wetGrams)).toEqual([80, 220]);
    expect(ends(all.wetMillilitres)).toEqual([40, 110]);
    expect(ends(all.mixGrams)).toEqual([100, 275]);
    expect(ends(all.mixMillilitres)).toEqual([50, 137.5]);
    expect(ends(all.wetMicrometres)).toEqual([40, 110]);
    expect(ends(all.dryGrams!)).toEqual([20, 55]);
    expect(ends(all.dryMicrometres!)).toEqual([8, 22]);
    expect(ends(all.waterPerSquareMetre!)).toEqual([60, 165]);
  });
  test('counts containers up, whole ones not twice, and says nothing of what was not given', () => {
    const counted = (millilitres: number, price?: number) =>
      cover({ pieces: [metre], coat: 100, container: { millilitres, ...(price !== undefined && { price }) } });
    expect(counted(100).containers).toBe(1);
    expect(counted(50).containers).toBe(2);
    expect(counted(99).containers).toBe(2);
    expect(counted(1000)).toMatchObject({ containers: 1 });
    expect(counted(100)).not.toHaveProperty('cost');
    expect(counted(50, 3).cost).toBe(6);
    const bare = cover({ pieces: [metre], coat: 100 });
    for (const key of ['containers', 'cost', 'dryGrams', 'waterPerSquareMetre']) expect(bare).not.toHaveProperty(key);
    expect(() => counted(0)).toThrow(/container/);
    expect(() => counted(-5)).toThrow(/container/);
  });
});

test('the reach of a litre is that of a gallon in square feet', () => {
  for (const mils of [1, 4, 10, 25]) {
    const micrometres = Qty(mils / 1000, 'inch').to('um').scalar;
    const reach = Qty(1, 'gal')
      .div(Qty(mils / 1000, 'inch'))
      .to('ft^2').scalar;
    const perGallon = Qty(squareMetresPerLitre(micrometres), 'm^2').mul(Qty(1, 'gal').to('l').scalar).to('ft^2').scalar;
    expect(perGallon).toBeCloseTo(reach, 4);
    expect(perGallon).toBeCloseTo(1604.17 / mils, 1);
  }
});
