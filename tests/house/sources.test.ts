/** What is called published rests on a text that was read, or quoted by one that was, and that a stranger can find. */
import { parse } from 'yaml';
import { describe, expect, test } from 'vitest';
import { FIXED } from '../../src/components/model/symbols';
import { sourceSchema } from '../../src/schemas/records';
import { filesIn, textOf } from './support/files';

const YAML = filesIn('content').filter((file) => file.endsWith('.yaml'));
const SOURCES = new Map(
  YAML.filter((file) => file.startsWith('content/sources/')).map((file) => [
    file.replace(/^.*\/|\.yaml$/g, ''),
    sourceSchema.parse(parse(textOf(file))),
  ]),
);

interface Claim {
  readonly where: string;
  readonly source: string | undefined;
}

/** Every place below a value that calls itself published, with the source that it names. */
function published(where: string, value: unknown): Claim[] {
  if (Array.isArray(value)) return value.flatMap((inner, i) => published(`${where}.${i}`, inner));
  if (value === null || typeof value !== 'object') return [];
  const record = value as Readonly<Record<string, unknown>>;
  const text = (key: string) => (typeof record[key] === 'string' ? record[key] : undefined);
  const here: Claim[] = [
    ...(record['basis'] === 'published' ? [{ where: text('id') ?? where, source: text('source') }] : []),
    ...(record['traitsBasis'] === 'published' ? [{ where: `${where}: traits`, source: text('traitsSource') }] : []),
  ];
  return [...here, ...Object.entries(record).flatMap(([key, inner]) => published(`${where}.${key}`, inner))];
}

const CLAIMS: readonly Claim[] = [
  ...YAML.flatMap((file) => published(file, parse(textOf(file)))),
  ...FIXED.filter(({ basis }) => basis === 'published').map(({ means, source }) => ({ where: means, source })),
];

test('there are claims to look at', () => {
  expect(CLAIMS.length).toBeGreaterThan(40);
});

test('every published number names a source that was read, or that a text which was read quotes', () => {
  const faults = CLAIMS.flatMap(({ where, source }) => {
    const found = SOURCES.get(source ?? '');
    if (!found) return [`${where}: no source "${source}"`];
    const sound = found.seen === 'read' || found.seen === 'quoted-by';
    return sound ? [] : [`${where}: ${source} was not seen far enough (${found.seen}); say "from-memory"`];
  });
  expect(faults).toEqual([]);
});

test('and says where in it the number stands', () => {
  const bare = [...new Set(CLAIMS.map(({ source = '' }) => source))].filter((id) => !SOURCES.get(id)?.at);
  expect(bare, 'say in `at` where: a table, a chapter, "the worked answer"').toEqual([]);
});

test('no number in a lesson rests on a text that was not seen where it is cited', () => {
  const faults = filesIn('content/lessons')
    .filter((file) => file.endsWith('.mdx'))
    .flatMap((file) =>
      [...textOf(file).matchAll(/([^.\n]|\.(?! ))*<Cite id="([a-z0-9-]+)"/g)].flatMap(([sentence, , id = '']) => {
        const { seen } = SOURCES.get(id)!;
        const words = sentence.replace(/<[^>]*>?/g, '');
        const sound = seen === 'read' || seen === 'quoted-by' || !/\d/.test(words) || words.includes('from memory');
        return sound ? [] : [`${file}: ${words.trim().slice(-90)} (${id}: ${seen})`];
      }),
    );
  expect(faults).toEqual([]);
});

/** Where core calls something published, and the sentences around it that may name the text. */
const SAID = filesIn('src/core').flatMap((file) =>
  [...textOf(file).matchAll(/\/\*\*[\s\S]*?\*\/|\/\/.*/g)]
    .map(([comment]) => comment.replace(/\s*\n\s*\* ?/g, ' '))
    .filter((comment) => /\bPublished\b|\bpublished\)|\(published:/.test(comment))
    .map((comment) => ({ file, comment })),
);

/** Names one of our sources that was seen far enough, or a journal with its year and page: a formula’s own paper. */
const namesItsText = (comment: string): boolean =>
  /\(\d{4}\) \d+|, \d{4} \(from memory/.test(comment) ||
  [...SOURCES].some(
    ([id, { short, by, identifier, seen }]) =>
      (seen === 'read' || seen === 'quoted-by') &&
      [id, by, identifier, short.replace(/,? \d{4}$/, '')].some((name) => name !== undefined && comment.includes(name)),
  );

test('what core calls published names a source that was seen, or the paper of its formula', () => {
  expect(SAID.length).toBeGreaterThan(15);
  expect(
    SAID.filter(({ comment }) => !namesItsText(comment)).map(({ file, comment }) => `${file}: ${comment}`),
  ).toEqual([]);
  expect(namesItsText('Published: 0.5 m/s over a layer of 200 µm; tables give 1000 to 10 000.')).toBe(false);
});

test('every number on the shelf says how it is known, beside it or in its range', () => {
  /** what is a recipe's, and what the answers in words speak for (`traitsBasis`) */
  const TOLD_ELSEWHERE = ['parts', 'hold'];
  const bare = (where: string, value: unknown): string[] => {
    if (Array.isArray(value)) return value.flatMap((inner) => bare(where, inner));
    if (value === null || typeof value !== 'object' || 'basis' in value) return [];
    return Object.entries(value).flatMap(([key, inner]) => {
      if (TOLD_ELSEWHERE.includes(key)) return [];
      if (typeof inner !== 'number') return bare(`${where}.${key}`, inner);
      return `${key}Basis` in value ? [] : [`${where}.${key}: say in ${key}Basis how it is known`];
    });
  };
  const SHELF = /^content\/(?:papers|substrates|ingredients|adhesives|techniques)\//;
  expect(YAML.filter((file) => SHELF.test(file)).flatMap((file) => bare(file, parse(textOf(file))))).toEqual([]);
});

test('no two sources are one text', () => {
  const names = [...SOURCES.values()].map(({ title, by, at }) => `${by}: ${title} ${at ?? ''}`);
  expect(new Set(names).size).toBe(names.length);
});

test('each source is cited, or a number rests on it', () => {
  const prose = filesIn('content', 'src')
    .filter((file) => !file.startsWith('content/sources/'))
    .map(textOf)
    .join('\n');
  expect([...SOURCES.keys()].filter((id) => !new RegExp(`\\b${id}\\b`).test(prose))).toEqual([]);
});

describe('a source that a stranger could not find is refused, and the message says what is missing', () => {
  const sound = { short: 'Nobody 1900', title: 'On paste', by: 'A. Nobody', year: 1900, url: 'https://example.org/' };
  const said = (change: object) =>
    sourceSchema.safeParse({ ...sound, seen: 'read', ...change }).error?.issues.map(({ message }) => message) ?? [];
  test('a sound one passes', () => expect(said({})).toEqual([]));
  test.for([
    ['nowhere to look', { url: undefined }, 'a stranger could not find this'],
    ['no author', { by: undefined }, 'Required'],
    ['no year', { year: undefined }, 'Invalid input'],
    ['nobody who quotes it', { seen: 'quoted-by' }, 'say which text quotes it'],
    ['not read, and no reason to name it', { seen: 'not-read' }, 'say why'],
    ['an old word for how it was seen', { seen: 'text' }, "Expected 'read' | 'excerpt' | 'quoted-by' | 'not-read'"],
  ] as const)('%s', ([, change, words]) => {
    expect(said(change).join(' ')).toContain(words);
  });
});
