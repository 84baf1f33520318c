/** Where things stand and what they are called. */
import { describe, expect, test } from 'vitest';
import { filesIn, textOf, topLevel } from './support/files';

const TOP = [
  ...['package.json', 'package-lock.json', 'tsconfig.json', 'astro.config.mjs', 'README.md', 'DEVELOPERS.md'],
  ...['src', 'content', 'public', 'tests'],
  ...['.ci', '.config', '.editorconfig', '.gitignore', '.npmrc'],
];

const ALL = [
  ...filesIn('src', 'content', 'public', 'tests', '.ci', '.config'),
  ...topLevel().filter((n) => n.includes('.')),
];
const TEXT =
  /\.(?:ts|tsx|mjs|js|astro|mdx|md|yaml|yml|json|css|svg|txt|html)$|^\.(?:editorconfig|gitignore|npmrc)$|^\.ci\/run$/;
const TEXTS = [...new Set(ALL)].filter((file) => TEXT.test(file) && file !== 'package-lock.json');

test('the top level holds only what it should', () => {
  expect(topLevel().filter((name) => !TOP.includes(name))).toEqual([]);
});

test('files are named in one way: words joined by hyphens, components in capitals', () => {
  const name =
    /^(?:\.?[a-z0-9]+(?:[-.][a-z0-9]+)*|[A-Z][A-Za-z0-9]*\.(?:astro|tsx)|README\.md|DEVELOPERS\.md|.*LICENSE.*|_headers)$/;
  const dynamic = /^\[(?:\.\.\.)?[a-z]+\](?:\.[a-z]+)+$/;
  const wrong = ALL.filter((file) => {
    const last = file.split('/').at(-1) ?? '';
    return !name.test(last) && !dynamic.test(last);
  });
  expect(wrong).toEqual([]);
});

// Bracketed letters keep this file from finding itself.
const UNWANTED = [
  ['a path of one machine', /(?<![\w.])\/(?:wor[k]|hom[e]|tm[p]|User[s])\/|\bC:\\User[s]\\/],
  ['work left lying', /\bTO[D]O\b|\bFIX[M]E\b|\bX[X]X\b|lorem[ ]ipsum/i],
  ['a test switched off or run alone', /\b(?:test|it|describe)\.(?:on[l]y|sk[i]p)\b/],
] as const;

describe('no file names', () => {
  test.for(UNWANTED)('%s', ([, pattern]) => {
    const found = TEXTS.flatMap((file) => {
      const hit = pattern.exec(`${file}\n${textOf(file)}`);
      return hit ? [`${file}: ${hit[0]}`] : [];
    });
    expect(found).toEqual([]);
  });
});

test('prose raises its voice nowhere', () => {
  const prose = TEXTS.filter((file) => file.startsWith('content/') && !file.startsWith('content/sources/'));
  const found = prose.flatMap((file) => {
    const hit = /[\p{L}\d)”’"']!(?=\s|$)/mu.exec(textOf(file));
    return hit ? [`${file}: …${textOf(file).slice(Math.max(0, hit.index - 20), hit.index + 2)}`] : [];
  });
  expect(found).toEqual([]);
});

/** Tests that ask something of many rooms at once stand in `tests/house`. */
test('each test of core stands beside one file of core, and bears its name', () => {
  const sources = new Set(filesIn('src/core'));
  const tests = filesIn('tests/core').filter((file) => file.endsWith('.test.ts'));
  expect(tests.length).toBeGreaterThan(100);
  expect(tests.filter((file) => !sources.has(file.replace(/^tests/, 'src').replace(/\.test\.ts$/, '.ts')))).toEqual([]);
});

const EXPORTED =
  /^export (?:declare )?(?:async )?(?:function\*?|const|let|class|interface|type|enum) ([A-Za-z_$][\w$]*)/gm;

/** Routes must export what Astro calls them by. */
const ROUTES = new Set(['GET', 'getStaticPaths']);

/** Exported names, each with the files that give it a meaning. */
function exportedIn(texts: readonly (readonly [file: string, text: string])[]): Map<string, Set<string>> {
  const found = new Map<string, Set<string>>();
  for (const [file, text] of texts)
    for (const [, name = ''] of text.matchAll(EXPORTED))
      if (!ROUTES.has(name)) found.set(name, (found.get(name) ?? new Set()).add(file));
  return found;
}

const ofTwoMeanings = (found: ReadonlyMap<string, ReadonlySet<string>>) =>
  [...found].flatMap(([name, files]) => (files.size > 1 ? [`${name}: ${[...files].join(', ')}`] : []));

test('an exported name means one thing in the whole source', () => {
  const found = exportedIn(
    filesIn('src')
      .filter((file) => /\.(?:tsx?|mjs)$/.test(file))
      .map((file) => [file, textOf(file)]),
  );
  expect(found.size).toBeGreaterThan(1000);
  expect(ofTwoMeanings(found)).toEqual([]);
  expect(
    ofTwoMeanings(
      exportedIn([
        ['a.ts', 'export const curl = 1;\n'],
        ['b.ts', 'export function curl() {}\n'],
      ]),
    ),
  ).toEqual(['curl: a.ts, b.ts']);
});
