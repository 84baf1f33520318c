// @ts-check
/**
 * `npm run measure:sent`: what the built site in dist/ weighs on the wire (brotli where it was squeezed at build), and what a
 * million visits of each kind come to. PRICE=0.05 sets the price of a gigabyte sent, in any currency.
 */
import { existsSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const DIST = fileURLToPath(new URL('../../dist/', import.meta.url));
const PRICE = process.env['PRICE'];
/** From memory, no source: what is asked for a gigabyte, from the cheapest networks to the dearest list prices. */
const PRICES = PRICE === undefined ? [0.01, 0.09] : [Number(PRICE)];
/** Headers of an answer and its question, bytes: common practice, no source. */
const HEADERS = 600;

if (!existsSync(path.join(DIST, 'sw.js.br'))) {
  console.error('There is no squeezed site in dist/. Run: npm run build');
  process.exit(1);
}

/** @param {string} name */
function weigh(name) {
  const file = path.join(DIST, name);
  return statSync(existsSync(`${file}.br`) ? `${file}.br` : file).size + HEADERS;
}
const text = (/** @type {string} */ name) => readFileSync(path.join(DIST, name), 'utf8');
const sum = (/** @type {readonly string[]} */ names) => names.reduce((total, name) => total + weigh(name), 0);

/** A page and all that it fetches to be read and used: styles, scripts and what they import, the font. @param {string} page */
function filesOf(page) {
  const found = new Set([page]);
  const base = /<link rel="manifest" href="([^"]*)manifest\.webmanifest"/.exec(text(page))?.[1] ?? '/';
  const named = text(page).matchAll(/(?:src|href|component-url|renderer-url)="([^"]+\.(?:js|css|woff2|svg))"/g);
  const open = [...named].map(([, address = '']) => address.slice(base.length));
  for (let name = open.pop(); name !== undefined; name = open.pop()) {
    if (found.has(name) || !existsSync(path.join(DIST, name))) continue;
    found.add(name);
    if (!name.endsWith('.js')) continue;
    for (const [, target = ''] of text(name).matchAll(/\b(?:import|from)\s*["'](\.{1,2}\/[^"']+)["']/g))
      open.push(path.posix.join(path.posix.dirname(name), target));
  }
  return [...found];
}

const worker = text('sw.js');
const namedIn = (/** @type {string} */ code) => [
  ...new Set([...code.matchAll(/\{url:"([^"]+)"/g)].map(([, name = '']) => name)),
];
const kept = namedIn(worker);
const rest = namedIn(/\brest:\[([^\]]*)\]/.exec(worker)?.[1] ?? '');
/** What a first visit keeps unasked. */
const core = sum(kept.filter((name) => !rest.includes(name)));
const pages = kept.filter((name) => name.endsWith('.html'));
const whole = sum(kept) + weigh('sw.js');

/** @type {readonly (readonly [string, number])[]} */
const VISITS = [
  ['a lesson with a calculator, nothing kept', sum(filesOf('lessons/open-time/index.html'))],
  ['the chooser, nothing kept', sum(filesOf('choose/index.html'))],
  [
    'a first visit: one page, then the calculators are kept',
    sum(filesOf('lessons/open-time/index.html')) + core + weigh('sw.js'),
  ],
  ['the whole site, kept when somebody asks', whole],
  ['a later visit, nothing changed: the worker is asked after', HEADERS],
  ['a later visit, one page changed', weigh('sw.js') + sum(pages) / pages.length],
  [
    'a later visit of one who keeps the whole site, the style of every page changed',
    weigh('sw.js') + sum(pages) + sum(kept.filter((name) => name.endsWith('.css'))),
  ],
];

const kB = (/** @type {number} */ bytes) => `${(bytes / 1000).toFixed(bytes < 10_000 ? 1 : 0)} kB`.padStart(9);
const GB = (/** @type {number} */ bytes) => `${((bytes * 1e6) / 1e9).toFixed(0)} GB`.padStart(8);
console.log(`The whole site: ${pages.length} pages, ${kept.length} files, ${kB(whole).trim()} on the wire\n`);
console.log(`one visit | a million | at ${PRICES.join(' to ')} a GB`);
for (const [name, bytes] of VISITS) {
  const cost = PRICES.map((price) => ((bytes * 1e6) / 1e9) * price).map((price) => price.toFixed(price < 10 ? 1 : 0));
  console.log(`${kB(bytes)} | ${GB(bytes)} | ${cost.join(' to ').padEnd(12)} | ${name}`);
}
