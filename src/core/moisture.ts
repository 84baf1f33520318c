/** Air and water: how fast a wet joint dries into the room, and how much water dry work goes on holding. */
import { mustBeWithin } from './result';

const STANDARD_PRESSURE = 101.325; // kPa

/**
 * Saturation pressure of water vapour, kPa, 0–100 °C, by Hyland and Wexler's equation as printed in the
 * ASHRAE Handbook of Fundamentals (2017), chapter 1.
 */
export function saturationPressure(celsius: number): number {
  mustBeWithin('celsius', celsius, 0, 100);
  const t = celsius + 273.15;
  const logPascal =
    -5.8002206e3 / t +
    1.3914993 -
    4.8640239e-2 * t +
    4.1764768e-5 * t ** 2 -
    1.4452093e-8 * t ** 3 +
    6.5459673 * Math.log(t);
  return Math.exp(logPascal) / 1000;
}

/** Kilograms of water vapour per kilogram of dry air at this relative humidity, 0–100 %, at sea level. */
export function humidityRatio(celsius: number, relativeHumidity: number): number {
  mustBeWithin('relativeHumidity', relativeHumidity, 0, 100);
  const vapour = (saturationPressure(celsius) * relativeHumidity) / 100;
  return (0.621945 * vapour) / (STANDARD_PRESSURE - vapour);
}

/**
 * Evaporation from an open wet face, g/m² per second: (25 + 19 v)·(x_s − x) kg/m²h, v the air speed in m/s.
 * Published: engineering handbook form (see sources). `airSpeed` 0.1 m/s is a still room (from memory).
 */
export function evaporationRate(celsius: number, relativeHumidity: number, airSpeed = 0.1): number {
  mustBeWithin('airSpeed', airSpeed, 0, 10);
  const lack = humidityRatio(celsius, 100) - humidityRatio(celsius, relativeHumidity);
  return ((25 + 19 * airSpeed) * lack * 1000) / 3600;
}

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
