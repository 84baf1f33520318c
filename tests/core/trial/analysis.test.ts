/** From swatches to counts and comparisons, on cases made by hand. */
import { describe, expect, it } from 'vitest';
import { cellsOf, compareGlues, dosesIn, judgementsOf, observationsOf } from '../../../src/core/trial/analysis';
import { mergeTrials } from '../../../src/core/trial/merge';
import type { Swatch } from '../../../src/core/trial/record';
import { laid, trialOf } from '../support/trial';

describe('counts', () => {
  const trial = trialOf([
    ...['p a 20 1 pass', 'p a 20 2 partly', 'p a 60 1 fail', 'p a 60 2 pass'],
    ...['p b 20 1 fail', 'q a 20 1 fail', 'q b 60 1 pass', 'r a 20 1 pass', 'q a 60 1 -'],
  ]);
  it('go by paper and adhesive, of all holds or of one; partly is no clean pass', () => {
    const cells = (hold?: number) =>
      cellsOf(trial, 'lift', hold).map(({ paper, glue, passes, partly, fails, n }) =>
        [paper + glue, passes, partly, fails, n].join(' '),
      );
    expect(cells()).toEqual(['pa 2 1 1 4', 'pb 0 0 1 1', 'qa 0 0 1 1', 'qb 1 0 0 1', 'ra 1 0 0 1', 'rb 0 0 0 0']);
    expect(cells(20)).toEqual(['pa 1 1 0 2', 'pb 0 0 1 1', 'qa 0 0 1 1', 'qb 0 0 0 0', 'ra 1 0 0 1', 'rb 0 0 0 0']);
    const [first, , , , , last] = cellsOf(trial, 'lift');
    expect(last!.interval).toBeUndefined();
    expect(first!.interval!.estimate).toBe(0.5);
  });
  it('leave out what is set aside', () => {
    const spoiled = { ...trial, swatches: trial.swatches.map((one) => ({ ...one, spoiled: true })) };
    expect(cellsOf(spoiled, 'lift').every(({ n }) => n === 0)).toBe(true);
  });
  it('by weight, for one adhesive; a paper that was not weighed or not tried with it is left out', () => {
    expect(observationsOf(trial, 'lift', 'a')).toEqual([
      { grammage: 25, passes: 2, n: 4 },
      { grammage: 100, passes: 0, n: 1 },
    ]);
    expect(observationsOf(trial, 'lift', 'b', 60)).toEqual([{ grammage: 100, passes: 1, n: 1 }]);
  });
});

describe('two adhesives side by side', () => {
  const compare = (...lines: string[]) => compareGlues(trialOf(lines), 'lift', 'a', 'b');
  it('on one paper at one hold by Boschloo, of clean passes and fails alone and sixty swatches at most', () => {
    expect(compare('p a 20 1 pass', 'p b 20 1 fail')).toMatchObject({ test: 'boschloo', blocks: 1, difference: 1 });
    expect(compare('p a 20 1 partly', 'p b 20 1 fail')).toMatchObject({ test: 'permutation', difference: 0.5 });
    expect(compare('p a 20 1 pass', 'p b 20 1 partly')?.test).toBe('permutation');
    const two = ['p a 20 1 pass', 'p b 20 1 fail', 'q a 20 1 pass', 'q b 20 1 pass'];
    expect(compare(...two)).toMatchObject({ test: 'permutation', blocks: 2, difference: 0.5 });
    const many = (n: number) => Array.from({ length: n }, (_, i) => `p a 20 ${i} pass`);
    expect(compare(...many(60), 'p b 20 1 fail')?.test).toBe('boschloo');
    expect(compare(...many(61), 'p b 20 1 fail')?.test).toBe('permutation');
  });
  it('only where both were tried: elsewhere nothing can be said', () => {
    expect(compare('p a 20 1 pass', 'q b 20 1 fail')).toBeUndefined();
    expect(compare('p a 20 1 pass', 'p b 60 1 fail')).toBeUndefined();
    expect(compare('p b 20 1 fail')).toBeUndefined();
    expect(compare('p a 20 1 pass', 'p b 20 1 fail', 'q a 20 1 pass')).toMatchObject({ first: { n: 1 }, blocks: 1 });
  });
  it('in pairs of the same paper, hold, repeat and trial, where there is one partner', () => {
    const { pairs } = compare(
      ...['p a 20 1 pass', 'p b 20 1 fail', 'p a 20 2 pass', 'p b 20 2 pass', 'p a 60 1 fail', 'p b 60 1 pass'],
      ...['q a 20 1 partly', 'q b 20 1 pass', 'q a 20 3 pass', 'q b 20 4 fail'],
    )!;
    expect(pairs).toEqual({ onlyFirst: 1, onlySecond: 2, all: 4 });
  });
  it('three against none on each of two papers: 2 of 20 ways on either, 2 of 400 on both', () => {
    const lines = ['p', 'q'].flatMap((paper) =>
      [1, 2, 3].flatMap((block) => [
        `${paper} a 20 ${block} pass`,
        `${paper} b 20 ${block} ${paper === 'p' ? 'fail' : 'partly'}`,
      ]),
    );
    expect(compare(...lines)).toMatchObject({
      p: expect.closeTo(2 / 400, 12),
      least: expect.closeTo(2 / 400, 12),
      blocks: 2,
    });
  });
  it('where another outcome would have been read by another test, the smallest p is not settled', () => {
    expect(compare('p a 20 1 partly', 'p b 20 1 fail')).toMatchObject({ test: 'permutation', least: 0 });
    expect(compare('p a 20 1 pass', 'p b 20 1 fail')).toMatchObject({ test: 'boschloo', least: 0 });
  });
});

describe('two hands', () => {
  /** `n` swatches that all came out so. */
  const times = (n: number, line: string, outcome: string, from = 0) =>
    Array.from({ length: n }, (_, i) => `${line} ${from + i} ${outcome}`);
  const ada = (...lines: string[]) => trialOf(lines, { id: 'ada', by: 'Ada' });
  const bo = (...lines: string[]) => trialOf(lines, { id: 'bo', by: 'Bo' });
  it('that differ make no difference between adhesives, however unevenly they tried them', () => {
    // Ada passes always and laid mostly paste, Bo never and laid mostly vinyl
    const { trial } = mergeTrials(
      ada(...times(8, 'p a 20', 'pass'), ...times(2, 'p b 20', 'pass', 8)),
      bo(...times(2, 'p a 20', 'fail'), ...times(8, 'p b 20', 'fail', 2)),
    );
    expect(compareGlues(trial, 'lift', 'a', 'b')).toMatchObject({
      difference: 0,
      p: 1,
      least: 1,
      blocks: 2,
      first: { n: 10 },
    });
  });
  it('of which neither tried both say nothing', () => {
    const { trial } = mergeTrials(ada(...times(6, 'p a 20', 'pass')), bo(...times(6, 'p b 20', 'fail')));
    expect(compareGlues(trial, 'lift', 'a', 'b')).toBeUndefined();
  });
  it('in one trial are told apart by who judged', () => {
    const swatches = laid(...times(3, 'p a 20', 'pass'), ...times(3, 'p b 20', 'fail')).map((one, i) => ({
      ...one,
      by: i < 3 ? 'Ada' : 'Bo',
    }));
    expect(compareGlues(trialOf([], { swatches }), 'lift', 'a', 'b')).toBeUndefined();
  });
  it('pair only with themselves', () => {
    const swatches = laid('p a 20 1 pass', 'p b 20 1 fail', 'p a 20 1 fail', 'p b 20 1 pass').map((one, i): Swatch => ({
      ...one,
      by: i < 2 ? 'Ada' : 'Bo',
    }));
    expect(compareGlues(trialOf([], { swatches }), 'lift', 'a', 'b')!.pairs).toEqual({
      onlyFirst: 1,
      onlySecond: 1,
      all: 2,
    });
  });
});

describe('weights', () => {
  it('come apart by hand and hold; one weight alone tells nothing', () => {
    const swatches = laid('p a 20 1 pass', 'q a 20 1 fail', 'p a 60 1 pass', 'q a 60 1 pass', 'p a 20 2 fail').map(
      (one, i): Swatch => (i === 4 ? { ...one, by: 'Bo' } : one),
    );
    expect(dosesIn(judgementsOf(trialOf([], { swatches }), 'lift'), 'a')).toEqual([
      [
        { amount: 25, passes: 1, n: 1 },
        { amount: 100, passes: 0, n: 1 },
      ],
      [
        { amount: 25, passes: 1, n: 1 },
        { amount: 100, passes: 1, n: 1 },
      ],
    ]);
  });
  it('a paper that was not weighed is left out', () =>
    expect(dosesIn(judgementsOf(trialOf(['p a 20 1 pass', 'r a 20 1 pass']), 'lift'), 'a')).toEqual([]));
});
