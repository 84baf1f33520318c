// @ts-check
/**
 * `npm run measure:compare -- OLD NEW`: two built folders side by side. Says of every page what its text has lost and
 * gained, and, by kind of page, what it weighs as sent with brotli. Asserts nothing.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { brotliCompressSync } from 'node:zlib';

const [OLD, NEW] = process.argv.slice(2);
if (!OLD || !NEW) throw new Error('name two built folders: the one of before, the one of now');

/** Of how many pages with the same change the text is shown. */
const SHOWN = 3;

/** @param {string} root every page of a build, by address */
const pagesIn = (root) =>
  readdirSync(root, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.html'))
    .map((name) => name.split(path.sep).join('/'))
    .sort();

/** The kind of a page, as one writes and looks at them. @param {string} page */
function kindOf(page) {
  const [first = '', second = ''] = page.split('/');
  if (first === 'shelf') return second.endsWith('.html') ? 'other' : `shelf/${second}`;
  if (['answers', 'lessons', 'trials', 'embed'].includes(first)) return second === 'index.html' ? 'other' : first;
  return ['choose', 'mix', 'cover', 'flat', 'make', 'cut', 'paper', 'workshop'].includes(first) ? first : 'other';
}

const ENTITIES = /** @type {Record<string, string>} */ ({
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  nbsp: '\u00a0',
});
/** @param {string} text */
const decoded = (text) =>
  text.replace(/&(?:#(\d+)|#x([\da-f]+)|(\w+));/gi, (whole, tens, hex, name) =>
    tens
      ? String.fromCodePoint(Number(tens))
      : hex
        ? String.fromCodePoint(parseInt(hex, 16))
        : (ENTITIES[name] ?? whole),
  );

/** What a page says to eye and ear, a line for each block: its text, its title, and the words in its attributes. @param {string} html */
function textOf(html) {
  const spoken = html
    .replace(/\s+/g, ' ')
    .replace(/<(script|style|template)\b[\s\S]*?<\/\1>|<!--[\s\S]*?-->/g, '')
    .replace(/<[^>]*?\s(?:alt|aria-label|title|placeholder)="([^"]+)"[^>]*>/g, (tag, words) => `${tag}\n${words}\n`)
    .replace(
      /<(?!\/?(?:a|abbr|b|bdi|cite|code|dfn|em|i|kbd|mark|q|s|small|span|strong|sub|sup|time|var|tspan)\b)[^>]*>/g,
      '\n',
    )
    .replace(/<[^>]*>/g, '');
  return decoded(spoken)
    .split('\n')
    .map((line) => line.replace(/ +/g, ' ').trim())
    .filter(Boolean);
}

/** Lines that one has more often than the other. @param {readonly string[]} of @param {readonly string[]} without */
function only(of, without) {
  const left = new Map();
  for (const line of without) left.set(line, (left.get(line) ?? 0) + 1);
  return of.filter((line) => {
    const count = left.get(line) ?? 0;
    left.set(line, count - 1);
    return count <= 0;
  });
}

/** @param {string} root */
function weigher(root) {
  const weights = new Map();
  /** @param {string} file */
  const weight = (file) => {
    if (!weights.has(file)) weights.set(file, brotliCompressSync(readFileSync(path.join(root, file))).length);
    return weights.get(file);
  };
  /** @param {string} address */
  const fileOf = (address) => {
    const parts = address.split('/').filter(Boolean);
    while (parts.length > 0 && !existsSync(path.join(root, ...parts))) parts.shift();
    return parts.join('/');
  };
  /** @param {string} file @returns {string[]} */
  const importsOf = (file) =>
    [...readFileSync(path.join(root, file), 'utf8').matchAll(/\b(?:import|from)\s*["'](\.{1,2}\/[^"']+)["']/g)].map(
      ([, target = '']) => path.posix.join(path.posix.dirname(file), target),
    );
  /** @param {readonly string[]} roots */
  const closure = (roots) => {
    const all = new Set(roots.map(fileOf).filter(Boolean));
    for (const file of all) for (const next of importsOf(file)) all.add(next);
    return [...all];
  };
  /** @param {string} page @param {string} html */
  return (page, html) => {
    const islands = html.match(/<astro-island [^>]*>/g) ?? [];
    const urls = (/** @type {readonly string[]} */ tags, /** @type {RegExp} */ name) =>
      tags.flatMap((tag) => [...tag.matchAll(name)].map(([, url = '']) => url));
    const named = [
      ...urls(html.match(/<script [^>]*>/g) ?? [], /\bsrc="([^"]+)"/g),
      ...urls(html.match(/<link [^>]*modulepreload[^>]*>/g) ?? [], /\bhref="([^"]+)"/g),
    ];
    const styles = urls(html.match(/<link [^>]*rel="stylesheet"[^>]*>/g) ?? [], /\bhref="([^"]+)"/g);
    const sum = (/** @type {readonly string[]} */ files) => files.reduce((total, file) => total + weight(file), 0);
    const used = closure([...named, ...urls(islands, /\b(?:component|renderer)-url="([^"]+)"/g)]);
    return { page: weight(page) + sum(styles.map(fileOf)), script: sum(used) };
  };
}

const [oldPages, newPages] = [pagesIn(OLD), pagesIn(NEW)];
console.log(`${oldPages.length} pages before, ${newPages.length} now`);
for (const page of only(oldPages, newPages)) console.log(`gone: ${page}`);
for (const page of only(newPages, oldPages)) console.log(`new:  ${page}`);

const both = newPages.filter((page) => oldPages.includes(page));
/** @type {Map<string, string[]>} the same change → the pages that have it */
const changes = new Map();
/** @type {Map<string, { pages: number, was: { page: number, script: number }, is: { page: number, script: number } }>} */
const kinds = new Map();
const [weighOld, weighNew] = [weigher(OLD), weigher(NEW)];
for (const page of both) {
  const [was, is] = [OLD, NEW].map((root) => readFileSync(path.join(root, page), 'utf8'));
  const [before, now] = [textOf(was ?? ''), textOf(is ?? '')];
  const change = [
    ...only(before, now).map((line) => `  - ${line}`),
    ...only(now, before).map((line) => `  + ${line}`),
  ].join('\n');
  if (change) changes.set(change, [...(changes.get(change) ?? []), page]);
  const row = kinds.get(kindOf(page)) ?? { pages: 0, was: { page: 0, script: 0 }, is: { page: 0, script: 0 } };
  for (const [sum, weight] of /** @type {const} */ ([
    [row.was, weighOld(page, was ?? '')],
    [row.is, weighNew(page, is ?? '')],
  ])) {
    sum.page += weight.page;
    sum.script += weight.script;
  }
  row.pages += 1;
  kinds.set(kindOf(page), row);
}
console.log(`\nText differs on ${[...changes.values()].flat().length} of ${both.length} pages.`);
for (const [change, pages] of changes) {
  const more = pages.length > SHOWN ? ` and ${pages.length - SHOWN} more` : '';
  console.log(`\n${pages.slice(0, SHOWN).join(', ')}${more}\n${change}`);
}

/** @param {number} bytes @param {number} pages */
const mean = (bytes, pages) => (bytes / pages / 1000).toFixed(1);
/** @param {number} was @param {number} is */
const share = (was, is) => (was === 0 ? '' : `${is >= was ? '+' : '−'}${Math.abs((is / was - 1) * 100).toFixed(1)} %`);
console.log(
  '\nkB as sent with brotli, mean of a kind; script: all of it, once each calculator of the page has been used\n',
);
console.log(
  '| kind | pages | page before | now | | script before | now | | whole |\n|---|---|---|---|---|---|---|---|---|',
);
for (const [kind, { pages, was, is }] of [...kinds].sort(([a], [b]) => a.localeCompare(b))) {
  const cells = [
    ...[kind, pages, mean(was.page, pages), mean(is.page, pages), share(was.page, is.page)],
    ...[mean(was.script, pages), mean(is.script, pages), share(was.script, is.script)],
    share(was.page + was.script, is.page + is.script),
  ];
  console.log(`| ${cells.join(' | ')} |`);
}
