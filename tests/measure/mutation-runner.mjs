// @ts-check
/**
 * A test runner for Stryker that loads the tests of `src/core` once and then calls them again and again, a
 * change switched on between the calls. Stryker's own runner for vitest starts a worker and loads every
 * module anew for each of thousands of changes, which takes hours instead of minutes. It can do with the bare
 * functions because these tests have no hooks, no mocks and no page; what a module of core remembers between
 * calls is named in CACHES and forgotten before each change.
 */
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { INSTRUMENTER_CONSTANTS } from '@stryker-mutator/api/core';
import { declareFactoryPlugin, PluginKind } from '@stryker-mutator/api/plugin';
import {
  determineHitLimitReached,
  DryRunStatus,
  TestStatus,
  toMutantRunResult,
} from '@stryker-mutator/api/test-runner';
import { collectTests, getFn } from '@vitest/runner';
import fc from 'fast-check';
import { build } from 'esbuild';
import { tsImport } from 'tsx/esm/api';

/** @type {typeof import('../../src/build/records')} */
const { readTables } = await tsImport('../../src/build/records.ts', import.meta.url);

/** How each module that remembers something forgets it. @type {Readonly<Record<string, string>>} */
const CACHES = {
  'choose/sampling.ts': 'pointCache.clear(); liquidCache = new WeakMap();',
  'stats/distributions.ts': 'logFactorials.length = 1;',
  'stats/boschloo.ts': 'tables.clear();',
  'trial/analysis.ts': 'intervals.clear();',
  'stats/power.ts': 'cache.clear(); outcomeCache.clear();',
  'flat/plies.ts': 'points = undefined;',
};

/**
 * Left out, by file and name: long draws of nonsense that show that nothing throws, which says little of what is
 * right; every change that nothing else notices would run them all.
 */
const TOO_SLOW =
  /trial\/fuzz|any text|any link|no job breaks|nothing breaks|everyone gets the same|links and nonsense|settling any|tipping-points\.test.*(as it is shown|nothing flips)|any plan keeps every piece|carries every glued piece|rule of thumb|equal rates|told apart at the stated gap/;

/** ms of tests, quickest first, that a change must get past to count as unnoticed. More would make the score no worse. */
const ENOUGH = 1200;

const BUNDLE = '.bundle';
const TIMES = `${BUNDLE}/times.json`;
const SEED = 'tests/tools/property-seed.ts';

/** @type {(() => void)[]} */
const forgetters = [];

/** @type {import('esbuild').Plugin} the records, as the build has them; and a module of CACHES hands out how it forgets */
const asTheBuild = {
  name: 'as-the-build',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^virtual:records$/ }, ({ path }) => ({ path, namespace: 'records' }));
    onLoad({ filter: /./, namespace: 'records' }, () => ({ contents: JSON.stringify(readTables()), loader: 'json' }));
    onLoad({ filter: /\/src\/core\/.+\.ts$/ }, ({ path }) => {
      const words = CACHES[relative('src/core', path)];
      if (words === undefined) return null;
      const code = readFileSync(path, 'utf8').replace('const liquidCache', 'let liquidCache');
      return { contents: `${code}\nglobalThis.forgetters.push(() => { ${words} });`, loader: 'ts' };
    });
  },
};

/** A cache that is not in CACHES would carry what one change made into the next. */
function mustKnowCaches() {
  for (const name of readdirSync('src/core', { recursive: true, encoding: 'utf8' }).filter((entry) =>
    entry.endsWith('.ts'),
  )) {
    const remembers = /^(?:let |(?:export )?const \w+[^=]*= new (?:Weak)?(?:Map|Set)(?:<.*>)?\(\);)/m;
    if (!(name in CACHES) && remembers.test(readFileSync(join('src/core', name), 'utf8')))
      throw new Error(`src/core/${name} remembers something: say in tests/measure/mutation-runner.mjs how it forgets`);
  }
}

/** @typedef {{ id: string, name: string, fileName: string, run: () => unknown, ms: number }} Known */

/** @param {any} task @param {string} above @param {string} file @returns {Omit<Known, 'ms'>[]} */
function testsIn(task, above, file) {
  const name = `${above} ${task.name}`.trim();
  // what is known to be wrong still, and marked so, cannot tell a change
  if (task.type === 'test' && task.fails) return [];
  if (task.type === 'test') return [{ id: `${file}#${name}`, name, fileName: resolve(file), run: getFn(task) }];
  return task.tasks.flatMap((/** @type {any} */ inner) =>
    testsIn(inner, task.type === 'suite' && task.file !== task ? name : '', file),
  );
}

class InProcessRunner {
  constructor() {
    /** @type {any} what the changed code reads to know which change is on */
    this.ns = /** @type {any} */ (globalThis)[INSTRUMENTER_CONSTANTS.NAMESPACE] ??= {};
    /** @type {Known[]} */
    this.tests = [];
  }

  /** Nothing is ever loaded anew: a change in what runs at loading is tried by its calls alone. */
  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    mustKnowCaches();
    /** @type {any} */ (globalThis).forgetters = forgetters;
    const files = [
      ...readdirSync('tests/core', { recursive: true, encoding: 'utf8' })
        .filter((name) => name.endsWith('.test.ts') && !TOO_SLOW.test(name))
        .map((name) => `tests/core/${name}`),
      'tests/data/checks.test.ts',
    ];
    // at the depth of the tests' own folders, since records are found from where a module stands
    await build({
      absWorkingDir: process.cwd(),
      entryPoints: [SEED, ...files],
      ...{ outdir: BUNDLE, outbase: '.', bundle: true, splitting: true, format: 'esm', platform: 'node' },
      ...{ packages: 'external', logLevel: 'error', plugins: [asTheBuild], chunkNames: 'tests/chunk-[hash]' },
    });
    /** @param {string} file */
    const load = (file) => import(pathToFileURL(resolve(BUNDLE, file.replace(/\.ts$/, '.js'))).href);
    await load(SEED);
    // the first example that fails is enough: nobody reads the smallest
    fc.configureGlobal({ ...fc.readConfigureGlobal(), endOnFailure: true });
    const config = {
      ...{ root: process.cwd(), setupFiles: [], sequence: { hooks: 'stack', setupFiles: 'list' }, tags: [] },
      ...{ maxConcurrency: 1, testTimeout: 0, hookTimeout: 0, retry: 0, allowOnly: true, passWithNoTests: true },
    };
    const runner = {
      config,
      /** @param {string} path */
      importFile: (path) => load(relative(process.cwd(), path)),
    };
    const collected = await collectTests(
      files.map((file) => resolve(file)),
      /** @type {any} */ (runner),
    );
    // from the first run, for a runner that takes the place of one that hung
    const times = existsSync(TIMES) ? JSON.parse(readFileSync(TIMES, 'utf8')) : {};
    for (const [i, file] of collected.entries()) {
      const error = file.result?.errors?.[0];
      if (error) throw new Error(`${files[i]}: ${error.message}\n${error.stack}`);
      const tests = testsIn(file, '', files[i] ?? '').filter(({ id }) => !TOO_SLOW.test(id));
      this.tests.push(...tests.map((test) => ({ ...test, ms: times[test.id] ?? 0 })));
    }
  }

  /** @param {Known} test */
  async call(test) {
    const began = performance.now();
    const { id, name, fileName } = test;
    try {
      await test.run();
      return { id, name, fileName, timeSpentMs: performance.now() - began, status: TestStatus.Success };
    } catch (error) {
      const failureMessage = error instanceof Error ? error.message : String(error);
      return { id, name, fileName, timeSpentMs: performance.now() - began, status: TestStatus.Failed, failureMessage };
    }
  }

  async dryRun() {
    this.ns.activeMutant = undefined;
    const tests = [];
    for (const test of this.tests) {
      this.ns.currentTestId = test.id;
      const told = await this.call(test);
      test.ms = told.timeSpentMs;
      tests.push(told);
    }
    this.ns.currentTestId = undefined;
    writeFileSync(TIMES, JSON.stringify(Object.fromEntries(this.tests.map(({ id, ms }) => [id, ms]))));
    return { status: DryRunStatus.Complete, tests, mutantCoverage: this.ns.mutantCoverage };
  }

  /** @param {import('@stryker-mutator/api/test-runner').MutantRunOptions} options */
  async mutantRun({ activeMutant, testFilter, hitLimit }) {
    for (const forget of forgetters) forget();
    this.ns.hitCount = 0;
    this.ns.hitLimit = hitLimit;
    this.ns.activeMutant = activeMutant.id;
    const asked = testFilter && new Set(testFilter);
    const tests = [];
    let spent = 0;
    for (const test of this.tests.filter(({ id }) => !asked || asked.has(id)).sort((a, b) => a.ms - b.ms)) {
      spent += test.ms;
      if (spent > ENOUGH && tests.length > 0) break;
      const told = await this.call(test);
      tests.push(told);
      if (told.status === TestStatus.Failed) break;
    }
    this.ns.activeMutant = undefined;
    for (const forget of forgetters) forget();
    const status = /** @type {const} */ (DryRunStatus.Complete);
    return toMutantRunResult(
      determineHitLimitReached(this.ns.hitCount, hitLimit) ?? /** @type {any} */ ({ status, tests }),
    );
  }

  async dispose() {}
}

/** @type {any} Stryker makes it by its injector; it needs nothing injected */
const make = Object.assign(() => new InProcessRunner(), { inject: [] });

export const strykerPlugins = [declareFactoryPlugin(PluginKind.TestRunner, 'in-process', make)];
