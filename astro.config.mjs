// @ts-check
import { defineConfig } from 'astro/config';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { compactRecords } from './src/data/compact-records.mjs';

// A fork names its own address and sub-path without touching code.
const site = process.env['SITE_URL'] ?? 'http://localhost:4321';
const base = process.env['BASE_PATH'] ?? '/';

export default defineConfig({
  site,
  base,
  trailingSlash: 'always',
  cacheDir: './.astro',
  integrations: [mdx(), preact()],
  vite: { plugins: [compactRecords()] },
  experimental: { csp: true },
  devToolbar: { enabled: false },
});
