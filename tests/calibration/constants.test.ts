/** The ensemble meets the outcomes, each set lies in its stated ranges, and the page's report is what came of it. */
import { describe, expect, test } from 'vitest';
import { BOND_CONSTANTS } from '../../src/core/joint/constants';
import { ENSEMBLE, SETS } from '../../src/core/joint/ensemble';
import { SAMPLES } from '../../src/core/choose/ranking';
import { foretold, scoreOf } from '../../src/data/left-out';
import { runOutcome } from '../../src/data/run-checks';
import { checkSchema } from '../../src/schemas/checks';
import { readCatalogue, readRecords } from '../tools/read-content';
import { LOOSE_SETS } from '../../src/core/learn/loose-sets';
import { drawSets, logLikelihood, LOOSE, LOOSE_COUNT } from './chain';
import { agreement, answerer, FREE, isRight, RANGES, rounded, type Outcomes } from './fit';

/** The chain takes minutes, so it is drawn anew on demand: `SEARCH=1 npm run test:unit -- constants`. */
const WHOLE = process.env['SEARCH'] === '1';
const LONG = 1_800_000;

const catalogue = readCatalogue();
const checks = readRecords('checks');
const outcomes = checks['bench-outcomes.yaml'] as Outcomes;
const check = checkSchema.parse(checks['bench-outcomes.yaml']);
const report = checkSchema.parse(checks['leave-one-out.yaml']);
if (report.kind !== 'leave-one-out' || check.kind !== 'outcomes') throw new Error('a check is of another kind');
const free = (set: typeof BOND_CONSTANTS) => FREE.map((key) => rounded(set)[key]);

describe('the constants in use', () => {
  test('there is a set for each draw of the chooser', () => {
    expect(ENSEMBLE).toHaveLength(SETS);
    expect(SETS).toBe(SAMPLES);
    expect(new Set(ENSEMBLE.map((set) => free(set).join())).size).toBeGreaterThan(SETS / 2);
  });
  test.for(FREE)('%s lies in its stated range, in every set', (key) => {
    const [low, high] = RANGES[key] as readonly [number, number];
    for (const set of [BOND_CONSTANTS, ...ENSEMBLE]) {
      expect(set[key]).toBeGreaterThanOrEqual(low * 0.995);
      expect(set[key]).toBeLessThanOrEqual(high * 1.005);
    }
  });
  test('the likeliest set meets every outcome, and which side gives, at the middle of every range as well', () => {
    const missed = outcomes.rows.flatMap((row) => {
      const answer = answerer(row, outcomes, catalogue)(BOND_CONSTANTS);
      const { spread, lift } = isRight(row, answer);
      const side = row.gives === undefined || answer.gives === row.gives;
      return spread && lift && side ? [] : [`${row.id}: ${agreement(row, answer).map((one) => one.toFixed(3))}`];
    });
    expect(missed).toEqual([]);
  });
  test('the sets together, as the chooser uses them, meet every outcome', () => {
    const missed = outcomes.rows.flatMap((row) => {
      const found = runOutcome(row, check, catalogue);
      return found.passes ? [] : [`${row.id}: spread ${found.spreadChance}, lift ${found.liftChance}, ${found.gives}`];
    });
    expect(missed).toEqual([]);
  });
  test('no set is much less likely than the others: a chain that had not settled would hold some', () => {
    const likely = logLikelihood(outcomes, catalogue, 24);
    const levels = ENSEMBLE.map(likely).sort((a, b) => a - b);
    expect(levels[0]!).toBeGreaterThan(levels[SETS / 2]! - 40);
    // what has not been searched for is far worse
    expect(likely({ ...BOND_CONSTANTS, boardFace: BOND_CONSTANTS.boardFace * 4 })).toBeLessThan(levels[0]!);
  });
  test.runIf(WHOLE)('a fresh chain gives the same sets', { timeout: LONG }, () => {
    const { sets, best } = drawSets(outcomes, catalogue, SETS);
    expect(sets.map(free)).toEqual(ENSEMBLE.map(free));
    expect(free(best)).toEqual(free(BOND_CONSTANTS));
  });
  test.runIf(WHOLE)('a fresh loose chain gives the same loose sets', { timeout: LONG }, () => {
    const { sets } = drawSets(outcomes, catalogue, LOOSE_COUNT, LOOSE);
    // the table is rounded to twentieths of a log
    sets.forEach((set, i) =>
      FREE.forEach((key) =>
        expect(Math.abs(Math.log(set[key] / LOOSE_SETS[i]![key]))).toBeLessThanOrEqual(0.5 / 20 + 1e-9),
      ),
    );
  });
});

describe('with one paper left out', () => {
  const told = foretold(report, check);
  test('each paper of the outcomes was left out once, and each of its outcomes asked', () => {
    const papers = [...new Set(outcomes.rows.map(({ paper }) => paper))];
    expect(report.folds.map(({ paper }) => paper)).toEqual(papers);
    expect(told).toHaveLength(2 * outcomes.rows.length);
  });
  test('the model foretells better than the naive rule, and than yes to everything', () => {
    const { asked, right, brier, naive, yes } = scoreOf(told);
    expect(asked).toBe(24);
    expect(right).toBeGreaterThan(yes);
    expect(brier).toBeLessThan(naive);
  });
  test('scores by hand: 0.9 and yes, 0.4 and no', () => {
    const two = [
      { id: 'a', paper: 'a', thing: 'spread', chance: 0.9, happened: true },
      { id: 'b', paper: 'b', thing: 'lift', chance: 0.4, happened: false },
    ] as const;
    // (0.01 + 0.16) / 2; and a half said of both
    expect(scoreOf(two)).toEqual({
      asked: 2,
      right: 2,
      sure: 1,
      sureRight: 1,
      brier: expect.closeTo(0.085, 12),
      naive: 0.25,
      yes: 1,
    });
    // sure that it does not come about, and wrong
    expect(scoreOf([{ ...two[0], chance: 0.1 }, two[1]])).toMatchObject({ sure: 1, sureRight: 0, right: 1 });
  });
});
