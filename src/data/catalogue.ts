/**
 * The records of content/, read once into maps. What arrives here has passed the schemas in the build
 * and has been cut down to numbers (see compact-records.mjs); this file only gives the numbers names.
 */
import type { Basis, Range } from '../core/quantity';
import type { Adhesive, Catalogue, Ingredient, Paper, Substrate, Technique } from '../core/records';

type Compact = readonly [low: number, middle: number, high: number, basis: Basis];

const isCompact = (value: unknown): value is Compact =>
  Array.isArray(value) && value.length === 4 && typeof value[0] === 'number' && typeof value[3] === 'string';

function expand(value: unknown): unknown {
  if (isCompact(value)) return { low: value[0], middle: value[1], high: value[2], basis: value[3] } satisfies Range;
  if (Array.isArray(value)) return value.map(expand);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, expand(inner)]));
}

function mapOf<T>(files: Record<string, unknown>): ReadonlyMap<string, T> {
  return new Map(
    Object.entries(files)
      .map(([path, record]) => {
        const id = path.slice(path.lastIndexOf('/') + 1, -'.yaml'.length);
        return [id, { id, ...(expand(record) as object) } as T] as const;
      })
      .sort(([a], [b]) => (a < b ? -1 : 1)),
  );
}

export const catalogue: Catalogue = {
  papers: mapOf<Paper>(import.meta.glob('../../content/papers/*.yaml', { eager: true, import: 'default' })),
  substrates: mapOf<Substrate>(import.meta.glob('../../content/substrates/*.yaml', { eager: true, import: 'default' })),
  ingredients: mapOf<Ingredient>(import.meta.glob('../../content/ingredients/*.yaml', { eager: true, import: 'default' })),
  adhesives: mapOf<Adhesive>(import.meta.glob('../../content/adhesives/*.yaml', { eager: true, import: 'default' })),
  techniques: mapOf<Technique>(import.meta.glob('../../content/techniques/*.yaml', { eager: true, import: 'default' })),
};
