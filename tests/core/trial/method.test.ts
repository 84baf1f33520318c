/** How swatches were made: said on a plan, carried by a file, a spreadsheet and a merger, and never guessed. */
import { describe, expect, it } from 'vitest';
import { compareGlues } from '../../../src/core/trial/analysis';
import { mergeTrials } from '../../../src/core/trial/merge';
import { madeInWords, methodOf, OTHER, toolInWords } from '../../../src/core/trial/method';
import { parseTrial } from '../../../src/core/trial/parse';
import { planOf } from '../../../src/core/trial/plan';
import { DEFAULT_PLAN, draftOf } from '../../../src/core/trial/plan-text';
import { trialCsv } from '../../../src/core/trial/publish';
import { readMethod } from '../../../src/core/trial/read-method';
import type { Trial } from '../../../src/core/trial/record';
import { toolIn } from '../../../src/core/trial/row-method';
import { trialFromRows } from '../../../src/core/trial/rows';
import { factsOf } from '../../../src/core/trial/summary';
import { readCatalogue } from '../../tools/read-content';
import { trialOf, trialWith } from '../support/trial';

const catalogue = readCatalogue();
const TOOLS = new Map([...catalogue.techniques].map(([id, { name }]) => [id, name]));
const INFO = { id: 'read', name: 'Read', by: 'Bo', createdAt: '2026-03-02' };
const ROLLED = { tool: 'roller', face: 'ground', coat: 60 } as const;

describe('on a plan', () => {
  it('a full brush stands there at first; what else is said is kept with it', () => {
    expect(planOf(DEFAULT_PLAN, 1).plan!.method).toEqual({ tool: 'brush-full' });
    const said = { ...DEFAULT_PLAN, tool: 'roller', face: 'ground', coat: '60' };
    expect(planOf(said, 1).plan!.method).toEqual(ROLLED);
  });
  it('a draft of before holds no tool, and means a full brush', () => {
    const { tool: _tool, face: _face, coat: _coat, ...older } = DEFAULT_PLAN;
    expect(draftOf(older)).toEqual(DEFAULT_PLAN);
  });
  it('a coat that can be none is named beside its field', () => {
    const { problems } = planOf({ ...DEFAULT_PLAN, coat: 'thick' }, 1);
    expect(problems.map(({ field }) => field)).toEqual(['coat']);
    expect(problems[0]!.message).toBe('The coat must be a number from 1 to 1000 g/m².');
  });
});

describe('in a file', () => {
  const through = (trial: unknown) => parseTrial(JSON.parse(JSON.stringify(trial)));
  it('comes back as it went', () => {
    const trial = trialWith(() => 'pass', { method: ROLLED });
    const swatches = trial.swatches.map((one, i) => (i === 0 ? { ...one, method: { tool: 'card' } } : one));
    const found = through({ ...trial, swatches });
    expect(found.ok && found.trial).toEqual({ ...trial, swatches });
    expect(found.ok && found.notes).toEqual([]);
  });
  it('a file of before says nothing of it, and is read without a word', () => {
    const found = through({ ...trialWith(() => 'pass'), version: 2 });
    expect(found.ok && found.notes).toEqual([]);
    expect(found.ok && found.trial.method).toBeUndefined();
    expect(found.ok && methodOf(found.trial.swatches[0]!, found.trial)).toEqual({});
  });
  it('what cannot be read counts as another tool, never as the usual one, and is said', () => {
    expect(readMethod({ tool: 5 })).toEqual({ method: { tool: OTHER }, unread: ['tool'] });
    expect(readMethod({ tool: 'roller', coat: -1 })).toEqual({ method: { tool: OTHER }, unread: ['coat'] });
    expect(readMethod('roller')).toEqual({ method: { tool: OTHER }, unread: ['tool'] });
    expect(readMethod(undefined)).toEqual({ unread: [] });
    const trial = trialWith(() => 'pass');
    const found = through({ ...trial, method: { face: 'moon' }, swatches: [{ ...trial.swatches[0], method: 1 }] });
    expect(found.ok && found.notes).toEqual([
      'How it was spread cannot be read (face): it counts as done with another tool.',
      'How 1 of the swatches were spread cannot be read: they count as done with another tool.',
    ]);
  });
});

describe('in a spreadsheet', () => {
  const rows = (text: string) =>
    text
      .trim()
      .split('\r\n')
      .map((line) => line.split(','));
  const read = (...cells: readonly (readonly string[])[]) => trialFromRows(cells, INFO, TOOLS);
  it('goes out where it was said, and comes back', () => {
    const trial: Trial = trialWith(() => 'pass', { method: ROLLED });
    const [head] = rows(trialCsv(trial));
    expect(head).toEqual(expect.arrayContaining(['spread with', 'glue on', 'coat g/m2']));
    const back = trialFromRows(rows(trialCsv(trial)), INFO, TOOLS);
    expect(back.problems).toEqual([]);
    expect(back.trial!.method).toEqual(ROLLED);
    expect(back.trial!.swatches.some(({ method }) => method)).toBe(false);
    expect(rows(trialCsv(trialWith(() => 'pass')))[0]).not.toContain('spread with');
  });
  it('rows of several tools keep each its own', () => {
    const { trial, problems } = read(
      ['paper', 'adhesive', 'spread with', 'glue on', 'lift'],
      ['A', 'P', 'Roller', 'paper', 'pass'],
      ['A', 'P', 'brush', 'board', 'fail'],
      ['A', 'P', '', '', 'fail'],
    );
    expect(problems).toEqual([]);
    expect(trial!.swatches.map(({ method }) => method)).toEqual([
      { tool: 'roller', face: 'sheet' },
      { tool: 'brush-full', face: 'ground' },
      undefined,
    ]);
  });
  it('what is no tool, side or number is said with row and column, and what it may be', () => {
    const { trial, problems } = read(
      ['paper', 'adhesive', 'tool', 'face', 'coat', 'lift'],
      ['A', 'P', 'spatula', 'inside', 'much', 'pass'],
    );
    expect(problems.map(({ row, column }) => [row, column])).toEqual([
      [2, 'tool'],
      [2, 'face'],
      [2, 'coat'],
    ]);
    expect(problems[0]!.message).toContain('“spatula” is no tool of the shelf (brush-full');
    expect(trial!.method).toEqual({ tool: OTHER });
  });
  it('a tool is known by its id, its name, or a word that it alone has', () => {
    expect(toolIn('brush-thin', TOOLS)).toBe('brush-thin');
    expect(toolIn('Foam or short-pile roller', TOOLS)).toBe('roller');
    expect(toolIn('squeegee', TOOLS)).toBe('card');
    expect(toolIn('or', TOOLS)).toBeUndefined();
    expect(toolIn('', TOOLS)).toBeUndefined();
  });
});

describe('trials of two tools joined', () => {
  const mine = trialOf(['p a 20 1 pass'], { id: 'mine' });
  const theirs = trialOf(['p a 20 1 fail'], { id: 'theirs', by: 'Bo', method: { tool: 'roller' } });
  it('each swatch keeps the tool that it was made with', () => {
    const { trial } = mergeTrials(mine, theirs);
    expect(trial.swatches.map((one) => methodOf(one, trial).tool)).toEqual([undefined, 'roller']);
    const back = mergeTrials(theirs, mine).trial;
    expect(back.swatches.map((one) => methodOf(one, back).tool)).toEqual(['roller', undefined]);
  });
  it('a card that was blank with me was made as whoever judged it says', () => {
    const blank = trialOf(['p a 20 1 -'], { id: 'mine', method: { tool: 'card' } });
    const judged = trialOf(['p a 20 1 pass'], { id: 'mine', method: { tool: 'roller' } });
    const { trial } = mergeTrials(blank, judged);
    expect(methodOf(trial.swatches[0]!, trial)).toEqual({ tool: 'roller' });
  });
  it('what two tools do is never taken for what two adhesives do', () => {
    const lines = ['p a 20 1 pass', 'p a 20 2 pass', 'p b 20 1 fail', 'p b 20 2 fail'];
    const alike = trialOf(lines);
    const parted = trialOf(lines);
    const swatches = parted.swatches.map((one) => (one.glue === 'a' ? { ...one, method: { tool: 'roller' } } : one));
    const comparable = (trial: Trial) => compareGlues(trial, 'lift', 'a', 'b')?.pairs.all ?? 0;
    expect(comparable(alike)).toBeGreaterThan(0);
    expect(comparable({ ...parted, swatches })).toBe(0);
  });
});

describe('in words', () => {
  it('a tool by its id reads as a thing', () => {
    expect([...catalogue.techniques.keys()].map(toolInWords)).toEqual([
      ...['full brush', 'small brush', 'thin brush', 'card', 'fingertip', 'roller', 'screen'],
    ]);
  });
  it('what is as usual is left out but for the tool', () => {
    expect(madeInWords({})).toBe('full brush');
    expect(madeInWords(ROLLED)).toBe('roller; the glue on the board; 60\u00a0g/m² wet');
    expect(madeInWords({ tool: OTHER })).toBe('another tool');
  });
  it('a summary says it where it was said', () => {
    expect(factsOf(trialWith(() => 'pass')).join()).not.toContain('Spread with');
    expect(factsOf(trialWith(() => 'pass', { method: { tool: 'roller' } }))).toContain('Spread with: roller.');
  });
});
