/**
 * Every row of content/checks, run by the same code that the page "How we check" runs; and proof that each of
 * them can fail. `npm run test:unit -- checks` runs this alone.
 */
import { describe, expect, test } from 'vitest';
import { basesOf } from '../../src/components/checks/bases';
import { crowdsEdge } from '../../src/components/checks/crowds-edge';
import { catalogue } from '../../src/data/catalogue';
import { CHECK_FUNCTIONS } from '../../src/data/check-functions';
import { meets, runFormula, runOutcome } from '../../src/data/run-checks';
import { checkSchema, halfOfLastFigure, type FormulaRow, type OutcomeRow } from '../../src/schemas/checks';
import { readRecords } from '../tools/read-content';

const CHECKS = Object.entries(readRecords('checks')).map(([file, data]) => ({ file, check: checkSchema.parse(data) }));
const FORMULAS = CHECKS.flatMap(({ file, check }) =>
  check.kind === 'formula' ? check.rows.map((row) => ({ file, row })) : [],
);
const OUTCOMES = CHECKS.flatMap(({ check }) =>
  check.kind === 'outcomes' ? check.rows.map((row) => ({ check, row })) : [],
);
/** Name and row, as test.for wants them. */
const NAMED = FORMULAS.map(({ file, row }) => [`${file}: ${row.id}`, row] as const);

describe('a formula gives the outside value', () => {
  test.for(NAMED)('%s', ([, row]) => {
    const { ours, difference, passes } = runFormula(row);
    expect(passes, `expected ${row.expected} ± ${row.within}, got ${ours}`).toBe(true);
    // said again in the test's own words, so that `passes` cannot be taken on trust
    expect(Math.abs(ours - row.expected)).toBeLessThanOrEqual(row.within);
    expect(difference).toBeCloseTo(ours - row.expected, 12);
  });
});

test('the flow curve, faster than 1 per second: its power is not ours, as the page says', () => {
  const fast = [1.258, 1.994, 3.158, 5.003, 7.925, 12.55];
  const power = CHECK_FUNCTIONS['etherPower'] as (ether: object, rates: readonly number[]) => number;
  const shown = CHECKS.find(({ file }) => file === 'viscosities.yaml')!.check.about;
  const [, measured, ours] = /the power (0\.\d+) of the rate, and ours with (0\.\d+)/.exec(shown)!;
  // 0.599 through the logs of the six fastest points of the table, worked out apart from this code
  expect(measured).toBe('0.60');
  expect(power({ gradeMilliPascalSeconds: 4000, percent: 3 }, fast).toFixed(2)).toBe(ours);
});

/** The functions, of which the one that a row calls is wrong by so much in what the row picks. */
function wrongBy(row: FormulaRow, much: number): typeof CHECK_FUNCTIONS {
  const right = CHECK_FUNCTIONS[row.call] as (...args: unknown[]) => unknown;
  const spoil = (value: unknown, path: readonly string[]): unknown => {
    const [key, ...rest] = path;
    return key === undefined
      ? (value as number) + much
      : { ...(value as object), [key]: spoil((value as Record<string, unknown>)[key], rest) };
  };
  const wrong = (...args: unknown[]) => spoil(right(...args), row.pick?.split('.') ?? []);
  return { ...CHECK_FUNCTIONS, [row.call]: wrong };
}

describe('a formula that is wrong by twice what may pass fails', () => {
  test.for(NAMED)('%s', ([, row]) => {
    // what is counted in whole things passes only if it is right: one too many has to fail
    const much = row.within === 0 ? 1 : 2 * row.within;
    expect(runFormula(row, wrongBy(row, much)).passes, 'too high').toBe(false);
    expect(runFormula(row, wrongBy(row, -much)).passes, 'too low').toBe(false);
    expect(runFormula(row, wrongBy(row, 0)).passes, 'the wrapping itself changes nothing').toBe(true);
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
    // and an answer on the other side of one half does not pass
    expect(meets(row, { spreadChance: 1 - spreadChance, liftChance, gives })).toBe(false);
    expect(meets(row, { spreadChance, liftChance: 1 - liftChance, gives })).toBe(false);
    if (row.gives) expect(meets(row, { spreadChance, liftChance, gives: 'neither' })).toBe(false);
  });
});

test('the checks are as wide as they are said to be', () => {
  expect(OUTCOMES).toHaveLength(12);
  expect(FORMULAS.length).toBeGreaterThanOrEqual(100);
  expect(FORMULAS.filter(({ row }) => row.call === 'etherStress')).toHaveLength(16);
  const called = new Set(FORMULAS.map(({ row }) => row.call));
  const idle = Object.keys(CHECK_FUNCTIONS).filter((name) => !called.has(name));
  // These are proved in tests/core against other statements; the page need not show them.
  expect(idle).toEqual(['sorptivityFromDrop', 'twoPlyCurvature', 'uptake', 'wetFilmMicrometres']);
});

describe('what the page says of the checks as a whole', () => {
  test('rows are counted by how what they expect is known, and all of them are', () => {
    const counted = basesOf([{ basis: 'exact' }, { basis: 'published' }, { basis: 'exact' }]);
    expect(counted.map(({ short, count }) => [short, count])).toEqual([
      ['published', 1],
      ['exact, by hand', 2],
    ]);
    const all = basesOf(FORMULAS.map(({ row }) => row)).reduce((sum, { count }) => sum + count, 0);
    expect(all).toBe(FORMULAS.length);
  });
});

describe('a fitted constant that would have gone further', () => {
  const even = Array.from({ length: 50 }, (_, i) => 1.1 + 0.03 * i);
  test('is one of which a tenth of the sets lie at an end of its range', () => {
    expect(crowdsEdge(even, [1, 3])).toBe(false);
    expect(crowdsEdge([...even.slice(5), 2.98, 2.99, 2.97, 3, 2.96], [1, 3])).toBe(true);
    expect(crowdsEdge([...even.slice(5), 1, 1.01, 1.005, 1.015, 1.02], [1, 3])).toBe(true);
    expect(crowdsEdge([...even.slice(2), 2.98, 2.99], [1, 3])).toBe(false);
  });
});

test('no two rows share an id', () => {
  const ids = [...FORMULAS.map(({ row }) => row.id), ...OUTCOMES.map(({ row }) => row.id)];
  expect(new Set(ids).size).toBe(ids.length);
});

describe('a slip in a check file is caught', () => {
  const sound: FormulaRow = {
    id: 'one',
    call: 'apparentDensity',
    args: [80, 100],
    expected: 0.8,
    unit: '',
    within: 0.001,
    basis: 'exact',
    says: '80 g/m² at 100 µm',
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
  const said = (change: object) => {
    const file = { title: 'One row', about: 'A file of one row, to be refused.', kind: 'formula' };
    const read = checkSchema.safeParse({ ...file, rows: [{ ...sound, ...change }] });
    return read.error?.issues.map(({ message }) => message).join(' ') ?? '';
  };
  test('a tolerance wider than the rounding of what is printed needs its reason', () => {
    expect(said({})).toBe('');
    expect(said({ within: 0.06 })).toMatch(/say in toleranceFrom why more may pass/);
    expect(said({ within: 0.06, toleranceFrom: 'The source says that it is good to 8 %.' })).toBe('');
  });
  test('an answer that stands among what goes in is refused', () => {
    expect(said({ args: [80, 0.8] })).toMatch(/the check could not fail/);
    expect(said({ args: [{ deep: [0.8] }] })).toMatch(/the check could not fail/);
  });
  test.for([
    [9.2, 0.05],
    [244, 0.5],
    [0.0142857, 5e-8],
    [1.5e-5, 5e-7],
  ] as const)('%f is written to within %f', ([value, half]) => {
    expect(halfOfLastFigure(value)).toBeCloseTo(half, 15);
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
