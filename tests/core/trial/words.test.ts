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
  resultWords,
  powerWords,
  standingOf,
  familyWords,
  turnedRound,
  weightWords,
} from '../../../src/core/trial/words';
import type { PlanPower } from '../../../src/core/stats/power';
import type { Cell, Comparison } from '../../../src/core/trial/analysis';
import { DESIGN, trialWith } from '../support/trial';

const cell = (passes: number, n: number, low: number, high: number, partly = 0): Cell => ({
  paper: 'p',
  glue: 'g',
  passes,
  partly,
  fails: n - passes - partly,
  n,
  interval: n === 0 ? undefined : { estimate: passes / n, low, high },
});

describe('shares and odds', () => {
  it('never rounds to a certainty', () => {
    expect([0, 0.004, 0.01, 0.5, 0.99, 0.996, 1].map(percent)).toEqual(
      ['0', 'under 1', '1', '50', '99', 'over 99', '100'].map((text) => `${text}\u00a0%`),
    );
  });
  it('says p as times, no finer than it is worth', () =>
    expect([0.9, 0.5, 0.49, 0.13, 0.05, 0.021, 1 / 163, 0.001, 0.0009].map(oddsOf)).toEqual([
      'more often than not',
      'more often than not',
      'about 1 time in 2',
      'about 1 time in 8',
      'about 1 time in 20',
      'about 1 time in 50',
      'about 1 time in 200',
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
    least: 0,
    pairs: { onlyFirst: 0, onlySecond: 0, all: 0 },
    blocks: 1,
    papers: { firstAhead: 3, secondAhead: 1, all: 4 },
    ...over,
  });
  const said = (over: Partial<Comparison>, claims = 1, adjusted = compared(over).p) =>
    comparisonWords(compared(over), 'Paste', 'Vinyl', { adjusted, claims, level: 0.05 });
  const counts = 'Paste passed 8 of 8, Vinyl 1 of 8';

  it('sees no difference, or one that luck can explain, or one that it cannot', () => {
    expect(said({ difference: 0 })).toBe(
      `${counts}: no difference to be seen, which does not show that there is none.`,
    );
    expect(said({ p: 0.051 })).toBe(
      `${counts}. Not enough to tell: luck alone would give a gap like this about 1 time in 20.`,
    );
    expect(said({ p: 0.05 })).toMatch(/\. Paste did better: luck alone .* about 1 time in 20\.$/);
    expect(said({ p: 0.01, difference: -0.5 })).toContain('. Vinyl did better:');
  });
  it('reckons with all that the page compares', () => {
    expect(said({ p: 0.001 }, 36, 0.03)).toBe(
      `${counts}. Paste did better: luck alone would give a gap like this about 1 time in 1000, and somewhere among the 36 comparisons of this page about 1 time in 35.`,
    );
    expect(said({ p: 0.01 }, 36, 0.3)).toBe(
      `${counts}. Not enough to tell: luck alone would give a gap like this about 1 time in 100, but somewhere among the 36 comparisons of this page about 1 time in 3.`,
    );
    expect(said({ p: 0.2 }, 36, 1)).toBe(
      `${counts}. Not enough to tell: luck alone would give a gap like this about 1 time in 5.`,
    );
  });
  it('says the result plainly, and what luck could do as such', () => {
    const plainly = (over: Partial<Comparison>, adjusted = 0.01) =>
      resultWords(compared(over), 'Paste', 'Vinyl', { adjusted, level: 0.05 });
    expect(plainly({})).toBe('Paste did better than Vinyl on 3 of 4 papers: 8 of 8 passed, against 1 of 8.');
    expect(plainly({}, 0.2)).toBe(
      'Paste came out ahead of Vinyl on 3 of 4 papers (8 of 8 passed, against 1 of 8), but luck alone could do that.',
    );
    const papers = (firstAhead: number, secondAhead: number, all: number) => ({ firstAhead, secondAhead, all });
    expect(plainly({ papers: papers(1, 0, 1) })).toContain('on the one paper that both were tried on:');
    expect(plainly({ papers: papers(2, 0, 2) })).toContain('on both papers:');
    expect(plainly({ papers: papers(5, 0, 5) })).toContain('on all 5 papers:');
    expect(plainly({ difference: -0.5, papers: papers(1, 2, 4) })).toBe(
      'Vinyl did better than Paste on 2 of 4 papers: 1 of 8 passed, against 8 of 8.',
    );
    expect(plainly({ difference: 0 })).toBe('Paste and Vinyl came out alike: 8 of 8 and 1 of 8 passed.');
  });
  it('turns round with the adhesives', () => {
    const turned = turnedRound(compared({ pairs: { onlyFirst: 3, onlySecond: 1, all: 8 } }));
    expect(turned.papers).toEqual({ firstAhead: 1, secondAhead: 3, all: 4 });
    expect(turned).toMatchObject({ difference: -0.875, pairs: { onlyFirst: 1, onlySecond: 3, all: 8 }, p: 0.04 });
    expect([turned.first.passes, turned.second.passes]).toEqual([1, 8]);
  });
  it('tells of pairs only where some differ', () => {
    expect(said({ pairs: { onlyFirst: 0, onlySecond: 0, all: 8 } })).not.toContain('pairs');
    expect(said({ pairs: { onlyFirst: 1, onlySecond: 0, all: 8 } })).toContain(
      ' Side by side in 8 pairs, Paste alone passed once, Vinyl alone 0 times.',
    );
    expect(said({ pairs: { onlyFirst: 0, onlySecond: 2, all: 8 } })).toContain(
      'Paste alone passed 0 times, Vinyl alone 2 times.',
    );
  });
});

describe('a claim about weight', () => {
  const said = (over: {
    direction?: number;
    adjusted?: number;
    slope?: number;
    half?: number | undefined;
    low?: number | undefined;
    high?: number | undefined;
  }) => {
    const { direction = 5, adjusted = 0.01, slope = direction } = over;
    const bounds = { half: 60, low: 50, high: 75, ...over };
    const threshold = { intercept: 0, slope, ...bounds, chanceAt: () => ({ chance: 0, low: 0, high: 0 }) };
    return weightWords({ trend: { direction, p: 0.001, least: 0 }, adjusted, threshold }, 0.05).replaceAll(
      '\u00a0',
      ' ',
    );
  };
  it('says which way, and where as far as that is known', () => {
    expect(said({ adjusted: 0.06 })).toBe(
      'Not enough to tell whether the heavier or the lighter papers pass more often.',
    );
    expect(said({})).toBe(
      'Of these papers the heavier pass more often; half of them pass at about 60 g/m², somewhere from 50 to 75 g/m².',
    );
    expect(said({ direction: -2, high: undefined })).toBe(
      'Of these papers the lighter pass more often; half of them pass at some weight above 50 g/m².',
    );
    expect(said({ low: undefined })).toContain('half of them pass at some weight below 75 g/m².');
    expect(said({ half: undefined, low: undefined, high: undefined })).toContain(
      'where half of them pass cannot be told.',
    );
  });
  it('names no weight where the curve through all hands turns the other way', () =>
    expect(said({ slope: -1 })).toBe('Of these papers the heavier pass more often.'));
});

describe('what holds of a page', () => {
  it('one claim needs no word', () => expect(familyWords(1, 0.05, false)).toEqual([]));
  it('many share what may be wrong', () =>
    expect(familyWords(36, 0.025, true)).toEqual([
      expect.stringMatching(/^This page asks 36 times .* at most 1 trial of 40\.$/),
      expect.stringMatching(/^Whether weight is what makes papers pass/),
    ]));
});

describe('what a plan can show', () => {
  const plan = { replicates: 4, blocks: 1, claims: 2, noticed: 4, gap: 0.95, gapWithPartly: undefined };
  const said = (over: Partial<PlanPower>) => powerWords({ ...plan, ...over }).replaceAll('\u00a0', ' ');
  it('says when nothing can be told', () =>
    expect(said({ replicates: 2, claims: 1, noticed: undefined, gap: undefined })).toBe(
      'With 2 each no outcome tells two adhesives apart, not even always against never. It can only show what happens.',
    ));
  it('says what “partly” costs', () => {
    expect(said({})).toBe(
      'With 4 each, with 2 comparisons on the page, you would notice always against never, not 3 of 4 against 1 of 4. Two adhesives whose true rates differ by 95 % or more would be told apart 4 times in 5; where 1 swatch in 5 comes out “partly”, no difference is told so surely.',
    );
    expect(said({ gap: 0.7, gapWithPartly: 0.8 })).toMatch(/70 % or more .* “partly”, it takes 80 %\.$/);
    expect(said({ gap: 0.7, gapWithPartly: 0.7 })).toMatch(/, also where 1 swatch in 5 comes out “partly”\.$/);
    expect(said({ gap: undefined })).toMatch(/No difference in true rates would be told apart 4 times in 5\.$/);
  });
  it('says the least count, in every place where there are several', () =>
    expect(said({ replicates: 6, blocks: 3, claims: 36, noticed: 4, gap: 0.7, gapWithPartly: 0.8 })).toMatch(
      /^With 6 each in each of 3 places \(papers × holds\), with 36 comparisons on the page, you would notice 4 of 6 against none everywhere\./,
    ));
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
  it('asks from which weight on only where three weights were tried', () => {
    const papers = [20, 60, 180].map((grammage, i) => ({ id: `paper-${i + 1}`, name: `P${i}`, grammage }));
    const swatches = papers.flatMap(({ id }, p) =>
      Array.from({ length: 9 }, (_, i) => ({
        number: 9 * p + i + 1,
        paper: id,
        glue: 'glue-1',
        hold: 20,
        block: i + 1,
        outcomes: { lift: (p === 2 || (p === 1 && i < 4) ? 'pass' : 'fail') as 'pass' | 'fail' },
      })),
    );
    const takeaways = (count: number) =>
      summaryOf({ ...trialWith(() => undefined), papers: papers.slice(0, count), swatches }).questions[0]!.takeaways;
    expect(takeaways(3).join()).toContain('Paste: Of these papers the heavier pass more often');
    expect(takeaways(2).join()).not.toContain('Of these papers');
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
      id: `own-${i}`,
      kind: 'own' as const,
      text: `Question ${i}`,
      criterion: '',
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
      name: 'Mine',
      family: 'kozo',
      grammage: '41',
      dropSeconds: '7',
    });
  });
  it('carries everything that was typed into the trial', () => {
    const { plan } = planOf(
      {
        ...DEFAULT_PLAN,
        name: ' Mine ',
        by: 'Ada',
        batch: 'jar 3',
        seed: '42',
        celsius: '19',
        humidity: '48',
        papers: [{ name: 'A', family: 'unryu', grammage: '25,5', dropSeconds: '8' }],
        ownQuestions: [
          { text: 'Does it smell?', criterion: 'no' },
          { text: ' ', criterion: 'never asked' },
        ],
      },
      1,
    );
    expect(plan).toMatchObject({
      name: 'Mine',
      by: 'Ada',
      seed: 42,
      conditions: { celsius: 19, humidity: 48, batch: 'jar 3' },
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
