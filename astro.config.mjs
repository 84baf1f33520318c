// @ts-check
import { defineConfig } from 'astro/config';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { compactRecords } from './src/build/compact-records.mjs';
import { keepUnits } from './src/build/keep-units.mjs';

// A fork names its own address and sub-path without touching code.
const site = process.env['SITE_URL'] ?? 'http://localhost:4321';
const base = process.env['BASE_PATH'] ?? '/';

export default defineConfig({
  site,
  base,
  trailingSlash: 'always',
  cacheDir: './.astro',
  integrations: [mdx(), preact()],
  markdown: { remarkPlugins: [keepUnits] },
  vite: {
    plugins: [compactRecords()],
    build: { minify: 'terser', terserOptions: { ecma: 2020, module: true, compress: { passes: 3 } } },
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
