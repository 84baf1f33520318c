// @ts-check
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parse } from 'yaml';

/**
 * What the browser gets of content/: numbers and names only. Prose, notes and sources stay in the built
 * pages, where they are read; islands carry what they compute with. `expand.ts` reads it back.
 */

const CONTENT = fileURLToPath(new URL('../../content/', import.meta.url));
export const KINDS = /** @type {const} */ (['papers', 'substrates', 'ingredients', 'adhesives', 'techniques']);
const MODULE = 'virtual:records';

/** Vite plugin: `import records from 'virtual:records'`. */
export function compactRecords() {
  return {
    name: 'compact-records',
    /** @param {string} id */
    resolveId: (id) => (id === MODULE ? `\0${MODULE}` : null),
    /** @param {string} id @this {{ addWatchFile(file: string): void }} */
    load(id) {
      if (id !== `\0${MODULE}`) return null;
      for (const kind of KINDS) {
        for (const name of readdirSync(join(CONTENT, kind))) this.addWatchFile(join(CONTENT, kind, name));
      }
      // A string that JSON parses is smaller and quicker than the same as script.
      return `export default JSON.parse(${JSON.stringify(JSON.stringify(readCompact()))})`;
    },
  };
}

/** Every kind as a table: the field names once, then a row for each record, its id first. */
export function readCompact() {
  return Object.fromEntries(KINDS.map((kind) => [kind, tableOf(kind)]));
}

/** @param {string} kind */
function tableOf(kind) {
  const files = readdirSync(join(CONTENT, kind)).filter((name) => name.endsWith('.yaml'));
  const records = files
    .sort()
    .map((name) => [name.slice(0, -'.yaml'.length), compact(parse(readFileSync(join(CONTENT, kind, name), 'utf8')))]);
  const fields = [...new Set(records.flatMap(([, record]) => Object.keys(record)))];
  return { fields, rows: records.map(([id, record]) => [id, ...fields.map((field) => record[field] ?? null)]) };
}

/** One letter stands for each basis, since there are hundreds of them to carry.
 * @type {Record<string, string>} */
const BASIS_LETTERS = { published: 'p', 'common-practice': 'c', 'from-memory': 'm', calibrated: 'k', estimate: 'e' };

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

/** A quantity becomes [low, middle, high, letter of its basis]; prose goes.
 * @param {any} value @returns {any} */
function compact(value) {
  if (Array.isArray(value)) return value.map(compact);
  if (value === null || typeof value !== 'object') return value;
  if ('low' in value && 'high' in value && 'basis' in value) {
    return [value.low, middleOf(value), value.high, BASIS_LETTERS[value.basis]];
  }
  const kept = Object.entries(value).filter(([key]) => !PROSE.has(key));
  return Object.fromEntries(kept.map(([key, inner]) => [key, compact(inner)]));
}

/** A range without a stated middle takes the geometric mean; one that touches zero, the arithmetic.
 * @param {{ low: number, high: number, middle?: number | undefined }} number */
export function middleOf({ low, high, middle }) {
  if (middle !== undefined) return middle;
  const mean = low > 0 ? Math.sqrt(low * high) : (low + high) / 2;
  return Number(mean.toPrecision(4));
}
