/** The water that wood holds in the air of a room. The published table is in content/checks/air-and-water.yaml. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { equilibriumMoisture } from '../../../src/core/joint/equilibrium-moisture';

const celsius = fc.double({ min: 0, max: 50, noNaN: true });
const humidity = fc.double({ min: 0, max: 94, noNaN: true });

test('damper air is held more of, warmer air less, and dry air nothing', () => {
  fc.assert(
    fc.property(celsius, humidity, (at, rh) => {
      expect(equilibriumMoisture(at, rh + 1)).toBeGreaterThan(equilibriumMoisture(at, rh));
      // below about 25 °C the table is almost level; the fall is seen over twenty degrees
      if (at >= 30 && rh > 1) expect(equilibriumMoisture(at, rh)).toBeLessThan(equilibriumMoisture(at - 20, rh));
      expect(equilibriumMoisture(at, 0)).toBe(0);
    }),
  );
});

test('wood stays below the saturation of its fibre, about 30 % (from memory)', () => {
  fc.assert(
    fc.property(celsius, (at) => {
      expect(equilibriumMoisture(at, 95)).toBeLessThan(30);
    }),
  );
});

test('air that is no air of a room throws', () => {
  for (const bad of [-1, 51, NaN]) expect(() => equilibriumMoisture(bad, 50)).toThrow(/celsius/);
  for (const bad of [-1, 96, NaN]) expect(() => equilibriumMoisture(20, bad)).toThrow(/relativeHumidity/);
});
