/** Every number of the site that rests on a source, and how the rest are known: read from the records, never kept by hand. */
import { getCollection } from 'astro:content';
import { BASIS_WORDS, asWritten, lowToHigh, numberWithUnit } from './format';
import { href } from './href';
import { FIXED } from './model/symbols';

export interface RestingNumber {
  /** "Lokta, light: grammage" */
  readonly name: string;
  /** "30–75 g/m²" */
  readonly value: string;
  readonly address: string;
}

interface Stored {
  readonly low: number;
  readonly high: number;
  readonly unit: string;
  readonly basis: keyof typeof BASIS_WORDS;
  readonly source?: string;
}

const PLAIN_UNITS = { solidDensity: 'g/cm³', percent: '%', thickest: 'mPa·s', usedAt: '°C', madeAt: '°C' } as const;

const KINDS = ['papers', 'substrates', 'ingredients', 'adhesives', 'techniques'] as const;

/** Source id → the published numbers that rest on it: of records, of checks, of the model. */
export async function numbersOn(): Promise<ReadonlyMap<string, readonly RestingNumber[]>> {
  const found = new Map<string, RestingNumber[]>();
  const note = (source: string, number: RestingNumber) => found.set(source, [...(found.get(source) ?? []), number]);
  for (const { owner, field, number, address } of await storedNumbers()) {
    const value = numberWithUnit(lowToHigh(asWritten(number.low), asWritten(number.high)), number.unit);
    if (number.source && number.basis === 'published')
      note(number.source, { name: `${owner}: ${field}`, value, address });
  }
  for (const { id, data } of await getCollection('checks')) {
    if (data.kind !== 'formula') continue;
    for (const row of data.rows)
      if (row.source && row.basis === 'published')
        note(row.source, {
          name: row.says,
          value: numberWithUnit(asWritten(row.expected), row.unit),
          address: href(`/how-we-check/#${id}`),
        });
  }
  for (const { source, basis, means, value } of FIXED)
    if (source && basis === 'published')
      note(source, { name: `The model: ${means}`, value, address: href('/how-the-model-works/#constants') });
  return found;
}

/** How many numbers of the shelf are known in each way, the surest first. */
export async function basisCounts(): Promise<readonly (readonly [words: string, count: number])[]> {
  const numbers = await storedNumbers();
  return (['published', 'common-practice', 'calibrated', 'from-memory', 'estimate'] as const).map(
    (basis) => [BASIS_WORDS[basis], numbers.filter(({ number }) => number.basis === basis).length] as const,
  );
}

async function storedNumbers() {
  const all: { owner: string; field: string; number: Stored; address: string }[] = [];
  for (const kind of KINDS) {
    for (const { id, data } of await getCollection(kind)) {
      for (const [field, number] of numbersIn(data))
        all.push({ owner: data.name, field, number, address: href(`/shelf/#${kind}-${id}`) });
    }
  }
  return all;
}

/** Every number in a record with the name of its field in words. */
function numbersIn(value: unknown, field = ''): (readonly [field: string, number: Stored])[] {
  if (value === null || typeof value !== 'object') return [];
  if (Array.isArray(value)) return value.flatMap((inner) => numbersIn(inner, field));
  if ('low' in value && 'high' in value && 'basis' in value) return [[inWords(field), value as Stored]];
  return [...plainNumbersIn(value), ...Object.entries(value).flatMap(([key, inner]) => numbersIn(inner, key))];
}

/** Numbers without a range: each stands beside how it is known, "usedAt" beside "usedAtBasis". */
function plainNumbersIn(record: object): (readonly [field: string, number: Stored])[] {
  const fields = record as Readonly<Record<string, unknown>>;
  return Object.entries(PLAIN_UNITS).flatMap(([field, unit]) => {
    const [number, basis] = [fields[field], fields[`${field}Basis`]];
    if (typeof number !== 'number' || typeof basis !== 'string') return [];
    return [[inWords(field), { low: number, high: number, unit, basis: basis as Stored['basis'] }] as const];
  });
}

/** "leastDryCoat" → "least dry coat" */
const inWords = (field: string): string => field.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
