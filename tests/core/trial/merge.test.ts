/** Two people's trials joined: nobody's judgement is lost or overwritten unasked. */
import { describe, expect, it, test } from 'vitest';
import { conflictName, mergeTrials } from '../../../src/core/trial/merge';
import { TRIAL_VERSION, isDone, nameIn, type Question, type Swatch, type Trial } from '../../../src/core/trial/record';

const swatch = (number: number, change: Partial<Swatch> = {}): Swatch => ({
  number,
  paper: 'paper-1',
  glue: 'glue-1',
  hold: 20,
  block: 1,
  outcomes: {},
  ...change,
});
const question = (id: string, text: string, kind: Question['kind'] = 'own'): Question => ({
  id,
  text,
  kind,
  criterion: '',
});
const trial = (change: Partial<Trial> = {}): Trial => ({
  version: TRIAL_VERSION,
  id: 'mine',
  name: 'Mine',
  by: 'Ada',
  createdAt: '2026-03-01',
  seed: 7,
  conditions: {},
  papers: [{ id: 'paper-1', name: 'Lokta', grammage: 25 }],
  glues: [{ id: 'glue-1', name: 'Paste' }],
  holds: [20],
  replicates: 1,
  widthMm: 50,
  heightMm: 50,
  questions: [question('q-1', 'Lies flat'), question('q-2', 'Holds')],
  swatches: [],
  ...change,
});
/** The same trial on two devices: card 1 as each of them has it. */
function sameCard(mine: Partial<Swatch>, theirs: Partial<Swatch>, keep?: 'mine' | 'theirs') {
  const found = mergeTrials(trial({ swatches: [swatch(1, mine)] }), trial({ swatches: [swatch(1, theirs)] }), keep);
  const { added, same, conflicts, left } = found;
  return { card: found.trial.swatches[0]!, told: [added, same, conflicts.length, left], found };
}

describe('one card on two devices', () => {
  it('says the same: nothing is done', () => {
    const { told, card } = sameCard({ outcomes: { 'q-1': 'pass' } }, { outcomes: { 'q-1': 'pass' }, by: 'Bo' });
    expect(told).toEqual([0, 1, 0, 0]);
    expect(card).not.toHaveProperty('by');
    // theirs is blank, or says less
    expect(sameCard({ outcomes: { 'q-1': 'pass' } }, {}).told).toEqual([0, 1, 0, 0]);
    expect(sameCard({ spoiled: true }, { spoiled: true }).told).toEqual([0, 1, 0, 0]);
  });
  it('blank with me: theirs is taken, and my note and the laying stay', () => {
    const mine = { note: 'mine', laidAt: 5 };
    const theirs = { outcomes: { 'q-1': 'fail' }, by: 'Bo', judgedAt: '2026-03-02', note: 'theirs' } as const;
    const { told, card } = sameCard(mine, theirs);
    expect(told).toEqual([1, 0, 0, 0]);
    expect(card).toEqual(swatch(1, { ...mine, outcomes: { 'q-1': 'fail' }, by: 'Bo', judgedAt: '2026-03-02' }));
    for (const blank of [{}, { spoiled: false }]) expect(sameCard(blank, { spoiled: true }).card.spoiled).toBe(true);
  });
  it('one judged one question and the other another: both stand, with the later day', () => {
    const mine = { outcomes: { 'q-1': 'pass' }, by: 'Ada', judgedAt: '2026-03-01' } as const;
    const theirs = { outcomes: { 'q-1': 'pass', 'q-2': 'fail' }, by: 'Bo', judgedAt: '2026-03-02' } as const;
    for (const outcomes of [theirs.outcomes, { 'q-2': 'fail' }] as const) {
      const { told, card } = sameCard(mine, { ...theirs, outcomes });
      expect(told).toEqual([1, 0, 0, 0]);
      expect(card).toMatchObject({ outcomes: { 'q-1': 'pass', 'q-2': 'fail' }, by: 'Ada', judgedAt: '2026-03-02' });
    }
    const earlier = { outcomes: { 'q-2': 'fail' }, judgedAt: '2026-02-28' } as const;
    expect(sameCard(mine, earlier)).toMatchObject({ told: [1, 0, 0, 0], card: { judgedAt: '2026-03-01' } });
    expect(sameCard({ outcomes: { 'q-1': 'pass' } }, { outcomes: { 'q-2': 'pass' } }).card).not.toHaveProperty(
      'judgedAt',
    );
  });
  it('they disagree: both are shown, and mine stays until someone decides', () => {
    const mine = { outcomes: { 'q-1': 'pass', 'q-2': 'pass' }, note: 'mine' } as const;
    const theirs = { outcomes: { 'q-1': 'fail' }, by: 'Bo' } as const;
    for (const keep of [undefined, 'mine'] as const) {
      const { told, card, found } = sameCard(mine, theirs, keep);
      expect(told).toEqual([0, 0, 1, 0]);
      expect(card).toEqual(swatch(1, mine));
      expect(found.conflicts[0]).toEqual({ number: 1, mine: swatch(1, mine), theirs: swatch(1, theirs) });
      expect(conflictName(found.trial, found.conflicts[0]!)).toBe('Swatch 1, Lokta with Paste');
    }
    // what they left open is no judgement of theirs
    expect(sameCard(mine, theirs, 'theirs').card).toEqual(
      swatch(1, { ...mine, ...theirs, outcomes: { 'q-1': 'fail', 'q-2': 'pass' } }),
    );
  });
  it('one set it aside and the other judged it: that is a disagreement, and theirs means as they say', () => {
    const judged = { outcomes: { 'q-1': 'pass' } } as const;
    expect(sameCard({ spoiled: true }, judged).told).toEqual([0, 0, 1, 0]);
    expect(sameCard(judged, { ...judged, spoiled: true }).told).toEqual([0, 0, 1, 0]);
    expect(sameCard({ spoiled: true }, judged, 'theirs').card.spoiled).toBeUndefined();
    expect(sameCard(judged, { ...judged, spoiled: true }, 'theirs').card.spoiled).toBe(true);
    expect(sameCard({ spoiled: true }, judged, 'mine').card.spoiled).toBe(true);
  });
  it('that went to another’s trial and comes back is my own card still', () => {
    const back = { from: { trial: 'mine', name: 'Mine', number: 1 }, outcomes: { 'q-1': 'pass' } } as const;
    for (const mine of [{}, { outcomes: { 'q-1': 'fail' } }] as const) {
      const theirs = trial({ id: 'theirs', swatches: [swatch(8, back)] });
      const found = mergeTrials(trial({ swatches: [swatch(1, mine)] }), theirs, 'theirs');
      expect(found.trial.swatches).toEqual([swatch(1, { outcomes: { 'q-1': 'pass' } })]);
    }
  });
});

describe('another’s trial', () => {
  const theirs = (change: Partial<Trial> = {}) => trial({ id: 'theirs', name: 'Theirs', by: 'Bo', ...change });
  it('adds its cards under the next numbers, with whose and which they were', () => {
    const mine = trial({ swatches: [swatch(4), swatch(2)] });
    const { trial: found, added } = mergeTrials(mine, theirs({ swatches: [swatch(2), swatch(3, { by: 'Cy' })] }));
    expect(added).toBe(2);
    expect(found.swatches.slice(2)).toEqual([
      swatch(5, { by: 'Bo', from: { trial: 'theirs', name: 'Theirs', number: 2 } }),
      swatch(6, { by: 'Cy', from: { trial: 'theirs', name: 'Theirs', number: 3 } }),
    ]);
    // the same number of a third trial is another card
    const third = mergeTrials(found, trial({ id: 'third', swatches: [swatch(2)] }));
    expect(third.added).toBe(1);
    expect(mergeTrials(third.trial, theirs({ swatches: [swatch(2)] })).same).toBe(1);
  });
  it('papers of one name, weight and kind are one; anything else is another', () => {
    const paper = { id: 'paper-1', name: 'Lokta', grammage: 25 };
    const papers = (other: Trial['papers'][number]) =>
      mergeTrials(trial(), theirs({ papers: [other], swatches: [swatch(1)] })).trial;
    expect(papers(paper).papers).toHaveLength(1);
    for (const other of [
      { ...paper, name: 'Kozo' },
      { ...paper, grammage: 30 },
      { ...paper, family: 'lokta' },
    ]) {
      const found = papers(other);
      expect(found.papers).toEqual([paper, { ...other, id: 'paper-2' }]);
      expect(found.swatches[0]!.paper).toBe('paper-2');
    }
  });
  it('adhesives of one name and record are one, questions of one text and kind', () => {
    const glues = (other: Trial['glues'][number]) =>
      mergeTrials(trial(), theirs({ glues: [other], swatches: [swatch(1)] })).trial;
    expect(glues({ id: 'glue-1', name: 'Paste' }).glues).toHaveLength(1);
    for (const other of [
      { id: 'glue-1', name: 'Film' },
      { id: 'glue-1', name: 'Paste', record: 'pva' },
    ]) {
      expect(glues(other).glues).toEqual([
        { id: 'glue-1', name: 'Paste' },
        { ...other, id: 'glue-2' },
      ]);
      expect(glues(other).swatches[0]!.glue).toBe('glue-2');
    }
    const asked = (other: Question) =>
      mergeTrials(trial(), theirs({ questions: [other], swatches: [swatch(1, { outcomes: { [other.id]: 'pass' } })] }))
        .trial;
    expect(asked(question('x', 'Holds')).swatches[0]!.outcomes).toEqual({ 'q-2': 'pass' });
    for (const other of [question('q-2', 'Holds', 'stuck'), question('q-2', 'Dries')]) {
      expect(asked(other).questions).toHaveLength(3);
      expect(asked(other).swatches[0]!.outcomes).toEqual({ 'q-3': 'pass' });
    }
  });
  it('a new one keeps its id where that is free, else takes the next that is', () => {
    const papers = (mine: readonly string[], id: string) =>
      mergeTrials(
        trial({ papers: mine.map((one, i) => ({ id: one, name: `m${i}` })) }),
        theirs({ papers: [{ id, name: 'new' }] }),
      ).trial.papers.at(-1)!.id;
    expect(papers(['paper-1'], 'paper-9')).toBe('paper-9');
    expect(papers(['paper-1', 'paper-3'], 'paper-1')).toBe('paper-4');
    expect(papers(['paper-1', 'paper-2'], 'paper-1')).toBe('paper-3');
  });
  it('what there is no room for is counted, and only that', () => {
    const full = Array.from({ length: 24 }, (_, i) => ({ id: `n-${i}`, name: `n${i}` }));
    const some = theirs({ swatches: [swatch(1), swatch(2)] });
    expect(mergeTrials(trial({ papers: full }), some)).toMatchObject({ added: 0, left: 2 });
    expect(mergeTrials(trial({ glues: full }), some)).toMatchObject({ added: 0, left: 2 });
    const cards = Array.from({ length: 599 }, (_, i) => swatch(i + 1));
    expect(mergeTrials(trial({ swatches: cards }), some)).toMatchObject({ added: 1, left: 1 });
  });
  it('hold times of both, the shortest first, six of them', () => {
    const holds = (a: number[], b: number[]) => mergeTrials(trial({ holds: a }), theirs({ holds: b })).trial.holds;
    expect(holds([60, 5], [20, 5])).toEqual([5, 20, 60]);
    expect(holds([100, 9, 8, 7], [6, 5, 4])).toEqual([4, 5, 6, 7, 8, 9]);
  });
});

test('a card is done when every question is answered, or it is set aside', () => {
  const asked = trial().questions;
  expect(isDone(swatch(1, { outcomes: { 'q-1': 'pass' } }), asked)).toBe(false);
  expect(isDone(swatch(1, { outcomes: { 'q-1': 'pass', 'q-2': 'fail' } }), asked)).toBe(true);
  expect(isDone(swatch(1, { spoiled: true }), asked)).toBe(true);
  expect(nameIn(trial().papers, 'paper-1')).toBe('Lokta');
  expect(nameIn(trial().papers, 'gone')).toBe('gone');
});

it('keeps a doubt about an adhesive that either of us has', () => {
  const doubtful = { id: 'glue-1', name: 'PVA', record: 'eva', doubtful: true as const };
  const { doubtful: _, ...sure } = doubtful;
  const gluesOf = (mine: Trial['glues'], theirs: Trial['glues']) =>
    mergeTrials(trial({ glues: mine }), trial({ id: 'theirs', glues: theirs, swatches: [swatch(1)] })).trial.glues;
  expect(gluesOf([sure], [doubtful])).toEqual([doubtful]);
  expect(gluesOf([doubtful], [sure])).toEqual([doubtful]);
  expect(gluesOf([sure], [sure])).toEqual([sure]);
});
