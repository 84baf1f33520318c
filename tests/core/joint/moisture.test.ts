/** Air and water, against published tables. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evaporationRate, humidityRatio, saturationPressure } from '../../../src/core/joint/moisture';

const celsius = fc.double({ min: 0, max: 60, noNaN: true });
const humidity = fc.double({ min: 0, max: 100, noNaN: true });

// The Engineering ToolBox, water saturation pressure, kPa; the formula is said to be good to 300 parts in a million
test.for([
  [20, 2.3393],
  [25, 3.1699],
  [50, 12.352],
] as const)('saturation at %d °C is %f kPa', ([at, kPa]) => {
  expect(Math.abs(saturationPressure(at) / kPa - 1)).toBeLessThan(300e-6);
});

test('water boils where its vapour reaches the pressure of the air: 101.3 kPa at 100 °C', () => {
  expect(saturationPressure(100) / 101.325).toBeCloseTo(1, 2);
});

describe('evaporation', () => {
  test('a pool of 500 m², 0.5 m/s, 25 °C at 50 %, loses 0.049 kg/s as printed', () => {
    // The Engineering ToolBox, evaporation from water surfaces: 0.02 and 0.0098 kg/kg read off a chart
    expect((evaporationRate(25, 50, 0.5) * 500) / 1000).toBeCloseTo(0.049, 3);
    // and by hand, at sea level: half of the vapour is 1.58461 kPa, so 0.0098810 kg/kg, and all of it 0.0200811
    expect(evaporationRate(25, 50, 0.5)).toBeCloseTo((34.5 * (0.0200811 - 0.009881) * 1000) / 3600, 5);
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
