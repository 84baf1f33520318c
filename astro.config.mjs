// @ts-check
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'astro/config';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { clientUse } from './src/build/client-use';
import { records } from './src/build/records';
import { lessonText } from './src/build/lesson-text';
import { offline } from './src/build/offline';
import { finishPages } from './src/build/pages';
import { precompress } from './src/build/precompress';

// A fork names its own address and sub-path without touching code.
const site = process.env['SITE_URL'] ?? 'http://localhost:4321';
const base = (process.env['BASE_PATH'] ?? '/').replace(/\/?$/, '/');

/**
 * Which modules travel in one file. What it saves, in script once used, against other ways that were measured: without
 * this table, as the bundler splits by itself, a lesson has 23 % more (52.7 kB for 42.8, in 182 files for 111), the chooser
 * 15 %, the mixer 9 %; where it also merges files under 3 kB a lesson has 36 % more, under 12 kB 43 %; a file for each
 * room costs a lesson 13 to 44 %, for it uses a little of many rooms. Where a room is used whole, its folder stands here,
 * and where it is not, its files. What is named in none goes with the first group that imports it, and brings that whole
 * group into whatever else imports it: look at what `budget` prints. First match wins.
 * @type {readonly (readonly [chunk: string, modules: RegExp])[]}
 */
const CHUNKS = [
  // Few files: a host that speaks HTTP/1.1 sends six at once, and the class waits 150 ms for each further six.
  // lengths in mm or inches, which the chooser does without: 1.6 kB of a lesson's script
  ['lengths', /\/core\/(?:base\/length-text|link\/length-field|make\/projects)\.ts|\/change-unit\.ts|\/UnitField\.tsx/],
  // amounts as a jug shows them, which the mixer and the chooser need and a project does
  ['rounding', /\/core\/base\/rounding\.ts/],
  // pieces with their sizes
  ['sizes', /\/core\/(?:base\/(?:piece|board-sizes)|adhesive\/coverage|cover\/pieces-link)\.ts/],
  // the records and what is worked out from them for the pot: of no use to the trial pages
  ['records', /virtual:records|\/data\/(?:catalogue|tables)\.ts/],
  ['records', /\/core\/adhesive\/(?:viscosity|mixture|liquid|flow)\.ts/],
  ['records', /\/islands\/parts\/(?:LessonBench|SlipPlate)\.tsx/],
  // what a sheet can be, and how it drinks
  [
    'plan',
    /\/core\/(?:base\/quantity|paper\/(?:paper|misfit|sorption|asked-paper))\.ts|\/core\/(?:safety\/(?:burns-from|old-things)|adhesive\/natures)\.ts/,
  ],
  // what every calculator needs
  ['base', /\/node_modules\/(?:preact|nanostores|@nanostores\/preact)\/|\/wake-island\.mjs|preload-helper/],
  [
    'base',
    /\/core\/(?:base\/|link\/model-version|paper\/limits)|\/stores\/shared\/(?:device-storage|precompute|time-slice|typed)\.ts/,
  ],
  ['base', /\/islands\/parts\/(?:Field|ProblemList|Spoken)\.tsx/],
  // a list that grows, which neither the chooser nor a lesson with it has
  ['rows', /\/islands\/parts\/(?:GrowingRows\.tsx|(?:rows|use-focus-next)\.ts)/],
  // what calculators with a table of fields share, the chooser too
  ['plan', /\/core\/(?:link\/(?!read-plan-link)|records\/)/],
  ['plan', /\/islands\/parts\/(?:OneOf|PlanField|SlipTimer)\.tsx/],
  // a paper of one's own, and what stands on the mixing bench by id, which the chooser's links name too; with what the
  // others have besides: a lesson with the chooser is sent none of it
  ['own-paper', /\/core\/(?:paper\/own-paper|mix\/jars)\.ts|\/stores\/shared\/(?:on-bench|plan)\.ts/],
  ['own-paper', /\/islands\/parts\/Warnings\.tsx/],
  // those that this device keeps, which the chooser fetches where there are some
  ['own-papers', /\/stores\/shared\/own-papers\.ts|\/islands\/parts\/(?:PaperPick|TakeOwnPaper|use-own-papers)\.tsx?/],
  // what an answer is set out in; what can hurt, which a lesson with the chooser leaves to its own cautions
  ['fold', /\/islands\/parts\/(?:Fold|Facts|Cautions)\.tsx|\/core\/(?:safety|adhesive)\/hazards\.ts/],
  // the frame of a calculator on a page of its own
  ['frame', /\/islands\/parts\/PlanBench\.tsx/],
  [
    'send',
    /\/islands\/parts\/(?:BenchOffer|FormFold|KnownJob|LinkSaid|SendLink|TimeADrop|job-line)\.tsx?|\/stores\/shared\/url-sync\.ts|\/core\/link\/read-plan-link\.ts/,
  ],
  // What a mix and a coverage are worked out with, which the class does too; what they are asked and shown in, which it
  // does not.
  ['mix', /\/core\/mix\/(?:plan|words)\.ts/],
  ['mix-form', /\/islands\/mix\/(?:AmountFields|MixBrief|MixResult|PasteFields)\.tsx|\/stores\/mix\/(?:open-)?mix\.ts/],
  ['paste', /\/core\/mix\/paste\.ts/],
  ['powder', /\/core\/mix\/powder\.ts/],
  ['curve', /\/islands\/parts\/(?:CurvePlate|EtherAxes)\.tsx|\/core\/mix\/ether-plot\.ts/],
  ['pieces', /\/core\/cover\/(?:answer|plan|pieces|pieces-text)\.ts/],
  ['pieces-form', /\/islands\/cover\/(?:CoverFields|CoverResult|PieceRows)\.tsx/],
  ['pieces-form', /\/islands\/parts\/RangePlate\.tsx|\/stores\/cover\/(?:open-)?cover\.ts/],
  ['chooser', /\/core\/choose\/(?:choose|judge|reasons|technique)\.ts/],
  // another task than the one it opens with, which a lesson does not offer
  ['task', /\/core\/choose\/task-words\.ts|\/stores\/choose\/change-task\.ts|\/islands\/choose\/TaskField\.tsx/],
  // the code of a link, drawn when all else is done
  ['code', /\/node_modules\/uqr\//],
  // a sheet and its job, which the page on one's own paper reads too, and what the chooser and the calculator of
  // flatness both reckon a bow with
  ['sheet', /\/core\/(?:choose\/(?:job|write-link|seen)|paper\/sheet|joint\/(?:flatness|laminate|constants))\.ts/],
  [
    'model',
    /\/core\/choose\/(?:ranking|suitability|placement|needs|answer-words|draws|sampling|tally|method|method-words|at-hand|kind)\.ts/,
  ],
  ['model', /\/core\/joint\/(?:margins|bond-line|water-loss|moisture|spread|way|strike-through|ensemble|bench)\.ts/],
  [
    'model',
    /\/stores\/choose\/(?:open-)?choose\.ts|\/islands\/(?:choose\/(?:Answer|PaperFields|SlipFigure|SlipOfBest)|parts\/ChanceRule)\.tsx/,
  ],
];
/** @param {string} id */
const chunkOf = (id) => CHUNKS.find(([, modules]) => modules.test(id))?.[0];

export default defineConfig({
  site,
  base,
  // while `npm run dev` runs, either way: it would answer for no swatch, photograph or share picture, whose names end in no slash
  trailingSlash: process.argv.includes('dev') ? 'ignore' : 'always',
  cacheDir: './.astro',
  // in this order: each of the last ones reads what those before it wrote
  integrations: [
    mdx(),
    // esbuild writes JSX as tsconfig.json says, as Babel would, in a small part of the time
    preact({ exclude: ['**/*'] }),
    records(),
    clientUse(),
    finishPages(base),
    offline(base),
    precompress(),
  ],
  markdown: { remarkPlugins: [[lessonText, { base }]] },
  vite: {
    resolve: {
      alias: {
        '@astrojs/preact/client.js': fileURLToPath(new URL('./src/islands/parts/wake-island.mjs', import.meta.url)),
      },
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
