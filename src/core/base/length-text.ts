/** Lengths as people type them: "235", "23,5 cm", "9 1/4 in", "9¼″", "3/4\"". */
import { parseNumber } from './number-text';
import { fail, ok, type ErrorCode, type Result } from './result';

export type LengthUnit = 'mm' | 'cm' | 'in';

/** Exact: the international inch. */
export const MILLIMETRES: Readonly<Record<LengthUnit, number>> = { mm: 1, cm: 10, in: 25.4 };

const UNIT_WORDS: Readonly<Record<string, LengthUnit>> = {
  mm: 'mm',
  millimetre: 'mm',
  millimetres: 'mm',
  millimeters: 'mm',
  cm: 'cm',
  centimetre: 'cm',
  centimetres: 'cm',
  centimeters: 'cm',
  in: 'in',
  ins: 'in',
  inch: 'in',
  inches: 'in',
  '"': 'in',
  '″': 'in',
  '”': 'in',
  "''": 'in',
};

const SIGNS: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅓': '1/3',
  '⅔': '2/3',
};

export interface LengthField {
  /** taken when the text names none */
  readonly unit: LengthUnit;
  readonly field: string;
  /** as a sentence begins: "The width" */
  readonly what: string;
  /** mm */
  readonly low: number;
  readonly high: number;
}

/** mm: what is nearer than this is the same length. */
const HAIR = 0.0005;

/** Millimetres, or what is wrong with the text and what is allowed. */
export function parseLength(text: string, limits: LengthField): Result<number> {
  const { unit, field, what, low, high } = limits;
  const problem = (code: ErrorCode, message: string) =>
    fail([{ field, code, message, limits: { low: low / MILLIMETRES[unit], high: high / MILLIMETRES[unit], unit } }]);
  const allowed = `from ${atLeast(low, unit)} to ${atMost(high, unit)} ${unit}`;
  if (text.trim() === '') return problem('empty', `${what} is missing. Give a length ${allowed}.`);
  const { number, own } = splitUnit(text.trim().toLowerCase());
  const value = number === undefined ? undefined : fractionOf(number);
  if (value === undefined || own === 'unknown') {
    return problem('not-a-number', `${what} is a length such as ${EXAMPLES[unit]}. You can add mm, cm or in.`);
  }
  const typed = value * MILLIMETRES[own ?? unit];
  // a limit kept in mm and shown in inches is a hair from itself when it is read back
  const millimetres = [low, high].find((limit) => Math.abs(limit - typed) < HAIR) ?? typed;
  const said = own && own !== unit ? ` What you typed is ${inUnit(millimetres, unit)} ${unit}.` : '';
  if (millimetres < low) return problem('too-small', `${what} must be ${allowed}.${said}`);
  if (millimetres > high) return problem('too-large', `${what} must be ${allowed}.${said}`);
  return ok(millimetres);
}

/** Limits as they are printed, never past what is allowed: typed back, each is taken. */
const atLeast = (millimetres: number, unit: LengthUnit): string => limitText(millimetres, unit, Math.ceil);
const atMost = (millimetres: number, unit: LengthUnit): string => limitText(millimetres, unit, Math.floor);

/** As a rule shows it where that is exact, else to a thousandth of the unit, `inwards` being the way to round. */
function limitText(millimetres: number, unit: LengthUnit, inwards: (thousandths: number) => number): string {
  const ruled = inUnit(millimetres, unit);
  if (fractionOf(ruled)! * MILLIMETRES[unit] === millimetres) return ruled;
  const thousandths = inwards(Number(((millimetres / MILLIMETRES[unit]) * 1000).toFixed(6)));
  return String(thousandths / 1000);
}

const EXAMPLES: Readonly<Record<LengthUnit, string>> = { mm: '235', cm: '23.5', in: '9 1/4' };

/** A length for people: mm to one place, cm to two, inches as the nearest 32nd when that is close enough. */
export function inUnit(millimetres: number, unit: LengthUnit): string {
  const value = millimetres / MILLIMETRES[unit];
  if (unit !== 'in') return String(Number(value.toFixed(unit === 'mm' ? 1 : 2)));
  const parts = Math.round(value * 32);
  const whole = Math.floor(parts / 32);
  if (parts === 0 || Math.abs(parts / 32 - value) > 0.02) return String(Number(value.toFixed(3)));
  let [top, bottom] = [parts % 32, 32];
  while (top > 0 && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return top === 0 ? String(whole) : whole === 0 ? `${top}/${bottom}` : `${whole} ${top}/${bottom}`;
}

/** Width and height as they stand in a sentence, in one unit: "148 × 216 mm". Takes mm. */
export const sizeText = (widthMm: number, heightMm: number, unit: LengthUnit): string =>
  `${inUnit(widthMm, unit)}\u00a0×\u00a0${inUnit(heightMm, unit)}\u00a0${unit}`;

/** A length as someone would have typed it, and exactly: read again it is the same to a thousandth of a millimetre. */
export function asTyped(millimetres: number, unit: LengthUnit): string {
  const text = inUnit(millimetres, unit);
  const again = fractionOf(text);
  return again !== undefined && Math.abs(again * MILLIMETRES[unit] - millimetres) < HAIR
    ? text
    : String(Number((millimetres / MILLIMETRES[unit]).toFixed(unit === 'mm' ? 3 : 5)));
}

function splitUnit(text: string): { number?: string; own?: LengthUnit | 'unknown' } {
  const found = /^([-+−\d\s.,/⁄¼½¾⅛⅜⅝⅞⅓⅔\u2009\u202f\u00a0]+)([a-z"″”']*)\.?$/.exec(text);
  if (!found) return {};
  const [, number = '', word = ''] = found;
  if (word === '') return { number };
  return { number, own: Object.hasOwn(UNIT_WORDS, word) ? UNIT_WORDS[word]! : 'unknown' };
}

/** "9 1/4", "3/4", "9¼" or a plain number; undefined when it is none of these. */
function fractionOf(text: string): number | undefined {
  const plain = text
    .replace(/[¼½¾⅛⅜⅝⅞⅓⅔]/, (sign) => ` ${SIGNS[sign]}`)
    .replace('⁄', '/')
    .trim();
  const found = /^(?:(\d+)[\s\u2009\u202f\u00a0-]+)?(\d+)\s*\/\s*(\d+)$/.exec(plain);
  if (!found) return parseNumber(plain);
  const [whole, top, bottom] = [Number(found[1] ?? 0), Number(found[2]), Number(found[3])];
  // "9 12/4" is a slip, not twelve inches.
  return bottom === 0 || (found[1] !== undefined && top >= bottom) ? undefined : whole + top / bottom;
}
