/** The grammage at which half the swatches pass, with its profile interval, against R. */
import { describe, expect, it } from 'vitest';
import { passThreshold } from '../../../src/core/stats/pass-threshold';

/** Three swatches of each. */
const swatches = (weights: readonly number[], passes: readonly number[], n = 3) =>
  weights.map((grammage, i) => ({ grammage, passes: passes[i] ?? NaN, n }));
const MIXED = swatches([25, 35, 55, 70, 90, 130], [0, 1, 2, 3, 2, 3]);

describe('R 4.2.2: optim, optimize and uniroot on the penalised log likelihood, written out on its own', () => {
  it('a mixed trial', () => {
    const found = passThreshold(MIXED);
    expect(found.intercept).toBeCloseTo(-10.7469720726, 4);
    expect(found.slope).toBeCloseTo(2.79702979418, 4);
    expect(found.half).toBeCloseTo(46.6316807952, 3);
    expect(found.low).toBeCloseTo(22.4029187, 3);
    expect(found.high).toBeCloseTo(72.230091589, 3);
  });
  it.each([
    [30, 0.225530712, 0.030973368, 0.57836176],
    [60, 0.669302409, 0.397594743, 0.892919706],
    [120, 0.933626896, 0.659921073, 0.99677522],
  ])('its band at %i g/m²', (grammage, chance, low, high) => {
    const at = passThreshold(MIXED).chanceAt(grammage);
    expect(at.chance).toBeCloseTo(chance, 6);
    expect(at.low).toBeCloseTo(low, 5);
    expect(at.high).toBeCloseTo(high, 5);
  });
  it('a trial that separates perfectly', () => {
    const found = passThreshold(swatches([20, 30, 45, 60, 80, 120], [0, 0, 0, 3, 3, 3]));
    expect(found.half).toBeCloseTo(52.0294099188, 3);
    expect(found.low).toBeCloseTo(39.3452879948, 3);
    expect(found.high).toBeCloseTo(65.6709054132, 3);
    expect(found.chanceAt(30).high).toBeCloseTo(0.27932, 4);
    expect(found.chanceAt(60).low).toBeCloseTo(0.37125, 4);
  });
  it('six logits for a swatch each: a half at e^3.5', () => {
    const found = passThreshold([1, 2, 3, 4, 5, 6].map((x, i) => ({ grammage: Math.exp(x), passes: i >= 3 })));
    expect(found.half).toBeCloseTo(Math.exp(3.5), 3);
  });
});

it('seven papers, none passing up to 191 g/m² and all from 199, have their half between (R, brglm: 194.65)', () => {
  const [weights, passes, n] = [
    [20, 191, 199, 218, 331, 346, 370],
    [0, 0, 6, 5, 6, 3, 1],
    [3, 4, 6, 5, 6, 3, 1],
  ] as const;
  const { half, low, high } = passThreshold(weights.map((grammage, i) => ({ grammage, passes: passes[i]!, n: n[i]! })));
  expect(half).toBeCloseTo(194.6505, 3);
  expect(low).toBeLessThan(half!);
  expect(high).toBeGreaterThan(half!);
});

describe('what is handed out is finite or not there', () => {
  it('weight that does not matter has no half, or no bounds', () => {
    const flat = passThreshold(swatches([20, 40, 80], [2, 2, 2], 4));
    expect(flat).toMatchObject({ half: undefined, low: undefined, high: undefined });
    const { low, high } = passThreshold(swatches([25, 35, 55, 70], [2, 1, 1, 2]));
    expect(low === undefined || high === undefined).toBe(true);
  });
  it('whatever passes on whatever weights', () => {
    for (let code = 0; code < 4 ** 4; code += 1) {
      const passes = [0, 1, 2, 3].map((i) => Math.floor(code / 4 ** i) % 4);
      const { half, low, high, slope, intercept } = passThreshold(swatches([20, 21, 90, 400], passes));
      for (const value of [slope, intercept]) expect(Number.isFinite(value)).toBe(true);
      for (const value of [half, low, high])
        if (value !== undefined)
          expect(value > 20 / 8.01 && value < 400 * 8.01, `${passes.join()}: ${value}`).toBe(true);
    }
  });
  it('a chance at any weight lies in its band, in 0 to 1', () => {
    const { chanceAt } = passThreshold(swatches([20, 30, 40], [0, 0, 3]));
    for (const grammage of [1e-3, 5, 29, 34, 60, 1e5]) {
      const { chance, low, high } = chanceAt(grammage);
      expect(low >= 0 && low <= chance && chance <= high && high <= 1, `${grammage}: ${low} ${chance} ${high}`).toBe(
        true,
      );
    }
  });
});

describe('bounds', () => {
  it('turned about, light for heavy and fail for pass, the answer turns about', () => {
    const there = passThreshold(MIXED);
    const back = passThreshold(
      MIXED.map(({ grammage, passes, n }) => ({ grammage: 2500 / grammage, passes: n - passes, n })),
    );
    expect(back.slope).toBeCloseTo(there.slope, 6);
    expect(back.half).toBeCloseTo(2500 / there.half!, 5);
    expect(back.low).toBeCloseTo(2500 / there.high!, 3);
    expect(back.high).toBeCloseTo(2500 / there.low!, 3);
  });
  it('there is none on the side where nothing was seen', () => {
    const { low, high } = passThreshold(swatches([20, 30, 40], [6, 8, 8], 8));
    expect(low).toBeUndefined();
    expect(high).toBeLessThan(30);
  });
  it('a falling line is not forgotten where a rising one fits best (R: −4.888 through a half at 5 g/m², the floor is −6.045)', () => {
    const { half, low, high } = passThreshold(swatches([20, 30, 40], [0, 0, 1], 4));
    expect(half).toBeGreaterThan(40);
    expect([low, high]).toEqual([undefined, undefined]);
  });
});

it('what cannot be fitted is refused', () => {
  expect(() => passThreshold([])).toThrow(RangeError);
  expect(() => passThreshold([{ grammage: 50, passes: 1 }])).toThrow(/two different/);
  expect(() => passThreshold([{ grammage: 0, passes: 1 }])).toThrow(/grammage/);
  expect(() => passThreshold(swatches([20, 50], [4, 0]))).toThrow(RangeError);
  expect(() => passThreshold(swatches([20, 50], [0, 0], 0))).toThrow(RangeError);
});
