/** Paste from its recipe, PVA made to go further, and what rounding does. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DEFAULT_JOB } from '../../../src/core/choose/job';
import { BOILED_OFF, cookPaste, starchFor, thinPaste } from '../../../src/core/adhesive/paste';
import { inTeaspoons, roundMix, roundToStep } from '../../../src/core/base/rounding';
import { slipChange } from '../../../src/core/handover/slip-change';
import { alone, blend, partsForSolids } from '../../../src/core/adhesive/blend';
import { readCatalogue } from '../../tools/read-content';

const catalogue = readCatalogue();
const BENCH = { paper: DEFAULT_JOB.paper.family, tool: DEFAULT_JOB.tool, celsius: DEFAULT_JOB.celsius };

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

describe('stretching', () => {
  const MIX = { base: 'pva', extender: 'methylcellulose-1-5', baseParts: 1, extenderParts: 1, by: 'volume' } as const;

  test('a mix made here and the same mix on the shelf are the same liquid', () => {
    const here = blend(MIX, catalogue);
    const shelf = blend(
      { base: 'pva-mc-1-1', extender: 'water', baseParts: 1, extenderParts: 0, by: 'volume' },
      catalogue,
    );
    expect(here.solids).toBeCloseTo(shelf.solids, 12);
    expect(here.viscosity).toBeCloseTo(shelf.viscosity, 6);
  });
  test('equal masses of PVA and water have half the solids and are far thinner', () => {
    const half = blend({ base: 'pva', extender: 'water', baseParts: 1, extenderParts: 1, by: 'mass' }, catalogue);
    expect(half.solidsPercent).toBeCloseTo((catalogue.ingredients.get('pva')!.solids.middle * 100) / 2, 9);
    expect(half.thinner).toBeGreaterThan(20);
    expect(half.grams).toBeCloseTo(2, 9);
  });
  test('nothing added changes nothing', () => {
    const same = blend({ ...MIX, extenderParts: 0 }, catalogue);
    expect(same.thinner).toBeCloseTo(1, 12);
    expect(same.baseShare).toBeCloseTo(1, 12);
    expect(slipChange({ ...MIX, extenderParts: 0 }, BENCH, catalogue).times).toBeCloseTo(1, 12);
  });
  test('the mix slides longer than PVA on an ordinary paper', () => {
    const change = slipChange(MIX, BENCH, catalogue);
    expect(change.times).toBeGreaterThan(1.2);
    expect(change.mixed.p10).toBeLessThan(change.mixed.p90);
  });
  test('parts for a target give that target', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 53, noNaN: true }),
        fc.constantFrom('water', 'methylcellulose-2-5'),
        (target, extender) => {
          const extenderParts = partsForSolids('pva', extender, target, catalogue);
          const made = blend({ base: 'pva', extender, baseParts: 1, extenderParts, by: 'mass' }, catalogue);
          expect(made.solidsPercent).toBeCloseTo(target, 6);
        },
      ),
    );
    expect(() => partsForSolids('pva', 'water', 80, catalogue)).toThrow(/to 5\d\.\d %/);
    expect(() => partsForSolids('pva', 'methylcellulose-2-5', 2, catalogue)).toThrow(RangeError);
  });
  test('an ingredient stands alone, an unknown thing does not', () => {
    expect(alone('water', catalogue).parts).toEqual([{ of: 'water', parts: 1 }]);
    expect(() => alone('treacle', catalogue)).toThrow(RangeError);
  });
});

describe('rounding', () => {
  test('4.7 g on a scale of whole grams is 5 g, and the strength says so', () => {
    const made = roundMix({ powderGrams: 4.7, waterMillilitres: 95.3, scaleStep: 1 });
    expect(made.solidsGrams).toBe(5);
    expect(made.waterMillilitres).toBe(95);
    expect(made.percent).toBe(5);
    expect(made.wanted).toBeCloseTo(4.7, 10);
    expect(made.shift).toBeCloseTo(5 / 4.7 - 1, 10);
  });
  test('a pinch is never rounded away', () => {
    expect(roundMix({ powderGrams: 0.2, waterMillilitres: 20, scaleStep: 1 }).solidsGrams).toBe(1);
  });
  test('steps of a tenth leave no tail', () => {
    expect(roundToStep(0.1 + 0.2, 0.1)).toBe(0.3);
    expect(roundToStep(7.349999, 0.05)).toBe(7.35);
  });
  test('a spoon is a stated estimate round what was asked', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 60, noNaN: true }), (grams) => {
        const { teaspoons, low, high } = inTeaspoons(grams, 'methylcellulose');
        expect((teaspoons * 4) % 1).toBe(0);
        expect(low).toBeLessThan(grams);
        expect(high).toBeGreaterThan(grams);
      }),
    );
  });
});
