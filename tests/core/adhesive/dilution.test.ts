/** Strengths and dilutions, against worked examples from elsewhere and against one another. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { diluteTo, solutionDensity, solutionFromPowder, stretch } from '../../../src/core/adhesive/dilution';
import { askDilution, askPowder, askStretch } from '../../../src/core/mix/dilution-input';
import { mix } from '../../../src/core/adhesive/mixture';
import { powderToAdd, stockToAdd, waterToLose } from '../../../src/core/adhesive/alligation';

describe('worked by hand', () => {
  test('2.5 % from 4 %: five parts of stock to three of water', () => {
    const { stockMillilitres, waterMillilitres } = diluteTo({
      stockPercent: 4,
      targetPercent: 2.5,
      batchMillilitres: 200,
    });
    expect(stockMillilitres).toBeCloseTo(125, 10);
    expect(waterMillilitres).toBeCloseTo(75, 10);
  });
  test('120 ml of 4 % goes to 192 ml of 2.5 %', () => {
    const { batchMillilitres, waterMillilitres } = stretch({ haveMillilitres: 120, fromPercent: 4, toPercent: 2.5 });
    expect(batchMillilitres).toBeCloseTo(192, 10);
    expect(waterMillilitres).toBeCloseTo(72, 10);
  });
  test('2 % of half a litre is 10 g, whichever way a dilute per cent is counted', () => {
    for (const basis of ['w/v', 'w/w'] as const) {
      expect(solutionFromPowder({ targetPercent: 2, batchMillilitres: 500, basis }).powderGrams).toBeCloseTo(10, 10);
    }
  });
  test('by mass with real densities: a 25 % solution of 1.25 g/ml needs four times its mass in water for 5 %', () => {
    const { waterGrams, batchGrams, solidsGrams } = stretch({
      haveMillilitres: 500,
      fromPercent: 25,
      toPercent: 5,
      basis: 'w/w',
      stockDensity: 1.25,
    });
    expect(solidsGrams).toBeCloseTo(156.25, 9);
    expect(waterGrams).toBeCloseTo(2500, 9);
    expect(batchGrams).toBeCloseTo(3125, 9);
  });
  test('with the powder’s own density the batch has the volume asked for, and the strength', () => {
    const made = solutionFromPowder({ targetPercent: 20, batchMillilitres: 300, basis: 'w/w', powderDensity: 1.5 });
    expect(made.batchMillilitres).toBeCloseTo(300, 9);
    expect(made.powderGrams / (made.powderGrams + made.waterGrams)).toBeCloseTo(0.2, 12);
    expect(made.powderGrams).toBeCloseTo(300 / (1 / 1.5 + 4), 9);
  });
  test('the alligation cross: 10 ml of 30 % lifts 50 ml of 6 % to 10 %', () => {
    // parts: 30 − 10 = 20 of the weak to 10 − 6 = 4 of the strong
    const have = { haveMillilitres: 50, fromPercent: 6, toPercent: 10, stockPercent: 30 };
    expect(stockToAdd(have)).toBeCloseTo(10, 12);
  });
});

const percent = fc.double({ min: 0.05, max: 60, noNaN: true });
const millilitres = fc.double({ min: 1, max: 1e5, noNaN: true });
const density = fc.double({ min: 0.7, max: 1.6, noNaN: true });
const basis = fc.constantFrom('w/v' as const, 'w/w' as const);

describe('holds for any numbers', () => {
  test('dilute, then lose the water again: what was there at first', () => {
    fc.assert(
      fc.property(millilitres, percent, fc.double({ min: 0.02, max: 1, noNaN: true }), (have, from, share) => {
        const to = from * share;
        const { batchMillilitres } = stretch({ haveMillilitres: have, fromPercent: from, toPercent: to });
        expect(batchMillilitres - waterToLose(batchMillilitres, to, from)).toBeCloseTo(have, 6);
      }),
    );
  });
  test('dilute, then stir in powder: the first strength again', () => {
    fc.assert(
      fc.property(
        millilitres,
        percent,
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        density,
        (have, from, share, rho) => {
          const to = from * share;
          const thin = stretch({ haveMillilitres: have, fromPercent: from, toPercent: to });
          const powder = powderToAdd({
            haveMillilitres: thin.batchMillilitres,
            fromPercent: to,
            toPercent: from,
            powderDensity: rho,
          });
          const volume = thin.batchMillilitres + powder / rho;
          expect((thin.solidsGrams + powder) / volume / (from / 100)).toBeCloseTo(1, 9);
        },
      ),
    );
  });
  test('mass in is mass out, to 1e-12 of the whole, and the dissolved is neither made nor lost', () => {
    fc.assert(
      fc.property(
        millilitres,
        percent,
        fc.double({ min: 0.02, max: 1, noNaN: true }),
        density,
        basis,
        (batch, from, share, rho, by) => {
          const made = diluteTo({
            stockPercent: from,
            targetPercent: from * share,
            batchMillilitres: batch,
            basis: by,
            stockDensity: rho,
          });
          expect(Math.abs(made.stockGrams + made.waterGrams - made.batchGrams) / made.batchGrams).toBeLessThan(1e-12);
          const dissolved = by === 'w/v' ? (from / 100) * made.stockMillilitres : (from / 100) * made.stockGrams;
          expect(Math.abs(made.solidsGrams / dissolved - 1)).toBeLessThan(1e-12);
          expect(made.percent / (from * share)).toBeCloseTo(1, 9);
          expect(made.batchMillilitres / batch).toBeCloseTo(1, 9);
        },
      ),
    );
  });
  test('parts to per cent and back to parts', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 50, noNaN: true }),
        fc.double({ min: 0.1, max: 500, noNaN: true }),
        (powder, water) => {
          const whole = mix([
            { grams: powder, density: 1.3, solids: 1 },
            { grams: water, density: 1, solids: 0 },
          ]);
          const back = solutionFromPowder({
            targetPercent: whole.solidsFraction * 100,
            batchMillilitres: whole.volume,
            basis: 'w/w',
            powderDensity: 1.3,
          });
          expect(back.powderGrams / powder).toBeCloseTo(1, 9);
          expect(back.waterGrams / water).toBeCloseTo(1, 9);
        },
      ),
    );
  });
});

describe('what cannot be made', () => {
  test.for([
    ['stronger than the stock', () => diluteTo({ stockPercent: 2, targetPercent: 3, batchMillilitres: 100 })],
    ['no batch', () => diluteTo({ stockPercent: 4, targetPercent: 2, batchMillilitres: 0 })],
    ['a stock above 100 %', () => diluteTo({ stockPercent: 120, targetPercent: 2, batchMillilitres: 100 })],
    ['nothing in it', () => solutionFromPowder({ targetPercent: 0, batchMillilitres: 100, basis: 'w/v' })],
    [
      'more powder than everything',
      () => solutionFromPowder({ targetPercent: 130, batchMillilitres: 100, basis: 'w/w' }),
    ],
    ['not a number', () => stretch({ haveMillilitres: NaN, fromPercent: 4, toPercent: 2 })],
    ['stronger by water', () => stretch({ haveMillilitres: 100, fromPercent: 4, toPercent: 5 })],
    [
      'a stock no stronger than what is wanted',
      () => stockToAdd({ haveMillilitres: 50, fromPercent: 1, toPercent: 3, stockPercent: 3 }),
    ],
  ] as const)('%s is refused by the formula', ([, call]) => {
    expect(call).toThrow(RangeError);
  });

  test('a target above the stock is answered beside its field, with the powder that would do it', () => {
    const asked = askStretch({
      haveMillilitres: 100,
      fromPercent: 2,
      toPercent: 4,
      basis: 'w/v',
      stockDensity: () => 1,
    });
    expect(asked.ok).toBe(false);
    const [error] = asked.ok ? [] : asked.errors;
    expect(error?.field).toBe('targetPercent');
    // (0.04 − 0.02) × 100 ml ÷ (1 − 0.04) = 2.08 g
    expect(error?.message).toMatch(/2\.1 g of powder/);
    expect(error?.limits?.high).toBe(2);
  });
  test('every wrong field is named at once', () => {
    const asked = askDilution({
      stockPercent: 101,
      targetPercent: 0,
      batchMillilitres: -5,
      basis: 'w/v',
      stockDensity: () => 1,
    });
    const fields = asked.ok ? [] : asked.errors.map(({ field }) => field);
    expect(fields.sort()).toEqual(['batchMillilitres', 'stockPercent', 'targetPercent']);
  });
  test('above 10 % the two ways of counting per cent are told apart, below it they are not', () => {
    const ask = { batchMillilitres: 200, basis: 'w/v', powderDensity: 1.3 } as const;
    const weak = askPowder({ ...ask, targetPercent: 5 });
    const strong = askPowder({ ...ask, targetPercent: 20 });
    expect(weak.ok && weak.value.basesPartBy).toBe(undefined);
    // 20 g in 100 ml against 20 g in 100 g: 1/(0.2/1.3 + 0.8) g of mix to each ml
    expect(strong.ok && strong.value.basesPartBy).toBeCloseTo((1 / (0.2 / 1.3 + 0.8) - 1) * 100, 6);
  });
});

describe('the density of a solution, both ways of counting its strength', () => {
  const starch = { solids: 1, density: 1.5 };
  test('60 g of starch (40 ml) and 60 g of water are 100 ml, 120 g; 60 g in 100 g are 40 ml and 40 ml', () => {
    expect(solutionDensity(60, 'w/v', starch)).toBeCloseTo(1.2, 12);
    expect(solutionDensity(60, 'w/w', starch)).toBeCloseTo(1.25, 12);
  });
  test('of a dispersion of half solids, 2 g/ml: as supplied; and with as much water by volume, or by mass', () => {
    const half = { solids: 0.5, density: 2 };
    // 100 ml weigh 200 g, of which 100 g are solids
    expect(solutionDensity(100, 'w/v', half)).toBeCloseTo(2, 12);
    expect(solutionDensity(50, 'w/w', half)).toBeCloseTo(2, 12);
    expect(solutionDensity(50, 'w/v', half)).toBeCloseTo(1.5, 12);
    // 100 g in 50 ml and 100 g in 100 ml
    expect(solutionDensity(25, 'w/w', half)).toBeCloseTo(200 / 150, 12);
  });
  test('a batch of 500 ml at 60 % by volume weighs what its parts weigh', () => {
    const stockDensity = solutionDensity(60, 'w/v', starch);
    const made = diluteTo({ stockPercent: 60, targetPercent: 60, batchMillilitres: 500, basis: 'w/v', stockDensity });
    // 300 g of starch take 200 ml and leave room for 300 g of water
    expect(made.batchGrams).toBeCloseTo(600, 9);
    expect(made.solidsGrams).toBeCloseTo(300, 9);
  });
  test('a powder into water and the stock it makes weigh the same', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('w/v' as const, 'w/w' as const),
        fc.double({ min: 0.1, max: 60, noNaN: true }),
        fc.double({ min: 1, max: 2.5, noNaN: true }),
        (basis, percent, density) => {
          const { batchGrams } = solutionFromPowder({
            targetPercent: percent,
            batchMillilitres: 500,
            basis,
            powderDensity: density,
          });
          expect(solutionDensity(percent, basis, { solids: 1, density })).toBeCloseTo(batchGrams / 500, 9);
        },
      ),
    );
  });
  test('water alone is 1 g/ml, and nothing is denser than as supplied', () => {
    expect(solutionDensity(0, 'w/v', starch)).toBe(1);
    expect(solutionDensity(0, 'w/w', starch)).toBe(1);
    expect(solutionDensity(90, 'w/w', { solids: 0.54, density: 1.07 })).toBeCloseTo(1.07, 12);
    expect(solutionDensity(90, 'w/v', { solids: 0.54, density: 1.07 })).toBeCloseTo(1.07, 12);
  });
});
