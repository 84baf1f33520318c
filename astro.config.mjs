// @ts-check
import { defineConfig } from 'astro/config';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { compactRecords } from './src/build/compact-records.mjs';
import { keepUnits } from './src/build/keep-units.mjs';

// A fork names its own address and sub-path without touching code.
const site = process.env['SITE_URL'] ?? 'http://localhost:4321';
const base = process.env['BASE_PATH'] ?? '/';

/** The view and state libraries, and the small parts and words that all calculators are made of. */
const SHARED =
  /node_modules\/(?:preact|nanostores|@nanostores)\/|src\/islands\/parts\/(?:Field|Choices|ProblemList|Spoken)\.tsx$|src\/core\/(?:format|number-text|plot|random|result)\.ts$/;

export default defineConfig({
  site,
  base,
  trailingSlash: 'always',
  cacheDir: './.astro',
  integrations: [mdx(), preact()],
  markdown: { remarkPlugins: [keepUnits] },
  vite: {
    plugins: [compactRecords()],
    build: {
      minify: 'terser',
      terserOptions: { ecma: 2020, module: true, compress: { passes: 3 } },
      // What every island uses goes in one file; left to itself it is cut into many, each compressed alone.
      rollupOptions: { output: { manualChunks: (id) => (SHARED.test(id) ? 'shared' : undefined) } },
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
      ],
    },
  },
  devToolbar: { enabled: false },
});
