/**
 * How the numbers and words of records are written in pages: as they stand in the record, where core/format
 * rounds what was computed. No arithmetic beyond rounding lives here.
 */

const THIN_SPACE = '\u202f';
const NO_BREAK = '\u00a0';

/** Fixed decimals, with a thin space in thousands and a true minus: 75.1946 → "75.2" for decimals = 1. */
export function decimals(value: number, places = 0): string {
  if (!Number.isFinite(value)) throw new RangeError(`a number to be printed must be finite; got ${value}`);
  return grouped(value, places);
}

/** A number with its unit, never broken across lines. */
export function numberWithUnit(number: string, unit: string): string {
  if (unit === '1' || unit === '') return number;
  return unit === '×' ? `${number}${THIN_SPACE}×` : `${number}${NO_BREAK}${unitText(unit)}`;
}

/** Units as they are read: the record's "g/m²/√s" asks for two slashes where people write one. */
function unitText(unit: string): string {
  return unit === 'g/m²/√s' ? 'g/m² per √s' : unit;
}

/** A record's own number, as it was written down: no figures added, none dropped. */
export function asWritten(value: number): string {
  const text = String(value);
  return grouped(value, text.includes('.') ? text.split('.')[1]!.length : 0);
}

/** low–high, or the one value when they are the same. */
export function lowToHigh(low: string, high: string): string {
  return low === high ? low : `${low}–${high}`;
}

function grouped(value: number, places: number): string {
  const [whole = '', rest] = Math.abs(value).toFixed(places).split('.');
  const spaced = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, THIN_SPACE) : whole;
  const digits = rest ? `${spaced}.${rest}` : spaced;
  return value < 0 && Number(digits.replaceAll(THIN_SPACE, '')) !== 0 ? `−${digits}` : digits;
}

export const BASIS_WORDS = {
  published: 'published',
  'common-practice': 'common practice',
  'from-memory': 'from memory',
  calibrated: 'fitted to checks',
  estimate: 'estimate',
  measured: 'measured',
} as const;

/** What each basis word promises; shown wherever a number is opened. */
export const BASIS_MEANS: Record<keyof typeof BASIS_WORDS, string> = {
  published: 'Taken from the source named here.',
  'common-practice': 'What practitioners commonly state; no single source stands behind it.',
  'from-memory': 'Remembered, not looked up for this site.',
  calibrated: 'Fitted so that the model agrees with the checks named here.',
  estimate: 'Our own estimate, from what the material is like.',
  measured: 'Measured by the reader.',
};
