/** Amounts as they are typed and measured, and sentences that keep a number with its unit. */
import { figure } from './format';

const NO_BREAK = '\u00a0';

/** A measured or typed amount: to `digits` at most, without idle zeros: 2.5, 220, 0.75. */
export const plain = (value: number, digits = 3): string =>
  figure(value, digits)
    .replace(/(\.\d*?)0+$/, '$1')
    .replace(/\.$/, '');

const NUMBER_THEN_UNIT = /(\d) (?=(?:g\/m²|g|ml|l|mm|cm|cm²|m²|µm|s|min|h|mPa·s|°C|%|parts)(?![\p{L}\d]))/gu;

const NUMBER_TIMES_NUMBER = /(\d) × (?=\d)/g;

/** A sentence whose numbers stay on one line with their units, and a size with its two sides. */
export const tied = (text: string): string =>
  text.replace(NUMBER_TIMES_NUMBER, `$1${NO_BREAK}×${NO_BREAK}`).replace(NUMBER_THEN_UNIT, `$1${NO_BREAK}`);

/** A record's name inside a sentence: "White PVA dispersion" → "white PVA dispersion". */
export const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
