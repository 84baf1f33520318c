/** What a page makes a phone fetch and run stays small. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { brotliCompressSync, gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { ORIGIN, wakeIslands, withPage } from './support/browser';
import { PAGES, PAGES_WITH_ISLANDS, documentOf, fileAt, type BuiltPage } from './support/dist';

/** A lesson with its island; a calculator's own page carries all of its fields, tables and drawings besides. */
const SCRIPT_LIMIT = { lesson: 30_000, calculator: 42_000 };
const CSS_LIMIT = 8_000;

const gzip = (content: string | Buffer) => gzipSync(content, { level: 9 }).length;
const brotli = (content: string | Buffer) => brotliCompressSync(content).length;
const sum = (numbers: readonly number[]) => numbers.reduce((total, number) => total + number, 0);

function contentOf(address: string): Buffer {
  const file = fileAt(address);
  if (file === undefined) throw new Error(`${address} is not in dist/`);
  return readFileSync(file);
}

/** Static imports in a built module; `import()` is left out, for what it names is not loaded unasked. */
function importsOf(address: string): string[] {
  const code = contentOf(address).toString('utf8');
  return [...code.matchAll(/\b(?:import|from)\s*["'](\.{1,2}\/[^"']+)["']/g)].map(([, target = '']) =>
    path.posix.join(path.posix.dirname(address), target),
  );
}

/** Addresses of all scripts that opening and using the page loads. */
function scriptsOf(page: BuiltPage): Set<string> {
  const document = documentOf(page);
  const roots = [
    ...[...document.querySelectorAll('script[src]')].map((script) => script.getAttribute('src')),
    ...[...document.querySelectorAll('astro-island')].flatMap((island) =>
      ['component-url', 'renderer-url', 'before-hydration-url'].map((name) => island.getAttribute(name)),
    ),
  ];
  const found = new Set<string>();
  const open = roots.filter((address): address is string => Boolean(address));
  for (let address = open.pop(); address !== undefined; address = open.pop()) {
    if (found.has(address)) continue;
    found.add(address);
    open.push(...importsOf(address));
  }
  return found;
}

function weigh(page: BuiltPage) {
  const document = documentOf(page);
  // what a search engine reads of a lesson is data: nothing runs it
  const inline = [...document.querySelectorAll('script:not([src], [type="application/ld+json"])')].map(
    (script) => script.textContent,
  );
  const sheets = [...document.querySelectorAll('link[rel="stylesheet"]')].map((link) =>
    contentOf(link.getAttribute('href') ?? ''),
  );
  const styles = [...document.querySelectorAll('style')].map((style) => style.textContent);
  return {
    script: sum([...scriptsOf(page)].map((address) => gzip(contentOf(address)))) + sum(inline.map(gzip)),
    css: sum([...sheets, ...styles].map(brotli)),
    html: gzip(page.html),
  };
}

const WEIGHED = PAGES.map((page) => ({ page, ...weigh(page) }));
const kB = (bytes: number) => `${(bytes / 1000).toFixed(1)} kB`.padStart(8);

test('the site has pages with calculators', () => {
  expect(PAGES_WITH_ISLANDS.length).toBeGreaterThan(0);
  const rows = WEIGHED.filter(({ page }) => PAGES_WITH_ISLANDS.includes(page)).map(
    ({ page, html, script, css }) => `${kB(html)} ${kB(script)} ${kB(css)}   ${page.address}`,
  );
  console.log(['HTML gzip script gzip CSS brotli', ...rows].join('\n'));
});

describe('script is at most 30 kB gzip in a lesson, 42 kB on a calculator of its own', () => {
  const islands = WEIGHED.filter(({ page }) => PAGES_WITH_ISLANDS.includes(page));
  test.for(islands.map((row) => [row.page.address, row] as const))('%s', ([address, { script }]) => {
    expect(script).toBeLessThanOrEqual(SCRIPT_LIMIT[address.includes('/lessons/') ? 'lesson' : 'calculator']);
  });
});

test('styles of every page are at most 8 kB brotli', () => {
  const heavy = WEIGHED.filter(({ css }) => css > CSS_LIMIT);
  expect(heavy.map(({ page, css }) => `${page.address}: ${css} bytes`)).toEqual([]);
});

test('the count above names every script that a browser asks for', async () => {
  const page = WEIGHED.toSorted((a, b) => b.script - a.script).find((row) =>
    PAGES_WITH_ISLANDS.includes(row.page),
  )?.page;
  if (!page) throw new Error('no page has a calculator');
  const asked = await withPage({}, async (tab) => {
    const scripts = new Set<string>();
    tab.on('request', (request) => {
      if (request.resourceType() === 'script') scripts.add(new URL(request.url()).pathname);
    });
    await tab.goto(ORIGIN + page.address);
    await wakeIslands(tab);
    return scripts;
  });
  expect(asked.size).toBeGreaterThan(0);
  expect([...asked].filter((address) => !scriptsOf(page).has(address))).toEqual([]);
});
