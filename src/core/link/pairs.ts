/** key=value&… as links carry it. Reading never throws. */

const LONGEST = 4000;

/**
 * The pairs of key and value in the tail of a link, and the keys of those that cannot be read. Takes any text and
 * never throws; past 4000 characters it cuts between two pairs and says so.
 */
export function parsePairs(text: unknown): { query: ReadonlyMap<string, string>; broken: readonly string[] } {
  const query = new Map<string, string>();
  const broken: string[] = [];
  const given = typeof text === 'string' ? text.replace(/^[?#]/, '') : '';
  // a program that passes a link on may write `=` as `%3D` and `&` as `&amp;`
  const whole = (given.includes('=') ? given : (unescaped(given) ?? '')).replaceAll('&amp;', '&');
  // Cut between two pairs, for half a number is another number.
  const source = whole.length > LONGEST ? whole.slice(0, Math.max(0, whole.lastIndexOf('&', LONGEST))) : whole;
  if (source !== whole) broken.push('all past its first 4000 characters');
  for (const pair of source.split('&')) {
    const cut = pair.indexOf('=');
    if (cut <= 0) continue;
    const value = unescaped(pair.slice(cut + 1));
    if (value === undefined) broken.push(pair.slice(0, cut));
    else query.set(pair.slice(0, cut), value);
  }
  return { query, broken };
}

/** Half a character, as a cut text may end in, cannot stand in a link and is dropped. */
export const writePairs = (pairs: readonly (readonly [string, string])[]): string =>
  pairs.map(([key, value]) => `${key}=${encodeURIComponent(value.replace(/\p{Cs}/gu, ''))}`).join('&');

function unescaped(text: string): string | undefined {
  try {
    return decodeURIComponent(text.replace(/\+/g, ' '));
  } catch {
    return undefined;
  }
}

/** A short fingerprint of an answer: the model's version and its leading figures. */
export const fingerprint = (version: number, figures: readonly number[]): string =>
  [version, ...figures.map((value) => Number(value.toPrecision(3)))].join('_');

/** Whether two fingerprints are one answer, near enough to act on: every figure within 2 %. Undefined text is no answer. */
export function sameFigures(seen: string, now: string): boolean {
  const [a, b] = [figuresIn(seen), figuresIn(now)];
  if (!a || !b || a.length !== b.length) return false;
  return a.every((value, i) => Math.abs(value - b[i]!) <= 0.02 * Math.max(Math.abs(value), Math.abs(b[i]!)));
}

/** The figures of a fingerprint without its version; undefined when it is none. */
export function figuresIn(text: string): readonly number[] | undefined {
  if (!/^\d{1,6}(_\d{1,9}(\.\d{1,6})?){1,6}$/.test(text)) return undefined;
  return text.split('_').slice(1).map(Number);
}
