/** From compact records (see compact-records.mjs) to the shapes that core reads. */
import type { Basis, Range } from '../core/base/quantity';
import type { Catalogue } from '../core/records/records';

/** A kind of record as a table: field names, then rows of id and values; null where a record lacks the field. */
export interface Table {
  readonly fields: readonly string[];
  readonly rows: readonly (readonly unknown[])[];
}
export type Tables = Readonly<Record<keyof Catalogue, Table>>;

/** The letters of compact-records.mjs, read back. */
const BASES: Readonly<Record<string, Basis>> = {
  p: 'published',
  c: 'common-practice',
  m: 'from-memory',
  k: 'calibrated',
  e: 'estimate',
};

type Compact = readonly [low: number, middle: number, high: number, basis: string];

const isCompact = (value: unknown): value is Compact =>
  Array.isArray(value) && value.length === 4 && typeof value[0] === 'number' && typeof value[3] === 'string';

function expand(value: unknown): unknown {
  if (isCompact(value)) {
    const [low, middle, high, letter] = value;
    return { low, middle, high, basis: BASES[letter] ?? 'estimate' } satisfies Range;
  }
  if (Array.isArray(value)) return value.map(expand);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, expand(inner)]));
}

/** Rows come in order of id, so that ties in a ranking fall the same way on every machine. */
function mapOf({ fields, rows }: Table): ReadonlyMap<string, never> {
  return new Map(
    rows.map(([id, ...values]) => {
      const present = fields.flatMap((field, i) => (values[i] === null ? [] : [[field, expand(values[i])]]));
      return [id as string, { id, ...(Object.fromEntries(present) as object) } as never];
    }),
  );
}

export function catalogueFrom(tables: Tables): Catalogue {
  return {
    papers: mapOf(tables.papers),
    substrates: mapOf(tables.substrates),
    ingredients: mapOf(tables.ingredients),
    adhesives: mapOf(tables.adhesives),
    techniques: mapOf(tables.techniques),
  };
}
