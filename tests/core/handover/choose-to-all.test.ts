/** From the chooser's answer to the other rooms: each link, read with that room's own fields, says what the answer said. */
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { settleJob, type Job } from '../../../src/core/choose/job';
import { rank } from '../../../src/core/choose/ranking';
import { DEFAULT_JOB } from '../../../src/core/choose/job';
import { CLASS_FIELDS } from '../../../src/core/class/plan';
import { coverAnswer } from '../../../src/core/cover/answer';
import { COVER_FIELDS, type CoverPlan } from '../../../src/core/cover/plan';
import { FLAT_FIELDS } from '../../../src/core/flat/plan';
import { millilitresInHand, nextSteps, type NextRoom } from '../../../src/core/handover/choose-to-all';
import { makingsOf } from '../../../src/core/handover/choose-to-mix';
import type { FieldTable } from '../../../src/core/link/fields';
import { decodePlan } from '../../../src/core/link/read-plan-link';
import { MIX_FIELDS } from '../../../src/core/mix/plan';
import { planTextOf } from '../../../src/core/trial/plan-link';
import type { WetAdhesive } from '../../../src/core/records/records';
import { catalogue } from '../../../src/data/catalogue';
import { jobWith, soundJob } from '../support/jobs';

const TABLES: Readonly<Record<Exclude<NextRoom, 'trial'>, FieldTable>> = {
  mix: MIX_FIELDS,
  cover: COVER_FIELDS,
  flat: FLAT_FIELDS,
  class: CLASS_FIELDS,
};
const NAMES = {
  paper: (id: string) => catalogue.papers.get(id)?.name ?? '',
  adhesive: (id: string) => catalogue.adhesives.get(id)?.name ?? '',
  substrate: (id: string) => catalogue.substrates.get(id)?.name ?? '',
  tool: (id: string) => catalogue.techniques.get(id)?.name ?? '',
};

/** The steps from the answer to a job whose maker has only this. */
function from(job: Job) {
  const steps = nextSteps(rank(job, catalogue, 8), job, catalogue);
  return Object.fromEntries(steps.map(({ to, tail }) => [to, tail])) as Partial<Record<NextRoom, string>>;
}
const read = (room: keyof typeof TABLES, tail: string) => {
  const { plan, dropped } = decodePlan(tail, TABLES[room]);
  expect(dropped).toEqual([]);
  return plan as Readonly<Record<string, unknown>>;
};

describe('lokta of 55 g/m² on binder’s board, with a 1:1 mix at hand', () => {
  const job = jobWith('lokta-light', 55, { atHand: ['pva-mc-1-1'], celsius: 22, humidity: 45, lined: true });
  const tails = from(job);
  test('the mixer is asked for those parts, and for what goes on this piece', () => {
    const plan = read('mix', tails.mix!);
    expect(plan).toMatchObject({ kind: 'stretch', base: 'pva', extender: 'methylcellulose-1-5', aim: 'parts' });
    expect(plan).toMatchObject({ baseParts: 1, extenderParts: 1, paper: 'lokta-light~55gsm', celsius: 22 });
    // 0.0315 m² at 110 g/m² is some four millilitres with what stays in the pot: the next round figure to have in hand
    expect(plan).toMatchObject({ need: 5, loss: 0 });
  });
  test('how much is asked for one piece of its size, with its tool', () => {
    const plan = read('cover', tails.cover!);
    expect(plan).toMatchObject({ thing: 'own', adhesive: 'pva-mc-1-1', paper: 'lokta-light~55gsm' });
    expect(plan['pieces']).toEqual([{ widthMm: 210, heightMm: 150, count: 1, turnInMm: 0 }]);
  });
  test('whether it lies flat is asked of its board, lined, in its room', () => {
    expect(read('flat', tails.flat!)).toMatchObject({
      paper: 'lokta-light~55gsm',
      width: 210,
      height: 150,
      board: 'binders-board',
      adhesive: 'pva-mc-1-1',
      lining: 'paper',
      celsius: 22,
      humidity: 45,
    });
  });
  test('a class gets sheet, ground, glue, tool and room', () => {
    expect(read('class', tails.class!)).toMatchObject({
      paper: 'lokta-light~55gsm',
      on: 'binders-board',
      adhesive: 'pva-mc-1-1',
      celsius: 22,
      humidity: 45,
    });
  });
  test('a swatch is planned with the sheet, the time that is needed, and nothing that is not at hand', () => {
    const plan = planTextOf(tails.trial!, NAMES)!;
    expect(plan.papers).toMatchObject([{ family: 'lokta-light', grammage: '55', name: NAMES.paper('lokta-light') }]);
    expect(plan.glues.map(({ record }) => record)).toEqual(['pva-mc-1-1']);
    expect(plan).toMatchObject({ substrate: 'binders-board', holds: '16', celsius: '22', humidity: '45' });
    expect(plan.tool).toBe('brush-full');
    expect(planTextOf(from({ ...DEFAULT_JOB, tool: 'roller' }).trial!, NAMES)!.tool).toBe('roller');
  });
});

describe('what makes no sense is left out', () => {
  it('a film is neither mixed nor measured out, and no class is planned on it', () => {
    expect(Object.keys(from({ ...DEFAULT_JOB, atHand: ['film-double-sided'] }))).toEqual(['flat', 'trial']);
  });
  it('what comes ready is not mixed', () => {
    expect(from({ ...DEFAULT_JOB, atHand: ['pva'] }).mix).toBeUndefined();
  });
  it('cloth is not asked to lie flat', () => {
    expect(from({ ...DEFAULT_JOB, substrate: 'fabric', atHand: ['pva'] }).flat).toBeUndefined();
  });
});

test('whatever the job, every link can be read whole', () => {
  fc.assert(
    fc.property(soundJob, (job) => {
      for (const { to, tail } of nextSteps(rank(job, catalogue, 2), settleJob(job, catalogue).job, catalogue)) {
        if (to === 'trial') expect(planTextOf(tail, NAMES)).toBeDefined();
        else read(to, tail);
      }
    }),
    { numRuns: 40 },
  );
});

test('what is mixed is what the coverage calculator, opened from the same answer, says to have in hand', () => {
  for (const [wide, high] of [
    [210, 150],
    [35, 60],
    [600, 900],
  ] as const)
    for (const id of ['pva', 'pva-mc-1-1', 'wheat-starch-paste-16']) {
      const job = { ...jobWith('lokta-light', 55, { atHand: [id] }), widthMm: wide, heightMm: high };
      const tails = from(job);
      if (tails.cover === undefined) continue;
      const told = coverAnswer(read('cover', tails.cover) as unknown as CoverPlan, catalogue);
      const { coat } = catalogue.techniques.get((read('cover', tails.cover) as unknown as CoverPlan).tool)!;
      const have = millilitresInHand(job, coat, catalogue.adhesives.get(id) as WetAdhesive, catalogue);
      expect(told).toMatchObject({ ok: true, value: { buyMillilitres: have } });
      if (tails.mix !== undefined) expect(read('mix', tails.mix)).toMatchObject({ need: have, loss: 0 });
    }
});

describe('what has to be made', () => {
  const makings = (...parts: [string, number][]) =>
    makingsOf(
      parts.map(([of, count]) => ({ of, parts: count })),
      200,
      DEFAULT_JOB,
      catalogue,
    );
  it('of PVA and jelly: one stretched mix, with the whole amount', () => {
    const [made, ...none] = makings(['pva', 2], ['methylcellulose-2-5', 3]);
    expect(none).toEqual([]);
    expect(made!.does).toBe('stretch');
    expect(read('mix', made!.tail)).toMatchObject({ baseParts: 2, extenderParts: 3, need: 200 });
  });
  it('of paste and jelly: each by itself, with its share', () => {
    const [paste, jelly] = makings(['wheat-starch-paste-16', 1], ['methylcellulose-2-5', 3]);
    expect(paste).toMatchObject({ does: 'cook', of: 'wheat-starch-paste-16' });
    expect(read('mix', paste!.tail)).toMatchObject({
      kind: 'paste',
      starch: 'wheat-starch',
      waterParts: 5.25,
      need: 50,
    });
    expect(jelly).toMatchObject({ does: 'stir', of: 'methylcellulose-2-5' });
    expect(read('mix', jelly!.tail)).toMatchObject({ kind: 'powder', percent: 2.5, basis: 'w/w', need: 150 });
  });
  it('of a bottle: nothing', () => {
    expect(makings(['pva', 1])).toEqual([]);
    expect(makings(['glue-stick', 1])).toEqual([]);
  });
});
