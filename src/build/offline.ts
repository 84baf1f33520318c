/**
 * Lets a reader use the site without a network, for 0.4 MB sent at the first visit: writes a service worker that then keeps
 * the calculators on the device, whatever else is opened as it is opened, and everything (4.9 MB) when the reader asks
 * for it. Must run after the search index. A new worker waits until the reader asks for it or has closed every page.
 */
import { readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { generateSW, getManifest, type ManifestEntry } from 'workbox-build';
import { ROOMS } from '../core/handover/rooms';
import { keepEarlier } from '../components/offline/earlier-files.mjs';
import { restOfSite } from '../components/offline/rest-of-site.mjs';

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

export function offline(base: string): AstroIntegration {
  return {
    name: 'offline',
    hooks: {
      'astro:build:done': async ({ dir, logger }) => {
        const root = fileURLToPath(dir);
        const held = { globDirectory: root, globPatterns: KEPT, dontCacheBustURLsMatching: HASHED };
        // 32 bits are plenty to tell today's from yesterday's; 128 were 6 kB more of the worker, for they cannot be squeezed
        const short = ({ url, revision }: ManifestEntry) => ({ url, revision: revision?.slice(0, 8) ?? null });
        const all = (await getManifest(held)).manifestEntries.map(short);
        const core = await coreOf(root, all);
        const rest = all.filter((entry) => !core.includes(entry));
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
          manifestTransforms: [() => ({ manifest: core.map((entry) => ({ ...entry, size: 0 })), warnings: [] })],
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
        const current = all.map(({ url }) => url).filter((url) => HASHED.test(url));
        const put = `{store:${JSON.stringify(earlier)},from:${JSON.stringify(store)},hashed:${HASHED},current:${JSON.stringify(current)},most:${MOST_EARLIER}}`;
        const kept = `{store:${JSON.stringify(store)},fallback:${JSON.stringify(FALLBACK)},together:${JSON.stringify([TRIALS])},rest:${asEntries(rest)}}`;
        const ours = `(${keepEarlier.toString()})(${put});\nvar REST=(${restOfSite.toString()})(${kept});\n`;
        await writeFile(worker, ours + (await readFile(worker, 'utf8')));
        logger.info(`${core.length} files kept at the first visit, ${all.length} when asked`);
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
    for (const [, name = ''] of text.matchAll(/([\w.-]+\.(?:js|css))\b/g))
      if (entries.has(`_astro/${name}`)) found.add(`_astro/${name}`);
  }
  return [...found].map((url) => entries.get(url)!);
}

const asEntries = (all: readonly ManifestEntry[]) => JSON.stringify(all).replaceAll(/"(url|revision)":/g, '$1:');
