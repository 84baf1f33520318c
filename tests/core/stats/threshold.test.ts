/** Firth's logistic regression and the grammage at which half the swatches pass, against R. */
import { describe, expect, test } from 'vitest';
import { firthLine } from '../../../src/core/stats/firth';
import { passThreshold } from '../../../src/core/stats/threshold';

describe('Firth', () => {
  test('a 2×2 table: one half is added to every cell (0 of 10 against 5 of 10)', () => {
    const line = firthLine([
      { x: 0, passes: 0, n: 10 },
      { x: 1, passes: 5, n: 10 },
    ]);
    expect(line.intercept).toBeCloseTo(-3.0445224, 6);
    expect(line.slope).toBeCloseTo(3.0445224, 6);
  });
  test('perfect separation, x = 1…6, y = 000111: R 4.2.2, brglm 0.7.2, and optim on the penalised likelihood', () => {
    const found = passThreshold([1, 2, 3, 4, 5, 6].map((x, i) => ({ grammage: Math.exp(x), passes: i >= 3 })));
    // brglm stops at −3.95113, 1.12889; the maximum itself is −3.9511937, 1.1289125
    expect(found.intercept).toBeCloseTo(-3.9511937, 6);
    expect(found.slope).toBeCloseTo(1.1289125, 6);
    expect(found.half).toBeCloseTo(Math.exp(3.5), 3);
  });
});

/** R 4.2.2: optim, optimize and uniroot on the penalised log likelihood, written out on its own. */
describe('profile intervals', () => {
  const swatches = (weights: readonly number[], passes: readonly number[]) =>
    weights.map((grammage, i) => ({ grammage, passes: passes[i] ?? NaN, n: 3 }));

  test('a mixed trial', () => {
    const found = passThreshold(swatches([25, 35, 55, 70, 90, 130], [0, 1, 2, 3, 2, 3]));
    expect(found.intercept).toBeCloseTo(-10.7469720726, 4);
    expect(found.slope).toBeCloseTo(2.79702979418, 4);
    expect(found.half).toBeCloseTo(46.6316807952, 3);
    expect(found.low).toBeCloseTo(22.4029187, 3);
    expect(found.high).toBeCloseTo(72.230091589, 3);
    expect(found.slopeP).toBeCloseTo(0.00582656975743, 7);
    for (const [grammage, chance, low, high] of [
      [30, 0.225530712, 0.030973368, 0.57836176],
      [60, 0.669302409, 0.397594743, 0.892919706],
      [120, 0.933626896, 0.659921073, 0.99677522],
    ] as const) {
      const at = found.chanceAt(grammage);
      expect([at.chance, at.low, at.high].map((value) => Number(value.toFixed(6)))).toEqual(
        [chance, low, high].map((value) => Number(value.toFixed(6))),
      );
    }
  });

  test('a trial that separates perfectly', () => {
    const found = passThreshold(swatches([20, 30, 45, 60, 80, 120], [0, 0, 0, 3, 3, 3]));
    expect(found.half).toBeCloseTo(52.0294099188, 3);
    expect(found.low).toBeCloseTo(39.3452879948, 3);
    expect(found.high).toBeCloseTo(65.6709054132, 3);
    expect(found.chanceAt(30).high).toBeCloseTo(0.27932, 4);
    expect(found.chanceAt(60).low).toBeCloseTo(0.37125, 4);
  });

  test('where weight does not matter there is no bound', () => {
    const found = passThreshold(swatches([25, 35, 55, 70], [2, 1, 1, 2]));
    expect(found.low === undefined || found.high === undefined).toBe(true);
    expect(found.slopeP).toBeGreaterThan(0.5);
    const { low, high } = found.chanceAt(50);
    expect(low).toBeGreaterThan(0);
    expect(high).toBeLessThan(1);
  });
});

test('what cannot be fitted is refused', () => {
  expect(() => passThreshold([])).toThrow(RangeError);
  expect(() => passThreshold([{ grammage: 50, passes: 1 }])).toThrow(/two different/);
  expect(() => passThreshold([{ grammage: 0, passes: 1 }])).toThrow(/grammage/);
});
