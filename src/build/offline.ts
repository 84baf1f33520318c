/**
 * Lets a reader use the site without a network: writes a service worker that keeps the calculators on the device at the
 * first visit, whatever else is opened as it is opened, and everything when the reader asks for it. Must run after the
 * search index. A new worker waits until the reader asks for it or has closed every page.
 */
import { readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { brotliCompress, constants } from 'node:zlib';
import type { AstroIntegration } from 'astro';
import { generateSW, getManifest, type ManifestEntry } from 'workbox-build';
import { ROOMS } from '../core/handover/rooms';
import { keepEarlier } from '../components/offline/earlier-files.mjs';
import { restOfSite } from '../components/offline/rest-of-site.mjs';
import { eachPage } from './pages';

const KEPT = ['**/*.{html,js,css,woff2,svg,json,webmanifest,pagefind,pf_*}', 'icons/*.png'];
const HASHED = /(?:^|\/)(?:_astro\/|pagefind\/.*\.pf_)/;
/** Files of earlier versions put aside for pages still open: some four versions of all scripts. */
const MOST_EARLIER = 300;
/** Shown in the place of a page that is not kept. */
const FALLBACK = 'without-a-network/index.html';
/** What works without a network after one visit: these pages, with every script that they may ask for. */
const CORE_PAGES = [
  'index.html',
  '404.html',
  FALLBACK,
  'calculators/index.html',
  ...Object.values(ROOMS)
    .filter(({ path: folder }) => folder !== ROOMS.trial.path)
    .map(({ path: folder }) => `${folder}index.html`),
];
const CORE_FILES = /^(?:fonts\/.*-text-400\.woff2|mark\.svg|manifest\.webmanifest|new-text\.js)$/;

/** Who plans a trial at the bench goes on to run and to read it there. */
const TRIALS = ['', 'plan/', 'run/', 'read/', 'cards/'].map((page) => `${ROOMS.trial.path}${page}index.html`);

/** The pages that tell how much is kept have these until that is known. */
const AMOUNT = /(<span data-amount="(core|whole)"[^>]*>)[^<]*(<\/span>)/g;

export function offline(base: string): AstroIntegration {
  return {
    name: 'offline',
    hooks: {
      'astro:build:done': async ({ dir, pages, logger }) => {
        const root = fileURLToPath(dir);
        const held = { globDirectory: root, globPatterns: KEPT, dontCacheBustURLsMatching: HASHED };
        const all = (await getManifest(held)).manifestEntries;
        const core = await coreOf(root, all);
        const amounts = { core: await amountOf(root, core), whole: await amountOf(root, all) };
        const told = (of: keyof typeof amounts) => inWords(amounts[of]);
        await eachPage(dir, pages, (html) =>
          html.replace(AMOUNT, (_, open: string, of: keyof typeof amounts, close: string) => open + told(of) + close),
        );
        // with the revisions of the pages as they are now
        const entries = (await getManifest(held)).manifestEntries;
        const isCore = new Set(core.map(({ url }) => url));
        const rest = entries.filter(({ url }) => !isCore.has(url));
        const earlier = `open-time-earlier-${base}`;
        const store = `open-time-rest-${base}`;
        const worker = fileURLToPath(new URL('sw.js', dir));
        const { warnings } = await generateSW({
          ...held,
          swDest: worker,
          cacheId: 'open-time',
          mode: 'production',
          sourcemap: false,
          inlineWorkboxRuntime: true,
          manifestTransforms: [(found) => ({ manifest: found.filter(({ url }) => isCore.has(url)), warnings: [] })],
          // the page itself says when it is time (public/new-text.js)
          skipWaiting: false,
          // the page of the first visit is to work without a network too
          clientsClaim: true,
          // a calculator's link asks for the page before its question mark
          ignoreURLParametersMatching: [/./],
          runtimeCaching: [
            {
              urlPattern: ({ url, sameOrigin }) => sameOrigin && REST.holds(url.href),
              handler: ({ request, event }) => REST.answer(request, event),
            },
            { urlPattern: HASHED, handler: 'CacheFirst', options: { cacheName: earlier } },
            {
              // "…/choose": what a host would send on to "…/choose/"
              urlPattern: ({ request, url, sameOrigin }) =>
                sameOrigin && request.mode === 'navigate' && !/\/$|\.\w+$/.test(url.pathname),
              handler: ({ request, url }) =>
                fetch(request).catch(() => Response.redirect(`${url.pathname}/${url.search}`)),
            },
            {
              // a page newer than what is kept may be there: the network is asked first
              urlPattern: ({ request, sameOrigin }) => sameOrigin && request.mode === 'navigate',
              handler: 'NetworkOnly',
              options: { precacheFallback: { fallbackURL: '404.html' } },
            },
          ],
        });
        if (warnings.length > 0) throw new Error(`offline: ${warnings.join('; ')}`);
        const current = entries.map(({ url }) => url).filter((url) => HASHED.test(url));
        const put = `{store:${JSON.stringify(earlier)},from:${JSON.stringify(store)},hashed:${HASHED},current:${JSON.stringify(current)},most:${MOST_EARLIER}}`;
        const kept = `{store:${JSON.stringify(store)},fallback:${JSON.stringify(FALLBACK)},together:${JSON.stringify([TRIALS])},rest:${asEntries(rest)}}`;
        const ours = `(${keepEarlier.toString()})(${put});\nvar REST=(${restOfSite.toString()})(${kept});\n`;
        await writeFile(worker, ours + (await readFile(worker, 'utf8')));
        logger.info(
          `${core.length} files, ${told('core')}, kept at the first visit; ${all.length}, ${told('whole')}, when asked`,
        );
      },
    },
  };
}

/** In the worker: what `restOfSite` gives back. */
declare const REST: ReturnType<typeof restOfSite>;

/** The core pages with what they name, and what the scripts among that name in turn. Throws where a page is missing. */
async function coreOf(root: string, all: readonly ManifestEntry[]): Promise<readonly ManifestEntry[]> {
  const entries = new Map(all.map((entry) => [entry.url, entry]));
  const missing = CORE_PAGES.filter((page) => !entries.has(page));
  if (missing.length > 0) throw new Error(`offline: there is no ${missing.join(', ')} to keep`);
  const found = new Set([...CORE_PAGES, ...[...entries.keys()].filter((url) => CORE_FILES.test(url))]);
  for (const url of found) {
    if (!/\.(?:html|js)$/.test(url)) continue;
    const text = await readFile(path.join(root, url), 'utf8');
    for (const [, name = ''] of text.matchAll(/([\w.-]+\.js)\b/g))
      if (entries.has(`_astro/${name}`)) found.add(`_astro/${name}`);
  }
  return [...found].map((url) => entries.get(url)!);
}

interface Amount {
  /** bytes on the device, and as a host sends them that squeezes what it sends */
  readonly kept: number;
  readonly sent: number;
}
const squeeze = promisify(brotliCompress);
/** Near what is sent (precompress.ts works twenty times as long for a few hundredths less). */
const QUICK = { params: { [constants.BROTLI_PARAM_QUALITY]: 5 } };
const SQUEEZED = /\.(?:html|js|css|svg|json|webmanifest)$/;

async function amountOf(root: string, entries: readonly ManifestEntry[]): Promise<Amount> {
  let [kept, sent] = [0, 0];
  for (const { url } of entries) {
    const content = await readFile(path.join(root, url));
    kept += content.length;
    sent += SQUEEZED.test(url) ? (await squeeze(content, QUICK)).length : content.length;
  }
  return { kept, sent };
}

const bytesInWords = (bytes: number): string =>
  bytes < 1e6 ? `${Math.ceil(bytes / 1e4) * 10} kB` : `${(bytes / 1e6).toFixed(1)} MB`;
const inWords = ({ kept, sent }: Amount): string =>
  `${bytesInWords(kept)} on your device, ${bytesInWords(sent)} over the network`;

const asEntries = (entries: readonly ManifestEntry[]): string =>
  `[${entries.map(({ url, revision }) => `{url:${JSON.stringify(url)},revision:${JSON.stringify(revision)}}`).join(',')}]`;
