/** Numbers as a reader should see them: as many digits as they deserve, a unit always, thin spaces in thousands. */

const THIN_SPACE = '\u202f';
const NO_BREAK = '\u00a0';

/** `value` to `digits` significant digits, without exponents. */
export function figure(value: number, digits = 2): string {
  if (!Number.isFinite(value)) return 'not known';
  if (value === 0) return '0';
  const decimals = Math.min(
    100,
    Math.max(0, digits - 1 - Math.floor(Math.log10(Math.abs(Number(value.toPrecision(digits)))))),
  );
  const [whole = '0', fraction] = Number(value.toPrecision(digits)).toFixed(decimals).split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+(?!\d))/g, THIN_SPACE);
  const trimmed = digits > 2 ? fraction : fraction?.replace(/0+$/, '');
  return trimmed ? `${grouped}.${trimmed}` : grouped;
}

/** A number with its unit, kept on one line: `digits` significant digits. */
export const withUnit = (value: number, unit: string, digits = 2): string =>
  `${figure(value, digits)}${NO_BREAK}${unit}`;

/** A range in one unit: "50 to 110 s"; one figure when both ends read the same. */
export function span(low: number, high: number, unit: string, digits = 2): string {
  const from = figure(low, digits);
  const to = figure(high, digits);
  return from === to ? `${from}${NO_BREAK}${unit}` : `${from} to ${to}${NO_BREAK}${unit}`;
}

/** Seconds as people say them: "about 8 s", "4 min", "an hour or more". */
export function duration(seconds: number): string {
  if (seconds >= 3600) return 'an hour or more';
  if (seconds < 1) return 'under 1\u00a0s';
  if (seconds < MINUTES_FROM) return `${nearest(seconds, seconds < 10 ? 1 : seconds < 60 ? 5 : 10)}${NO_BREAK}s`;
  return withUnit(nearest(seconds / 60, seconds < 1200 ? 1 : 5), 'min');
}

const nearest = (value: number, step: number): number => Math.round(value / step) * step;

/** A span of time: "50 to 100 s", "2 to 5 min", "40 s to 3 min". */
export function durationSpan(low: number, high: number): string {
  const [from, to] = [duration(low), duration(high)];
  if (from === to) return from;
  if (high >= 3600) return `${from} or more`;
  const unit = /\u00a0(s|min)$/.exec(to)?.[0];
  const shared = unit !== undefined && from.endsWith(unit) && !from.startsWith('under');
  return `${shared ? from.slice(0, -unit.length) : from} to ${to}`;
}

/** From here on a time is told in whole minutes, s: a finer step than a sixth is more than is known. Our own line. */
const MINUTES_FROM = 105;

/** A chance in words that do not overclaim: "about 7 in 10". */
export function chanceInTen(chance: number): string {
  if (chance >= 0.95) return 'more than 9 in 10';
  if (chance <= 0.05) return 'less than 1 in 10';
  return `about ${Math.round(chance * 10)} in 10`;
}

/** A measured or typed amount: to `digits` at most, without idle zeros: 2.5, 220, 0.75. */
export const formatAmount = (value: number, digits = 3): string =>
  figure(value, digits)
    .replace(/(\.\d*?)0+$/, '$1')
    .replace(/\.$/, '');

const NUMBER_THEN_UNIT =
  /(\d) (?=(?:g\/m²|g\/cm³|g\/ml|g|kg|lb|ml|l|µm|mm|cm²|cm|m²|m|s|min|h|Pa·s|mPa·s|kPa|N\/m|N·m\/g|°C|%|per cent|parts)(?![\p{L}\d]))/gu;

const NUMBER_TIMES_NUMBER = /(\d) × (?=\d)/g;

/** A sentence whose numbers stay on one line with their units, and a size with its two sides. */
export const keepUnits = (text: string): string =>
  text.replace(NUMBER_TIMES_NUMBER, `$1${NO_BREAK}×${NO_BREAK}`).replace(NUMBER_THEN_UNIT, `$1${NO_BREAK}`);

/** A name or sentence inside another: "White PVA dispersion" → "white PVA dispersion"; "PVA" and "A4" keep their capitals. */
export const lowerFirst = (text: string): string =>
  /^\p{Lu}(?![\p{Lu}\d])/u.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
