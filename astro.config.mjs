// @ts-check
import { defineConfig } from 'astro/config';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { baseLinks } from './src/build/base-links.mjs';
import { compactRecords } from './src/build/compact-records.mjs';
import { headers } from './src/build/headers.mjs';
import { keepUnits } from './src/build/keep-units.mjs';
import { offline } from './src/build/offline.mjs';
import { precompress } from './src/build/precompress.mjs';
import { searchIndex } from './src/build/search-index.mjs';
import { sitemap } from './src/build/sitemap.mjs';

// A fork names its own address and sub-path without touching code.
const site = process.env['SITE_URL'] ?? 'http://localhost:4321';
const base = (process.env['BASE_PATH'] ?? '/').replace(/\/?$/, '/');

/**
 * What every calculator needs travels as one file, the chooser's model as another: a file of its own for
 * each small module costs more than it saves, as each is squeezed by itself.
 * @param {string} id
 */
function chunkOf(id) {
  if (/\/node_modules\/(?:preact|nanostores|@nanostores\/preact|@astrojs\/preact)\//.test(id)) return 'base';
  if (id.includes('vite/preload-helper')) return 'base';
  if (/\/src\/core\/(?:format|number-text|plot|random|result)\.ts/.test(id)) return 'base';
  if (/\/src\/islands\/parts\/(?:Field|ProblemList|Spoken)\.tsx/.test(id)) return 'base';
  // the records and what is worked out from them for the pot: of no use to the trial pages
  if (/virtual:records|\/src\/data\/(?:catalogue|expand)\.ts/.test(id)) return 'records';
  if (/\/src\/core\/(?:model-version|quantity|viscosity|mixture|liquid)\.ts/.test(id)) return 'records';
  if (/\/src\/islands\/parts\/SlipPlate\.tsx/.test(id)) return 'records';
  if (
    MODEL.test(id) ||
    /\/src\/(?:stores\/(?:open-)?chooser|islands\/chooser\/(?:Answer|PaperFields)|islands\/parts\/ChanceRule)\.tsx?/.test(
      id,
    )
  )
    return 'model';
  return undefined;
}
const MODEL =
  /\/src\/core\/(?:ranking|suitability|placement|job-limits|needs|answer-words|encode-job|sampling|tally|margins|bond-line|water-loss|flatness|laminate|moisture|sorption|sheet|spread|model-constants|job)\.ts/;

export default defineConfig({
  site,
  base,
  trailingSlash: 'always',
  cacheDir: './.astro',
  // in this order: each of the last ones reads what those before it wrote
  integrations: [mdx(), preact(), sitemap(), searchIndex(), offline(), headers(), precompress()],
  markdown: { remarkPlugins: [keepUnits, [baseLinks, { base }]] },
  vite: {
    plugins: [compactRecords()],
    build: {
      rollupOptions: { output: { manualChunks: chunkOf } },
      minify: 'terser',
      terserOptions: { ecma: 2020, module: true, compress: { passes: 3 } },
    },
  },
  // Scripts and styles are held to the site's own by their hashes; this holds everything else to it too.
  experimental: {
    csp: {
      directives: [
        "default-src 'self'",
        "img-src 'self' data: blob:",
        "object-src 'none'",
        "base-uri 'self'",
        "form-action 'self'",
        // text becomes neither markup nor script anywhere (components/offline/keep.ts and search/policy.ts make the two policies)
        "require-trusted-types-for 'script'",
        'trusted-types open-time default',
      ],
    },
  },
  devToolbar: { enabled: false },
});
