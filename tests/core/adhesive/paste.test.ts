/** Paste from its recipe. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { BOILED_OFF, cookPaste, starchFor, thinPaste } from '../../../src/core/adhesive/paste';

describe('paste', () => {
  test('1:4 by mass is 20 %, 1:5 is 16.7 %, before any steam leaves', () => {
    expect(cookPaste({ waterParts: 4, by: 'mass', starchGrams: 50 }).percentRaw).toBeCloseTo(20, 10);
    expect(cookPaste({ waterParts: 5, by: 'mass', starchGrams: 50 }).percentRaw).toBeCloseTo(100 / 6, 10);
  });
  test('a tenth of the water boiled off: 50 g in 200 ml leave 230 g at 21.7 %', () => {
    const paste = cookPaste({ waterParts: 4, by: 'mass', starchGrams: 50, boiledOff: 0.1 });
    expect(paste.grams).toBeCloseTo(230, 9);
    expect(paste.percent).toBeCloseTo((50 / 230) * 100, 9);
    expect(paste.lostMillilitres).toBeCloseTo(20, 9);
  });
  test('by volume a part of starch weighs about half as much as a part of water', () => {
    const paste = cookPaste({ waterParts: 5, by: 'volume', starchGrams: 55, boiledOff: 0 });
    expect(paste.waterMillilitres).toBeCloseTo(500, 9);
  });
  test('thinned from 20 % to 8 %: one and a half times its own mass in water', () => {
    expect(thinPaste(100, 20, 8)).toBeCloseTo(150, 9);
    expect(() => thinPaste(100, 8, 12)).toThrow(RangeError);
  });
  test('the starch for a potful makes that potful, and thinning keeps the starch', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 3, max: 10, noNaN: true }),
        fc.double({ min: 20, max: 2000, noNaN: true }),
        (waterParts, grams) => {
          const recipe = { waterParts, by: 'mass', boiledOff: BOILED_OFF.middle } as const;
          const paste = cookPaste({ ...recipe, starchGrams: starchFor(grams, recipe) });
          expect(paste.grams / grams).toBeCloseTo(1, 9);
          const water = thinPaste(paste.grams, paste.percent, paste.percent / 2);
          expect((paste.starchGrams / (paste.grams + water)) * 100).toBeCloseTo(paste.percent / 2, 9);
        },
      ),
    );
  });
});
