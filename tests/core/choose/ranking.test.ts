/** The order, and what the bench can do about each failure: on made-up judgements and ones that a hand can follow. */
import fc from 'fast-check';
import { atOnce } from '../../../src/core/base/turns';
import type { Ranked } from '../../../src/core/choose/finding';
import { describe, expect, it } from 'vitest';
import { DEFAULT_JOB, settleJob, type Job } from '../../../src/core/choose/job';
import { TASKS, type Task } from '../../../src/core/records/task';
import { judge } from '../../../src/core/choose/judge';
import { inOrder, rank, rankInTurns, SAMPLES, weighedUp, weightsOf } from '../../../src/core/choose/ranking';
import type { Adhesive } from '../../../src/core/records/records';
import { weightMap } from '../../../src/core/choose/weight-map';
import { catalogue } from '../../../src/data/catalogue';
import { EVERY_ONE } from '../support/facts';
import { jobWith, soundJob } from '../support/jobs';

const one = (adhesiveId: string, chance: number, change: Partial<Ranked> = {}) =>
  ({ adhesiveId, chance, atHand: true, verdict: 'likely', kind: adhesiveId, ...change }) as Ranked;
const order = (all: readonly Ranked[]) => inOrder(all).map(({ adhesiveId }) => adhesiveId);

describe('the first places alone, as a lesson shows them', () => {
  const places = (job: Job, count: number) =>
    atOnce(rankInTurns(settleJob(job, catalogue).job, catalogue, SAMPLES, count));
  it('are those of the whole order to the last digit, for any job', () => {
    fc.assert(
      fc.property(soundJob, fc.constantFrom(...TASKS), (any, task) => {
        const job = { ...any, task };
        const whole = rank(job, catalogue);
        expect(places(job, 4)).toEqual(whole.slice(0, 4));
        expect(places(job, 1)).toEqual(whole.slice(0, 1));
      }),
      { numRuns: 60, seed: 16 },
    );
  });
  it('are all that are at hand, and then others, where fewer are at hand than places', () => {
    const job = { ...DEFAULT_JOB, atHand: ['pva', 'glue-stick'] };
    expect(places(job, 4).map(({ atHand }) => atHand)).toEqual([true, true, false, false]);
    expect(places(job, 4)).toEqual(rank(job, catalogue).slice(0, 4));
  });
});

describe('the order', () => {
  it('is by chance, and between equals by id, however they came', () => {
    const [a, b, c] = [one('a', 0.4), one('b', 0.4), one('c', 0.9)];
    for (const shuffled of [
      [a, b, c],
      [b, a, c],
      [c, b, a],
    ])
      expect(order(shuffled)).toEqual(['c', 'a', 'b']);
  });
  it('puts what is at hand first, and of what is ruled out nothing before the rest, at hand or not', () => {
    const out = { verdict: 'ruled-out' } as const;
    const away = { atHand: false };
    expect(
      order([
        one('away, out', 0, { ...away, ...out }),
        one('away', 0.9, away),
        one('out', 0.2, out),
        one('unlikely', 0.1),
      ]),
    ).toEqual(['unlikely', 'out', 'away', 'away, out']);
  });
  it('everything is at hand until something is said to be', () => {
    const some = (atHand: readonly string[]) =>
      rank({ ...DEFAULT_JOB, atHand }, catalogue, 4)
        .filter((found) => found.atHand)
        .map(({ adhesiveId }) => adhesiveId);
    expect(some([])).toHaveLength(catalogue.adhesives.size);
    expect(some(['pva'])).toEqual(['pva']);
  });
  it('ticked ingredients bring what can be mixed of them, and a ticked tool takes nothing away', () => {
    const some = (atHand: readonly string[]) =>
      rank({ ...DEFAULT_JOB, atHand }, catalogue, 4)
        .filter((found) => found.atHand)
        .map(({ adhesiveId }) => adhesiveId);
    const mixes = some(['pva', 'methylcellulose']);
    for (const id of ['pva', 'pva-thinned', 'pva-mc-1-1', 'pva-mc-3-1', 'methylcellulose-2-5'])
      expect(mixes).toContain(id);
    expect(mixes).not.toContain('pva-paste');
    expect(some(['wheat-starch'])).toContain('wheat-starch-paste-12');
    expect(some(['pva', 'roller'])).toEqual(['pva']);
    expect(some(['roller'])).toHaveLength(catalogue.adhesives.size);
  });
});

describe('one of each kind', () => {
  it('the second of a kind gives way to another kind that does nearly as well, and not to one that does far worse', () => {
    const [thick, thin] = [one('thick', 0.9, { kind: 'starch' }), one('thin', 0.88, { kind: 'starch' })];
    expect(order([thick, thin, one('vinyl', 0.75)])).toEqual(['thick', 'vinyl', 'thin']);
    expect(order([thick, thin, one('vinyl', 0.5)])).toEqual(['thick', 'thin', 'vinyl']);
  });
  it('the first place is the best chance', () => {
    for (const job of [DEFAULT_JOB, { ...DEFAULT_JOB, task: 'mend' as const }]) {
      const all = rank(job, catalogue);
      expect(all[0]!.chance).toBe(Math.max(...all.map(({ chance }) => chance)));
    }
  });
});

describe('what counts', () => {
  const sure = EVERY_ONE;
  it('nothing is taken off where all holds; a joint that cannot hold is lost', () => {
    for (const form of ['wet', 'dry'] as const) {
      const weights = weightsOf(DEFAULT_JOB, form);
      expect(weighedUp(sure, weights)).toBe(1);
      expect(weighedUp({ ...sure, bond: 0 }, weights)).toBe(0);
      expect(weighedUp({ ...sure, flat: 0 }, weights)).toBe(0);
      expect(weighedUp({ ...sure, bond: 0.5, flat: 0.5 }, weights)).toBe(0.25);
    }
  });
  it('a wet sheet that does not come up clean costs more than a dry one, and nothing where nobody lifts it', () => {
    const left = (task: Task, form: 'wet' | 'dry') =>
      weighedUp({ ...sure, lift: 0 }, weightsOf({ ...DEFAULT_JOB, task }, form));
    expect(left('cover', 'wet')).toBeGreaterThan(0);
    expect(left('cover', 'dry')).toBeGreaterThan(left('cover', 'wet'));
    for (const task of ['mend', 'hinge', 'paste-down', 'tip-in'] as const) expect(left(task, 'wet')).toBe(1);
  });
  it('that nothing comes through counts in full where it is asked', () => {
    const asked = weightsOf({ ...DEFAULT_JOB, task: 'hinge', needs: ['no-strike-through'] }, 'wet');
    expect(asked.strike).toBe(1);
    expect(weightsOf({ ...DEFAULT_JOB, task: 'hinge' }, 'wet').strike).toBeLessThan(1);
  });
});

describe('the method', () => {
  const best = (change: Partial<Job>) => rank({ ...DEFAULT_JOB, ...change }, catalogue);
  it('a thin tissue is mended with paste laid out on a support (Cockerell 1901, ch. XVII; Indiana repair manual)', () => {
    const [first] = best({
      task: 'mend',
      paper: { family: 'kozo-tissue' },
      substrate: 'text-block',
      widthMm: 10,
      heightMm: 120,
    });
    expect(first!.kind).toBe('starch');
    expect(first!.method.face).toBe('sheet-on-support');
  });
  it('the walls of a box are joined with PVA (Indiana repair manual)', () => {
    const [first] = best({ task: 'join-boards', paper: { family: 'grey-board-as-sheet' }, widthMm: 5, heightMm: 300 });
    expect(first!.kind).toBe('vinyl');
    expect(first!.method.press).toBe('clamp');
  });
  it('one-sided mending tissue is for mends alone', () => {
    for (const task of TASKS) {
      const tissue = best({ task }).find(({ adhesiveId }) => adhesiveId === 'tissue-heat-set')!;
      expect(tissue.verdict === 'ruled-out', task).toBe(task !== 'mend');
    }
  });
});

it('one adhesive by itself has the chances it has among all', () => {
  const pva = catalogue.adhesives.get('pva')!;
  if (pva.form !== 'wet') throw new Error('PVA is not wet');
  const alone = judge(pva, DEFAULT_JOB, catalogue);
  const among = rank(DEFAULT_JOB, catalogue).find(({ adhesiveId }) => adhesiveId === 'pva')!;
  expect(among.method).toMatchObject({ face: 'sheet', tool: DEFAULT_JOB.tool, minutes: 0 });
  expect(alone.chances).toEqual(among.chances);
  expect(alone.slipSeconds).toEqual(among.slipSeconds);
});

describe('the map', () => {
  const regions = (hold: number) => {
    const pva = catalogue.adhesives.get('pva')!;
    const weak: Adhesive = { ...pva, hold: { porous: hold, leather: hold, nonPorous: hold } };
    const { grammages, regions } = weightMap(
      'pva',
      jobWith('wove-text', 90),
      { ...catalogue, adhesives: new Map([['pva', weak]]) },
      8,
      4,
    );
    return { grammages, regions };
  };
  it('of one that holds on nothing is a weak bond wherever the sheet spreads and lifts', () => {
    const [sound, weak] = [regions(100), regions(0)];
    const held = sound.regions.flat().filter((region) => region === 'holds');
    expect(held.length).toBeGreaterThan(0);
    expect(sound.regions.flat()).not.toContain('weak-bond');
    expect(weak.regions).toEqual(
      sound.regions.map((row) => row.map((region) => (region === 'holds' ? 'weak-bond' : region))),
    );
  });
});
