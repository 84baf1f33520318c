/** What swatches do to the model's chance. */
import { describe, expect, it, test } from 'vitest';
import { DEFAULT_JOB } from '../../../src/core/choose/job';
import { rangeOf, testimonyOf, updateChance, witnessesFor } from '../../../src/core/handover/trial-evidence';
import { readCatalogue } from '../../tools/read-content';
import type { Trial } from '../../../src/core/trial/record';
import { laid, trialOf, trialWith } from '../support/trial';

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
    expect(rangeOf(found).low).toBeCloseTo(0.418197, 4);
    expect(rangeOf(found).high).toBeCloseTo(0.93715, 4);
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
  test('a coat one width thinner counts as a paper one width off; the tool of the job in full; glue on the board nowhere', () => {
    const brushed = catalogue.techniques.get('brush-full')!.coat.middle;
    const thinner = lift({}, { ...trial, method: { coat: brushed * Math.exp(-0.35) } });
    expect(thinner[0]?.weight).toBeCloseTo(Math.exp(-0.5), 2);
    const rolled = { ...trial, method: { tool: 'roller' } };
    expect(lift({ tool: 'roller' }, rolled)[0]?.weight).toBeCloseTo(1, 6);
    expect(lift({}, rolled)[0]!.weight).toBeLessThan(0.5);
    expect(lift({}, { ...trial, method: { face: 'ground' } })).toHaveLength(0);
    expect(lift({}, { ...trial, method: { tool: 'other' } })[0]?.weight).toBeCloseTo(0.5, 6);
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

describe('what swatches say of a job', () => {
  const job = { ...DEFAULT_JOB, paper: { family: 'unryu', grammage: 25 }, placeSeconds: 20 };
  const lift = (lines: readonly string[], over: Partial<Trial> = {}, id = 'wheat-starch-paste-thin') =>
    witnessesFor([trialOf(lines, over)], id, job, catalogue);
  it('scores 1, a half and 0; what is not judged says nothing, nor does a paper of which nothing is known', () => {
    const {
      lift: found,
      spread,
      bond,
      flat,
    } = lift([
      ...['p a 20 1 pass', 'p a 20 2 partly', 'p a 20 3 fail', 'p a 20 4 -'],
      ...['p b 20 1 pass', 'r a 20 1 pass', 'x a 20 1 pass'],
    ]);
    expect(found.map(({ score }) => score)).toEqual([1, 0.5, 0]);
    for (const { weight } of found) expect(weight).toBeCloseTo(1, 9);
    expect([spread, bond, flat]).toEqual([[], [], []]);
  });
  it('on a board that is not named counts half', () => {
    const { substrate: _named, ...unnamed } = trialOf(['p a 20 1 pass']);
    const [witness] = witnessesFor([unnamed], 'wheat-starch-paste-thin', job, catalogue).lift;
    expect(witness!.weight).toBeCloseTo(0.5, 9);
  });
  it('a hold one width off counts e to the −1/2 for the lift, and in full for the spreading', () => {
    const questions = [
      { id: 'lift', kind: 'lift', text: '', criterion: '' },
      { id: 'even', kind: 'spread', text: '', criterion: '' },
    ] as const;
    const hold = 20 * Math.exp(0.7);
    const swatches = laid(`p a ${hold} 1 pass`).map((one) => ({
      ...one,
      outcomes: { lift: 'pass', even: 'fail' } as const,
    }));
    const { lift: lifted, spread } = lift([], { questions, swatches });
    expect(lifted[0]!.weight).toBeCloseTo(Math.exp(-0.5), 9);
    expect(spread).toEqual([{ score: 0, weight: expect.closeTo(1, 9) }]);
  });
  it('a drop test of the paper speaks before its kind', () => {
    const papers = [{ id: 'p', name: 'Sized', family: 'unryu', grammage: 25, dropSeconds: 100 }];
    const [slow] = lift(['p a 20 1 pass'], { papers }).lift;
    expect(slow?.weight ?? 0).toBeLessThan(0.5);
    // weight from the kind where the paper was not weighed
    const kind = catalogue.papers.get('unryu')!.grammage.middle;
    const unweighed = witnessesFor(
      [trialOf(['p a 20 1 pass'], { papers: [{ id: 'p', name: 'As sold', family: 'unryu' }] })],
      'wheat-starch-paste-thin',
      { ...job, paper: { family: 'unryu', grammage: kind } },
      catalogue,
    ).lift;
    expect(unweighed[0]!.weight).toBeCloseTo(1, 9);
  });
  it('what counts for less than a twentieth is not counted', () => {
    const told = testimonyOf([
      { score: 1, weight: 0.05 },
      { score: 1, weight: 0.049 },
      { score: 0.5, weight: 1 },
    ]);
    expect(told).toEqual({ passes: expect.closeTo(0.55, 12), weight: expect.closeTo(1.05, 12), swatches: 2 });
    expect(updateChance(1, []).withTrials).toBe(1);
  });
  it('an adhesive whose name may not match its record says nothing until that is settled', () => {
    const doubtful = { id: 'a', name: 'PVA', record: 'wheat-starch-paste-thin', doubtful: true as const };
    expect(lift(['p a 20 1 pass'], { glues: [doubtful] }).lift).toEqual([]);
    const { doubtful: _, ...settled } = doubtful;
    expect(lift(['p a 20 1 pass'], { glues: [settled] }).lift).toHaveLength(1);
  });
});
