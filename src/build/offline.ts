/**
 * Lets a reader use all of the site without a network after one visit: writes a service worker that keeps every page,
 * script, style, font and the search index on the device. Must run after the search index. A new worker waits until
 * the reader asks for it or has closed every page.
 */
import { readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { generateSW, getManifest } from 'workbox-build';
import { keepEarlier } from '../components/offline/earlier-files.mjs';
import { eachPage } from './pages';

const KEPT = ['**/*.{html,js,css,woff2,svg,json,webmanifest,pagefind,pf_*}', 'icons/*.png'];
const HASHED = /(?:^|\/)(?:_astro\/|pagefind\/.*\.pf_)/;
/** Files of earlier versions put aside for pages still open: some four versions of all scripts. */
const MOST_EARLIER = 300;
/** Stands in the pages that tell how much is kept, until that is known. */
const AMOUNT = /(<span data-kept[^>]*>)[^<]*(<\/span>)/g;

export function offline(base: string): AstroIntegration {
  return {
    name: 'offline',
    hooks: {
      'astro:build:done': async ({ dir, pages, logger }) => {
        const root = fileURLToPath(dir);
        const held = { globDirectory: root, globPatterns: KEPT, dontCacheBustURLsMatching: HASHED };
        const { manifestEntries, count, size } = await getManifest(held);
        const amount = `${(size / 1e6).toFixed(1)} MB in ${count} files`;
        await eachPage(dir, pages, (html) => html.replace(AMOUNT, `$1${amount}$2`));
        const store = `open-time-earlier-${base}`;
        const worker = fileURLToPath(new URL('sw.js', dir));
        const { warnings } = await generateSW({
          ...held,
          swDest: worker,
          cacheId: 'open-time',
          mode: 'production',
          sourcemap: false,
          inlineWorkboxRuntime: true,
          // the page itself says when it is time (public/new-text.js)
          skipWaiting: false,
          // the page of the first visit is to work without a network too
          clientsClaim: true,
          // a calculator's link asks for the page before its question mark
          ignoreURLParametersMatching: [/./],
          runtimeCaching: [
            { urlPattern: HASHED, handler: 'CacheFirst', options: { cacheName: store } },
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
        const current = manifestEntries.map(({ url }) => url).filter((url) => HASHED.test(url));
        const options = `{store:${JSON.stringify(store)},hashed:${HASHED},current:${JSON.stringify(current)},most:${MOST_EARLIER}}`;
        await writeFile(worker, `(${keepEarlier.toString()})(${options});\n${await readFile(worker, 'utf8')}`);
        logger.info(`${count} files, ${(size / 1e6).toFixed(1)} MB, kept for use without a network`);
      },
    },
  };
}
