/** Every link, anchor, image and file that a page names exists, and every page can be reached. */
import { readFileSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { BASE, DIST, PAGES, REDIRECTS, fileAt, tagsOf, type BuiltPage } from './support/dist';

/** any origin will do: it only tells addresses of this site from others */
const HERE = 'http://site.invalid';

/** Where each element names what it leads to or fetches. */
const NAMED: Readonly<Record<string, readonly string[]>> = {
  a: ['href'],
  link: ['href'],
  script: ['src'],
  img: ['src'],
  iframe: ['src'],
  source: ['src'],
  image: ['href'],
  use: ['href'],
  form: ['action'],
  'astro-island': ['component-url', 'renderer-url'],
};
/** Named whether it stands there or not: an island without them would never wake. */
const MUST = 'astro-island';

function read(page: BuiltPage) {
  const tags = tagsOf(page).filter(({ attributes }) => attributes.get('rel') !== 'canonical');
  const addresses = tags.flatMap(({ name, attributes }) =>
    (NAMED[name] ?? []).flatMap((one) => (name === MUST || attributes.has(one) ? (attributes.get(one) ?? '') : [])),
  );
  const srcsets = tags.flatMap(({ attributes }) =>
    attributes.has('srcset')
      ? attributes
          .get('srcset')!
          .split(',')
          .map((part) => part.trim().split(/\s+/)[0] ?? '')
      : [],
  );
  const ids = tags.flatMap(({ attributes }) => attributes.get('id') ?? []);
  return { page, ids: new Set(ids), named: [...addresses, ...srcsets] };
}

/** Addresses at which a source was read and that are given as they were: old archives without https. */
const PLAIN_HTTP = new Set(
  readdirSync('content/sources').flatMap(
    (name) => /^url: ['"]?(http:[^\s'"]+)/m.exec(readFileSync(path.join('content/sources', name), 'utf8'))?.[1] ?? [],
  ),
);

const READ = [...PAGES, ...REDIRECTS].map(read);
const BY_FILE = new Map(READ.map((one) => [path.join(DIST, one.page.file), one]));

/** What is wrong with an address on a page; undefined when it leads somewhere. */
function fault(address: string, from: BuiltPage): string | undefined {
  if (address === '') return 'empty address';
  const url = new URL(address, HERE + from.address);
  if (['mailto:', 'tel:', 'data:'].includes(url.protocol)) return undefined;
  if (url.origin !== HERE)
    return url.protocol === 'https:' || PLAIN_HTTP.has(address) ? undefined : `${address} is not https`;
  const file = fileAt(url.pathname);
  if (file === undefined) return `${address} leads nowhere`;
  const anchor = decodeURIComponent(url.hash.slice(1));
  if (anchor === '' || !file.endsWith('.html')) return undefined;
  return BY_FILE.get(file)?.ids.has(anchor) ? undefined : `${address}: no element has the id ${anchor}`;
}

test('the pages name a great many', () => {
  expect(READ.reduce((sum, { named }) => sum + named.length, 0)).toBeGreaterThan(10_000);
});

test.for(READ.map((one) => [one.page.address, one] as const))('%s names only what exists', ([, { page, named }]) => {
  expect(named.map((address) => fault(address, page)).filter(Boolean)).toEqual([]);
});

test('every file that a stylesheet names exists', () => {
  const missing: string[] = [];
  for (const sheet of readdirSync(DIST, { recursive: true, encoding: 'utf8' }).filter((f) => f.endsWith('.css'))) {
    const css = readFileSync(path.join(DIST, sheet), 'utf8');
    for (const [, address = ''] of css.matchAll(/url\(\s*["']?([^"')]+)["']?\s*\)/g)) {
      const url = new URL(address, `${HERE}${BASE}${sheet.split(path.sep).join('/')}`);
      if (url.protocol !== 'data:' && (url.origin !== HERE || !fileAt(url.pathname)))
        missing.push(`${sheet}: ${address}`);
    }
  }
  expect(missing).toEqual([]);
});

test('the list of headers has one rule for each folder of the site, and names no file that is not there', () => {
  const places = [...readFileSync(path.join(DIST, '_headers'), 'utf8').matchAll(/^\/.*/gm)].map(([place]) => place);
  expect(places.filter((place, i) => places.indexOf(place) !== i)).toEqual([]);
  const folders = readdirSync(DIST, { withFileTypes: true }).filter((entry) => entry.isDirectory());
  expect(places.filter((place) => /.\/\*$/.test(place)).sort()).toEqual(folders.map(({ name }) => `/${name}/*`).sort());
  const files = places.filter((place) => !place.endsWith('*'));
  expect(files.filter((place) => fileAt(BASE + place.slice(1)) === undefined)).toEqual([]);
});

test('every page can be reached from the first one', () => {
  const reached = new Set<string>();
  const open = [path.join(DIST, 'index.html')];
  for (let file = open.pop(); file !== undefined; file = open.pop()) {
    const one = BY_FILE.get(file);
    if (!one || reached.has(file)) continue;
    reached.add(file);
    for (const address of one.named) {
      const url = new URL(address, HERE + one.page.address);
      const next = url.origin === HERE ? fileAt(url.pathname) : undefined;
      if (next) open.push(next);
    }
  }
  const lost = PAGES.filter(({ file }) => file !== '404.html' && !reached.has(path.join(DIST, file)));
  expect(lost.map(({ address }) => address)).toEqual([]);
});
