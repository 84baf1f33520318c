/** The model's constants are the ones that the search finds, and the page's report of it is what comes of them. */
import { describe, expect, test } from 'vitest';
import { BOND_CONSTANTS, type BondConstants } from '../../src/core/joint/constants';
import { SAMPLES } from '../../src/core/choose/ranking';
import { checkSchema } from '../../src/schemas/checks';
import { readCatalogue, readRecords } from '../tools/read-content';
import { agreement, answerer, fit, FREE, isRight, lossOf, RANGES, rounded, type Outcomes } from './fit';

/**
 * A whole search takes a minute or two, so it is made on demand (`SEARCH=1 npm run test:unit -- constants`, and
 * `npm run calibrate` makes all of them); every run asks whether the constants are where a search would stop.
 */
const WHOLE = process.env['SEARCH'] === '1';
const LONG = 600_000;

const catalogue = readCatalogue();
const checks = readRecords('checks');
const outcomes = checks['bench-outcomes.yaml'] as Outcomes;
const report = checkSchema.parse(checks['leave-one-out.yaml']);
if (report.kind !== 'leave-one-out') throw new Error('leave-one-out.yaml is of another kind');
const papers = [...new Set(outcomes.rows.map(({ paper }) => paper))];
const without = (paper: string): Outcomes => ({
  ...outcomes,
  rows: outcomes.rows.filter((row) => row.paper !== paper),
});
const freeOf = (constants: BondConstants) => Object.fromEntries(FREE.map((key) => [key, constants[key]]));
/** Three digits lose this much at most. */
const NEAR = 0.05;
const full = (constants: Record<string, number>): BondConstants => ({ ...BOND_CONSTANTS, ...constants });

describe('the constants in use', () => {
  test.runIf(WHOLE)('a fresh search gives the same, to three digits', { timeout: LONG }, () => {
    expect(freeOf(rounded(fit(outcomes, catalogue).constants))).toEqual(freeOf(BOND_CONSTANTS));
  });
  test.for([
    ['all outcomes', outcomes, freeOf(BOND_CONSTANTS)] as const,
    ...report.folds.map(({ paper, constants }) => [`without ${paper}`, without(paper), constants] as const),
  ])('a search would stop here, for %s: no step of 3 % makes the loss clearly smaller', ([, asked, constants]) => {
    const loss = lossOf(asked, catalogue);
    const here = loss(full(constants));
    for (const key of FREE)
      for (const step of [0.97, 1.03])
        expect(loss(full({ ...constants, [key]: constants[key]! * step })), `${key} × ${step}`).toBeGreaterThan(
          here - NEAR,
        );
    // and it is a place that has been searched for: far from it all is worse
    expect(loss(full({ ...constants, [FREE[0]!]: constants[FREE[0]!]! * 2 }))).toBeGreaterThan(here + NEAR);
  });
  test.for(FREE)('%s lies in its stated range', (key) => {
    const [low, high] = RANGES[key] as readonly [number, number];
    expect(BOND_CONSTANTS[key]).toBeGreaterThanOrEqual(low);
    expect(BOND_CONSTANTS[key]).toBeLessThanOrEqual(high);
  });
  // More draws than the chooser's own must not turn an outcome round: it would rest on which draws were made.
  test.for([SAMPLES, 4 * SAMPLES])('every outcome is met with one set of them, at %i draws', (draws) => {
    const missed = outcomes.rows.flatMap((row) => {
      const answer = answerer(row, outcomes, catalogue, draws)(BOND_CONSTANTS);
      const { spread, lift } = isRight(row, answer);
      const side = row.gives === undefined || answer.gives === row.gives;
      const chances = agreement(row, answer).map((chance) => chance.toFixed(3));
      return spread && lift && side ? [] : [`${row.id}: ${chances.join(' ')}`];
    });
    expect(missed).toEqual([]);
  });
});

describe('with one paper left out', () => {
  test('each paper of the outcomes was left out once, and each of its outcomes asked', () => {
    expect(report.folds.map(({ paper }) => paper)).toEqual(papers);
    for (const { paper, rows } of report.folds)
      expect(rows.map(({ id }) => id)).toEqual(outcomes.rows.filter((row) => row.paper === paper).map(({ id }) => id));
  });
  test('the number right is the sum of what is recorded, out of two for each outcome', () => {
    const right = report.folds
      .flatMap(({ rows }) => rows)
      .reduce((sum, { spread, lift }) => sum + Number(spread) + Number(lift), 0);
    expect(report.right).toBe(right);
    expect(report.asked).toBe(2 * outcomes.rows.length);
  });
  test.for(report.folds.map((fold) => [fold.paper, fold] as const))(
    '%s: the constants recorded give what is recorded',
    ([, { constants, rows }]) => {
      expect(Object.keys(constants)).toEqual(FREE);
      for (const { id, spread, lift } of rows) {
        const row = outcomes.rows.find((one) => one.id === id)!;
        expect({ id, ...isRight(row, answerer(row, outcomes, catalogue)(full(constants))) }).toEqual({
          id,
          spread,
          lift,
        });
      }
    },
  );
  test.runIf(WHOLE)('left out again, one paper gives the constants that are recorded', { timeout: LONG }, () => {
    const fold = report.folds.find(({ paper }) => paper === 'lokta-light')!;
    expect(freeOf(rounded(fit(without(fold.paper), catalogue).constants))).toEqual(fold.constants);
  });
});
