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

/**
 * Saturation pressure of ethanol vapour, kPa, −20 to 90 °C, by Antoine's equation with the coefficients that
 * textbooks print (from memory: 8.20417, 1642.89, 230.300 for mmHg and °C). 5.8 kPa at 20 °C.
 */
export function ethanolPressure(celsius: number): number {
  mustBeWithin('celsius', celsius, -20, 90);
  return 0.133322 * Math.pow(10, 8.20417 - 1642.89 / (celsius + 230.3));
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

/** Ethanol vapour spreads through air this much more slowly than water vapour, to the power 2/3. From memory: 0.12 against 0.25 cm²/s. */
const ETHANOL_SPREADS = Math.pow(0.12 / 0.25, 2 / 3);

/**
 * Evaporation of ethanol from an open wet face, g/m² per second, by the same form as for water: its own vapour
 * pressure drives it, whatever the humidity. `airSpeed` 0.1 m/s is a still room (from memory).
 */
export function ethanolEvaporationRate(celsius: number, airSpeed = 0.1): number {
  mustBeWithin('airSpeed', airSpeed, 0, 10);
  const vapour = ethanolPressure(celsius);
  const ratio = ((46.07 / 28.97) * vapour) / (STANDARD_PRESSURE - vapour);
  return ((25 + 19 * airSpeed) * ratio * ETHANOL_SPREADS * 1000) / 3600;
}
