/** The sums under a trial, on cases made by hand: counts, pairs, amounts, evidence, and the tails of the normal curve. */
import type { Ranked } from '../../../src/core/choose/finding';
import { describe, expect, it } from 'vitest';
import { DEFAULT_JOB } from '../../../src/core/choose/job';
import { adjustRanking, decodeEvidence, encodeEvidence, evidenceFor } from '../../../src/core/handover/trial-to-choose';
import { amountsNeeded } from '../../../src/core/trial/amounts';
import { cellsOf, compareGlues, observationsOf } from '../../../src/core/trial/analysis';
import { count, doneCount, paperName } from '../../../src/core/trial/counts';
import { drawOrder, swatchCount } from '../../../src/core/trial/design';
import { testimonyOf, updateChance, witnessesFor } from '../../../src/core/handover/trial-evidence';
import { firthLine } from '../../../src/core/stats/firth';
import { betaBelow, betaQuantile } from '../../../src/core/stats/functions';
import { permutationTest } from '../../../src/core/stats/permutation';
import { detectableDifference, trialPower } from '../../../src/core/stats/power';
import { TRIAL_LIMITS, type Outcome, type Swatch, type Trial } from '../../../src/core/trial/record';
import { summaryOf } from '../../../src/core/trial/summary';
import { chiSquareAbove, passThreshold } from '../../../src/core/stats/threshold';
import { catalogue } from '../../../src/data/catalogue';
import { DESIGN, trialWith } from '../support/trial';

/** "paper glue hold block outcome": one swatch a line. */
const laid = (...lines: string[]): Swatch[] =>
  lines.map((line, i) => {
    const [paper, glue, hold, block, outcome] = line.split(' ') as [string, string, string, string, Outcome | '-'];
    return {
      ...{ number: i + 1, paper, glue, hold: Number(hold), block: Number(block) },
      outcomes: outcome === '-' ? {} : { lift: outcome },
    };
  });
const trialOf = (lines: readonly string[], over: Partial<Trial> = {}): Trial =>
  trialWith(() => undefined, {
    papers: [
      { id: 'p', name: 'Light', family: 'unryu', grammage: 25 },
      { id: 'q', name: 'Heavy', family: 'wove-text', grammage: 100 },
      { id: 'r', name: 'Unweighed' },
    ],
    glues: [
      { id: 'a', name: 'Paste', record: 'wheat-starch-paste-thin' },
      { id: 'b', name: 'Vinyl', record: 'pva' },
    ],
    swatches: laid(...lines),
    ...over,
  });

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
  it('of what is done, and in words', () => {
    expect(doneCount(trial)).toBe(8);
    expect([count(0, 'paper'), count(1, 'paper'), count(2, 'swatch', 'swatches')]).toEqual([
      '0 papers',
      '1 paper',
      '2 swatches',
    ]);
    expect(paperName({ id: 'x', name: 'Lokta', grammage: 55.00001 })).toBe('Lokta, 55\u00a0g/m²');
    expect(paperName({ id: 'x', name: 'Lokta' })).toBe('Lokta');
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
    // alone the first once, alone the second twice: twice the tail of one or none in three, at most 1
    expect(pairs).toEqual({ onlyFirst: 1, onlySecond: 2, all: 4, p: 1 });
    const swatches = laid('p a 20 1 pass', 'p b 20 1 fail').map((one, i) => ({
      ...one,
      ...(i === 1 && { from: { trial: 'other', number: 1 } }),
    }));
    expect(compareGlues(trialOf([], { swatches: swatches as Swatch[] }), 'lift', 'a', 'b')!.pairs.all).toBe(0);
  });
});

describe('what a trial takes', () => {
  // 2 papers × 2 glues × 2 holds × 3
  const design = { ...DESIGN, holds: [60, 180] };
  const coat = { low: 40, middle: 60, high: 80, basis: 'estimate' } as const;
  it('24 swatches with two minutes of hold on the mean, and 1.5 to 3.5 of work', () => {
    const needed = amountsNeeded(design, 50, 70, coat);
    expect(swatchCount(design)).toBe(24);
    expect(needed.swatches).toBe(24);
    expect(needed.minutes).toEqual({ low: 24 * 3.5, high: 24 * 5.5 });
    // four by four of 50 × 70 from A4; boards of 70 × 90, three by three
    expect(needed.perPaper).toEqual({ pieces: 12, sheets: 1 });
    expect(needed.board).toEqual({ widthMm: 70, heightMm: 90, pieces: 24, sheets: 3 });
    // 12 × 0.0035 m², half as much again in the brush
    expect(needed.gluePerAdhesive.middle).toBeCloseTo(12 * 0.0035 * 60 * 1.5, 9);
    expect(needed.gluePerAdhesive.high / needed.gluePerAdhesive.low).toBeCloseTo(2, 9);
  });
  it('no sheets where a swatch is larger than one', () => {
    expect(amountsNeeded(design, 211, 70, coat).perPaper.sheets).toBeUndefined();
    expect(amountsNeeded(design, 210, 297, coat)).toMatchObject({
      perPaper: { sheets: 12 },
      board: { sheets: undefined },
    });
  });
  it('as many swatches as a trial holds, and no more', () => {
    const of = (replicates: number) =>
      drawOrder({ ...DESIGN, papers: [{ id: 'p' }], glues: [{ id: 'a' }], replicates }, 1);
    expect(of(TRIAL_LIMITS.swatches)).toHaveLength(TRIAL_LIMITS.swatches);
    expect(() => of(TRIAL_LIMITS.swatches + 1)).toThrow(/at most/);
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
  it('is gathered for each adhesive on the shelf, and travels in a link in the order of its ids', () => {
    const glues = [
      { id: 'a', name: 'Paste', record: 'wheat-starch-paste-thin' },
      { id: 'b', name: 'Vinyl', record: 'pva' },
      { id: 'c', name: 'Own' },
      { id: 'd', name: 'Gone', record: 'moon-glue' },
    ];
    const lines = ['p a 20 1 pass', 'p b 20 1 fail', 'p b 20 2 partly', 'p c 20 1 pass', 'p d 20 1 pass'];
    const found = evidenceFor([trialOf(lines, { glues })], job, catalogue);
    expect([...found.keys()]).toEqual(['wheat-starch-paste-thin', 'pva']);
    const word = encodeEvidence(found);
    expect(word).toBe('pva.l.50.200.2~wheat-starch-paste-thin.l.100.100.1');
    expect(decodeEvidence(word).get('pva')).toEqual({ lift: { passes: 0.5, weight: 2, swatches: 2 } });
    expect(evidenceFor([trialOf(['q a 20 1 pass'])], job, catalogue).size).toBe(0);
  });
  it('twelve adhesives travel, the rest stay behind', () => {
    const many = new Map(
      Array.from({ length: 14 }, (_, i) => [
        `glue-${String.fromCharCode(97 + i)}`,
        Object.fromEntries(
          ['spread', 'lift', 'bond', 'flat'].map((thing) => [thing, { passes: 1, weight: 1, swatches: 1 }] as const),
        ),
      ]),
    );
    const read = decodeEvidence(encodeEvidence(many));
    expect(read.size).toBe(12);
    expect(Object.keys(read.get('glue-l')!)).toEqual(['spread', 'lift', 'bond', 'flat']);
    expect(read.has('glue-m')).toBe(false);
  });
  it.each([
    '',
    'pva',
    'pva.x.1.1.1',
    'PVA.l.1.1.1',
    'a pva.l.1.1.1',
    'pva.l.1.1.1x',
    'pva.l.200.100.1',
    'pva.l.1.1.0',
    'pva.l.100.101.1',
  ])('“%s” says nothing', (word) => expect(decodeEvidence(word).size).toBe(0));
  it('the limits of a word', () => {
    expect(decodeEvidence('pva.l.100.100.1').size).toBe(1);
    expect(decodeEvidence('pva.l.0.1200.12').get('pva')!.lift!.swatches).toBe(12);
    expect(decodeEvidence(5).size).toBe(0);
  });
  it('moves a ranking: failed lifts put another first, and nothing is told of what was not tried', () => {
    const chances = { spread: 1, lift: 0.9, bond: 1, flat: 1 };
    const ranked = (adhesiveId: string, chance: number) =>
      ({ adhesiveId, chance, chances, atHand: true, verdict: 'sound' }) as Ranked;
    const evidence = new Map([['pva', { lift: { passes: 0, weight: 36, swatches: 36 } }]]);
    const { choices, told } = adjustRanking([ranked('pva', 0.9), ranked('eva', 0.8)], evidence, job, catalogue);
    expect(choices.map(({ adhesiveId }) => adhesiveId)).toEqual(['eva', 'pva']);
    // 4 × 0.9 of 4 + 36
    expect(told.get('pva')!.things.lift!.withTrials).toBeCloseTo(0.09, 12);
    expect(told.has('eva')).toBe(false);
    expect(choices[0]).toMatchObject({ chance: 0.8, verdict: 'sound' });
    expect(choices[1]!.verdict).not.toBe('sound');
  });
});

describe('the tail of the normal curve: one, two … seven standard errors either way (published in any table)', () => {
  it.each([
    [1, 0.3173105],
    [1.959964, 0.05],
    [2, 0.0455003],
    [2.575829, 0.01],
    [2.8, 0.00511026],
    [3, 0.0026998],
    [3.290527, 0.001],
    [4, 6.33425e-5],
    [5, 5.73303e-7],
    [6, 1.973175e-9],
    [7, 2.559625e-12],
  ])('%d', (z, above) => {
    expect(chiSquareAbove(z * z) / above).toBeCloseTo(1, 5);
  });
  it('nothing is above nothing; far out nothing is left', () => {
    expect(chiSquareAbove(0)).toBe(1);
    expect(chiSquareAbove(51)).toBe(0);
  });
});

describe('from which weight on', () => {
  const seen = [25, 35, 55, 70, 90, 130].map((grammage, i) => ({ grammage, passes: [0, 1, 2, 3, 2, 3][i]!, n: 3 }));
  it('turned about, light for heavy and fail for pass, the answer turns about', () => {
    const [there, back] = [
      passThreshold(seen),
      passThreshold(seen.map(({ grammage, passes, n }) => ({ grammage: 2500 / grammage, passes: n - passes, n }))),
    ];
    expect(back.slope).toBeCloseTo(there.slope, 6);
    expect(back.half).toBeCloseTo(2500 / there.half, 5);
    expect(back.low).toBeCloseTo(2500 / there.high!, 3);
    expect(back.high).toBeCloseTo(2500 / there.low!, 3);
    expect(there.low!).toBeLessThan(there.half);
    expect(there.high!).toBeGreaterThan(there.half);
  });
  it('has no bound on the side where nothing was seen, and a sure one where much was', () => {
    const low = passThreshold([20, 30, 40].map((grammage) => ({ grammage, passes: grammage > 30 ? 1 : 0, n: 4 })));
    expect(low.low).toBeGreaterThan(20);
    expect(low.high).toBeUndefined();
    const high = passThreshold([20, 30, 40].map((grammage) => ({ grammage, passes: grammage < 30 ? 3 : 4, n: 4 })));
    expect(high.low).toBeUndefined();
  });
  it('its band lies round its chance, and reaches to 0 or 1 only where the trial sets no bound', () => {
    const { chanceAt } = passThreshold(seen);
    const { chance, low, high } = chanceAt(50);
    expect(low).toBeLessThan(chance);
    expect(high).toBeGreaterThan(chance);
    expect(low).toBeGreaterThan(0.1);
    expect(high).toBeLessThan(0.95);
    expect(() => passThreshold([{ grammage: 20, passes: true }])).toThrow(/two different grammages/);
    expect(() => passThreshold([{ grammage: 0, passes: true }])).toThrow(/grammage/);
    expect(() => firthLine([{ x: 1, passes: 1, n: 1 }])).toThrow(/two different/);
  });
  it('Firth adds a half to each cell of any table of two by two', () => {
    for (const [a, b, n] of [
      [0, 5, 5],
      [1, 40, 40],
      [7, 2, 9],
      [0, 200, 200],
    ] as const) {
      const odds = (k: number) => Math.log((k + 0.5) / (n - k + 0.5));
      const line = firthLine([
        { x: 0, passes: a, n },
        { x: 1, passes: b, n },
      ]);
      expect(line.intercept).toBeCloseTo(odds(a), 6);
      expect(line.slope).toBeCloseTo(odds(b) - odds(a), 6);
    }
  });
});

describe('special functions at their ends', () => {
  it('a beta distribution lies between 0 and 1, whatever its parameters', () => {
    for (const [a, b] of [
      [1, 1],
      [0.5, 8],
      [40, 2],
    ] as const) {
      expect([betaBelow(-1, a, b), betaBelow(0, a, b), betaBelow(1, a, b), betaBelow(2, a, b)]).toEqual([0, 0, 1, 1]);
      expect([betaQuantile(0, a, b), betaQuantile(1, a, b)]).toEqual([0, 1]);
    }
    // uniform, and x to the a for b = 1; 1 − (1 − x) to the b for a = 1
    for (const x of [0.01, 0.3, 0.9, 0.999]) {
      expect(betaBelow(x, 1, 1)).toBeCloseTo(x, 12);
      expect(betaBelow(x, 7, 1)).toBeCloseTo(x ** 7, 12);
      expect(betaBelow(x, 1, 30)).toBeCloseTo(1 - (1 - x) ** 30, 12);
      expect(betaBelow(x, 60, 5)).toBeCloseTo(1 - betaBelow(1 - x, 5, 60), 12);
    }
  });
  it('labels that are drawn and labels that are counted agree', () => {
    const groups = [
      [1, 1, 0.5, 1, 0],
      [0, 0, 0.5, 0, 1],
    ] as const;
    const exact = permutationTest(groups);
    const drawn = permutationTest(groups, { most: 1, draws: 4000 });
    expect([exact.exact, drawn.exact]).toEqual([true, false]);
    expect(drawn.difference).toBeCloseTo(exact.difference, 12);
    expect(Math.abs(drawn.p - exact.p)).toBeLessThan(0.03);
    expect(drawn.arrangements).toBe(4000);
    // three against three, all unlike: one arrangement in twenty each way
    expect(
      permutationTest([
        [1, 1, 1],
        [0, 0, 0],
      ]),
    ).toMatchObject({ p: 0.1, arrangements: 20, difference: 1 });
    // a block without a partner says nothing
    const alone = { first: [1, 1], second: [] };
    expect(permutationTest([{ first: [1, 1, 1], second: [0, 0, 0] }, alone]).p).toBe(0.1);
    expect(
      permutationTest([
        { first: [1, 1, 1], second: [0, 0, 0] },
        { first: [1], second: [0] },
      ]),
    ).toMatchObject({
      arrangements: 40,
      p: 2 / 40,
    });
  });
  it('one swatch each tells nothing, and equal rates are called different at most once in twenty', () => {
    expect(detectableDifference(1)).toMatchObject({
      difference: undefined,
      fromNever: undefined,
      noticed: [undefined, undefined],
    });
    for (const rate of [0.2, 0.5, 0.9]) expect(trialPower(rate, rate, 6)).toBeLessThanOrEqual(0.05 + 1e-9);
    expect(trialPower(0, 1, 6)).toBeCloseTo(1, 12);
    const { noticed } = detectableDifference(6);
    noticed.forEach((least, passes) => {
      if (least !== undefined) expect(least).toBeGreaterThan(passes);
    });
    expect(() => trialPower(0, 1, 2.5)).toThrow(/whole/);
  });
});

describe('a trial in words', () => {
  const takeaways = (lines: readonly string[], over: Partial<Trial> = {}) =>
    summaryOf(trialOf(lines, over)).questions[0]!.takeaways;
  const times = (n: number, line: string, outcome: Outcome) =>
    Array.from({ length: n }, (_, i) => `${line} ${i} ${outcome}`);
  it('what is clear first, then what passed or failed every time, then how many pairings are open', () => {
    const said = takeaways([
      ...times(2, 'p a 20', 'fail'),
      ...times(8, 'p b 20', 'pass'),
      ...times(8, 'q b 20', 'fail'),
      ...[...times(1, 'q a 20', 'pass'), 'q a 20 9 fail'],
    ]);
    expect(said[0]).toMatch(/^Light with Vinyl: 8 of 8 passed/);
    expect(said[1]).toMatch(/^Heavy with Vinyl: 0 of 8 passed/);
    expect(said[2]).toMatch(/^Light with Paste: 0 of 2 passed/);
    expect(said[3]).toMatch(/^For 2 of 6 pairings there is not enough to tell/);
    expect(said[4]).toMatch(/^Paste passed .*Vinyl/);
    expect(said).toHaveLength(5);
  });
  it('four pairings at most, nothing of open ones where there are none, and a weight where three were tried', () => {
    const papers = [20, 40, 80, 160, 320].map((grammage, i) => ({ id: `p${i}`, name: `P${i}`, grammage }));
    const glues = [{ id: 'a', name: 'Paste' }];
    const lines = papers.flatMap(({ id }, i) => times(8, `${id} a 20`, i < 2 ? 'fail' : 'pass'));
    const said = takeaways(lines, { papers, glues });
    expect(said.filter((text) => /of 8 passed/.test(text))).toHaveLength(4);
    expect(said.join(' ')).not.toMatch(/not enough to tell whether they/);
    expect(said.at(-1)).toMatch(/^Paste: Heavier sheets pass more often; half of them pass at about/);
    expect(takeaways(lines, { papers: papers.slice(0, 2), glues }).join(' ')).not.toMatch(/Heavier/);
  });
  it('six comparisons at most, the clearest first, and a warning of luck when one is noticed among more than three', () => {
    const glues = 'abcd'.split('').map((id) => ({ id, name: id.toUpperCase() }));
    const lines = ['a', 'b', 'c'].flatMap((id) => times(6, `p ${id} 20`, 'pass')).concat(times(6, 'p d 20', 'fail'));
    const said = takeaways(lines, { glues });
    const compared = said.filter((text) => /^[A-D] passed/.test(text));
    expect(compared).toHaveLength(6);
    expect(compared.slice(0, 3).every((text) => /did better/.test(text))).toBe(true);
    expect(compared.slice(3).some((text) => /did better/.test(text))).toBe(false);
    expect(said.join(' ')).toMatch(/6 pairs were compared: among twenty/);
    const three = takeaways(lines, { glues: glues.slice(1) });
    expect(three.join(' ')).not.toMatch(/were compared/);
    const alike = takeaways(
      ['a', 'b', 'c', 'd'].flatMap((id) => times(2, `p ${id} 20`, 'pass')),
      { glues },
    );
    expect(alike.join(' ')).not.toMatch(/were compared/);
    const five = 'abcde'.split('').map((id) => ({ id, name: id.toUpperCase() }));
    const of5 = takeaways(
      five.flatMap(({ id }) => times(2, `p ${id} 20`, 'pass')),
      { glues: five },
    );
    expect(of5.filter((text) => /^[A-E] passed/.test(text))).toHaveLength(6);
  });
  it('nothing judged is said to be so', () => expect(takeaways(['p a 20 1 -'])).toEqual(['Nothing is judged yet.']));
  it('the facts: who, when, in what room, what was set aside; nothing of what is not known', () => {
    const swatches = laid('p a 20 1 pass', 'p a 60 1 fail').map((one, i) => ({
      ...one,
      judgedAt: `2026-03-0${2 - i}T10:00:00Z`,
      ...(i === 1 && { by: 'Ben', spoiled: true }),
    }));
    const { facts } = summaryOf(trialOf([], { swatches, holds: [20, 60], conditions: { celsius: 20, humidity: 50 } }));
    expect(facts.map((text) => text.replaceAll('\u00a0', ' '))).toEqual([
      '3 papers, 2 adhesives, 2 hold times, 3 of each: 2 swatches, 2 done, 1 of them set aside.',
      'Lifted after 20 s, 60 s, in an order drawn by lot (number 11).',
      'Judged by Ada, Ben, from 2026-03-01 to 2026-03-02.',
      'Room: 20 °C, 50 % relative humidity.',
    ]);
    const { by: _nobody, ...anonymous } = trialOf(['p a 20 1 -'], { conditions: {} });
    expect(summaryOf({ ...anonymous, by: '' } as Trial).facts).toHaveLength(2);
    const one = summaryOf(trialOf([], { by: '', swatches: swatches.slice(0, 1), conditions: {} })).facts;
    expect(one.at(-1)).toBe('Judged on 2026-03-02.');
  });
});
