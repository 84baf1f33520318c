/** From compact records (see compact-records.mjs) to the shapes that core reads. */
import type { Basis, Range } from '../core/quantity';
import type { Catalogue } from '../core/records';

type Compact = readonly [low: number, middle: number, high: number, basis: keyof typeof BASES];

/** The letters of compact-records.mjs, read back. */
const BASES = {
  p: 'published',
  c: 'common-practice',
  m: 'from-memory',
  k: 'calibrated',
  e: 'estimate',
} as const satisfies Record<string, Basis>;

const isCompact = (value: unknown): value is Compact =>
  Array.isArray(value) && value.length === 4 && typeof value[0] === 'number' && typeof value[3] === 'string';

function expand(value: unknown): unknown {
  if (isCompact(value))
    return { low: value[0], middle: value[1], high: value[2], basis: BASES[value[3]] } satisfies Range;
  if (Array.isArray(value)) return value.map(expand);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, expand(inner)]));
}

/** Records by kind, each kind keyed by file path; a record's id is its file's name. */
export type RecordFiles = Readonly<Record<keyof Catalogue, Readonly<Record<string, unknown>>>>;

function mapOf(files: Readonly<Record<string, unknown>>): ReadonlyMap<string, never> {
  const entries = Object.entries(files).map(([path, record]) => {
    const id = path.slice(path.lastIndexOf('/') + 1, -'.yaml'.length);
    return [id, { id, ...(expand(record) as object) } as never] as const;
  });
  // By id, so that ties in a ranking fall the same way on every machine.
  return new Map(entries.sort(([a], [b]) => (a < b ? -1 : 1)));
}

export function catalogueFrom(files: RecordFiles): Catalogue {
  return {
    papers: mapOf(files.papers),
    substrates: mapOf(files.substrates),
    ingredients: mapOf(files.ingredients),
    adhesives: mapOf(files.adhesives),
    techniques: mapOf(files.techniques),
  };
}
