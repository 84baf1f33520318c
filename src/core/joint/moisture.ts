/** Air and water: how fast a wet joint dries into the room. */
import { mustBeWithin } from '../base/result';

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
 * Published: The Engineering ToolBox, evaporation from water surfaces. `airSpeed` 0.1 m/s is a still room (from memory).
 */
export function evaporationRate(celsius: number, relativeHumidity: number, airSpeed = 0.1): number {
  mustBeWithin('airSpeed', airSpeed, 0, 10);
  const lack = humidityRatio(celsius, 100) - humidityRatio(celsius, relativeHumidity);
  return ((25 + 19 * airSpeed) * lack * 1000) / 3600;
}
