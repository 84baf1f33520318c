/** Every row of content/checks, run by the same code that the page "How we check" runs; and proof that a wrong row fails. */
import { describe, expect, test } from 'vitest';
import { catalogue } from '../../src/data/catalogue';
import { CHECK_FUNCTIONS } from '../../src/data/check-functions';
import { runFormula, runOutcome } from '../../src/data/run-checks';
import { checkSchema, type FormulaRow, type OutcomeRow } from '../../src/schemas/checks';
import { readRecords } from '../tools/read-content';

const CHECKS = Object.entries(readRecords('checks')).map(([file, data]) => ({ file, check: checkSchema.parse(data) }));
const FORMULAS = CHECKS.flatMap(({ file, check }) =>
  check.kind === 'formula' ? check.rows.map((row) => ({ file, row })) : [],
);
const OUTCOMES = CHECKS.flatMap(({ check }) =>
  check.kind === 'outcomes' ? check.rows.map((row) => ({ check, row })) : [],
);

describe('a formula gives the outside value', () => {
  test.for(FORMULAS.map(({ file, row }) => [`${file}: ${row.id}`, row] as const))('%s', ([, row]) => {
    const { ours, difference, passes } = runFormula(row);
    expect(passes, `expected ${row.expected} ± ${row.within}, got ${ours}`).toBe(true);
    // said again in the test's own words, so that `passes` cannot be taken on trust
    expect(Math.abs(ours - row.expected)).toBeLessThanOrEqual(row.within);
    expect(difference).toBeCloseTo(ours - row.expected, 12);
  });
});

describe('the model gives what happens on the bench (common practice, no source)', () => {
  test.for(OUTCOMES.map(({ check, row }) => [row.id, check, row] as const))('%s', ([, check, row]) => {
    const { spreadChance, liftChance, gives, passes } = runOutcome(row, check, catalogue);
    expect({ spreads: spreadChance >= 0.5, lifts: liftChance >= 0.5 }).toEqual({
      spreads: row.spreads,
      lifts: row.lifts,
    });
    if (row.gives) expect(gives).toBe(row.gives);
    expect(passes).toBe(true);
  });
});

test('the checks are as wide as they are said to be', () => {
  expect(OUTCOMES).toHaveLength(12);
  expect(FORMULAS.length).toBeGreaterThanOrEqual(30);
  const called = new Set(FORMULAS.map(({ row }) => row.call));
  const idle = Object.keys(CHECK_FUNCTIONS).filter((name) => !called.has(name));
  // These are proved in tests/core against other statements; the page need not show them.
  expect(idle).toEqual(['evaporationRate', 'sorptivityFromDrop', 'twoPlyCurvature', 'uptake']);
});

test('no two rows share an id', () => {
  const ids = [...FORMULAS.map(({ row }) => row.id), ...OUTCOMES.map(({ row }) => row.id)];
  expect(new Set(ids).size).toBe(ids.length);
});

describe('a slip in a check file is caught', () => {
  const sound: FormulaRow = {
    ...{ id: 'one', call: 'apparentDensity', args: [80, 100], expected: 0.8, unit: '', within: 0.001 },
    ...{ basis: 'exact', says: '80 g/m² at 100 µm' },
  };
  test('a wrong value does not pass', () => {
    expect(runFormula(sound).passes).toBe(true);
    expect(runFormula({ ...sound, expected: 0.81 }).passes).toBe(false);
    expect(runFormula({ ...sound, args: [81, 100], within: 0.009 }).passes).toBe(false);
  });
  test('an unknown function, an unknown field and no number throw', () => {
    expect(() => runFormula({ ...sound, call: 'nothing' })).toThrow(/no function "nothing"/);
    expect(() => runFormula({ ...sound, pick: 'value' })).toThrow(/gave no number/);
    expect(() => runFormula({ ...sound, call: 'grammageFromWeighing', args: [{}] })).toThrow(RangeError);
  });
  const { check, row } = OUTCOMES[0]!;
  test.for([
    ['spreading', { spreads: !row.spreads }],
    ['lifting', { lifts: !row.lifts }],
    ['the side that gives', { gives: 'substrate' as const }],
  ] as const)('an outcome turned round fails: %s', ([, change]) => {
    const turned: OutcomeRow = { ...row, ...change };
    expect(runOutcome(turned, check, catalogue).passes).toBe(false);
  });
  test('an outcome about an adhesive that is not there throws', () => {
    expect(() => runOutcome({ ...row, adhesive: 'no-such-glue' }, check, catalogue)).toThrow(/no adhesive/);
  });
});
