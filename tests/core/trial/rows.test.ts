/** A whole spreadsheet to a trial: its columns, its limits, and what is said where there is none to be had. */
import { describe, expect, it } from 'vitest';
import { TRIAL_LIMITS } from '../../../src/core/trial/record';
import { trialFromRows } from '../../../src/core/trial/rows';

const INFO = { id: 'read', name: 'Read', by: 'Bo', createdAt: '2026-03-02' };
const read = (...rows: readonly (readonly string[])[]) => trialFromRows(rows, INFO);
const HEAD = ['paper', 'adhesive', 'hold', 'repeat', 'lift'];
const row = (hold = '20', repeat = '1', lift = 'pass') => ['A', 'P', hold, repeat, lift];

describe('a trial', () => {
  it('is whose it is said to be, with what the rows hold and nothing made up', () => {
    const { trial, problems, ignored } = read(HEAD, row());
    expect(trial).toMatchObject({ ...INFO, papers: [{ name: 'A' }], glues: [{ name: 'P' }], conditions: {} });
    expect(trial!.questions.map(({ id }) => id)).toEqual(['lift']);
    expect([problems, ignored]).toEqual([[], []]);
    expect(trial).not.toHaveProperty('substrate');
  });
  it('its hold times once each, the shortest first, six of them', () => {
    expect(read(HEAD, row('60'), row('5'), row('60'), row('20')).trial!.holds).toEqual([5, 20, 60]);
    const many = Array.from({ length: 8 }, (_, i) => row(String(8 - i)));
    expect(read(HEAD, ...many).trial!.holds).toEqual([1, 2, 3, 4, 5, 6]);
  });
  it('as many repeats as the highest, twelve of them', () => {
    expect(read(HEAD, row('20', '2'), row('20', '4'), row('20', '1')).trial!.replicates).toBe(4);
    expect(read(HEAD, row('20', '99')).trial!.replicates).toBe(12);
  });
  it('its swatches by their numbers', () => {
    const found = read(['no', ...HEAD], ['9', ...row()], ['2', ...row()], ['5', ...row()]);
    expect(found.trial!.swatches.map(({ number }) => number)).toEqual([2, 5, 9]);
  });
});

describe('rows', () => {
  it('an empty one is passed over, and the others count as a spreadsheet counts', () => {
    const { trial, problems } = read(HEAD, row(), ['', '', '', '', ''], [], row('x'), [' ', '\t', '', '', '']);
    expect(trial!.swatches).toHaveLength(2);
    expect(problems).toMatchObject([{ row: 5, column: 'hold' }]);
  });
  it('one with less cells than headings is filled up, one with more is cut', () => {
    const { trial, problems } = read(
      ['lift', 'paper', 'adhesive', 'note'],
      ['pass', 'A', 'P'],
      ['fail', 'A', 'P', 'n', 'o'],
    );
    expect(problems).toEqual([]);
    expect(trial!.swatches.map(({ note }) => note)).toEqual([undefined, 'n']);
  });
  it('what a spreadsheet had to guard is read as it was', () => {
    expect(read(['paper', 'adhesive', 'lift'], ["'=A", "'@P", 'pass']).trial).toMatchObject({
      papers: [{ name: '=A' }],
      glues: [{ name: '@P' }],
    });
  });
  it('as many as a trial holds; from which row on they were not read is said', () => {
    const most = TRIAL_LIMITS.swatches;
    const full = Array.from({ length: most }, () => row());
    expect(read(HEAD, ...full).problems).toEqual([]);
    const { trial, problems } = read(HEAD, ...full, row(), row());
    expect(trial!.swatches).toHaveLength(most);
    expect(problems).toMatchObject([{ row: most + 2, message: expect.stringContaining(String(most)) }]);
  });
  it('of fifty complaints no more is said', () => {
    const wrong = (many: number) => Array.from({ length: many }, () => row('x'));
    expect(read(HEAD, ...wrong(49)).problems).toHaveLength(49);
    expect(read(HEAD, ...wrong(51)).problems).toHaveLength(50);
    expect(read(HEAD, ...wrong(51)).trial!.swatches).toHaveLength(51);
  });
});

describe('no trial', () => {
  const none = (...rows: readonly (readonly string[])[]) => {
    const { trial, problems } = read(...rows);
    expect(trial).toBeUndefined();
    return problems.map(({ row: at, message }) => `${at}: ${message}`);
  };
  it('without a column of papers or of adhesives: which is missing is said', () => {
    expect(none(['adhesive', 'lift'], ['P', 'pass'])).toEqual([expect.stringMatching(/^1: .*“paper”/)]);
    expect(none(['paper', 'lift'], ['A', 'pass'])).toEqual([expect.stringMatching(/^1: .*“adhesive”/)]);
  });
  it('without a column of outcomes', () => {
    expect(none(['paper', 'adhesive', 'pet'], ['A', 'P', 'cat'])).toEqual([
      expect.stringMatching(/^1: .*pass, partly or fail/),
    ]);
    expect(read(['paper', 'adhesive', 'pet'], ['A', 'P', 'cat']).ignored).toEqual(['pet']);
  });
  it('without a row that can be read, or without any', () => {
    expect(none(HEAD, ['', 'P', '20', '1', 'pass'])).toEqual([expect.stringMatching(/^2: .*paper is missing/)]);
    expect(none(HEAD)).toEqual([]);
    expect(none()).toHaveLength(3);
  });
});
