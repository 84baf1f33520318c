/** Every record and lesson comes in by the door without a fault, and every name in it leads to a record that exists. */
import { parse } from 'yaml';
import { describe, expect, test } from 'vitest';
import { contentFiles, lessonParts } from '../../src/schemas/read-content';
import { framesOf, PLATES } from '../../src/components/draw/plates';
import { allPhotos, platesWithPhotos } from '../../src/components/photo/photos';
import { catalogue } from '../../src/data/catalogue';
import { admit, faultText } from '../../src/schemas/door';
import { didYouMean } from '../../src/schemas/ids';
import { tagFault, tagsIn, takesOf } from './support/component-props';
import { filesIn, textOf } from './support/files';

const READ = admit(contentFiles(), lessonParts());

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

test('every file comes in by the door', () => {
  expect(READ.faults.map(faultText).join('\n')).toBe('');
  const files = filesIn('content').filter((file) => !file.startsWith('content/photographs/'));
  expect(Object.values(READ.content).reduce((sum, records) => sum + records.size, 0)).toBe(files.length);
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
  const papers = [...READ.content.papers.values()];
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
    const records = [...catalogue[kind]].map(([id, { name }]) => ({ id, name: name.toLowerCase() }));
    const shared = records.filter(({ id, name }) => records.some((other) => other.name === name && other.id !== id));
    expect(shared, `content/${kind}: these share a name; change the line "name:" of one of them`).toEqual([]);
  }
});

test('a photograph that is named is there, and a file of content/plates bears the name of a plate', () => {
  const missing = allPhotos().filter((name) => !filesIn('content').includes(`content/photographs/${name}`));
  expect(missing, 'put these into content/photographs, or mend their names where they are named').toEqual([]);
  const strange = platesWithPhotos().filter((id) => !(id in PLATES));
  expect(strange, 'these files of content/plates name no plate; the names stand in components/draw/plates.ts').toEqual(
    [],
  );
});

test('a plate that a lesson shows is drawn, and one that is to move has frames', () => {
  const faults = filesIn('content/lessons').flatMap((file) => {
    const text = textOf(file);
    // of ['id', 'words under it'] the id
    const still = [...text.matchAll(/<Plates\s+of=\{(\[[\s\S]*?\])\}/g)].flatMap(([, list = '']) =>
      [...list.replace(/\[\s*(['"][^'"]*['"])\s*,[^\]]*\]/g, '$1').matchAll(/['"]([^'"]*)['"]/g)].map(
        ([, id = '']) => id,
      ),
    );
    const moving = [...text.matchAll(/<Moving\s+id="([^"]*)"/g)].map(([, id = '']) => id);
    return [
      ...[...still, ...moving]
        .filter((id) => !(id in PLATES))
        .map((id) => `${file}: no plate is called "${id}"${didYouMean(id, Object.keys(PLATES))}`),
      ...moving
        .filter((id) => id in PLATES && framesOf(id).length < 2)
        .map((id) => `${file}: "${id}" does not move; show it with <Plates of={['${id}']} />`),
    ];
  });
  expect(faults).toEqual([]);
});

describe('what a lesson hands to its components is what they take', () => {
  const files = filesIn('src/components').filter((file) => file.endsWith('.astro'));
  const WAYS = new Map(files.map((file) => [file.replace(/^.*\/|\.astro$/g, ''), file]));
  const faultsIn = (text: string) =>
    tagsIn(text).flatMap((tag) => {
      const file = WAYS.get(tag.name);
      return (file && tagFault(tag, takesOf(file))) || [];
    });
  test.for(filesIn('content/lessons'))('%s', (file) => {
    expect(faultsIn(textOf(file)).map((fault) => `${file}: ${fault}`)).toEqual([]);
  });
  test('what is left out, misspelt or too much is told', () => {
    expect(faultsIn('<Bow paper="wove-text" boardMm={3} spanMm={300} />')).toEqual([]);
    expect(faultsIn('<Bow\n paper="wove-text" boardMm={3} />')).toEqual([
      '<Bow> is without spanMm; it takes paper, spanMm, boardMm (if you like), pressed (if you like), lining (if you like)',
    ]);
    expect(faultsIn('<Bow paper="wove-text" boardmm={3} spanMm={300} />').join()).toMatch(
      /^<Bow> takes no "boardmm"; did you mean "boardMm"\?; it takes paper, spanMm/,
    );
    // one of two is needed
    expect(faultsIn('<Drinks dropSeconds={5} />')).toEqual([]);
    expect(faultsIn('<Drinks afterSeconds={5} />').join()).toMatch(/is without dropSeconds; .*; or cobb/);
    expect(faultsIn('<PoundsTable of={1} />')).toEqual(['<PoundsTable> takes no "of"; it takes nothing']);
    expect(faultsIn('`<Bow />` {/* <Bow /> */}')).toEqual([]);
  });
});
