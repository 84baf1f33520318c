/**
 * Three projects: `node` (everything that computes), `islands` (what runs in the page, in a DOM) and
 * `site` (the built site in a real browser). The first two read records and aliases as the build does.
 */
import { getViteConfig } from 'astro/config';
import { defineConfig } from 'vitest/config';
import type { TestProjectInlineConfiguration, ViteUserConfig } from 'vitest/config';

/**
 * A test waits for a state, however long that takes on a machine that has other things to do. What is not there after
 * this long never comes; the wait for it ends first, so that the test can say what it waited for.
 */
const PATIENCE = {
  testTimeout: 400_000,
  hookTimeout: 400_000,
  expect: { poll: { timeout: 180_000, interval: 25 } },
} as const;

/** A project that sees yaml records, Astro components and JSX exactly as the build sees them. */
function likeTheBuild(test: NonNullable<ViteUserConfig['test']>) {
  return getViteConfig({ test, server: { watch: null } } as Parameters<typeof getViteConfig>[0])({
    mode: 'test',
    command: 'serve',
  });
}

/** Of `npm test` (run-all.mjs asks for it): files of core alone, since the rest of the site is tried as it is used. */
const coverage: NonNullable<ViteUserConfig['test']>['coverage'] = {
  provider: 'v8',
  include: ['src/core/**/*.ts'],
  thresholds: { lines: 95, branches: 95 },
  reportsDirectory: '.cache/reports/coverage',
  // the four totals on the screen, and by file in lines.txt what no test reaches
  reporter: ['text-summary', ['text', { file: 'lines.txt', skipFull: true }]],
};

/** The built site in a real browser: nothing here is read as the build reads it. */
const SITE: TestProjectInlineConfiguration = {
  test: {
    name: 'site',
    environment: 'node',
    // the built pages are read, and the browser is reached, once in each of the two workers
    isolate: false,
    include: ['tests/site/**/*.test.ts'],
    globalSetup: ['tests/tools/site-setup.ts'],
    // one browser, and two files at a time: more would only wait for each other on two cores
    maxWorkers: 2,
    // asked for together with others, it comes after them
    sequence: { groupOrder: 1 },
    maxConcurrency: 3,
    ...PATIENCE,
    benchmark: { include: [] },
  },
};

/** To set up the other two takes 3 s of the processor, so `--project site` does without. */
const asked = process.argv.filter((_, i, all) => all[i - 1] === '--project');
const siteAlone = asked.length > 0 && asked.every((name) => name === 'site');

export default defineConfig(async () => ({
  test: {
    coverage,
    projects: siteAlone
      ? [SITE]
      : [
          await likeTheBuild({
            name: 'node',
            environment: 'node',
            ...PATIENCE,
            // nothing here changes what the modules hold, so files may share them: a fifth less of processor time
            isolate: false,
            setupFiles: ['tests/tools/property-seed.ts'],
            include: ['tests/**/*.test.{ts,tsx}'],
            exclude: ['tests/islands/**', 'tests/site/**'],
            benchmark: { include: ['tests/**/*.bench.ts'] },
          }),
          await likeTheBuild({
            name: 'islands',
            environment: 'happy-dom',
            ...PATIENCE,
            setupFiles: ['tests/tools/property-seed.ts', 'tests/islands/support/patience.ts'],
            include: ['tests/islands/**/*.test.{ts,tsx}'],
            benchmark: { include: [] },
          }),
          SITE,
        ],
  },
}));
