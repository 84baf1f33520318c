/** A trial as it is read in: what is sound comes through as it was, what is not is left out and said. */
import { describe, expect, it } from 'vitest';
import { parseTrial } from '../../../src/core/trial/parse';
import { TRIAL_LIMITS, TRIAL_VERSION } from '../../../src/core/trial/record';
import { readCatalogue } from '../../tools/read-content';
import { trialWith } from '../support/trial';

const swatch = {
  number: 1,
  paper: 'p',
  glue: 'g',
  hold: 20,
  block: 2,
  outcomes: { q: 'pass' },
  laidAt: 0,
  judgedAt: '2026-03-01T10:00:00Z',
  by: 'Ben',
  note: 'dropped',
  spoiled: true,
  from: { trial: 'other', name: 'Theirs', number: 7 },
};
const whole = {
  ...{
    version: TRIAL_VERSION,
    id: 'mine',
    name: 'Mine',
    by: 'Ada',
    createdAt: '2026-03-01',
    demo: true,
    substrate: 'binders-board',
  },
  papers: [{ id: 'p', name: 'Paper', family: 'unryu', grammage: 25, dropSeconds: 20 }],
  glues: [{ id: 'g', name: 'Glue', record: 'pva' }],
  questions: [{ id: 'q', kind: 'lift', text: 'Lifts', criterion: 'whole' }],
  holds: [20, 60],
  replicates: 3,
  widthMm: 40,
  heightMm: 60,
  seed: 11,
  conditions: { celsius: 20, humidity: 50, batch: 'the blue pot' },
  swatches: [swatch],
};
function read(value: unknown) {
  const found = parseTrial(value);
  if (!found.ok) throw new Error(found.problems.join(' '));
  return found;
}
const problems = (value: unknown) => {
  const found = parseTrial(value);
  return found.ok ? [] : found.problems;
};
const first = (change: object) => read({ ...whole, swatches: [{ ...swatch, ...change }] }).trial.swatches[0];

describe('a sound trial', () => {
  it('may name whatever stands on the shelf, however long its id is', () => {
    const { papers, adhesives, substrates, techniques } = readCatalogue();
    for (const { id: family } of papers.values())
      expect(read({ ...whole, papers: [{ ...whole.papers[0], family }] }).trial.papers[0]).toMatchObject({ family });
    for (const { id: record } of adhesives.values())
      expect(read({ ...whole, glues: [{ ...whole.glues[0], record }] }).trial.glues[0]).toMatchObject({ record });
    for (const { id: substrate } of substrates.values())
      expect(read({ ...whole, substrate }).trial).toMatchObject({ substrate });
    for (const { id: tool } of techniques.values())
      expect(read({ ...whole, method: { tool } }).trial).toMatchObject({ method: { tool } });
  });
  it('comes through as it was, with nothing to say', () => {
    expect(read(whole)).toEqual({ ok: true, notes: [], trial: whole });
    const another = trialWith(({ number }) => (number % 2 === 0 ? 'pass' : undefined));
    expect(read(another)).toEqual({ ok: true, notes: [], trial: another });
  });
  it('of the first shape: adhesives by that name, one hold, nobody named', () => {
    const { version: _v, glues, holds: _h, by: _b, ...rest } = whole;
    expect(read({ ...rest, adhesives: glues, holdSeconds: 20 }).trial).toEqual({ ...whole, holds: [20], by: '' });
    expect(read({ ...rest, glues, holds: [60], by: 'Eve' }).trial).toMatchObject({ holds: [60], by: 'Eve' });
    // what has a version is read as that version says
    expect(problems({ ...rest, version: TRIAL_VERSION, adhesives: glues })).toEqual(['It names no adhesives.']);
  });
});

describe('what is no trial', () => {
  it.each([[null], [5], ['text'], [[whole]]])('%j holds no record', (value) => {
    expect(problems(value)).toEqual(['This is not a trial: it holds no record.']);
  });
  it.each(['1', 1.5, -1])('nor what has the version %j', (version) => {
    expect(problems({ ...whole, version })).toEqual(['The version of this file is not a number.']);
  });
  it('nor what a later page wrote, nor what names nothing', () => {
    expect(problems({ ...whole, version: TRIAL_VERSION + 1 })[0]).toMatch(/later version/);
    expect(problems({ version: TRIAL_VERSION })).toEqual([
      'It names no papers.',
      'It names no adhesives.',
      'It asks no questions.',
    ]);
    expect(problems({ ...whole, papers: {} })).toEqual(['It names no papers.']);
    expect(problems({ ...whole, questions: [{ id: 'q', text: '' }] })).toEqual(['It asks no questions.']);
  });
});

describe('parts that cannot be used', () => {
  it('are left out, counted and named', () => {
    const papers = [
      ...whole.papers,
      { id: 'p', name: 'Again' },
      { id: 'A!', name: 'x' },
      { id: 'r', name: '' },
      5,
      { id: 's', name: 'Sound' },
    ];
    const found = read({ ...whole, papers });
    expect(found.trial.papers).toEqual([whole.papers[0], { id: 's', name: 'Sound' }]);
    expect(found.notes).toEqual(['4 of 6 papers could not be read: left out.']);
    const glues = [
      ...whole.glues,
      { id: 'A!', name: 'x' },
      { id: 'h', name: '' },
      { id: 'i', name: 'I', record: 'No!' },
    ];
    expect(read({ ...whole, glues }).trial.glues).toEqual([whole.glues[0], { id: 'i', name: 'I' }]);
    const questions = [...whole.questions, { id: 'A!', text: 'x' }, { id: 'r' }, { id: 's', kind: 'odd', text: 'S' }];
    expect(read({ ...whole, questions }).trial.questions).toEqual([
      whole.questions[0],
      { id: 's', kind: 'own', text: 'S', criterion: '' },
    ]);
  });
  it('more than fit are not read, and as many as fit are', () => {
    const papers = (n: number) => Array.from({ length: n }, (_, i) => ({ id: `p${i}`, name: 'P' }));
    const swatches: unknown[] = [];
    expect(read({ ...whole, papers: papers(TRIAL_LIMITS.papers), swatches }).notes).toEqual([]);
    const more = read({ ...whole, papers: papers(TRIAL_LIMITS.papers + 1), swatches });
    expect(more.trial.papers).toHaveLength(TRIAL_LIMITS.papers);
    expect(more.notes).toEqual([
      `${TRIAL_LIMITS.papers + 1} papers are more than fit: the first ${TRIAL_LIMITS.papers} were read.`,
    ]);
  });
  it('swatches of unknown papers or adhesives, without a hold, or with a number that another has', () => {
    const swatches = [
      ...[
        { ...swatch, number: 3 },
        { ...swatch, number: 2 },
        { ...swatch, number: 3 },
      ],
      ...[
        { ...swatch, paper: 'z' },
        { ...swatch, glue: 'z' },
        { ...swatch, paper: 5 },
        { ...swatch, glue: 5 },
        { ...swatch, hold: -1 },
      ],
    ];
    const found = read({ ...whole, swatches });
    expect(found.trial.swatches.map(({ number }) => number)).toEqual([2, 3]);
    expect(found.notes).toEqual([
      '5 of 8 swatches could not be read: left out.',
      '1 swatches bear a number that another has: left out.',
    ]);
    const { glue: _glue, ...old } = swatch;
    expect(read({ ...whole, swatches: [{ ...old, adhesive: 'g' }] }).trial.swatches).toHaveLength(1);
  });
  it('holds: numbers within a day, each once, six at most; else those of the swatches', () => {
    const holds = (value: unknown) => read({ ...whole, holds: value }).trial.holds;
    expect(holds([60, 20, 60, '5', -1, 86_401])).toEqual([60, 20]);
    expect(holds([0, 1, 2, 3, 4, 5, 6])).toEqual([0, 1, 2, 3, 4, 5]);
    expect(holds([])).toEqual([20]);
    expect(holds('20')).toEqual([20]);
    const swatches = [...[20, 20, 30, 1, 2, 3, 4, 5].entries()].map(([i, hold]) => ({
      ...swatch,
      number: i + 1,
      hold,
    }));
    expect(read({ ...whole, holds: [], swatches }).trial.holds).toEqual([20, 30, 1, 2, 3, 4]);
  });
  it('single figures: to what is usual, or to nothing', () => {
    const { trial } = read({
      ...whole,
      ...{
        id: 'No!',
        name: '',
        by: {},
        createdAt: 'soon',
        demo: 'yes',
        substrate: 'No!',
        replicates: 13,
        widthMm: 9,
        heightMm: 301,
      },
      seed: -1,
      conditions: { celsius: 51, humidity: '50', batch: '' },
      papers: [{ id: 'p', name: 'P', family: 'No!', grammage: 4.9, dropSeconds: 1801 }],
    });
    expect(trial).toMatchObject({
      ...{
        id: 'imported',
        name: 'A trial without a name',
        by: '',
        createdAt: '',
        replicates: 1,
        widthMm: 50,
        heightMm: 50,
        seed: 1,
      },
      conditions: {},
      papers: [{ id: 'p', name: 'P' }],
    });
    expect(trial.conditions).toEqual({});
    expect(trial.papers[0]).toEqual({ id: 'p', name: 'P' });
    expect(trial).not.toHaveProperty('demo');
    expect(trial).not.toHaveProperty('substrate');
    expect(read({ ...whole, conditions: [] }).trial.conditions).toEqual({});
    expect(read({ ...whole, conditions: 'warm' }).trial.conditions).toEqual({});
    // the limits themselves pass
    const least = { id: 'p', name: 'P', grammage: 5, dropSeconds: 0.2 };
    const most = { id: 'q', name: 'Q', grammage: 600, dropSeconds: 120 };
    expect(read({ ...whole, papers: [least, most] }).trial.papers).toEqual([least, most]);
  });
  it('of a swatch: odd numbers give way to its place, and what is not known is not there', () => {
    expect(first({ number: 0 })?.number).toBe(1);
    expect(first({ number: 1.5 })?.number).toBe(1);
    expect(first({ number: 10_000 })?.number).toBe(1);
    expect(first({ number: '4' })?.number).toBe(1);
    expect(first({ number: 9999 })?.number).toBe(9999);
    expect(first({ block: undefined })?.block).toBe(1);
    const bare = first({
      laidAt: -1,
      judgedAt: 'now',
      by: '',
      note: '',
      spoiled: 'yes',
      from: { trial: 'No!' },
      outcomes: { q: 'odd', z: 'pass' },
    });
    expect(bare).toEqual({ number: 1, paper: 'p', glue: 'g', hold: 20, block: 2, outcomes: {} });
    expect(first({ from: null, outcomes: null })).not.toHaveProperty('from');
    expect(first({ from: { trial: 'other', number: 'x' } })?.from).toEqual({ trial: 'other', name: '', number: 1 });
    expect(first({ laidAt: 8e15 })?.laidAt).toBe(8e15);
    expect(first({ laidAt: 8.1e15 })).not.toHaveProperty('laidAt');
  });
  it.each([
    ['2026-03-01', true],
    ['2026-03-01T10:00Z', true],
    ['2026-03-01T10:00:05Z', true],
    ['2026-03-01T10:00:05.25Z', true],
    ['2026-03-01T10:00:05.1234Z', false],
    ['2026-03-01T10:00:05.Z', false],
    ['2026-03-01T10:00', false],
    ['on 2026-03-01', false],
    ['2026-03-01 or so', false],
    ['20260301', false],
    [20260301, false],
  ])('%j is a date: %s', (createdAt, sound) => {
    expect(read({ ...whole, createdAt }).trial.createdAt).toBe(sound ? createdAt : '');
  });
});

describe('trials of the time when the planner kept an old name', () => {
  const glues = (version: number) => {
    const found = parseTrial({
      ...whole,
      version,
      glues: [
        { id: 'a', name: 'PVA', record: 'hot-hide-glue' },
        { id: 'b', name: 'PVA', record: 'pva' },
        { id: 'c', name: 'Wheat starch paste', record: 'eva' },
        { id: 'd', name: 'Old pot', record: 'eva' },
        { id: 'e', name: 'PVA' },
      ],
    });
    return found.ok ? found.trial.glues : [];
  };
  it('are doubtful where a default name stands over another record, and nowhere else', () => {
    expect(
      glues(1)
        .filter(({ doubtful }) => doubtful)
        .map(({ id }) => id),
    ).toEqual(['a', 'c']);
    expect(glues(TRIAL_VERSION).filter(({ doubtful }) => doubtful)).toEqual([]);
  });
  it('stay so when they are stored again, until it is settled', () => {
    const again = parseTrial({ ...whole, glues: glues(1) });
    expect(again.ok && again.trial.glues).toEqual(glues(1));
    const settled = parseTrial({ ...whole, glues: glues(1).map(({ doubtful: _, ...glue }) => glue) });
    expect(settled.ok && settled.trial.glues).toEqual(glues(TRIAL_VERSION));
  });
  it('doubt nothing that has no record', () => {
    const odd = parseTrial({ ...whole, glues: [{ id: 'a', name: 'PVA', doubtful: true }] });
    expect(odd.ok && odd.trial.glues).toEqual([{ id: 'a', name: 'PVA' }]);
  });
});
