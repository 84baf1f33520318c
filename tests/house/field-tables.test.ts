/** What holds of every calculator's table of fields. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ROOMS } from '../../src/core/handover/rooms';
import { BENCH_FIELDS } from '../../src/core/bench/plan';
import { JOB_FIELDS } from '../../src/core/choose/job';
import { CLASS_FIELDS } from '../../src/core/class/plan';
import { COVER_FIELDS } from '../../src/core/cover/plan';
import { CUT_FIELDS } from '../../src/core/cut/plan';
import { FLAT_FIELDS } from '../../src/core/flat/plan';
import {
  askedOf,
  problemWith,
  readTexts,
  textsOf,
  usualOf,
  type FieldTable,
  isAsked,
} from '../../src/core/link/fields';
import { encodePlan } from '../../src/core/link/plan-link';
import { decodePlan } from '../../src/core/link/read-plan-link';
import { MAKE_FIELDS } from '../../src/core/make/fields';
import { MEASURE_FIELDS } from '../../src/core/measure/plan';
import { MIX_FIELDS } from '../../src/core/mix/plan';
import { readCatalogue } from '../tools/read-content';
import { anyPlan } from '../core/support/any-plan';

const catalogue = readCatalogue();
const TABLES: Readonly<Record<string, FieldTable>> = {
  choose: JOB_FIELDS,
  mix: MIX_FIELDS,
  cover: COVER_FIELDS,
  flat: FLAT_FIELDS,
  make: MAKE_FIELDS,
  cut: CUT_FIELDS,
  measure: MEASURE_FIELDS,
  bench: BENCH_FIELDS,
  class: CLASS_FIELDS,
};

test('every calculator has its table here; trials have none', () => {
  const rooms = Object.keys(ROOMS).filter((room) => room !== 'trial');
  expect(Object.keys(TABLES).sort(), 'enter its fields in TABLES above').toEqual(rooms.sort());
});

describe.each(Object.entries(TABLES))('%s', (_room, fields) => {
  test('no two fields share a key, and none takes a key that every link has', () => {
    const keys = Object.values(fields).map(({ key }) => key);
    const twice = keys.filter((key, i) => keys.indexOf(key) < i);
    expect(twice, 'two fields share these keys; give the newer one another').toEqual([]);
    for (const taken of ['v', 'seen', 'ev']) expect(keys).not.toContain(taken);
  });
  test('what is usual is allowed, and its records are there', () => {
    const usual: Readonly<Record<string, unknown>> = usualOf(fields);
    for (const [name, field] of Object.entries(fields)) {
      expect(problemWith(name, field, usual[name]), name).toBeUndefined();
      expect(problemWith(name, field, usual[name], catalogue), name).toBeUndefined();
    }
  });
  test('what is typed as it is shown, and what a link carries, is the same plan', () => {
    fc.assert(
      fc.property(anyPlan(fields, usualOf(fields)), (plan) => {
        expect(decodePlan(encodePlan(plan, fields), fields)).toMatchObject({ plan, dropped: [] });
        const inMillimetres = 'unit' in fields ? { ...plan, unit: 'mm' } : plan;
        const texts = textsOf(inMillimetres, fields);
        // an example that nobody asked for is not in the form, and stays in the plan
        const unseen = Object.keys(fields).filter((name) => fields[name]!.example && texts[name] === '');
        const shown = Object.keys(fields).filter((name) => !unseen.includes(name));
        for (const name of unseen) expect(isAsked(fields[name]!, plan), name).toBe(false);
        expect(readTexts(texts, fields, usualOf(fields), shown)).toEqual({ plan: inMillimetres, problems: [] });
        expect(Object.keys(fields)).toEqual(expect.arrayContaining([...askedOf(plan, fields)]));
      }),
      { numRuns: 40 },
    );
  });
  test('nonsense in a link leaves each field at its usual value, and is named', () => {
    const nonsense = Object.values(fields)
      .filter(({ kind }) => kind !== 'text')
      .map(({ key }) => key);
    const { plan, dropped } = decodePlan(nonsense.map((key) => `${key}=~!~`).join('&'), fields);
    expect(plan).toEqual(usualOf(fields));
    expect(dropped).toHaveLength(nonsense.length);
  });
});
