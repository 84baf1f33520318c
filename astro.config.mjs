// @ts-check
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'astro/config';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { baseLinks } from './src/build/base-links.mjs';
import { clientUse } from './src/build/client-use.mjs';
import { compactRecords } from './src/build/compact-records.mjs';
import { headers } from './src/build/headers.mjs';
import { keepUnits } from './src/build/keep-units.mjs';
import { offline } from './src/build/offline.mjs';
import { plainImports } from './src/build/plain-imports.mjs';
import { precompress } from './src/build/precompress.mjs';
import { quick } from './src/build/quick.mjs';
import { searchIndex } from './src/build/search-index.mjs';
import { sitemap } from './src/build/sitemap.mjs';
import { stylesApart } from './src/build/styles-apart.mjs';

// A fork names its own address and sub-path without touching code.
const site = process.env['SITE_URL'] ?? 'http://localhost:4321';
const base = (process.env['BASE_PATH'] ?? '/').replace(/\/?$/, '/');

/**
 * What every calculator needs travels as one file, the chooser's model as another: a file of its own for
 * each small module costs more than it saves, as each is squeezed by itself.
 * @param {string} id
 */
function chunkOf(id) {
  if (/\/node_modules\/(?:preact|nanostores|@nanostores\/preact)\/|\/wake-preact\.mjs|preload-helper/.test(id))
    return 'base';
  if (/\/src\/core\/(?:format|model-version|number-text|plain|plot|random|record-id|result)\.ts/.test(id))
    return 'base';
  if (/\/src\/stores\/(?:device-storage|made-ahead)\.ts/.test(id)) return 'base';
  if (/\/src\/islands\/parts\/(?:(?:Field|GrowingRows|ProblemList|Spoken)\.tsx|(?:rows|use-focus-next)\.ts)/.test(id))
    return 'base';
  // the records and what is worked out from them for the pot: of no use to the trial pages
  if (/virtual:records|\/src\/data\/(?:catalogue|expand)\.ts/.test(id)) return 'records';
  if (/\/src\/core\/(?:quantity|viscosity|mixture|liquid|paper)\.ts/.test(id)) return 'records';
  if (/\/src\/islands\/parts\/(?:LessonBench|SlipPlate)\.tsx/.test(id)) return 'records';
  // what calculators with a table of fields share
  if (/\/src\/core\/(?:length-text|pairs|plan-fields|plan-link|rounding)\.ts/.test(id)) return 'plan';
  if (
    /\/src\/(?:stores\/(?:change-unit|plan)\.ts|islands\/parts\/(?:OneOf|PlanField|UnitField|Warnings)\.tsx)/.test(id)
  )
    return 'plan';
  // a paper of one's own, which the chooser takes too
  if (/\/src\/(?:core\/paper-text|stores\/own-papers|islands\/parts\/(?:TakeOwnPaper|use-own-papers))\.tsx?/.test(id))
    return 'own-paper';
  if (/\/src\/islands\/parts\/PaperPick\.tsx/.test(id)) return 'paper-pick';
  // the frame of a calculator on a page of its own
  if (/\/src\/islands\/parts\/(?:Cautions|Facts|PlanBench)\.tsx/.test(id)) return 'frame';
  if (/\/src\/(?:islands\/parts\/(?:LinkSaid|SendLink)\.tsx|stores\/url-sync\.ts)/.test(id)) return 'send';
  // what a mix is said with, in a lesson too
  if (/\/src\/core\/mix-(?:plan|words)\.ts|\/src\/islands\/mix\/(?:AmountFields|MixResult)\.tsx/.test(id)) return 'mix';
  if (/\/src\/core\/mix-paste\.ts|\/src\/islands\/mix\/PasteFields\.tsx/.test(id)) return 'paste';
  if (/\/src\/core\/mix-powder\.ts|\/src\/islands\/parts\/(?:CurvePlate|EtherAxes)\.tsx/.test(id)) return 'powder';
  // lengths, and pieces with their sizes: a lesson that covers something needs all of it
  if (/\/src\/core\/(?:area|coverage|pieces-link|project-sizes)\.ts/.test(id)) return 'sizes';
  if (/\/src\/core\/(?:cover-answer|cover-plan|pieces|pieces-text)\.ts/.test(id)) return 'pieces';
  if (/\/src\/islands\/cover\/(?:CoverFields|CoverResult|PieceRows)\.tsx/.test(id)) return 'pieces';
  if (/\/src\/stores\/(?:open-)?covering\.ts/.test(id)) return 'pieces';
  if (/\/src\/stores\/(?:open-)?mixing\.ts/.test(id)) return 'mix';
  if (/\/src\/core\/(?:chooser|judge-one|reasons|technique)\.ts/.test(id)) return 'chooser';
  // the code of a link, drawn when all else is done
  if (id.includes('/node_modules/uqr/')) return 'code';
  // a sheet and its job, which the page on one's own paper reads too
  if (/\/src\/core\/(?:job|job-limits|sheet|sorption|encode-job|seen)\.ts/.test(id)) return 'sheet';
  // what the chooser and the calculator of warp both reckon a bow with
  if (/\/src\/core\/(?:flatness|laminate|model-constants)\.ts/.test(id)) return 'bow';
  if (MODEL.test(id)) return 'model';
  return undefined;
}
const MODEL = new RegExp(
  [
    '/src/core/(?:ranking|suitability|placement|needs|answer-words|sampling|tally|margins|bond-line|water-loss|moisture|spread)\\.ts',
    '/src/(?:stores/(?:open-)?chooser|islands/chooser/(?:Answer|PaperFields)|islands/parts/ChanceRule)\\.tsx?',
  ].join('|'),
);

export default defineConfig({
  site,
  base,
  trailingSlash: 'always',
  cacheDir: './.astro',
  // in this order: each of the last ones reads what those before it wrote
  integrations: [
    mdx(),
    // esbuild writes JSX as tsconfig.json says, as Babel would, in a small part of the time
    preact({ exclude: ['**/*'] }),
    quick(),
    clientUse(base),
    stylesApart(base),
    sitemap(),
    searchIndex(),
    offline(),
    headers(),
    precompress(),
  ],
  markdown: { remarkPlugins: [keepUnits, [baseLinks, { base }]] },
  vite: {
    plugins: [compactRecords(), plainImports()],
    resolve: {
      alias: { '@astrojs/preact/client.js': fileURLToPath(new URL('./src/build/wake-preact.mjs', import.meta.url)) },
    },
    build: {
      rollupOptions: { output: { manualChunks: chunkOf } },
      modulePreload: false,
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
  // One answer from the host instead of two before anything can be painted; 6 kB in each page (see styles-apart.mjs).
  // While one share picture is drawn beside the script, the next is begun.
  build: { inlineStylesheets: 'always', concurrency: 4 },
  devToolbar: { enabled: false },
});
