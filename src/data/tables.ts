/**
 * The records as the browser gets them: numbers and names only, every kind as a table with its field names once.
 * Prose, notes and sources stay in the built pages, where they are read. The build writes the tables from parsed
 * records, and the calculators read them back.
 */
import { middleOf, type Basis, type Range } from '../core/base/quantity';
import type { Catalogue } from '../core/records/records';
import type { Content, Parsed } from '../schemas/kinds';
import type { ON_PAGES_ONLY } from '../schemas/records';

/** Of all fields, those of each record of a union. */
type FieldsOf<T> = T extends unknown ? keyof T & string : never;
type OnPagesOnly = (typeof ON_PAGES_ONLY)[number];
type Quantity = { low: number; middle?: number | undefined; high: number; unit: string; basis: Basis };

/** A value of a record as it comes out of a table: a quantity as a range, a group without its prose. */
type Told<T> = T extends Quantity
  ? Range
  : T extends readonly (infer One)[]
    ? readonly Told<One>[]
    : T extends object
      ? { readonly [K in keyof T as K extends OnPagesOnly ? never : K]: Told<Exclude<T[K], undefined>> }
      : T;

/** The kinds that calculators look things up in. */
export type ShelfKind = keyof Catalogue;
/** A record as it comes out of its table, its id aside. */
export type Stored<K extends ShelfKind> = Told<Parsed<K>>;

/** Field names, then rows of id and values in that order; null where a record lacks the field. */
export interface Table<Record> {
  readonly fields: readonly FieldsOf<Record>[];
  readonly rows: readonly (readonly unknown[])[];
}
export type Tables = { readonly [K in ShelfKind]: Table<Stored<K>> };

/** One letter stands for each basis, since there are hundreds of them to carry. */
const BASES: Readonly<Record<string, Basis>> = {
  p: 'published',
  c: 'common-practice',
  m: 'from-memory',
  k: 'calibrated',
  e: 'estimate',
};

type Packed = readonly [low: number, middle: number, high: number, basis: string];

const isPacked = (value: unknown): value is Packed =>
  Array.isArray(value) && value.length === 4 && typeof value[0] === 'number' && typeof value[3] === 'string';

const isQuantity = (value: object): value is Quantity => 'low' in value && 'high' in value && 'basis' in value;

/** Records to tables. `leftOut`: the fields that only pages show. */
export function tablesOf(content: Pick<Content, ShelfKind>, leftOut: readonly string[]): Tables {
  const pack = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(pack);
    if (value === null || typeof value !== 'object') return value;
    if (isQuantity(value)) {
      const letter = Object.keys(BASES).find((one) => BASES[one] === value.basis) ?? '';
      return [value.low, middleOf(value), value.high, letter] satisfies Packed;
    }
    const kept = Object.entries(value).filter(([field]) => !leftOut.includes(field));
    return Object.fromEntries(kept.map(([field, inner]) => [field, pack(inner)]));
  };
  const table = <K extends ShelfKind>(records: ReadonlyMap<string, Parsed<K>>): Table<Stored<K>> => {
    const packed = [...records].map(([id, record]) => [id, pack(record) as Record<string, unknown>] as const);
    const fields = [...new Set(packed.flatMap(([, record]) => Object.keys(record)))];
    const rows = packed.map(([id, record]) => [id, ...fields.map((field) => record[field] ?? null)]);
    return { fields: fields as FieldsOf<Stored<K>>[], rows };
  };
  return {
    papers: table<'papers'>(content.papers),
    substrates: table<'substrates'>(content.substrates),
    ingredients: table<'ingredients'>(content.ingredients),
    adhesives: table<'adhesives'>(content.adhesives),
    techniques: table<'techniques'>(content.techniques),
  };
}

/** Some two thousand values are read back before anything is answered, by a browser that has yet to make this quick: in plain loops. */
function unpack(value: unknown): unknown {
  if (value === null || typeof value !== 'object') return value;
  if (isPacked(value))
    return { low: value[0], middle: value[1], high: value[2], basis: BASES[value[3]] ?? 'estimate' } satisfies Range;
  if (Array.isArray(value)) return value.map(unpack);
  const found: Record<string, unknown> = {};
  for (const field in value) found[field] = unpack(value[field as keyof typeof value]);
  return found;
}

/** Rows come in order of id, so that ties in a ranking fall the same way on every machine. */
function mapOf<T>({ fields, rows }: Table<T>): ReadonlyMap<string, T & { readonly id: string }> {
  const records = new Map<string, T & { readonly id: string }>();
  for (const row of rows) {
    const id = row[0] as string;
    const record: Record<string, unknown> = {};
    for (let i = 0; i < fields.length; i += 1) if (row[i + 1] !== null) record[fields[i]!] = unpack(row[i + 1]);
    record['id'] = id;
    // what a table holds is what the build put there: `Stored` says of each kind what that is
    records.set(id, record as T & { readonly id: string });
  }
  return records;
}

/** Tables to what core looks things up in. That the schemas and core agree on every field is checked here, by type. */
export function catalogueFrom(tables: Tables): Catalogue {
  return {
    papers: mapOf(tables.papers),
    substrates: mapOf(tables.substrates),
    ingredients: mapOf(tables.ingredients),
    adhesives: mapOf(tables.adhesives),
    techniques: mapOf(tables.techniques),
  };
}
