/** What re-weighing must keep to: nothing learned changes nothing, and what was seen moves chances its own way. */
import { describe, expect, test } from 'vitest';
import { atOnce } from '../../../src/core/base/turns';
import { onBench } from '../../../src/core/bench/own-bench';
import { drawsOf } from '../../../src/core/choose/draws';
import { DEFAULT_JOB, type Job } from '../../../src/core/choose/job';
import { kindOf } from '../../../src/core/choose/kind';
import { rank, SAMPLES } from '../../../src/core/choose/ranking';
import { benchesOf, liquidsOf } from '../../../src/core/choose/sampling';
import { holds } from '../../../src/core/choose/tally';
import { wetMargins } from '../../../src/core/joint/margins';
import { bestRatio } from '../../../src/core/choose/best-ratio';
import { ownBench } from '../../../src/core/learn/condition';
import { judgedIn } from '../../../src/core/learn/judged';
import {
  ALIKE,
  LEAST_EFFECTIVE,
  learnedDraws,
  learnInTurns,
  reweigh,
  softened,
  type Learned,
} from '../../../src/core/learn/reweigh';
import { POOL } from '../../../src/core/learn/versions';
import { digestOf, drawsForTaught, movedBy, pairsInTurns, taughtBy } from '../../../src/core/learn/taught';
import { changeInWords, mostlyFrom } from '../../../src/core/learn/words';
import { sheetOf } from '../../../src/core/paper/sheet';
import type { WetAdhesive } from '../../../src/core/records/records';
import { STANDARD_QUESTIONS } from '../../../src/core/trial/design';
import type { Outcome, Swatch, Trial } from '../../../src/core/trial/record';
import { readCatalogue } from '../../tools/read-content';
import { trialWith } from '../support/trial';

const catalogue = readCatalogue();
const PAPERS = [
  { id: 'p', name: 'Lokta', family: 'lokta-light', grammage: 55 },
  { id: 'q', name: 'Wove', family: 'wove-text', grammage: 100 },
  { id: 'r', name: 'Tissue', family: 'kozo-tissue', grammage: 18 },
];
const GLUES = [
  { id: 'a', name: 'Vinyl', record: 'pva' },
  { id: 'b', name: 'Paste', record: 'wheat-starch-paste-12' },
];
const LIFTING = STANDARD_QUESTIONS.filter(({ kind }) => kind === 'lift' || kind === 'board');
let number = 0;
const swatch = (paper: string, glue: string, outcome: Outcome, over: Partial<Swatch> = {}): Swatch => ({
  number: (number += 1),
  paper,
  glue,
  hold: 60,
  block: 1,
  outcomes: { lift: 'pass', board: outcome },
  ...over,
});
const trialOf = (swatches: readonly Swatch[], over: Partial<Trial> = {}) =>
  trialWith(() => undefined, { papers: PAPERS, glues: GLUES, swatches, questions: LIFTING, ...over });
const learnFrom = (...trials: Trial[]): Learned =>
  atOnce(learnInTurns(judgedIn(trials, catalogue).conditions, catalogue));
/** Chance that it holds with the glue on the sheet, as a swatch is made. */
const chanceOf = (id: string, job: Job, learned: Learned, thing: 'lift' | 'spread' = 'lift') => {
  const draws = learnedDraws(learned, job.paper, SAMPLES);
  const adhesive = catalogue.adhesives.get(id) as WetAdhesive;
  const liquids = liquidsOf(adhesive, catalogue, draws);
  const held = benchesOf(job, sheetOf(job, catalogue), catalogue, draws).map((bench, i) =>
    holds(
      wetMargins(adhesive, liquids[i]!, bench, draws.constants[i])[thing] *
        draws.hand!(kindOf(adhesive, catalogue))[thing],
    ),
  );
  return held.reduce((sum, one) => sum + one, 0) / held.length;
};
const jobWith = (family: string, grammage: number, placeSeconds = 60): Job => ({
  ...DEFAULT_JOB,
  paper: { family, grammage },
  placeSeconds,
});
const times = (count: number, make: () => Swatch) => Array.from({ length: count }, make);

describe('with nothing to learn from', () => {
  const nothing = learnFrom();
  test('every version counts alike, and the draws are the even ones', () => {
    expect(reweigh(nothing).effective).toBeCloseTo(POOL, 6);
    const draws = learnedDraws(nothing, DEFAULT_JOB.paper, SAMPLES);
    expect([...draws.points]).toEqual([...drawsOf(SAMPLES).points]);
    expect(draws.constants).toEqual(drawsOf(SAMPLES).constants);
  });
  test('so the answer is the model alone', () => {
    const now = rank(DEFAULT_JOB, catalogue, atOnce(drawsForTaught(nothing, DEFAULT_JOB.paper)));
    expect(now).toEqual(rank(DEFAULT_JOB, catalogue));
    expect(movedBy(rank(DEFAULT_JOB, catalogue), now)).toEqual([]);
  });
});

describe('what was seen of one paper speaks for others', () => {
  const other = jobWith('marbled', 90, 60);
  const clean = learnFrom(trialOf([...times(4, () => swatch('q', 'a', 'pass', { hold: 60 }))]));
  const torn = learnFrom(trialOf([...times(4, () => swatch('q', 'a', 'fail', { hold: 60 }))]));
  test('clean lifts raise the chance of a clean lift on a paper that was not swatched, a torn board lowers it', () => {
    const alone = chanceOf('pva', other, learnFrom());
    expect(chanceOf('pva', other, clean)).toBeGreaterThan(alone + 0.02);
    expect(chanceOf('pva', other, torn)).toBeLessThan(alone - 0.02);
  });
  test('slip times and the curve of ratios move too', () => {
    const slips = (learned: Learned) =>
      rank(other, catalogue, atOnce(drawsForTaught(learned, other.paper))).map(({ slipSeconds }) => slipSeconds.p50);
    expect(slips(torn)).not.toEqual(slips(clean));
    const curve = (learned: Learned) =>
      bestRatio(other, catalogue, ['pva', 'methylcellulose-2-5'], learnedDraws(learned, other.paper, 32))!.curves[0]!
        .points;
    expect(curve(torn).map(({ chance }) => chance)).not.toEqual(curve(clean).map(({ chance }) => chance));
  });
  test('a dragging coat lowers the chance of spreading on a light sheet', () => {
    const spread = trialOf(
      times(4, () => swatch('p', 'a', 'pass', { outcomes: { spread: 'fail' } })),
      { questions: [{ id: 'spread', kind: 'spread', text: '', criterion: '' }] },
    );
    const light = jobWith('lokta-heavy', 60);
    const alone = chanceOf('pva', light, learnFrom(), 'spread');
    expect(chanceOf('pva', light, learnFrom(spread), 'spread')).toBeLessThan(alone - 0.02);
  });
  test('the pairs that taught are named, those that moved the weights most first', () => {
    const both = learnFrom(
      trialOf([...times(4, () => swatch('q', 'a', 'fail', { hold: 60 })), swatch('q', 'b', 'pass')]),
    );
    const pairs = atOnce(pairsInTurns(both));
    expect(pairs.map(({ paperName, swatches }) => [paperName, swatches])).toEqual([
      ['Wove', 4],
      ['Wove', 1],
    ]);
    expect(pairs[0]!.share).toBeGreaterThan(pairs[1]!.share);
    expect(mostlyFrom(pairs, (id) => id)).toBe('most of it from Wove with pva');
  });
});

describe('it never breaks', () => {
  const sound = (learned: Learned) => {
    const { effective, weights, softened: power } = reweigh(learned);
    expect(effective).toBeGreaterThanOrEqual(LEAST_EFFECTIVE * 0.999);
    expect(power).toBeGreaterThanOrEqual(0);
    expect(weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 9);
    for (const { chance, slipSeconds } of rank(
      DEFAULT_JOB,
      catalogue,
      atOnce(drawsForTaught(learned, DEFAULT_JOB.paper, undefined, 16)),
    )) {
      expect(chance).toBeGreaterThanOrEqual(0);
      expect(chance).toBeLessThanOrEqual(1);
      expect(Number.isFinite(slipSeconds.p50)).toBe(true);
    }
  };
  test('one swatch', () => sound(learnFrom(trialOf([swatch('p', 'a', 'fail')]))));
  test('all pass', () =>
    sound(learnFrom(trialOf(PAPERS.flatMap(({ id }) => times(8, () => swatch(id, 'a', 'pass')))))));
  test('all fail', () =>
    sound(learnFrom(trialOf(PAPERS.flatMap(({ id }) => times(8, () => swatch(id, 'b', 'fail')))))));
  test('the same pair passes and fails: less sure than after as many that agree', () => {
    const mixed = learnFrom(
      trialOf([...times(5, () => swatch('q', 'a', 'pass')), ...times(5, () => swatch('q', 'a', 'fail'))]),
    );
    sound(mixed);
    const job = jobWith('wove-text', 100);
    const agreed = (outcome: Outcome) =>
      chanceOf('pva', job, learnFrom(trialOf(times(10, () => swatch('q', 'a', outcome)))));
    expect(chanceOf('pva', job, mixed)).toBeLessThan(agreed('pass'));
    expect(chanceOf('pva', job, mixed)).toBeGreaterThan(agreed('fail'));
  });
  test('every outcome contradicts the model, 576 times', { timeout: 180_000 }, () => {
    const papers = [...catalogue.papers.values()]
      .slice(0, 24)
      .map(({ id }) => ({ id: `p-${id}`.slice(0, 12), name: id, family: id }));
    const unique = papers.map((paper, i) => ({ ...paper, id: `p-${i}` }));
    const glues = [...catalogue.adhesives.values()]
      .filter(({ form }) => form === 'wet')
      .slice(0, 6)
      .map(({ id }, i) => ({ id: `g-${i}`, name: id, record: id }));
    const all = unique.flatMap((paper, i) =>
      glues.flatMap((glue, k) => times(4, () => swatch(paper.id, glue.id, (i + k) % 2 ? 'pass' : 'fail'))),
    );
    expect(all).toHaveLength(576);
    const learned = learnFrom(trialOf(all, { papers: unique, glues }));
    expect(learned.swatches).toBe(576);
    sound(learned);
  });
  test('weights are softened to the floor and no further: a hand-made case', () => {
    const logs = new Float64Array(POOL);
    logs[0] = 50;
    const { effective, softened: power } = softened(logs);
    expect(effective).toBeCloseTo(LEAST_EFFECTIVE, 3);
    expect(power).toBeLessThan(1);
    expect(power).toBeGreaterThan(0);
    // a third of the versions twice as likely: (Σw)²/Σw² = (4/3)²/(6/3) of the pool
    const gentle = new Float64Array(POOL).map((_, i) => (i < POOL / 2 ? Math.log(2) : 0));
    expect(softened(gentle).softened).toBe(1);
    expect(softened(gentle).effective).toBeCloseTo((POOL * 1.5 ** 2) / 2.5, 6);
  });
});

describe('whose swatches they are', () => {
  const torn = times(4, () => swatch('q', 'a', 'fail', { hold: 60 }));
  test('the bench of whoever made most is one’s own', () => {
    const trial = trialOf([...torn, swatch('p', 'a', 'pass', { by: 'Bo' })]);
    const { conditions } = judgedIn([trial], catalogue);
    expect(ownBench(conditions)).toBe('Ada');
    expect(ownBench([])).toBeUndefined();
  });
  test('another’s swatches move the constants alone: less than as many of one’s own', () => {
    const mine = [
      swatch('p', 'b', 'pass'),
      swatch('r', 'b', 'pass'),
      swatch('q', 'b', 'pass'),
      swatch('p', 'b', 'partly'),
      swatch('r', 'b', 'pass'),
    ];
    const theirs = learnFrom(trialOf([...mine, ...torn.map((one) => ({ ...one, by: 'Bo' }))]));
    const own = learnFrom(trialOf([...mine, ...torn]));
    const base = learnFrom(trialOf(mine));
    const moved = (learned: Learned) =>
      reweigh(learned).weights.reduce((sum, weight, i) => sum + Math.abs(weight - reweighed[i]!), 0);
    const reweighed = reweigh(base).weights;
    expect(moved(theirs)).toBeGreaterThan(0);
    expect(moved(theirs)).toBeLessThan(moved(own));
  });
  test('those of published trials are told apart from one’s own', () => {
    const theirs = trialOf(torn, { id: 'published-theirs' });
    expect(taughtBy(learnFrom(theirs))).toMatchObject({ swatches: 4, others: 4, own: undefined });
    const mine = trialOf([swatch('p', 'b', 'pass')]);
    expect(taughtBy(learnFrom(theirs, mine))).toMatchObject({ swatches: 5, others: 4, own: 'Ada' });
  });
  test('invented, set aside, unnamed and doubtful swatches teach nothing', () => {
    expect(judgedIn([trialOf(torn, { demo: true })], catalogue).swatches).toBe(0);
    expect(judgedIn([trialOf(torn.map((one) => ({ ...one, spoiled: true })))], catalogue).swatches).toBe(0);
    const unnamed = trialOf(torn, { papers: [{ id: 'q', name: 'Some paper', grammage: 90 }] });
    expect(judgedIn([unnamed], catalogue)).toMatchObject({ swatches: 0, unnamed: 4 });
    const doubtful = trialOf(torn, { glues: [{ ...GLUES[0]!, doubtful: true }] });
    expect(judgedIn([doubtful], catalogue)).toMatchObject({ swatches: 0, unnamed: 4 });
  });
  test('swatches of one condition stand together', () => {
    expect(judgedIn([trialOf(torn)], catalogue).conditions).toHaveLength(1);
    expect(ALIKE).toBeGreaterThan(0);
  });
});

describe('how they were made', () => {
  const torn = times(4, () => swatch('q', 'a', 'fail', { hold: 60 }));
  const weightsOf = (over: Partial<Trial>) => [...reweigh(learnFrom(trialOf(torn, over))).weights];
  test('a full brush, said or not, is the same; another tool or coat is another swatch', () => {
    const usual = weightsOf({});
    expect(weightsOf({ method: { tool: 'brush-full', face: 'sheet' } })).toEqual(usual);
    const ways = [{ tool: 'roller' }, { coat: 30 }] as const;
    for (const method of ways) expect(weightsOf({ method }), JSON.stringify(method)).not.toEqual(usual);
  });
  test('glue on the board drags no paper, so what it shows of spreading says next to nothing', () => {
    const questions = STANDARD_QUESTIONS.filter(({ kind }) => kind === 'spread');
    const spread = (method: Trial['method'] = {}) => {
      const dragged = times(4, () => swatch('p', 'a', 'pass', { outcomes: { spread: 'fail' } }));
      const { effective } = reweigh(learnFrom(trialOf(dragged, { questions, method })));
      return POOL - effective;
    };
    expect(spread({ face: 'ground' })).toBeLessThan(spread() / 20);
  });
  test('a tool that is not on the shelf teaches nothing, and is counted as left out', () => {
    expect(judgedIn([trialOf(torn, { method: { tool: 'other' } })], catalogue)).toMatchObject({
      swatches: 0,
      unnamed: 4,
    });
  });
  test('where nobody says after how long it was lifted, only what does not hang on it is learned', () => {
    const questions = STANDARD_QUESTIONS.filter(({ kind }) => kind === 'lift' || kind === 'spread');
    const at = (outcomes: Swatch['outcomes']) => swatch('q', 'a', 'pass', { hold: 0, outcomes });
    const { conditions, unnamed } = judgedIn(
      [trialOf([at({ lift: 'fail' }), at({ lift: 'fail', spread: 'pass' })], { questions })],
      catalogue,
    );
    expect(conditions.map(({ seen }) => seen)).toEqual([[{ spread: 'pass' }]]);
    expect(unnamed).toBe(1);
  });
  test('swatches of two tools do not stand together', () => {
    const two = torn.map((one, i) => (i === 0 ? { ...one, method: { tool: 'roller' } } : one));
    expect(judgedIn([trialOf(two)], catalogue).conditions).toHaveLength(2);
  });
});

describe('on a bench that was measured', () => {
  // a thin coat, and a board that drinks fast, each well inside one end of its record's range
  const measured = onBench('brush-full_coat_42_45_48~binders-board_drinks_3.2_3.5_3.8', catalogue);
  const torn = times(4, () => swatch('q', 'a', 'fail', { hold: 60 }));
  const on = (trials: readonly Trial[]) => {
    const { conditions } = judgedIn(trials, catalogue);
    return atOnce(learnInTurns(conditions, catalogue, ownBench(conditions), undefined, measured));
  };
  test('one’s own swatches are weighed by what was measured', () => {
    const trial = trialOf(torn);
    expect([...reweigh(on([trial])).weights]).not.toEqual([...reweigh(learnFrom(trial)).weights]);
    expect(digestOf(on([trial])).digest).not.toBe(digestOf(learnFrom(trial)).digest);
  });
  test('those of another by the records', () => {
    const mine = times(5, () => swatch('p', 'b', 'pass'));
    const both = [trialOf([...mine, ...torn.map((one) => ({ ...one, by: 'Bo' }))])];
    const logsOf = (learned: Learned, bench: string) =>
      learned.asked.filter(({ condition }) => condition.bench === bench).map(({ logs }) => [...logs]);
    expect(logsOf(on(both), 'Bo')).toEqual(logsOf(learnFrom(...both), 'Bo'));
    expect(logsOf(on(both), 'Ada')).not.toEqual(logsOf(learnFrom(...both), 'Ada'));
  });
  test('a bench as wide as the records changes nothing', () => {
    const { conditions } = judgedIn([trialOf(torn)], catalogue);
    const same = atOnce(learnInTurns(conditions, catalogue, 'Ada', undefined, onBench('', catalogue)));
    expect([...reweigh(same).weights]).toEqual([...reweigh(learnFrom(trialOf(torn))).weights]);
  });
});

describe('what a link carries', () => {
  test('how many, and a digest that other outcomes change', () => {
    const one = digestOf(learnFrom(trialOf([swatch('p', 'a', 'fail')])));
    const other = digestOf(learnFrom(trialOf([swatch('p', 'a', 'pass')])));
    expect(one.swatches).toBe(1);
    expect(one.digest).toMatch(/^[0-9a-f]{6}$/);
    expect(other.digest).not.toBe(one.digest);
  });
});

describe('in words', () => {
  const pairs = [
    { paperName: 'lokta', adhesive: 'pva', swatches: 5, share: 0.6 },
    { paperName: 'wove', adhesive: 'mc', swatches: 3, share: 0.2 },
  ];
  const say = (before: string, was: number, now: string, is: number, swatches = 8, others = 0) =>
    changeInWords(
      { adhesiveId: before, chance: was },
      { adhesiveId: now, chance: is },
      was,
      { swatches, others },
      pairs,
      (id) => id.toUpperCase(),
    );
  test('from what to what, and from which', () => {
    expect(say('pva', 0.7, 'pva', 0.9)).toBe(
      'PVA: about 7 in 10 for such papers; with your 8 swatches about 9 in 10, most of it from lokta with PVA.',
    );
    expect(say('pva', 0.7, 'pva', 0.71)).toBe(
      'PVA: about 7 in 10 for such papers, and your 8 swatches leave it there.',
    );
    expect(say('pva', 0.7, 'pva', 0.71, 8, 8)).toMatch(/ and 8 swatches of others leave it there\.$/);
    expect(say('pva', 0.7, 'pva', 0.71, 8, 3)).toMatch(/ and your 5 swatches and 3 of others leave it there\.$/);
    expect(say('pva', 0.7, 'pva', 0.71, 1)).toMatch(/ and your 1 swatch leaves it there\.$/);
    expect(say('pva', 0.6, 'mc', 0.8)).toMatch(/^By the model alone PVA stands first\. With your 8 swatches it is MC:/);
  });
});
