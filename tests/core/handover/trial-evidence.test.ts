/** What swatches do to the model's chance, and the words that are found for what they show. */
import { describe, expect, test } from 'vitest';
import { DEFAULT_JOB } from '../../../src/core/choose/job';
import { cellsOf, compareGlues } from '../../../src/core/trial/analysis';
import { updateChance, witnessesFor } from '../../../src/core/handover/trial-evidence';
import { detectableDifference } from '../../../src/core/stats/power';
import { summaryOf } from '../../../src/core/trial/summary';
import { passThreshold } from '../../../src/core/stats/threshold';
import {
  cellWords,
  comparisonWords,
  percent,
  powerWords,
  standingOf,
  thresholdWords,
} from '../../../src/core/trial/words';
import { readCatalogue } from '../../tools/read-content';
import { trialWith } from '../support/trial';

const catalogue = readCatalogue();
const job = { ...DEFAULT_JOB, paper: { family: 'unryu', grammage: 25 }, placeSeconds: 20 };

describe('the beta prior, worked by hand', () => {
  test('four swatches’ worth at 0.5 and three passes: (2 + 3) / (4 + 3)', () => {
    const found = updateChance(
      0.5,
      [1, 1, 1].map((score) => ({ score, weight: 1 })),
      4,
    );
    expect(found.withTrials).toBeCloseTo(5 / 7, 12);
    expect(found).toMatchObject({ modelAlone: 0.5, swatches: 3, weight: 3 });
    // R 4.2.2: qbeta(c(.05, .95), 5, 2)
    expect(found.low).toBeCloseTo(0.418197, 4);
    expect(found.high).toBeCloseTo(0.93715, 4);
  });
  test('half a weight counts half: (1 + 0.5 × 0) / (4 + 0.5) at 0.25', () => {
    expect(updateChance(0.25, [{ score: 0, weight: 0.5 }], 4).withTrials).toBeCloseTo(1 / 4.5, 12);
  });
  test('no swatches, no change', () => {
    expect(updateChance(0.37, [])).toMatchObject({ withTrials: 0.37, swatches: 0 });
  });
  test('enough swatches overrule a model that is sure', () => {
    const fails = Array.from({ length: 40 }, () => ({ score: 0, weight: 1 }));
    expect(updateChance(1, fails).withTrials).toBeLessThan(0.1);
  });
});

describe('which swatches bear on a job', () => {
  const trial = trialWith(() => 'pass');
  const lift = (over: Partial<typeof job>, from = trial) =>
    witnessesFor([from], 'pva', { ...job, ...over }, catalogue).lift;
  test('the same paper, adhesive, board and hold count in full', () => {
    expect(lift({})).toEqual([1, 1, 1].map((score) => ({ score, weight: expect.closeTo(1, 6) })));
  });
  test('weight falls as the paper lies farther off: e^(−1/2) one width away', () => {
    const near = lift({ paper: { family: 'unryu', grammage: 25 * Math.exp(0.25) } });
    expect(near[0]?.weight).toBeCloseTo(Math.exp(-0.5), 2);
    expect(lift({ paper: { family: 'unryu', grammage: 60 } })).toHaveLength(0);
  });
  test('another board, another adhesive or a swatch set aside says nothing', () => {
    expect(lift({ substrate: 'leather' })).toHaveLength(0);
    expect(witnessesFor([trial], 'eva', job, catalogue).lift).toHaveLength(0);
    expect(lift({}, { ...trial, swatches: trial.swatches.map((one) => ({ ...one, spoiled: true })) })).toHaveLength(0);
  });
  test('the worse of paper and board decides whether a lift was clean', () => {
    const both = trialWith(() => 'pass');
    const board = { id: 'board', kind: 'board', text: 'x', criterion: '' } as const;
    const swatches = both.swatches.map((one) => ({ ...one, outcomes: { ...one.outcomes, board: 'fail' as const } }));
    expect(lift({}, { ...both, questions: [...both.questions, board], swatches }).map(({ score }) => score)).toEqual([
      0, 0, 0,
    ]);
  });
});

describe('words', () => {
  const trial = trialWith(({ glue, paper }) => (glue === 'glue-1' ? 'pass' : paper === 'paper-1' ? 'fail' : 'partly'));
  const cells = cellsOf(trial, 'lift');
  test('3 of 3 leaves room down to 44 %, and is not called settled', () => {
    expect(cells[0] && cellWords(cells[0])).toBe('3 of 3 passed; the true rate could be as low as 44\u00a0%.');
    expect(cells[0] && standingOf(cells[0])).toBe('not enough to tell');
    expect(cells[1] && cellWords(cells[1])).toBe('0 of 3 passed; the true rate could be as high as 56\u00a0%.');
    expect(cells[3] && cellWords(cells[3])).toContain('3 partly');
  });
  test('two adhesives: noticed within papers, with the odds of luck', () => {
    const found = compareGlues(trial, 'lift', 'glue-1', 'glue-2');
    // 3 against 0 on one paper: 2 of 20; 3 passes against 3 halves on the other: 2 of 20; both at once the same way: 2 of 400
    expect(found).toMatchObject({
      p: 2 / 400,
      test: 'permutation',
      blocks: 2,
      pairs: { onlyFirst: 6, onlySecond: 0, all: 6, p: expect.closeTo(1 / 32, 12) },
    });
    expect(found && comparisonWords(found, 'Paste', 'Vinyl')).toContain('Paste did better');
  });
  test('a gap that luck explains is called so', () => {
    const even = trialWith(({ glue, block }) => (block <= (glue === 'glue-1' ? 2 : 1) ? 'pass' : 'fail'));
    const found = compareGlues(even, 'lift', 'glue-1', 'glue-2');
    expect(found && comparisonWords(found, 'Paste', 'Vinyl')).toContain('Not enough to tell');
  });
  test('nothing judged, nothing said', () => {
    expect(summaryOf(trialWith(() => undefined)).questions[0]?.takeaways).toEqual(['Nothing is judged yet.']);
    expect(
      compareGlues(
        trialWith(() => undefined),
        'lift',
        'glue-1',
        'glue-2',
      ),
    ).toBeUndefined();
  });
  test('replicates', () => {
    expect(powerWords(detectableDifference(3))).toBe(
      'With 3 each you would notice always against never, not 2 of 3 against 1 of 3.',
    );
    expect(powerWords(detectableDifference(2))).toContain('not even always against never');
    expect(powerWords(detectableDifference(8))).toMatch(/4 of 8 against none, not 5 of 8 against 3 of 8.*71/);
  });
  test('weight that does not matter has no threshold', () => {
    const flat = passThreshold([20, 40, 80].map((grammage) => ({ grammage, passes: 2, n: 4 })));
    expect(thresholdWords(flat)).toContain('Not enough to tell');
  });
  test('a share is never rounded to a certainty', () => {
    expect([0, 0.004, 0.5, 0.996, 1].map(percent)).toEqual([
      '0\u00a0%',
      'under 1\u00a0%',
      '50\u00a0%',
      'over 99\u00a0%',
      '100\u00a0%',
    ]);
  });
});
