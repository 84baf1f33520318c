// @ts-check
/**
 * `npm run mutate`: changes `src/core` in one small place at a time and runs the tests that reach it; a
 * change that no test notices is listed. `npm run mutate -- --mutate src/core/paper/paper.ts` for one file.
 * What is known already is kept in .cache/mutation, so that a second run tries only what changed.
 *
 * Left out:
 * - StringLiteral: nearly all of them change the wording of a sentence, which is no behaviour of a formula.
 * - long draws of nonsense, and what takes more than 1.2 seconds of tests to notice (see the runner).
 * - what runs once when a module is loaded (`ignoreStatic`): each would need every test file again.
 * @type {import('@stryker-mutator/api/core').PartialStrykerOptions}
 */
export default {
  // our own, since Stryker's for vitest takes seconds for each change (see the file's head)
  testRunner: 'in-process',
  plugins: ['./tests/measure/mutation-runner.mjs'],
  coverageAnalysis: 'perTest',
  mutate: ['src/core/**/*.ts'],
  mutator: { excludedMutations: ['StringLiteral'] },
  ignoreStatic: true,
  ignorePatterns: ['.cache', 'dist', '.astro', 'public'],
  concurrency: 1,
  timeoutMS: 5000,
  dryRunTimeoutMinutes: 20,
  tempDirName: '.cache/stryker',
  cleanTempDir: 'always',
  allowEmpty: true,
  incremental: true,
  incrementalFile: '.cache/mutation/known.json',
  reporters: ['clear-text', 'progress-append-only', 'json', 'html'],
  clearTextReporter: { allowColor: false, allowEmojis: false, logTests: false, reportTests: false },
  jsonReporter: { fileName: '.cache/reports/mutation/mutation.json' },
  htmlReporter: { fileName: '.cache/reports/mutation/mutation.html' },
  // a score to look at, not one to pass: the aim is 85
  thresholds: { high: 90, low: 85, break: null },
};
