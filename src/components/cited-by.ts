/** Who leans on which source: built from the records and lessons themselves, never kept by hand. */
import { getCollection } from 'astro:content';
import { href } from './href';
import { lessonsInOrder } from './lessons';

export interface Citing {
  readonly name: string;
  readonly address: string;
  readonly kind: string;
}

const KINDS = ['papers', 'substrates', 'ingredients', 'adhesives', 'techniques', 'cautions'] as const;

/** Source id → the records and lessons that cite it. */
export async function citedBy(): Promise<ReadonlyMap<string, readonly Citing[]>> {
  const found = new Map<string, Citing[]>();
  const note = (source: string, citing: Citing) => {
    const list = found.get(source) ?? [];
    if (!list.some((other) => other.address === citing.address)) found.set(source, [...list, citing]);
  };
  for (const kind of KINDS) {
    for (const { id, data } of await getCollection(kind)) {
      const name = 'title' in data ? data.title : data.name;
      for (const source of sourcesIn(data)) note(source, { name, kind, address: href(`/shelf/#${kind}-${id}`) });
    }
  }
  for (const { id, data } of await getCollection('checks')) {
    for (const source of sourcesIn(data))
      note(source, { name: data.title, kind: 'checks', address: href(`/how-we-check/#${id}`) });
  }
  for (const { id, data, body = '' } of await lessonsInOrder()) {
    const inText = [...body.matchAll(/<Cite\s[^>]*?id="([^"]+)"/g)].map((match) => match[1]!);
    for (const source of new Set([...data.sources, ...inText])) {
      note(source, { name: data.title, kind: 'lessons', address: href(`/lessons/${id}/`) });
    }
  }
  return found;
}

/** Every source that is named anywhere inside a record. */
function sourcesIn(value: unknown): string[] {
  if (Array.isArray(value)) return value.flatMap(sourcesIn);
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    ['source', 'traitsSource', 'toleranceSource'].includes(key) && typeof inner === 'string'
      ? [inner]
      : sourcesIn(inner),
  );
}
