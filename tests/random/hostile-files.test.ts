/** A hundred thousand hostile imports: none throws, none brings markup or a formula out on the other side. */
import fc from 'fast-check';
import Papa from 'papaparse';
import { expect, test } from 'vitest';
import { seededUniform } from '../../src/core/base/random';
import { mergeTrials } from '../../src/core/trial/merge';
import { parseTrial } from '../../src/core/trial/parse';
import { trialCsv, trialHtml, trialMarkdown } from '../../src/core/trial/publish';
import { TRIAL_LIMITS, type Trial } from '../../src/core/trial/record';
import { summaryOf } from '../../src/core/trial/summary';
import { trialFromRows } from '../../src/core/trial/rows';
import { trialWith } from '../core/support/trial';

const INFO = { id: 'read', name: 'Read', by: '', createdAt: '' };
const MINE = trialWith(() => 'pass');

const uniform = seededUniform(20_260_301);
const pick = <T>(list: readonly T[]): T => list[Math.floor(uniform() * list.length)] as T;
const chance = (share: number) => uniform() < share;

const NASTY: readonly unknown[] = [
  ...[
    '<script>alert(1)</script>',
    '"><img src=x onerror=alert(1)>',
    "'-alert(1)-'",
    '=cmd|"/c calc"!A1',
    '+1+1',
    '-2+3',
    '@SUM(1)',
    '\t=1',
  ],
  ...[
    '[x](javascript:alert(1))',
    '| a | b |',
    '```',
    '\u202egnp.exe',
    '\u0000',
    '\ud800',
    '\ufeff',
    '',
    ' ',
    'a'.repeat(5000),
    '{{7*7}}',
    '${1}',
  ],
  ...[
    '__proto__',
    'constructor',
    'toString',
    'pass',
    'fail',
    'partly',
    '25,5',
    '1e309',
    '-1',
    '٣',
    'paper-1',
    'glue-1',
    'lift',
    '2026-01-01',
  ],
  ...[
    null,
    true,
    false,
    NaN,
    Infinity,
    -0,
    1e308,
    3,
    20,
    [],
    {},
    [[]],
    { toString: 'x' },
    { length: 1e9 },
    [null, undefined],
  ],
];

/** A deep chain of lists and records around something nasty. */
function nested(depth: number): unknown {
  let value: unknown = pick(NASTY);
  for (let i = 0; i < depth; i += 1) value = chance(0.5) ? [value] : { papers: value };
  return value;
}

/** One list of a file may grow beyond all measure; more would only be slow. */
let hasGrown = false;

/** A sound trial with a few of its values replaced, at any depth, or entries doubled or dropped. */
function spoiled(value: unknown): unknown {
  if (chance(0.04)) return chance(0.1) ? nested(Math.floor(uniform() * 40)) : pick(NASTY);
  if (Array.isArray(value)) {
    const list = value.flatMap((one) => (chance(0.05) ? [] : chance(0.05) ? [spoiled(one), one] : [spoiled(one)]));
    if (hasGrown || !chance(0.002)) return list;
    hasGrown = true;
    return Array.from({ length: 2000 }, () => list[0]);
  }
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).flatMap(([key, inner]): [string, unknown][] =>
    chance(0.03) ? [] : [[key, spoiled(inner)]],
  );
  if (chance(0.05)) entries.push([pick(['__proto__', 'constructor', 'version', 'outcomes', 'from']), pick(NASTY)]);
  return Object.fromEntries(entries);
}

const HEADS = [
  'paper',
  'adhesive',
  'gsm',
  'hold s',
  'Lifts clean',
  'swatch',
  'note',
  'repeat',
  'set aside',
  'judged by',
  'judged at',
  'shelf adhesive',
  'paper family',
  'drop test',
  '<b>',
  '=1',
];

function hostileCsv(): string {
  const separator = pick([',', ';', '\t', '|']);
  const ending = pick(['\n', '\r\n', '\r']);
  const heads = HEADS.filter((_, i) => i < 2 || chance(0.6));
  const rows = Math.floor(uniform() * 5) + (chance(0.001) ? 3000 : 0);
  const cell = () =>
    chance(0.4)
      ? pick(['pass', 'fail', 'partly', 'A', 'B', '25,5', '30', '20', '1', '2'])
      : (JSON.stringify(pick(NASTY)) ?? '').replace(/^"|"$/g, chance(0.2) ? '"' : '');
  const body = Array.from({ length: rows }, () =>
    Array.from({ length: heads.length + (chance(0.1) ? 3 : 0) }, cell).join(separator),
  );
  const text = [heads.join(separator), ...body].join(ending);
  return (chance(0.2) ? '\ufeff' : '') + (chance(0.1) ? `${text}"` : text);
}

/** Numbers on the way out are numbers; text is cleaned; ids are known. */
function expectSound(trial: Trial): void {
  const wrong: string[] = [];
  const look = (value: unknown, place: string): void => {
    if (typeof value === 'number' && !Number.isFinite(value)) wrong.push(`${place} is ${value}`);

    if (typeof value === 'string' && /[\u0000-\u0008\u202e\ud800]/.test(value))
      wrong.push(`${place} holds what cannot be seen`);
    if (typeof value === 'object' && value !== null)
      for (const [key, inner] of Object.entries(value)) look(inner, `${place}.${key}`);
  };
  look(trial, 'trial');
  const numbers = trial.swatches.map(({ number }) => number);
  if (new Set(numbers).size !== numbers.length) wrong.push('two swatches share a number');
  if (trial.swatches.length > TRIAL_LIMITS.swatches) wrong.push('too many swatches');
  for (const { paper, glue } of trial.swatches) {
    if (!trial.papers.some(({ id }) => id === paper) || !trial.glues.some(({ id }) => id === glue))
      wrong.push('a swatch of nothing');
  }
  if (wrong.length > 0) throw new Error(wrong.slice(0, 3).join('; '));
}

/** Published, no tag is there that we did not write, no cell is a formula, no table has a cell too many. */
function expectHarmless(trial: Trial): void {
  const tags = new Set(
    [...trialHtml(trial, summaryOf(trial)).matchAll(/<\/?([a-z!][a-z0-9-]*)/gi)].map(([, name]) =>
      (name ?? '').toLowerCase(),
    ),
  );
  const ours = [
    '!doctype',
    'html',
    'head',
    'meta',
    'title',
    'style',
    'body',
    'h1',
    'h2',
    'p',
    'div',
    'table',
    'thead',
    'tbody',
    'tr',
    'th',
    'td',
    'ul',
    'li',
    'small',
  ];
  const strange = [...tags].filter((tag) => !ours.includes(tag));
  if (strange.length > 0) throw new Error(`tags that are not ours: ${strange.join()}`);
  const markdown = trialMarkdown(trial, summaryOf(trial));
  if (/<[a-z/!]/i.test(markdown) || /(?<!\\)\]\(/.test(markdown)) throw new Error('markup in the Markdown');
  for (const cell of Papa.parse<string[]>(trialCsv(trial).slice(1)).data.flat()) {
    if (/^\s*[=@+\-|%]/.test(cell) && !/^[+-]?\d+([.,]\d+)?$/.test(cell))
      throw new Error(`a formula: ${cell.slice(0, 30)}`);
  }
}

/** All of them on demand (`npm run test:fuzz`), a slice each time. */
const FILES = process.env['FUZZ'] === 'full' ? 50_000 : 4000;

test(`${FILES} hostile files of JSON`, { timeout: 300_000 }, () => {
  let read = 0;
  for (let i = 0; i < FILES; i += 1) {
    hasGrown = false;
    const text = JSON.stringify(spoiled(MINE)) ?? 'null';
    const found = parseTrial(JSON.parse(text));
    if (!found.ok) continue;
    read += 1;
    expectSound(found.trial);
    if (i % 25 === 0) expectHarmless(found.trial);
    if (i % 10 === 0) expectSound(mergeTrials(MINE, found.trial, chance(0.5) ? 'theirs' : undefined).trial);
  }
  // most are damaged, not destroyed: else this would prove little
  expect(read).toBeGreaterThan(0.3 * FILES);
});

test(`${FILES} hostile spreadsheets`, { timeout: 300_000 }, () => {
  let read = 0;
  for (let i = 0; i < FILES; i += 1) {
    const { data } = Papa.parse<string[]>(hostileCsv().replace(/^\ufeff/, ''), { skipEmptyLines: true });
    const { trial, problems } = trialFromRows(data, INFO);
    if (!trial && problems.length === 0 && data.length > 1) throw new Error('nothing was read and nothing was said');
    if (!trial) continue;
    read += 1;
    expectSound(trial);
    if (i % 25 === 0) expectHarmless(trial);
  }
  expect(read).toBeGreaterThan(0.3 * FILES);
});

test('any JSON at all', () => {
  fc.assert(
    fc.property(fc.jsonValue({ maxDepth: 6 }), (value) => {
      const found = parseTrial(value);
      return found.ok || found.problems.length > 0;
    }),
    { numRuns: 2000, seed: 5 },
  );
});

test('what no JSON can hold does not throw either', () => {
  for (const value of [undefined, () => 1, Symbol('x'), 1n, new Map(), Object.create(null), [MINE]]) {
    expect(parseTrial(value).ok).toBe(false);
  }
});
