/** Every record fits its shape, and every name in it leads to a record that exists. */
import { parse } from 'yaml';
import type { z } from 'astro/zod';
import { describe, expect, test } from 'vitest';
import { catalogue } from '../../src/data/catalogue';
import { checkSchema } from '../../src/schemas/checks';
import { glossarySchema } from '../../src/schemas/glossary';
import * as schemas from '../../src/schemas/records';
import { filesIn, textOf } from './support/files';

const SHAPES: Readonly<Record<string, z.ZodTypeAny>> = {
  papers: schemas.paperSchema,
  substrates: schemas.substrateSchema,
  ingredients: schemas.ingredientSchema,
  adhesives: schemas.adhesiveSchema,
  techniques: schemas.techniqueSchema,
  cautions: schemas.cautionSchema,
  sources: schemas.sourceSchema,
  checks: checkSchema,
  glossary: glossarySchema,
};

interface Found {
  readonly file: string;
  readonly kind: string;
  readonly id: string;
  readonly data: unknown;
}

const RECORDS: readonly Found[] = filesIn('content')
  .filter((file) => /\.ya?ml$/.test(file))
  .map((file) => {
    const [, kind = '', name = ''] = file.split('/');
    return { file, kind, id: name.replace(/\.ya?ml$/, ''), data: parse(textOf(file)) as unknown };
  });
const LESSONS: readonly Found[] = filesIn('content')
  .filter((file) => file.endsWith('.mdx'))
  .map((file) => {
    const head = /^---\r?\n([\s\S]*?)\r?\n---/.exec(textOf(file))?.[1] ?? '';
    return { file, kind: 'lessons', id: file.replace(/^.*\/|\.mdx$/g, ''), data: parse(head) as unknown };
  });
const ALL = [...RECORDS, ...LESSONS];

const idsOf = (kind: string) => new Set(ALL.filter((record) => record.kind === kind).map(({ id }) => id));

/** Every value in a record that stands under a key, however deep; lists are opened. */
function under(keys: readonly string[], value: unknown): string[] {
  if (Array.isArray(value)) return value.flatMap((inner) => under(keys, inner));
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, inner]) => {
    const deeper = under(keys, inner);
    if (!keys.includes(key)) return deeper;
    const here = (Array.isArray(inner) ? inner : [inner]).filter((one): one is string => typeof one === 'string');
    return [...here, ...deeper];
  });
}

describe('fits its shape', () => {
  test.for(RECORDS.map((record) => [record.file, record] as const))('%s', ([, { kind, data }]) => {
    const shape = SHAPES[kind];
    if (!shape) throw new Error(`no shape is known for the records in content/${kind}`);
    const read = shape.safeParse(data);
    expect(read.error?.issues.map(({ path, message }) => `${path.join('.')}: ${message}`) ?? []).toEqual([]);
  });
});

describe('names only what exists', () => {
  const LINKS = [
    ['sources', ['source', 'sources', 'traitsSource', 'toleranceSource']],
    ['cautions', ['cautions']],
    ['papers', ['lookAlikes', 'paper']],
    ['substrates', ['substrate']],
    ['adhesives', ['adhesive']],
    ['techniques', ['technique']],
    ['checks', ['checks']],
    ['lessons', ['needs', 'seeLesson']],
  ] as const;
  test.for(LINKS)('%s', ([kind, keys]) => {
    const known = idsOf(kind);
    const dangling = ALL.flatMap(({ file, data }) =>
      under(keys, data)
        .filter((id) => !known.has(id))
        .map((id) => `${file}: ${id}`),
    );
    expect(dangling).toEqual([]);
  });
});

test('a recipe is made of ingredients, or of adhesives that are made of them', () => {
  const faults: string[] = [];
  const follow = (id: string, trail: readonly string[]): void => {
    const adhesive = catalogue.adhesives.get(id);
    if (catalogue.ingredients.has(id)) return;
    if (trail.includes(id)) faults.push(`goes round in a ring: ${[...trail, id].join(' → ')}`);
    else if (adhesive?.form !== 'wet')
      faults.push(`not an ingredient or a wet adhesive: ${[...trail, id].join(' → ')}`);
    else for (const part of adhesive.parts) follow(part.of, [...trail, id]);
  };
  for (const { id, form } of catalogue.adhesives.values()) if (form === 'wet') follow(id, []);
  expect(faults).toEqual([]);
});

// Sources may wait for their lesson: the page of sources says of each what leans on it.
describe('is used somewhere, in a record, a lesson or a page', () => {
  const prose = filesIn('content', 'src')
    .filter((file) => /\.(?:mdx|astro|ts|tsx)$/.test(file))
    .map(textOf)
    .join('\n');
  test.for([['cautions', ['cautions']]] as const)('each of the %s', ([kind, keys]) => {
    const named = new Set(ALL.flatMap(({ data }) => under(keys, data)));
    const idle = [...idsOf(kind)].filter((id) => !named.has(id) && !new RegExp(`["'\`]${id}["'\`]`).test(prose));
    expect(idle).toEqual([]);
  });
});

test('whatever says it is published names its source', () => {
  const bare: string[] = [];
  const visit = (file: string, value: unknown, path: string): void => {
    if (value === null || typeof value !== 'object') return;
    const record = value as Readonly<Record<string, unknown>>;
    if (record['basis'] === 'published' && !record['source'] && !record['sources']) bare.push(`${file}: ${path}`);
    if (record['traitsBasis'] === 'published' && !record['traitsSource']) bare.push(`${file}: traits`);
    for (const [key, inner] of Object.entries(record)) visit(file, inner, `${path}.${key}`);
  };
  for (const { file, data } of ALL) visit(file, data, '');
  expect(bare).toEqual([]);
});

test('the shelf is wide enough: 30 papers or more, from tissue to card', () => {
  const papers = RECORDS.filter(({ kind }) => kind === 'papers').map(({ data }) => schemas.paperSchema.parse(data));
  expect(papers.length).toBeGreaterThanOrEqual(30);
  expect(Math.min(...papers.map(({ grammage }) => grammage.low))).toBeLessThanOrEqual(9);
  expect(Math.max(...papers.map(({ grammage }) => grammage.high))).toBeGreaterThanOrEqual(400);
});

test('every record on the shelf is in the catalogue that the calculators read', () => {
  for (const kind of ['papers', 'substrates', 'ingredients', 'adhesives', 'techniques'] as const) {
    expect([...catalogue[kind].keys()].sort()).toEqual([...idsOf(kind)].sort());
  }
});

test('names are told apart: no two records of a kind share one', () => {
  for (const kind of ['papers', 'substrates', 'ingredients', 'adhesives', 'techniques'] as const) {
    const names = [...catalogue[kind].values()].map(({ name }) => name.toLowerCase());
    expect(new Set(names).size, kind).toBe(names.length);
  }
});
