/** How numbers and words of the records are written in pages. No arithmetic beyond rounding lives here. */

const THIN_SPACE = '\u2009';
const NO_BREAK = '\u00a0';

/** Significant figures, a true minus sign, a thin space in thousands: 37480 → "37 480" for figures = 4. */
export function figures(value: number, significant = 3): string {
  if (!Number.isFinite(value)) throw new RangeError(`a number to be printed must be finite; got ${value}`);
  return grouped(Number(value.toPrecision(significant)), Math.max(0, significant - 1 - magnitude(value)));
}

/** Fixed decimals, same manners: 75.1946 → "75.2" for decimals = 1. */
export function decimals(value: number, places = 0): string {
  if (!Number.isFinite(value)) throw new RangeError(`a number to be printed must be finite; got ${value}`);
  return grouped(value, places);
}

/** A number with its unit, never broken across lines. */
export function withUnit(number: string, unit: string): string {
  if (unit === '1' || unit === '') return number;
  return unit === '×' ? `${number}${THIN_SPACE}×` : `${number}${NO_BREAK}${unitText(unit)}`;
}

/** Units as they are read: the record's "g/m²/√s" asks for two slashes where people write one. */
export function unitText(unit: string): string {
  return unit === 'g/m²/√s' ? 'g/m² per √s' : unit;
}

/** A record's own number, as it was written down: no figures added, none dropped. */
export function asWritten(value: number): string {
  const text = String(value);
  return grouped(value, text.includes('.') ? text.split('.')[1]!.length : 0);
}

/** low–high, or the one value when they are the same. */
export function span(low: string, high: string): string {
  return low === high ? low : `${low}–${high}`;
}

function magnitude(value: number): number {
  return value === 0 ? 0 : Math.floor(Math.log10(Math.abs(value)));
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

/** A time to two figures at most, in the unit a person would use: 37 s, 4 min, 1.5 h. */
export function roundSeconds(seconds: number): string {
  if (seconds < 1) return 'under 1 s';
  if (seconds < 90) return withUnit(figures(seconds, seconds < 10 ? 1 : 2), 's');
  if (seconds < 5400) return withUnit(figures(seconds / 60, seconds < 600 ? 1 : 2), 'min');
  return withUnit(figures(seconds / 3600, 2), 'h');
}
