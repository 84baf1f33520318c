// @ts-check
/**
 * The whole of `npm test`, in two lanes side by side, going on after a failure so that one run shows all there
 * is to mend. What a step says is printed when it ends, so that no two mix. A test counts as one; so does
 * every step that is not made of tests. The last line is always `N passed, N failed`.
 */
import { spawn } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { relative } from 'node:path';
import { stripVTControlCharacters } from 'node:util';

const REPORTS = '.cache/reports';

/**
 * `needs`: not run unless that step passed. `waits`: for the end of that step, however it ends; two commands of
 * Astro at once would write the same files.
 * @typedef {{ name: string, script: string, tests?: boolean, more?: readonly string[], needs?: string, waits?: string }} Step
 */

/** @type {readonly (readonly Step[])[]} */
const LANES = [
  [
    { name: 'build', script: 'build' },
    { name: 'site tests', script: 'test:site', tests: true, needs: 'build' },
  ],
  [
    { name: 'format', script: 'format:check' },
    { name: 'lint', script: 'lint' },
    { name: 'unused code', script: 'house' },
    // what is in content was made known to the types by the build
    { name: 'types', script: 'types', more: ['--noSync'], waits: 'build' },
    // what the tests reach of core is counted here only: a run of a few files could not meet its limits
    { name: 'unit and island tests', script: 'test:unit', tests: true, more: ['--coverage'], waits: 'build' },
  ],
];

/**
 * Colours where there is somebody to see them. And room for what is made and soon let go, of which tests make much: with
 * more of it a thousand random jobs take a tenth less of the processor.
 */
const ENV = {
  ...process.env,
  ...(process.stdout.isTTY && { FORCE_COLOR: '1' }),
  NODE_OPTIONS: `${process.env['NODE_OPTIONS'] ?? ''} --max-semi-space-size=64`.trim(),
};

/** @param {string} script @param {readonly string[]} more @returns {Promise<{ ok: boolean, said: string }>} */
function npmRun(script, more) {
  const args = ['run', '--silent', script, ...(more.length > 0 ? ['--', ...more] : [])];
  const npm = process.env['npm_execpath'];
  const child = npm
    ? spawn(process.execPath, [npm, ...args], { env: ENV })
    : spawn('npm', args, { env: ENV, shell: process.platform === 'win32' });
  /** @type {Buffer[]} */
  const said = [];
  for (const stream of [child.stdout, child.stderr]) stream.on('data', (part) => said.push(part));
  return new Promise((resolve) => {
    const end = (/** @type {boolean} */ ok) => resolve({ ok, said: Buffer.concat(said).toString('utf8') });
    child.once('error', () => end(false));
    child.once('close', (code) => end(code === 0));
  });
}

/** What a failure says, on a line or two: its first lines, without colours. @param {string} message */
const firstOf = (message) =>
  stripVTControlCharacters(message)
    .split('\n')
    .filter((line) => line.trim() && !/^\s+at /.test(line))
    .slice(0, 6)
    .map((line) => `      ${line.trim().slice(0, 300)}`)
    .join('\n');

/**
 * Counts the tests in a report, and names those that failed. A file that could not be loaded, a missing report, or a run that failed
 * without a failing test counts as one failure: it must not pass for want of tests.
 * @param {string} file @param {boolean} ok
 */
function count(file, ok) {
  let passed = 0;
  let failed = 0;
  let skipped = 0;
  /** @type {string[]} */
  const failures = [];
  try {
    const report = JSON.parse(readFileSync(file, 'utf8'));
    passed = report.numPassedTests;
    failed = report.numFailedTests;
    skipped = report.numPendingTests + report.numTodoTests;
    for (const suite of report.testResults) {
      const where = relative(process.cwd(), suite.name);
      if (suite.status === 'failed' && suite.assertionResults.length === 0) {
        failed += 1;
        failures.push(`${where}\n${firstOf(suite.message ?? '')}`);
      }
      for (const { status, fullName, failureMessages } of suite.assertionResults) {
        if (status === 'failed') failures.push(`${where}: ${fullName}\n${firstOf(failureMessages[0] ?? '')}`);
      }
    }
  } catch {
    failed = 1;
  }
  if ((!ok || passed === 0) && failed === 0) failed = 1;
  return { passed, failed, skipped, failures };
}

mkdirSync(REPORTS, { recursive: true });

/** @type {Map<string, Promise<{ line: string, passed: number, failed: number, failures: string[] }>>} */
const running = new Map();

/** @param {Step} step */
async function run({ name, script, tests = false, more = [], needs, waits }) {
  if (waits) await running.get(waits);
  if (needs && (await running.get(needs))?.failed) {
    return { line: `✗ ${name}: not run, because the ${needs} failed`, passed: 0, failed: 1, failures: [] };
  }
  console.log(`── ${name}: begun`);
  const began = performance.now();
  const report = `${REPORTS}/${script.replace(':', '-')}.json`;
  rmSync(report, { force: true });
  const { ok, said } = await npmRun(
    script,
    tests ? [...more, '--reporter=default', '--reporter=json', `--outputFile.json=${report}`] : more,
  );
  const seconds = ((performance.now() - began) / 1000).toFixed(1);
  console.log(`\n── ${name}: ended after ${seconds} s\n${said.trim()}\n`);
  const tally = tests ? count(report, ok) : { passed: ok ? 1 : 0, failed: ok ? 0 : 1, skipped: 0, failures: [] };
  const detail = tests
    ? `${tally.passed} passed, ${tally.failed} failed${tally.skipped ? `, ${tally.skipped} skipped` : ''}, `
    : '';
  return { ...tally, line: `${tally.failed > 0 ? '✗' : '✓'} ${name}: ${detail}${seconds} s` };
}

const began = performance.now();
for (const lane of LANES) {
  /** @type {Promise<unknown>} */
  let before = Promise.resolve();
  for (const step of lane) {
    const result = before.then(() => run(step));
    running.set(step.name, result);
    before = result;
  }
}
const results = await Promise.all(running.values());
const passed = results.reduce((sum, result) => sum + result.passed, 0);
const failed = results.reduce((sum, result) => sum + result.failed, 0);
// by name at the end, where somebody who keeps only the last lines of a run still reads them
const failures = results.flatMap((result) => result.failures.map((failure) => `  ✗ ${failure}`));
const lines = [...results.map(({ line }) => line), `all of it: ${((performance.now() - began) / 1000).toFixed(0)} s`];
if (failures.length > 0) console.log(`\n── what failed\n${failures.join('\n')}`);
console.log(`\n── summary\n${lines.join('\n')}\n\n${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;
