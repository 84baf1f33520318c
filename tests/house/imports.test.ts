/** Import arrows run one way: core ← data ← stores ← islands ← components ← layouts, pages, lessons. */
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { filesIn } from './support/files';
import { importsOf, layerOf, syntaxOf } from './support/imports';

/** What each layer may import: layers of src, the records of content, and packages. */
const MAY: Readonly<Record<string, readonly string[]>> = {
  core: ['core'],
  schemas: ['schemas', 'core', 'astro'],
  // of schemas only types: zod stays out of the browser (the test of the built scripts' size would show it)
  data: ['data', 'core', 'schemas', 'virtual:records'],
  stores: ['stores', 'data', 'core', 'nanostores', 'papaparse', 'idb'],
  islands: ['islands', 'stores', 'core', 'preact', '@nanostores/preact', 'uqr'],
  // built once, on the maker's machine: they may ask any layer below for the numbers they show
  components: [
    'components',
    'site',
    'build',
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
    // draw the share pictures
    'fontkitten',
    'sharp',
    'node:fs',
    'node:path',
  ],
  layouts: ['layouts', 'site', 'components', 'data', 'core', 'styles', 'astro', 'astro:content'],
  pages: ['pages', 'site', 'build', 'layouts', 'components', 'data', 'core', 'styles', 'astro', 'astro:content'],
  // run by the build: on the records, on the text of lessons, on the pages when they are made
  build: [
    'build',
    'node:child_process',
    // names what is kept from build to build
    'node:crypto',
    'node:fs',
    'node:path',
    'node:url',
    'node:util',
    'node:zlib',
    'pagefind',
    'preact',
    'workbox-build',
    'yaml',
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
  expect(layerOf('../stores/choice', 'src/core/paper.ts')).toBe('stores');
  expect(layerOf('#components/Figure.astro', 'content/lessons/a.mdx')).toBe('components');
  expect(layerOf('../styles/index.css', 'src/layouts/Page.astro')).toBe('styles');
  expect(layerOf('@nanostores/preact', 'src/islands/Chooser.tsx')).toBe('@nanostores/preact');
  expect(layerOf('preact/hooks', 'src/islands/Chooser.tsx')).toBe('preact');
  expect(importsOf('src/data/catalogue.ts')).toContain('virtual:records');
  expect(importsOf('src/layouts/Page.astro')).toContain('../styles/index.css');
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
