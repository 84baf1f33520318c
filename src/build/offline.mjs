// @ts-check
/**
 * After the build: a service worker that keeps every page, script, style, font and the search index on the
 * reader's device, so that after one visit all of it works without a network. Must run after the search index.
 * A new worker waits until the reader asks for it or has closed every page.
 */
import { readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { generateSW, getManifest } from 'workbox-build';
import { keepEarlier } from './earlier-files.mjs';

const KEPT = ['**/*.{html,js,css,woff2,svg,json,webmanifest,pagefind,pf_*}', 'icons/*.png'];
const HASHED = /(?:^|\/)(?:_astro\/|pagefind\/.*\.pf_)/;
/** Files of earlier versions put aside for pages still open: some four versions of all scripts. */
const MOST_EARLIER = 300;
/** Stands in the pages that tell how much is kept, until that is known. */
const AMOUNT = /(<span data-kept[^>]*>)[^<]*(<\/span>)/g;

/** @returns {import('astro').AstroIntegration} */
export function offline() {
  let base = '/';
  return {
    name: 'offline',
    hooks: {
      'astro:config:done': ({ config }) => void (base = config.base),
      'astro:build:done': async ({ dir, logger }) => {
        const root = fileURLToPath(dir);
        const held = { globDirectory: root, globPatterns: KEPT, dontCacheBustURLsMatching: HASHED };
        const { manifestEntries, count, size } = await getManifest(held);
        await tellAmount(
          root,
          manifestEntries.map(({ url }) => url),
          `${(size / 1e6).toFixed(1)} MB in ${count} files`,
        );
        const store = `open-time-earlier-${base}`;
        const { warnings } = await generateSW({
          ...held,
          swDest: path.join(root, 'sw.js'),
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
        await addEarlier(path.join(root, 'sw.js'), {
          store,
          current: manifestEntries.map(({ url }) => url).filter((url) => HASHED.test(url)),
        });
        logger.info(`${count} files, ${(size / 1e6).toFixed(1)} MB, kept for use without a network`);
      },
    },
  };
}

/** @param {string} root @param {readonly string[]} names @param {string} amount */
async function tellAmount(root, names, amount) {
  let told = 0;
  for (const name of names.filter((one) => one.endsWith('.html'))) {
    const file = path.join(root, name);
    const html = await readFile(file, 'utf8');
    if (!html.includes('data-kept')) continue;
    told += 1;
    await writeFile(file, html.replace(AMOUNT, `$1${amount}$2`));
  }
  if (told === 0) throw new Error('offline: no page tells how much is kept (data-kept)');
}

/** @param {string} file @param {{ store: string, current: readonly string[] }} what */
async function addEarlier(file, { store, current }) {
  const options = `{store:${JSON.stringify(store)},hashed:${HASHED},current:${JSON.stringify(current)},most:${MOST_EARLIER}}`;
  await writeFile(file, `(${keepEarlier.toString()})(${options});\n${await readFile(file, 'utf8')}`);
}
