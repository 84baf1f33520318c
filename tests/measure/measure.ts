/**
 * `npm run measure`: what the site weighs and how quick it is, on demand. It needs a build, and asserts
 * nothing: times depend on the machine. `npm run measure -- ready typing` takes some parts alone; the parts are
 * bytes, first, ready, typing, learning, lighthouse and builds. The tables are written to .cache/reports/measure.md.
 * `BESIDE=others.json` measures the first change of other built sites in the same run: a list of
 * `{ "name", "folder", "page", "field", "answer" }`, the last two as selectors, or of `{ "name", "folder" }` for another
 * build of this site.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';
import { serve } from '../tools/serve.mjs';
import { measureBuildTimes } from './build-time';
import { measureBytes } from './bytes';
import { measureFirstChange, type Target } from './first-change';
import { CATEGORIES, runLighthouse } from './lighthouse';
import { measureLearning } from './learning';
import { measureLongTasks } from './long-tasks';
import { measureReady } from './ready';
import { median, openBrowser, SLOWER } from './slow-phone';

const PARTS = ['bytes', 'first', 'ready', 'typing', 'learning', 'lighthouse', 'builds'] as const;
const asked = process.argv.slice(2);
const unknown = asked.filter((part) => !PARTS.some((one) => one === part));
if (unknown.length > 0) throw new Error(`no part is called ${unknown.join(', ')}; there is ${PARTS.join(', ')}`);
const wants = (part: (typeof PARTS)[number]) => asked.length === 0 || asked.includes(part);

const LESSON = '/lessons/open-time/';
const CALCULATORS = ['/choose/', '/mix/', '/cover/', '/paper/', '/flat/', '/make/', '/cut/', '/workshop/'];
const PAGES = ['/', LESSON, ...CALCULATORS];

const row = (cells: readonly (string | number)[]) => `| ${cells.join(' | ')} |`;
const table = (head: readonly string[], rows: readonly (readonly (string | number)[])[]) =>
  [row(head), row(head.map(() => '---')), ...rows.map(row)].join('\n');
const kB = (bytes: number) => (bytes / 1000).toFixed(1);
const list = (numbers: readonly number[]) => (numbers.length === 0 ? 'none' : `${numbers.join(', ')} ms`);

const parts: string[] = [];
const say = (title: string, text: string) => {
  parts.push(`### ${title}\n\n${text}`);
  console.log(`\n${title}\n${text}`);
};

const RUNS = 7;
/** What is typed into, of each page that is measured from its opening on. */
const TYPED_INTO = {
  [LESSON]: 'astro-island input[inputmode="decimal"]',
  '/choose/': '#ch-grammage',
  '/workshop/': '#class-people',
  '/mix/': 'astro-island input[inputmode="decimal"]',
};

interface Beside {
  readonly name: string;
  readonly folder: string;
  readonly page?: string;
  readonly field?: string;
  readonly answer?: string;
}

/** Pages of this build, and of those beside it. */
async function targets(): Promise<readonly Target[]> {
  const pagesOf = (name: string, at: string): Target[] =>
    Object.entries(TYPED_INTO).map(([page, field]) => ({
      name: name + page,
      url: at + page,
      field,
      answer: '.bench-answer',
    }));
  const file = process.env['BESIDE'];
  const others = file ? (JSON.parse(readFileSync(file, 'utf8')) as readonly Beside[]) : [];
  const all = pagesOf('', origin);
  for (const { name, folder, page, field, answer } of others) {
    const other = await serve({ root: folder });
    servers.push(other);
    if (page && field && answer) all.push({ name, url: other.origin + page, field, answer, forgets: true });
    else all.push(...pagesOf(`${name} `, other.origin));
  }
  return all;
}

const server = await serve();
const servers = [server];
const origin = server.origin;
const { browser, close } = await openBrowser();
try {
  if (wants('bytes')) {
    const rows = await measureBytes(browser, origin, PAGES);
    say(
      'A first visit, kB as sent with brotli',
      table(
        ['page', 'HTML', 'CSS', 'font', 'script to open', 'other', 'whole', 'script once used'],
        rows.map((one) => [
          one.page,
          ...[one.html, one.css, one.font, one.script, one.other, one.whole, one.used].map(kB),
        ]),
      ),
    );
  }
  if (wants('first')) {
    const rows = await measureFirstChange(browser, await targets(), RUNS);
    say(
      `A first visit on slow 4G with a processor ${SLOWER} times slower; a change is typed at the first paint, the middle of ${RUNS} visits`,
      table(
        [
          'page',
          'first paint',
          'answer changed',
          'tasks over 50 ms until then',
          'kB untouched',
          'of it script',
          'kB used',
        ],
        rows.map((one) => [
          one.name,
          `${one.painted} ms`,
          `${one.answered} ms`,
          list(one.long),
          ...[one.visit, one.script, one.used].map(kB),
        ]),
      ),
    );
  }
  if (wants('ready')) {
    const rows = await measureReady(browser, origin, ['/choose/', LESSON, '/mix/', '/cover/']);
    say(
      `Until the answer is there, on slow 4G (1.6 Mbit/s, 150 ms) with a processor ${SLOWER} times slower`,
      table(
        ['page', 'answer painted', 'can be changed', 'from a change to its answer'],
        rows.map((one) => [
          one.page,
          `${one.painted} ms`,
          one.waits ? `${one.changeable} ms after the first touch` : `${one.changeable} ms`,
          `${one.answered} ms`,
        ]),
      ),
    );
  }
  if (wants('typing')) {
    const rows = [];
    for (const page of ['/choose/', LESSON, '/mix/', '/cover/', '/cut/', '/workshop/', '/trials/plan/']) {
      rows.push(await measureLongTasks(browser, origin, page));
    }
    say(
      `Tasks over 50 ms, processor ${SLOWER} times slower, the quietest of three visits`,
      table(
        ['page', 'while it opens', 'while typing', 'in the four seconds after'],
        rows.map((one) => [one.page, list(one.opening), list(one.typing), list(one.after)]),
      ),
    );
  }
  if (wants('learning')) {
    const visits = await measureLearning(browser, origin, RUNS);
    say(
      `The chooser with 48 swatches on the device, processor ${SLOWER} times slower: from the script's arrival to the answer with them, the middle ${median(visits.map(({ answered }) => answered))} ms`,
      table(
        ['swatches weighed', 'answered', 'tasks over 50 ms until then', 'and after it'],
        visits.map((one) => [one.swatches, `${one.answered} ms`, list(one.before), list(one.after)]),
      ),
    );
  }
  if (wants('lighthouse')) {
    const rows = await runLighthouse(origin, PAGES);
    say(
      'Lighthouse 12.8.2, mobile',
      table(
        ['page', ...CATEGORIES, 'below 90'],
        rows.map((one) => [one.page, ...CATEGORIES.map((key) => one.scores[key] ?? '?'), one.missed.join('; ') || '–']),
      ),
    );
  }
} finally {
  await close();
  for (const one of servers) await one.close();
}
if (wants('builds')) {
  const rows = await measureBuildTimes([10, 100, 1000]);
  say(
    'Build time against the number of lessons, from a cold start',
    table(
      ['lessons', 'seconds', 'seconds for each lesson more', 'memory at most, MB'],
      rows.map(({ lessons, seconds, peakMB }, i) => {
        const less = rows[i - 1];
        const each = less ? ((seconds - less.seconds) / (lessons - less.lessons)).toFixed(2) : '–';
        return [lessons, seconds.toFixed(0), each, peakMB.toFixed(0)];
      }),
    ),
  );
}
const load = loadavg()
  .map((value) => value.toFixed(1))
  .join(', ');
say(
  'Where',
  `${cpus().length} cores, ${cpus()[0]?.model ?? 'unknown'}; load at the end ${load}; Node ${process.version}.`,
);
mkdirSync('.cache/reports', { recursive: true });
writeFileSync('.cache/reports/measure.md', `${parts.join('\n\n')}\n`);
console.log('\nWritten to .cache/reports/measure.md');
