// @ts-check
/**
 * The whole of `npm test`: every step in order, going on after a failure so that one run shows all there
 * is to mend. A test counts as one; so does every step that is not made of tests. The last line is
 * always `N passed, N failed`.
 */
import { spawn } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';

const REPORTS = '.cache/reports';

/** @typedef {{ name: string, script: string, tests?: boolean, after?: string, more?: readonly string[] }} Step */

/** @type {readonly Step[]} */
const STEPS = [
  { name: 'format', script: 'format:check' },
  { name: 'lint', script: 'lint' },
  { name: 'types', script: 'types' },
  { name: 'unused code', script: 'house' },
  // what the tests reach of core is counted here only: a run of a few files could not meet its limits
  { name: 'unit and island tests', script: 'test:unit', tests: true, more: ['--coverage'] },
  { name: 'build', script: 'build' },
  { name: 'site tests', script: 'test:site', tests: true, after: 'build' },
];

/** @param {string} script @param {readonly string[]} more @returns {Promise<boolean>} */
function npmRun(script, more) {
  const args = ['run', '--silent', script, ...(more.length > 0 ? ['--', ...more] : [])];
  const npm = process.env['npm_execpath'];
  const child = npm
    ? spawn(process.execPath, [npm, ...args], { stdio: 'inherit' })
    : spawn('npm', args, { stdio: 'inherit', shell: process.platform === 'win32' });
  return new Promise((resolve) => {
    child.once('error', () => resolve(false));
    child.once('exit', (code) => resolve(code === 0));
  });
}

/**
 * Counts the tests in a report. A file that could not be loaded, a missing report, or a run that failed
 * without a failing test counts as one failure: it must not pass for want of tests.
 * @param {string} file @param {boolean} ok
 */
function count(file, ok) {
  let passed = 0;
  let failed = 0;
  let skipped = 0;
  try {
    const report = JSON.parse(readFileSync(file, 'utf8'));
    passed = report.numPassedTests;
    failed = report.numFailedTests;
    skipped = report.numPendingTests + report.numTodoTests;
    for (const suite of report.testResults) {
      if (suite.status === 'failed' && suite.assertionResults.length === 0) failed += 1;
    }
  } catch {
    failed = 1;
  }
  if ((!ok || passed === 0) && failed === 0) failed = 1;
  return { passed, failed, skipped };
}

rmSync(REPORTS, { recursive: true, force: true });
mkdirSync(REPORTS, { recursive: true });

const lines = [];
/** @type {Set<string>} */
const broken = new Set();
let passed = 0;
let failed = 0;

for (const { name, script, tests = false, after, more = [] } of STEPS) {
  if (after && broken.has(after)) {
    failed += 1;
    broken.add(name);
    lines.push(`✗ ${name}: not run, because the ${after} failed`);
    continue;
  }
  console.log(`\n── ${name}`);
  const began = performance.now();
  const report = `${REPORTS}/${script.replace(':', '-')}.json`;
  const ok = await npmRun(
    script,
    tests ? [...more, '--reporter=default', '--reporter=json', `--outputFile.json=${report}`] : more,
  );
  const seconds = ((performance.now() - began) / 1000).toFixed(1);
  const tally = tests ? count(report, ok) : { passed: ok ? 1 : 0, failed: ok ? 0 : 1, skipped: 0 };
  passed += tally.passed;
  failed += tally.failed;
  if (tally.failed > 0) broken.add(name);
  const detail = tests
    ? `${tally.passed} passed, ${tally.failed} failed${tally.skipped ? `, ${tally.skipped} skipped` : ''}, `
    : '';
  lines.push(`${tally.failed > 0 ? '✗' : '✓'} ${name}: ${detail}${seconds} s`);
}

console.log(`\n── summary\n${lines.join('\n')}\n\n${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;
