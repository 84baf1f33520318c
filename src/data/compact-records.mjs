// @ts-check
import { parse } from 'yaml';

/**
 * Vite plugin: a record imported from content/ reaches the browser as numbers only. Prose, notes and
 * sources stay in the built pages, where they are read; islands carry what they compute with.
 * A quantity becomes [low, middle, high, letter of its basis].
 */
export function compactRecords() {
  return {
    name: 'compact-records',
    /** @param {string} code @param {string} file */
    transform(code, file) {
      if (!/\/content\/[^?]*\.yaml$/.test(file)) return null;
      return { code: `export default ${JSON.stringify(compact(parse(code)))}`, map: null };
    },
  };
}

/** One letter stands for each basis, since there are hundreds of them to carry. `expand.ts` reads them back.
 * @type {Record<string, string>} */
export const BASIS_LETTERS = {
  published: 'p',
  'common-practice': 'c',
  'from-memory': 'm',
  calibrated: 'k',
  estimate: 'e',
};

const PROSE = new Set([
  'about',
  'alsoCalled',
  'note',
  'grainNote',
  'thickestNote',
  'traitsNote',
  'traitsBasis',
  'traitsSource',
  'lookAlikes',
]);

/** @param {any} value @returns {any} */
export function compact(value) {
  if (Array.isArray(value)) return value.map(compact);
  if (value === null || typeof value !== 'object') return value;
  if ('low' in value && 'high' in value && 'basis' in value) {
    return [value.low, middleOf(value), value.high, BASIS_LETTERS[value.basis]];
  }
  return Object.fromEntries(
    Object.entries(value)
      .filter(([key]) => !PROSE.has(key))
      .map(([key, inner]) => [key, compact(inner)]),
  );
}

/** A range without a stated middle takes the geometric mean; one that touches zero, the arithmetic.
 * @param {{ low: number, high: number, middle?: number }} number */
export function middleOf({ low, high, middle }) {
  if (middle !== undefined) return middle;
  const mean = low > 0 ? Math.sqrt(low * high) : (low + high) / 2;
  return Number(mean.toPrecision(4));
}
