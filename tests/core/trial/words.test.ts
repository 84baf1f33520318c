/** What a trial showed, in words: every turn a sentence can take, with cases made by hand. */
import { describe, expect, it } from 'vitest';
import { mergeTrials, conflictName } from '../../../src/core/trial/merge';
import { asPaperText, draftOf, DEFAULT_PLAN, NO_GLUE, NO_PAPER } from '../../../src/core/trial/plan-text';
import { planOf } from '../../../src/core/trial/plan';
import { TRIAL_LIMITS, type Trial } from '../../../src/core/trial/record';
import { summaryOf } from '../../../src/core/trial/summary';
import {
  cellWords,
  comparisonWords,
  oddsOf,
  percent,
  powerWords,
  standingOf,
  thresholdWords,
} from '../../../src/core/trial/words';
import type { Cell, Comparison } from '../../../src/core/trial/analysis';
import type { PassThreshold } from '../../../src/core/stats/threshold';
import { DESIGN, trialWith } from '../support/trial';

const cell = (passes: number, n: number, low: number, high: number, partly = 0): Cell => ({
  ...{ paper: 'p', glue: 'g', passes, partly, fails: n - passes - partly, n },
  interval: n === 0 ? undefined : { estimate: passes / n, low, high },
});

describe('shares and odds', () => {
  it('never rounds to a certainty', () => {
    expect([0, 0.004, 0.01, 0.5, 0.99, 0.996, 1].map(percent)).toEqual(
      ['0', 'under 1', '1', '50', '99', 'over 99', '100'].map((text) => `${text}\u00a0%`),
    );
  });
  it('says p as times', () =>
    expect([0.9, 0.5, 0.49, 0.05, 0.001, 0.0009].map(oddsOf)).toEqual([
      'more often than not',
      'more often than not',
      'about 1 time in 2',
      'about 1 time in 20',
      'about 1 time in 1000',
      'less than 1 time in 1000',
    ]));
});

describe('a cell', () => {
  it('stands by its interval', () => {
    expect(standingOf(cell(0, 0, 0, 0))).toBe('not judged');
    expect(standingOf(cell(9, 9, 0.7, 1))).toBe('mostly passes');
    expect(standingOf(cell(0, 9, 0, 0.3))).toBe('mostly fails');
    expect(standingOf(cell(3, 6, 0.2, 0.8))).toBe('not enough to tell');
    // a half is neither more nor less than a half
    expect(standingOf(cell(3, 3, 0.5, 1))).toBe('not enough to tell');
    expect(standingOf(cell(0, 3, 0, 0.5))).toBe('not enough to tell');
  });
  it('is told with the end of its interval that matters', () => {
    expect(cellWords(cell(0, 0, 0, 0))).toBe('Not judged yet.');
    expect(cellWords(cell(3, 3, 0.44, 1))).toBe('3 of 3 passed; the true rate could be as low as 44\u00a0%.');
    expect(cellWords(cell(0, 3, 0, 0.56, 1))).toBe(
      '0 of 3 passed, 1 partly; the true rate could be as high as 56\u00a0%.',
    );
    expect(cellWords(cell(2, 3, 0.21, 0.94))).toBe(
      '2 of 3 passed; the true rate could be anywhere from 21\u00a0% to 94\u00a0%.',
    );
  });
});

describe('two adhesives', () => {
  const compared = (over: Partial<Comparison>): Comparison => ({
    first: cell(8, 8, 0.7, 1),
    second: cell(1, 8, 0, 0.5),
    difference: 0.875,
    p: 0.04,
    test: 'boschloo',
    pairs: { onlyFirst: 0, onlySecond: 0, all: 0, p: 1 },
    blocks: 1,
    ...over,
  });
  const said = (over: Partial<Comparison>) => comparisonWords(compared(over), 'Paste', 'Vinyl');
  const counts = 'Paste passed 8 of 8, Vinyl 1 of 8';

  it('sees no difference, or one that luck can explain, or one that it cannot', () => {
    expect(said({ difference: 0 })).toBe(
      `${counts}: no difference to be seen, which does not show that there is none.`,
    );
    expect(said({ p: 0.051 })).toBe(
      `${counts}. Not enough to tell: luck alone would give a gap like this about 1 time in 20.`,
    );
    expect(said({ p: 0.05 })).toMatch(/\. Paste did better, and luck alone .* about 1 time in 20\.$/);
    expect(said({ p: 0.01, difference: -0.5 })).toContain('. Vinyl did better,');
  });
  it('tells of pairs only where some differ', () => {
    expect(said({ pairs: { onlyFirst: 0, onlySecond: 0, all: 8, p: 1 } })).not.toContain('pairs');
    expect(said({ pairs: { onlyFirst: 1, onlySecond: 0, all: 8, p: 1 } })).toContain(
      ' Side by side in 8 pairs, Paste alone passed once, Vinyl alone 0 times.',
    );
    expect(said({ pairs: { onlyFirst: 0, onlySecond: 2, all: 8, p: 0.5 } })).toContain(
      'Paste alone passed 0 times, Vinyl alone 2 times.',
    );
  });
});

describe('a threshold of weight', () => {
  const said = (over: Partial<PassThreshold>) =>
    thresholdWords({
      ...{ intercept: 0, slope: 2, slopeP: 0.01, half: 60, low: 50, high: 75 },
      chanceAt: () => ({ chance: 0, low: 0, high: 0 }),
      ...over,
    }).replaceAll('\u00a0', ' ');
  it('says which way, and where as far as that is known', () => {
    expect(said({ slopeP: 0.06 })).toBe('Not enough to tell whether weight matters here.');
    expect(said({})).toBe(
      'Heavier sheets pass more often; half of them pass at about 60 g/m², somewhere from 50 to 75 g/m².',
    );
    expect(said({ slope: -2, high: undefined })).toBe(
      'Lighter sheets pass more often; half of them pass at some weight above 50 g/m².',
    );
    expect(said({ low: undefined })).toContain('half of them pass at some weight below 75 g/m².');
    expect(said({ low: undefined, high: undefined })).toContain('where half of them pass cannot be told.');
  });
});

describe('what a number of replicates can show', () => {
  it('says when nothing can be told', () =>
    expect(powerWords({ replicates: 2, difference: undefined, fromNever: undefined, noticed: [undefined] })).toMatch(
      /^With 2 each no outcome tells two adhesives apart/,
    ));
  it('says when only always against never is noticed', () =>
    expect(powerWords({ replicates: 4, difference: undefined, fromNever: 0.9, noticed: [4, undefined] })).toBe(
      'With 4 each you would notice always against never, not 3 of 4 against 1 of 4.',
    ));
  it('says the least count, and the gap where there is one', () => {
    const told = { replicates: 7, fromNever: 0.7, noticed: [5, undefined] };
    expect(powerWords({ ...told, difference: 0.8 }).replaceAll('\u00a0', ' ')).toBe(
      'With 7 each you would notice 5 of 7 against none, not 4 of 7 against 3 of 7. Two adhesives whose true rates differ by 80 % or more would be told apart 4 times in 5.',
    );
    expect(powerWords({ ...told, difference: undefined })).toMatch(/3 of 7\.$/);
  });
});

describe('a summary', () => {
  const facts = (trial: Trial) => summaryOf(trial).facts.join('\n').replaceAll('\u00a0', ' ');
  it('says who, when, in what room, and whence', () => {
    const trial = trialWith(() => 'pass', { conditions: { celsius: 18, batch: 'paste of Monday' }, demo: true });
    const [first, ...rest] = trial.swatches;
    const mixed = {
      ...trial,
      swatches: [
        { ...first!, by: 'Bo', judgedAt: '2026-03-04T10:00:00Z', from: { trial: 'other', name: 'Other', number: 1 } },
        { ...rest[0]!, spoiled: true },
        ...rest.slice(1),
      ],
    };
    expect(facts(mixed)).toContain('An invented trial');
    expect(facts(mixed)).toContain('12 done, 1 of them set aside');
    expect(facts(mixed)).toContain('Judged by Ada, Bo, from 2026-03-01 to 2026-03-04.');
    expect(facts(mixed)).toContain('Room: 18 °C.');
    expect(facts(mixed)).toContain('Batches: paste of Monday');
    expect(facts(mixed)).toContain('Holds swatches of 1 other trial.');
  });
  it('leaves out what is not known', () => {
    const blank = trialWith(() => undefined, { by: '', conditions: { humidity: 55 } });
    expect(facts(blank)).not.toMatch(/Judged|invented|Batches|Holds swatches|set aside/);
    expect(facts(blank)).toContain('Room: 55 % relative humidity.');
    expect(summaryOf(blank).questions[0]!.takeaways).toEqual(['Nothing is judged yet.']);
    expect(facts(trialWith(() => 'pass'))).toContain('Judged by Ada on 2026-03-01.');
  });
  it('warns of luck once many pairs were compared and one looks different', () => {
    const glues = ['A', 'B', 'C', 'D'].map((name, i) => ({ id: `glue-${i + 1}`, name }));
    const design = trialWith(() => undefined);
    const swatches = glues.flatMap(({ id }, g) =>
      Array.from({ length: 8 }, (_, i) => ({
        ...{ number: 8 * g + i + 1, paper: 'paper-1', glue: id, hold: 20, block: i + 1 },
        outcomes: { lift: g === 0 ? ('pass' as const) : ('fail' as const) },
      })),
    );
    const { takeaways } = summaryOf({ ...design, glues, swatches }).questions[0]!;
    expect(takeaways).toContain('6 pairs were compared: among twenty that do not differ, one looks as if it did.');
    // 8 of 8 against 0 of 8, three times; the three that do not differ come after
    expect(takeaways.filter((text) => text.includes(' did better'))).toHaveLength(3);
  });
  it('asks from which weight on only where three weights were tried', () => {
    const papers = [20, 60, 180].map((grammage, i) => ({ id: `paper-${i + 1}`, name: `P${i}`, grammage }));
    const swatches = papers.flatMap(({ id }, p) =>
      Array.from({ length: 9 }, (_, i) => ({
        ...{ number: 9 * p + i + 1, paper: id, glue: 'glue-1', hold: 20, block: i + 1 },
        outcomes: { lift: (p === 2 || (p === 1 && i < 4) ? 'pass' : 'fail') as 'pass' | 'fail' },
      })),
    );
    const takeaways = (count: number) =>
      summaryOf({ ...trialWith(() => undefined), papers: papers.slice(0, count), swatches }).questions[0]!.takeaways;
    expect(takeaways(3).join()).toContain('Paste: Heavier sheets pass more often');
    expect(takeaways(2).join()).not.toContain('sheets pass');
  });
});

describe('joining trials', () => {
  it('leaves what does not fit, and says how many', () => {
    const full = {
      ...trialWith(() => 'pass'),
      papers: Array.from({ length: TRIAL_LIMITS.papers }, (_, i) => ({ id: `p-${i}`, name: `Own ${i}` })),
    };
    const theirs = trialWith(() => 'fail', { id: 'theirs' });
    expect(mergeTrials(full, theirs)).toMatchObject({ added: 0, left: 12, trial: { papers: full.papers } });
    const one = trialWith(() => 'pass').swatches[0]!;
    const brim = {
      ...trialWith(() => 'pass'),
      swatches: Array.from({ length: TRIAL_LIMITS.swatches - 1 }, (_, i) => ({ ...one, number: i + 1 })),
    };
    expect(mergeTrials(brim, theirs)).toMatchObject({ added: 1, left: 11 });
  });
  it('drops the answers to questions there is no room for', () => {
    const questions = Array.from({ length: TRIAL_LIMITS.questions }, (_, i) => ({
      ...{ id: `own-${i}`, kind: 'own' as const, text: `Question ${i}`, criterion: '' },
    }));
    const { trial, added } = mergeTrials(
      trialWith(() => undefined, { questions }),
      trialWith(() => 'pass', { id: 't' }),
    );
    expect(added).toBe(12);
    expect(trial.questions).toEqual(questions);
    expect(trial.swatches.at(-1)!.outcomes).toEqual({});
  });
  it('gives what is new an id of its own where theirs is taken', () => {
    const theirs = trialWith(() => 'pass', { id: 'theirs', papers: [{ id: 'paper-2', name: 'Lokta' }] });
    const { trial } = mergeTrials(
      trialWith(() => 'pass'),
      {
        ...theirs,
        swatches: theirs.swatches.filter(({ paper }) => paper === 'paper-2'),
      },
    );
    expect(trial.papers.map(({ id, name }) => [id, name])).toEqual([
      ['paper-1', 'Thin tissue'],
      ['paper-2', 'Book paper'],
      ['paper-3', 'Lokta'],
    ]);
    expect(trial.swatches.at(-1)!.paper).toBe('paper-3');
  });
  it('keeps a conflict as mine until it is told whose stays, and names it', () => {
    const mine = trialWith(() => 'pass');
    const found = mergeTrials(
      mine,
      trialWith(() => 'fail'),
    );
    expect(found.conflicts).toHaveLength(12);
    expect(found.trial.swatches).toEqual(mine.swatches);
    const at = (number: number) => mine.swatches.find((one) => one.number === number)!;
    const { paper, glue } = at(found.conflicts[0]!.number);
    const name = (list: readonly { id: string; name: string }[], id: string) => list.find((one) => one.id === id)!.name;
    expect(conflictName(mine, found.conflicts[0]!)).toBe(
      `Swatch ${found.conflicts[0]!.number}, ${name(DESIGN.papers, paper)} with ${name(DESIGN.glues, glue)}`,
    );
  });
  it('takes a swatch set aside by one of us for a conflict', () => {
    const mine = trialWith(() => 'pass');
    const aside = { ...mine, swatches: mine.swatches.map((one) => ({ ...one, spoiled: one.number === 3 })) };
    expect(mergeTrials(mine, aside).conflicts.map(({ number }) => number)).toEqual([3]);
    expect(mergeTrials(aside, mine).conflicts.map(({ number }) => number)).toEqual([3]);
  });
});

describe('a plan as it is typed', () => {
  const problems = (over: Partial<typeof DEFAULT_PLAN>) =>
    planOf({ ...DEFAULT_PLAN, ...over }, 1).problems.map(({ field }) => field);
  it('takes what is known of a paper of one’s own', () => {
    expect(asPaperText({ family: 'kozo' })).toEqual({ ...NO_PAPER, family: 'kozo' });
    expect(asPaperText({ family: 'kozo', name: 'Mine', grammage: 41, dropSeconds: 7 })).toEqual({
      ...{ name: 'Mine', family: 'kozo', grammage: '41', dropSeconds: '7' },
    });
  });
  it('carries everything that was typed into the trial', () => {
    const { plan } = planOf(
      {
        ...DEFAULT_PLAN,
        ...{ name: ' Mine ', by: 'Ada', batch: 'jar 3', seed: '42', celsius: '19', humidity: '48' },
        papers: [{ name: 'A', family: 'unryu', grammage: '25,5', dropSeconds: '8' }],
        ownQuestions: [
          { text: 'Does it smell?', criterion: 'no' },
          { text: ' ', criterion: 'never asked' },
        ],
      },
      1,
    );
    expect(plan).toMatchObject({
      ...{ name: 'Mine', by: 'Ada', seed: 42, conditions: { celsius: 19, humidity: 48, batch: 'jar 3' } },
      papers: [{ id: 'paper-1', name: 'A', family: 'unryu', grammage: 25.5, dropSeconds: 8 }],
    });
    expect(plan!.questions.map(({ id }) => id)).toEqual(['spread', 'lift', 'own-1']);
    expect(plan!.questions[2]).toMatchObject({ kind: 'own', text: 'Does it smell?', criterion: 'no' });
  });
  it('names itself after what is tried, and leaves out what is empty', () => {
    const { plan } = planOf({ ...DEFAULT_PLAN, substrate: '', glues: [{ ...NO_GLUE, name: 'Paste' }] }, 1);
    expect(plan!.name).toBe('My paper with Paste');
    expect(plan!.conditions).toEqual({});
    for (const key of ['substrate']) expect(plan).not.toHaveProperty(key);
    expect(plan!.glues[0]).toEqual({ id: 'glue-1', name: 'Paste' });
  });
  it('asks for a paper, an adhesive, a hold and a question', () => {
    expect(problems({ papers: [] })).toEqual(['papers']);
    expect(problems({ glues: [] })).toEqual(['glues']);
    expect(problems({ glues: [NO_GLUE] })).toEqual(['glue-0-name']);
    expect(problems({ holds: ' ' })).toEqual(['holds']);
    expect(problems({ holds: '1 2 3 4 5 6 7' })).toEqual(['holds']);
    expect(problems({ holds: '1 2 3 4 5 6' })).toEqual([]);
    expect(problems({ questions: [] })).toEqual(['questions']);
    expect(problems({ replicates: '' })).toEqual(['replicates']);
    expect(problems({ seed: '1.5' })).toEqual(['seed']);
    expect(problems({ celsius: '51' })).toEqual(['celsius']);
  });
  it('reads a draft back, its own questions too', () => {
    const draft = draftOf({ ownQuestions: [{ text: 'Why', criterion: 3 }], questions: ['lift', 7] });
    expect(draft.ownQuestions).toEqual([{ text: 'Why', criterion: '' }]);
    expect(draft.questions).toEqual(['lift', '']);
    expect(draftOf({ papers: Array(30).fill(NO_PAPER) }).papers).toHaveLength(24);
  });
});
