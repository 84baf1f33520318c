/** Import arrows run one way: core ← data ← stores ← islands ← components ← layouts, pages, lessons. */
import path from 'node:path';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { filesIn } from './support/files';
import { importsOf, layerOf, syntaxOf } from './support/imports';

/** What each layer may import: layers of src, the records of content, and packages. */
const MAY: Readonly<Record<string, readonly string[]>> = {
  core: ['core'],
  // of data only the names of presets, which lessons may name
  schemas: ['schemas', 'core', 'data', 'astro', 'yaml', 'node:fs', 'node:path', 'node:url'],
  // of schemas only types: zod stays out of the browser (the test of the built scripts' size would show it)
  data: ['data', 'core', 'schemas', 'virtual:records'],
  stores: ['stores', 'data', 'core', 'nanostores', 'papaparse', 'idb'],
  islands: ['islands', 'stores', 'core', 'preact', '@nanostores/preact', 'uqr'],
  // built once, on the maker's machine: they may ask any layer below for the numbers they show
  components: [
    'components',
    'site',
    'schemas',
    'islands',
    'stores',
    'data',
    'core',
    'styles',
    'astro',
    'astro:content',
    'temml',
    'uqr',
    // the history of the lessons, for the feed
    'node:child_process',
    // bundles what a lesson fetches when it is first used
    'esbuild',
    // draw the share pictures
    'fontkitten',
    'sharp',
    'node:fs',
    'node:path',
  ],
  layouts: ['layouts', 'site', 'components', 'data', 'core', 'styles', 'astro', 'astro:content'],
  pages: ['pages', 'site', 'layouts', 'components', 'data', 'core', 'styles', 'astro', 'astro:content'],
  // run by the build: on the records, on the text of lessons, on the pages when they are made
  build: [
    'build',
    // the records, and the tables made of them
    'schemas',
    'data',
    'core',
    // what the service worker runs besides its library
    'components',
    'astro',
    'pagefind',
    'workbox-build',
    // names a file of styles by what it holds
    'node:crypto',
    'node:fs',
    'node:path',
    'node:url',
    'node:util',
    'node:zlib',
  ],
  'site.ts': [],
  'content.config.ts': ['schemas', 'astro', 'astro:content'],
  content: ['components'],
};

const CODE = /\.(?:ts|tsx|mjs|js|jsx|astro|mdx)$/;
const FILES = filesIn('src', 'content').filter((file) => CODE.test(file) && !file.endsWith('.d.ts'));
const ownLayer = (file: string) => layerOf(`./${file.split('/').at(-1)}`, file);

test.for(Object.keys(MAY))('the layer %s imports only what it may', (layer) => {
  const files = FILES.filter((file) => ownLayer(file) === layer);
  const wrong = files.flatMap((file) =>
    importsOf(file)
      .filter((address) => !MAY[layer]?.includes(layerOf(address, file)))
      .map((address) => `${file} imports ${address}`),
  );
  expect(wrong).toEqual([]);
});

test('every file of src belongs to a layer', () => {
  expect(FILES.length).toBeGreaterThan(0);
  expect(FILES.filter((file) => !(ownLayer(file) in MAY))).toEqual([]);
});

test('lessons import their components by #components, so that they can be moved', () => {
  const lessons = FILES.filter((file) => file.endsWith('.mdx'));
  const wrong = lessons.flatMap((file) => importsOf(file).filter((address) => !address.startsWith('#components/')));
  expect(wrong).toEqual([]);
});

test('the address readers used above know an arrow that runs the wrong way when they see one', () => {
  expect(layerOf('../../stores/choose', 'src/core/paper/paper.ts')).toBe('stores');
  expect(layerOf('#components/Figure.astro', 'content/lessons/a.mdx')).toBe('components');
  expect(layerOf('../styles/index.css', 'src/layouts/Page.astro')).toBe('styles');
  expect(layerOf('@nanostores/preact', 'src/islands/choose/Choose.tsx')).toBe('@nanostores/preact');
  expect(layerOf('preact/hooks', 'src/islands/choose/Choose.tsx')).toBe('preact');
  expect(importsOf('src/data/catalogue.ts')).toContain('virtual:records');
  expect(importsOf('src/layouts/Page.astro')).toContain('../styles/index.css');
});

/**
 * The rooms of core, from the ground up. A file may import from its own room and from rooms in rows above; rooms
 * in one row never import each other.
 */
const ROOMS: readonly (readonly string[])[] = [
  ['base'],
  ['link'],
  ['safety'],
  ['records'],
  ['stats'],
  ['paper'],
  ['adhesive'],
  ['joint'],
  ['choose', 'mix', 'cover', 'flat', 'make', 'cut', 'measure', 'bench', 'trial'],
  ['learn'],
  ['handover'],
  ['class'],
];
/** A calculator has one name in every layer; `shared` and `parts` hold what several of them use. */
const CALCULATORS = ['choose', 'mix', 'cover', 'flat', 'make', 'cut', 'measure', 'bench', 'trial', 'class'];

const roomOf = (file: string) => /^src\/core\/([^/]+)\//.exec(file)?.[1] ?? '';
const rowOf = (room: string) => ROOMS.findIndex((row) => row.includes(room));

/** Why one file of core may not import another, or undefined when it may. */
function refusal(from: string, to: string): string | undefined {
  const [own, other] = [roomOf(from), roomOf(to)];
  if (own === other) return undefined;
  if (rowOf(own) === rowOf(other)) return `${from} imports ${to}: ${own} and ${other} are peers`;
  return rowOf(other) < rowOf(own) ? undefined : `${from} imports ${to}: ${other} stands above ${own}`;
}

/** Every ring of imports, as its files in order, each ring once. `graph` maps a file to what it imports. */
function ringsIn(graph: ReadonlyMap<string, readonly string[]>): string[][] {
  const rings: string[][] = [];
  const done = new Set<string>();
  const walk = (file: string, path: readonly string[]) => {
    const at = path.indexOf(file);
    if (at >= 0) return void rings.push([...path.slice(at), file]);
    if (done.has(file)) return;
    for (const next of graph.get(file) ?? []) walk(next, [...path, file]);
    done.add(file);
  };
  for (const file of graph.keys()) walk(file, []);
  return rings;
}

/** A file and the files of src that it imports, types included. */
const fileOf = (address: string, from: string) => {
  const whole = path.posix.join(path.posix.dirname(from), address);
  return FILES.find((file) => file === whole || file.replace(/\.\w+$/, '') === whole);
};
const graphOf = (files: readonly string[]) =>
  new Map(
    files.map((file) => [
      file,
      importsOf(file).flatMap((address) => (address.startsWith('.') ? (fileOf(address, file) ?? []) : [])),
    ]),
  );

describe('the rooms of core', () => {
  const core = FILES.filter((file) => ownLayer(file) === 'core');

  test('every file of core stands in a room of the plan', () => {
    expect(core.filter((file) => rowOf(roomOf(file)) < 0)).toEqual([]);
    expect(ROOMS.flat().filter((room) => !core.some((file) => roomOf(file) === room))).toEqual([]);
  });

  test('arrows run only to rooms further down, and never between peers', () => {
    const wrong = [...graphOf(core)].flatMap(([from, all]) => all.flatMap((to) => refusal(from, to) ?? []));
    expect(wrong).toEqual([]);
  });

  test('it says so when one runs the wrong way', () => {
    expect(refusal('src/core/paper/sheet.ts', 'src/core/choose/job.ts')).toContain('stands above');
    expect(refusal('src/core/base/format.ts', 'src/core/link/pairs.ts')).toContain('stands above');
    expect(refusal('src/core/mix/paste.ts', 'src/core/cover/plan.ts')).toContain('peers');
    expect(refusal('src/core/handover/cover-to-mix.ts', 'src/core/class/plan.ts')).toContain('stands above');
    expect(refusal('src/core/class/glue.ts', 'src/core/choose/judge.ts')).toBeUndefined();
    expect(refusal('src/core/mix/paste.ts', 'src/core/mix/words.ts')).toBeUndefined();
  });
});

test('no file imports itself by way of others, types included', () => {
  expect(ringsIn(graphOf(FILES))).toEqual([]);
});

test('a ring is seen when there is one', () => {
  const ring = new Map([
    ['a', ['b']],
    ['b', ['c']],
    ['c', ['a', 'd']],
    ['d', []],
  ]);
  expect(ringsIn(ring)).toEqual([['a', 'b', 'c', 'a']]);
});

test('calculators bear one name in every layer', () => {
  const foldersIn = (layer: string) =>
    new Set(
      filesIn(layer).flatMap(
        (file) =>
          file
            .slice(layer.length + 1)
            .split('/')
            .slice(0, -1)[0] ?? `${file} stands in no room`,
      ),
    );
  for (const [layer, more] of [
    ['src/stores', ['lesson', 'shared']],
    ['src/islands', ['parts']],
  ] as const) {
    expect([...foldersIn(layer)].filter((folder) => ![...CALCULATORS, ...more].includes(folder))).toEqual([]);
  }
  const rooms = [...foldersIn('src/components')];
  for (const calculator of CALCULATORS) expect(rooms).toContain(calculator);
});

describe('the core is pure', () => {
  /** what knows of a page, a clock, chance, storage or the network */
  const FORBIDDEN = new Set([
    ...['document', 'window', 'globalThis', 'self', 'navigator', 'location', 'localStorage', 'sessionStorage'],
    ...['Date', 'performance', 'setTimeout', 'setInterval', 'requestAnimationFrame'],
    ...['JSON', 'fetch', 'crypto', 'process', 'console', 'Intl', 'structuredClone'],
  ]);

  /** Names used as values or types; `range.window` and `{ window: 3 }` are names of one's own. */
  function worldly(file: string): string[] {
    const found: string[] = [];
    const visit = (node: ts.Node) => {
      if (ts.isIdentifier(node)) {
        const { parent } = node;
        const own =
          (ts.isPropertyAccessExpression(parent) && parent.name === node) ||
          ((ts.isPropertyAssignment(parent) || ts.isPropertySignature(parent)) && parent.name === node);
        if (!own && FORBIDDEN.has(node.text)) found.push(node.text);
      }
      if (ts.isPropertyAccessExpression(node) && node.getText() === 'Math.random') found.push('Math.random');
      ts.forEachChild(node, visit);
    };
    visit(syntaxOf(file));
    return found;
  }

  test.for(FILES.filter((file) => ownLayer(file) === 'core'))('%s', (file) => {
    expect(worldly(file)).toEqual([]);
  });
});
