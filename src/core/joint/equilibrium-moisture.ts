/** How much water dry work goes on holding in the air of a room. */
import { mustBeWithin } from '../base/result';

/** Where the sorption equation is used: the air of rooms. Near saturation it is no longer sure. */
export const SORPTION_LIMITS = { celsius: { low: 0, high: 50 }, humidity: { low: 0, high: 95 } };

/**
 * Water that wood holds in air of this temperature (0–50 °C) and relative humidity (0–95 %) once it has
 * come to rest, in per cent of its dry weight: Hailwood and Horrobin's equation with two hydrates.
 * Published: Simpson, FPL-RN-0268 (1998), in °C; the Wood Handbook's table is what it was fitted to. It is
 * of wood, the nearest cellulose that has been tabled with such care; paper holds less.
 */
export function equilibriumMoisture(celsius: number, relativeHumidity: number): number {
  mustBeWithin('celsius', celsius, SORPTION_LIMITS.celsius.low, SORPTION_LIMITS.celsius.high);
  mustBeWithin('relativeHumidity', relativeHumidity, SORPTION_LIMITS.humidity.low, SORPTION_LIMITS.humidity.high);
  const t = celsius;
  const w = 349 + 1.29 * t + 0.0135 * t * t;
  const k = 0.805 + 0.000736 * t - 0.00000273 * t * t;
  const k1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
  const k2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
  const kh = (k * relativeHumidity) / 100;
  const hydrates = k1 * kh + 2 * k1 * k2 * kh * kh;
  return (1800 / w) * (kh / (1 - kh) + hydrates / (1 + k1 * kh + k1 * k2 * kh * kh));
}
