/** Air and water, against published tables. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evaporationRate, humidityRatio, saturationPressure } from '../../../src/core/joint/moisture';

const celsius = fc.double({ min: 0, max: 60, noNaN: true });
const humidity = fc.double({ min: 0, max: 100, noNaN: true });

// ASHRAE Handbook of Fundamentals 2017, chapter 1, table 3, kPa
test.for([
  [20, 2.339, 0.0005],
  [25, 3.1697, 0.0005],
  [50, 12.351, 0.002],
] as const)('saturation at %d °C is %f kPa', ([at, kPa, within]) => {
  expect(Math.abs(saturationPressure(at) - kPa)).toBeLessThan(within);
});

test('water boils where its vapour reaches the pressure of the air: 101.3 kPa at 100 °C', () => {
  expect(saturationPressure(100) / 101.325).toBeCloseTo(1, 2);
});

describe('evaporation', () => {
  test('the handbook example: 500 m², 0.5 m/s, 25 °C at 50 % loses about 0.04 kg/s', () => {
    // (25 + 19·0.5)·500·(0.019826 − 0.0115) kg/h is 0.0399 kg/s as printed; our saturated air is 1.4 % richer
    const grams = evaporationRate(25, 50, 0.5) * 500;
    expect(grams / 1000).toBeGreaterThan(0.038);
    expect(grams / 1000).toBeLessThan(0.05);
  });
  test('saturated air takes nothing, and drier or faster air never takes less', () => {
    fc.assert(
      fc.property(celsius, humidity, humidity, (at, a, b) => {
        const [dry, damp] = [Math.min(a, b), Math.max(a, b)];
        expect(evaporationRate(at, 100)).toBeCloseTo(0, 12);
        expect(evaporationRate(at, dry)).toBeGreaterThanOrEqual(evaporationRate(at, damp));
        expect(evaporationRate(at, dry, 1)).toBeGreaterThanOrEqual(evaporationRate(at, dry, 0));
      }),
    );
  });
  test('dry air holds nothing; warmer air holds more', () => {
    expect(humidityRatio(20, 0)).toBe(0);
    fc.assert(
      fc.property(celsius, humidity, (at, rh) => {
        expect(humidityRatio(at + 1, rh)).toBeGreaterThanOrEqual(humidityRatio(at, rh));
      }),
    );
  });
});

test('air that is no air throws', () => {
  for (const bad of [-1, 101, NaN]) expect(() => saturationPressure(bad)).toThrow(/celsius/);
  for (const bad of [-1, 101, NaN]) expect(() => humidityRatio(20, bad)).toThrow(/relativeHumidity/);
  expect(() => evaporationRate(20, 50, -1)).toThrow(/airSpeed/);
});
