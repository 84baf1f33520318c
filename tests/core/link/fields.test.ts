/** A plan's texts and a job's link, field by field, in every unit. */
import { expect, test, describe, it } from 'vitest';
import { encodeJob } from '../../../src/core/choose/write-link';
import { DEFAULT_JOB, type Job } from '../../../src/core/choose/job';
import { readTexts, textsOf, valueOf, type Field, type PlanOf } from '../../../src/core/link/fields';
import { lengthField } from '../../../src/core/link/length-field';
import { decodeJob } from '../../../src/core/choose/read-link';
import { ok } from '../../../src/core/base/result';

const ROWS = {
  kind: 'rows',
  key: 'r',
  what: 'The rows',
  parse: (typed: string, unit: string) => ok([...typed.split(' '), ...(unit === 'in' ? ['inches'] : [])]),
  show: (kept: readonly string[], unit: string) => `${kept.join(' ')} ${unit}`,
  read: (text: string): readonly string[] | undefined => (/^[a-z_]+$/.test(text) ? text.split('_') : undefined),
  write: (kept: readonly string[]) => kept.join('_'),
  usual: ['a', 'b'],
} as const;
const SPECS = {
  unit: { kind: 'one-of', key: 'in', of: ['mm', 'cm', 'in'], what: 'The unit' },
  wide: lengthField({ key: 'w', what: 'The width', low: 10, high: 1000 }),
  joint: lengthField({ key: 'j', what: 'The joint', low: 1, high: 50, optional: true }),
  kits: { kind: 'number', key: 'k', low: 1, high: 9, unit: '', what: 'The kits' },
  price: { kind: 'number', optional: true, key: 'p', low: 0, high: 9, unit: '', what: 'The price' },
  rows: ROWS,
} as const;
type Plan = PlanOf<typeof SPECS>;
const PLAN: Plan = { unit: 'mm', wide: 254, joint: undefined, kits: 3, price: undefined, rows: ['a', 'b'] };
const FIELDS = Object.keys(SPECS) as (keyof Plan)[];

test('a plan is typed in its unit: an inch is 25.4 mm', () => {
  expect(textsOf(PLAN, SPECS)).toEqual({ unit: 'mm', wide: '254', joint: '', kits: '3', price: '', rows: 'a b mm' });
  expect(textsOf({ ...PLAN, unit: 'cm', joint: 7 }, SPECS)).toMatchObject({
    wide: '25.4',
    joint: '0.7',
    rows: 'a b cm',
  });
  expect(textsOf({ ...PLAN, unit: 'in', joint: 12.7, price: 2 }, SPECS)).toMatchObject({
    wide: '10',
    joint: '1/2',
    price: '2',
    rows: 'a b in',
  });
});

test('what is typed is read in its unit, and what may be empty is', () => {
  const typed = { unit: 'in', wide: '10', joint: ' ', kits: '3', price: '', rows: 'a b' };
  const { plan, problems } = readTexts(typed, SPECS, PLAN, FIELDS);
  expect(problems).toEqual([]);
  expect(plan).toEqual({ ...PLAN, unit: 'in', rows: ['a', 'b', 'inches'] });
  expect(readTexts({ ...typed, unit: 'cm', joint: '0.7' }, SPECS, PLAN, FIELDS).plan).toMatchObject({
    wide: 100,
    joint: 7,
  });
  expect(readTexts({ ...typed, unit: 'furlong' }, SPECS, PLAN, FIELDS).plan).toMatchObject({ unit: 'mm' });
});

test('a slip falls back, and is said only of what is asked', () => {
  const typed = { ...textsOf(PLAN, SPECS), wide: '', kits: '10', rows: 'a b' };
  const all = readTexts(typed, SPECS, PLAN, FIELDS);
  expect(all.problems.map(({ field }) => field)).toEqual(['wide', 'kits']);
  expect(all.plan).toEqual(PLAN);
  expect(readTexts(typed, SPECS, PLAN, ['wide']).problems.map(({ field }) => field)).toEqual(['wide']);
});

test('every field of a job stands in its link and comes back', () => {
  const job: Job = {
    ...DEFAULT_JOB,
    paper: {
      family: 'wove-text',
      grammage: 92,
      caliper: 140,
      dropSeconds: 25,
      cobb: 30,
      surface: 'textured',
      sizing: 'sized',
      coloursRun: false,
    },
    placeSeconds: 45,
    needs: ['undo', 'flat'],
    celsius: 17,
    humidity: 61,
    atHand: ['pva'],
  };
  const link = encodeJob(job);
  for (const part of [
    'gsm=92',
    'thick=140',
    'cobb=30',
    'face=textured',
    'size=sized',
    'runs=',
    'place=45',
    'need=undo.flat',
  ])
    expect(link).toContain(part);
  expect(decodeJob(link).job).toEqual(job);
  const runs = { ...job, paper: { ...job.paper, coloursRun: true } };
  expect(decodeJob(encodeJob(runs)).job).toEqual(runs);
  expect(encodeJob({ ...DEFAULT_JOB, needs: [], paper: { family: 'wove-text' } })).not.toMatch(
    /runs=|need=|cobb=|face=/,
  );
});

describe('one field of a plan', () => {
  const measured = { key: 'k', low: 2, high: 5, unit: 'mm', what: 'The joint' } as const;
  const code = (spec: Field, text: string) => {
    const found = valueOf('joint', spec, text);
    return found.ok ? found.value : found.errors[0]!.code;
  };
  it('takes numbers from its low to its high', () => {
    const spec: Field = { ...measured, kind: 'number' };
    expect(['2', '5', ' 3,5 '].map((text) => code(spec, text))).toEqual([2, 5, 3.5]);
    expect(['1.99', '5.01', '', 'x'].map((text) => code(spec, text))).toEqual([
      ...['too-small', 'too-large', 'empty', 'not-a-number'],
    ]);
    const found = valueOf('joint', spec, '9');
    expect(found.ok ? [] : found.errors).toEqual([
      {
        field: 'joint',
        code: 'too-large',
        limits: { low: 2, high: 5, unit: 'mm' },
        message: 'The joint must be a number from 2 to 5\u00a0mm.',
      },
    ]);
  });
  it('takes whole numbers where it is counted', () => {
    const spec: Field = { ...measured, kind: 'number', unit: '', whole: true };
    expect(code(spec, '3')).toBe(3);
    expect(code(spec, '3.5')).toBe('not-a-number');
    const found = valueOf('joint', spec, '3.5');
    expect(found.ok ? '' : found.errors[0]!.message).toBe('The joint must be a whole number from 2 to 5.');
  });
  it('may be left empty only where it says so', () => {
    expect(code({ ...measured, kind: 'number', optional: true }, ' ')).toBeUndefined();
    expect(code({ ...measured, kind: 'number', optional: true }, '9')).toBe('too-large');
  });
  it('is one of its list, or fits its pattern', () => {
    const one: Field = { kind: 'one-of', key: 'k', of: ['a', 'b'], what: 'It' };
    expect(code(one, ' b ')).toBe('b');
    expect(code(one, 'c')).toBe('unknown-id');
    const text: Field = { kind: 'text', key: 'k', pattern: /^[ab]+$/, what: 'It' };
    expect(code(text, 'abba')).toBe('abba');
    expect(code(text, 'abc')).toBe('unknown-id');
    const said = (spec: Field) => {
      const found = valueOf('f', spec, 'c');
      return found.ok ? '' : found.errors[0]!.message;
    };
    expect([said(one), said(text)]).toEqual(['It: choose one from the list.', 'It cannot be read.']);
  });
});
