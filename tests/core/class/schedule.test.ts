/** When each thing is done in a class. */
import { describe, expect, it } from 'vitest';
import { classAnswer } from '../../../src/core/class/answer';
import { DEFAULT_CLASS, type ClassPlan } from '../../../src/core/class/plan';
import { cuttingMinutes, scheduleFor } from '../../../src/core/class/schedule';
import { PROJECTS } from '../../../src/core/make/projects';
import { catalogue } from '../../../src/data/catalogue';
import type { CutAnswer } from '../../../src/core/cut/answer';
import type { WetAdhesive } from '../../../src/core/records/records';
const plan = (change: Partial<ClassPlan> = {}): ClassPlan => ({ ...DEFAULT_CLASS, ...change });

const wet = (id: string) => catalogue.adhesives.get(id) as WetAdhesive;

function answerOf(change: Partial<ClassPlan>) {
  const found = classAnswer(plan(change), catalogue);
  if (!found.ok) throw new Error(found.errors[0]?.message);
  return found.value;
}

describe('a class', () => {
  function answered(change: Partial<ClassPlan>) {
    const found = classAnswer({ ...DEFAULT_CLASS, ...change }, catalogue);
    if (!found.ok) throw new Error(found.errors.map(({ field, message }) => `${field}: ${message}`).join('\n'));
    return found.value;
  }
  it('reckons a minute and a half for a cut in board and less in paper, and spreads them over afternoons', () => {
    const sheet = (cuts: number, times: number) => ({ steps: Array(cuts).fill({}), plan: { times } });
    const cut = (times: number) =>
      ({
        stocks: [
          { stock: { name: 'board' }, sheets: [sheet(4, times), sheet(2, 1)] },
          { stock: { name: 'paper' }, sheets: [sheet(5, 2)] },
        ],
      }) as never;
    // (4 × 10 + 2) × 1.5 + 5 × 2 × 0.6 (the module's own minutes)
    expect(cuttingMinutes(cut(10))).toBeCloseTo(69, 9);
    const adhesive = catalogue.adhesives.get('pva') as never;
    const day = { batches: [], adhesive, length: 180, startsAt: 14 * 60, steps: ['Press it.'] };
    const said = (times: number) => scheduleFor({ ...day, cut: cut(times) }).map(({ what }) => what);
    const nineOn = (times: number) =>
      scheduleFor({ ...day, cut: cut(times) }).find(({ what }) => /^Mark/.test(what))!.at;
    expect(said(10).join()).not.toContain('spread over');
    // an afternoon is four hours: 600 minutes are three of them, and begin at nine three days before
    expect(said(98).join()).toContain('spread over 3 days');
    expect(nineOn(98)).toBe(-3 * 24 * 60 + 9 * 60 - 14 * 60);
    expect(nineOn(10)).toBe(-24 * 60 + 9 * 60 - 14 * 60);
    expect(said(10).at(-1)).toMatch(/^Dry enough to open/);
  });
  it('names the covering after its stock', () => {
    expect(JSON.stringify(answered({ stock: 'cloth' }))).not.toContain('bookcloth');
    expect(JSON.stringify(answered({ stock: 'paper', cover: 'quarter' }))).toContain('bookcloth');
  });
  it('says beside its field what cannot be', () => {
    const found = classAnswer({ ...DEFAULT_CLASS, joint: 1 }, catalogue);
    expect(found.ok ? [] : found.errors.map(({ field }) => field)).toEqual(['joint']);
    const unknown = classAnswer({ ...DEFAULT_CLASS, adhesive: 'no-such' }, catalogue);
    expect(unknown.ok ? [] : unknown.errors.map(({ field }) => field)).toContain('adhesive');
  });
});

describe('what is done when', () => {
  const cutOf = (boardSteps: number, paperSteps: number, times = 1) =>
    ({
      stocks: [
        { stock: { name: 'board' }, sheets: [{ steps: Array(boardSteps), plan: { times } }] },
        { stock: { name: 'paper' }, sheets: [{ steps: Array(paperSteps), plan: { times: 1 } }] },
      ],
    }) as unknown as CutAnswer;
  const day = { batches: [], adhesive: wet('pva'), length: 180, startsAt: 14 * 60, steps: ['Press it.'] };
  const hours = (change: Partial<Parameters<typeof scheduleFor>[0]> = {}) =>
    scheduleFor({ cut: cutOf(10, 10), ...day, ...change }).map(({ at, what }) => [at / 60, what.split(' ')[0]]);

  it('a cut takes 1.5 minutes in board and 0.6 in paper, each as often as its sheet is cut', () => {
    expect(cuttingMinutes(cutOf(10, 10))).toBeCloseTo(15 + 6, 9);
    expect(cuttingMinutes(cutOf(10, 0, 3))).toBeCloseTo(45, 9);
  });
  it('a class of three hours from two in the afternoon: mornings are at nine', () => {
    expect(hours()).toEqual([
      [-7 * 24 - 5, 'Buy'],
      [-3 * 24 - 5, 'Make'],
      [-24 - 5, 'Mark'],
      [-0.75, 'Lay'],
      [0, 'The'],
      [140 / 60, 'Last'],
      [160 / 60, 'Press'],
      [3, 'The'],
      [19, 'Dry'],
    ]);
  });
  it('as many days for the cutting as afternoons of four hours, and the trial two before', () => {
    const when = (board: number) =>
      Object.fromEntries(hours({ cut: cutOf(board, 0) }).map(([at, what]) => [what, at] as const));
    expect(when(160)).toMatchObject({ Mark: -24 - 5, Make: -3 * 24 - 5 });
    expect(when(161)).toMatchObject({ Mark: -2 * 24 - 5, Make: -4 * 24 - 5 });
    const { what } = scheduleFor({ cut: cutOf(161, 0), ...day }).find((task) => task.what.startsWith('Mark'))!;
    expect(what).toMatch(/, spread over 2 days/);
    expect(
      scheduleFor({ cut: cutOf(160, 0), ...day })
        .map((task) => task.what)
        .join(),
    ).not.toMatch(/spread over/);
  });
  it('every project goes under weight once, last of all that is made, and only then are brushes washed', () => {
    for (const project of Object.keys(PROJECTS) as ClassPlan['project'][]) {
      const { schedule, project: made } = answerOf({ project });
      const inClass = schedule.map(({ what }) => what);
      expect(
        inClass.filter((what) => /weight|into the press/i.test(what)),
        project,
      ).toEqual([`${made.steps.at(-1)!} Wash the brushes.`]);
    }
  });
  it('in a short class too, the last gluing comes before the press, and both before the end', () => {
    for (let length = 30; length <= 720; length += 15) {
      const at = Object.fromEntries(hours({ length }).map(([hour, what]) => [what, Math.round(Number(hour) * 60)]));
      expect(at.Last!).toBeGreaterThan(0);
      expect(at.Last!).toBeLessThan(at.Press!);
      expect(at.Press!).toBeLessThan(length);
    }
  });
  it('jelly the afternoon before, paste on the day, a mix an hour before', () => {
    const of = (adhesive: string) => {
      const { batches } = answerOf({ adhesive });
      const tasks = scheduleFor({ cut: cutOf(1, 1), ...day, batches, adhesive: wet(adhesive) });
      return tasks
        .filter(({ what }) => /jelly|gelatine|starch|paste|Stir|heat/.test(what))
        .map(({ at, what }) => [at / 60, what]);
    };
    expect(of('pva-mc-1-1')).toEqual([
      [
        -24,
        expect.stringMatching(/^Make the jelly: [\d.]+\sg of methylcellulose powder.*, \d+\sml of water\. It stands/),
      ],
      [-1, expect.stringMatching(/^Stir the mix together: [\d.]+\sg of PVA, /)],
    ]);
    expect(of('wheat-starch-paste-thick')).toEqual([
      [-5, expect.stringMatching(/^Soak the starch, then cook the paste: /)],
      [-1.5, expect.stringMatching(/^Sieve the cold paste/)],
    ]);
    // it is soaked from the day before, and melted in time: hot glue that comes dry is soaked and warmed on the day
    expect(of('gelatine')).toEqual([
      [-24, expect.stringMatching(/^Make the gelatine: /)],
      [-2, 'Melt the warm gelatine, and keep it at its heat.'],
    ]);
    expect(of('animal-glue-hot')).toEqual([[-2, 'Soak and warm the hot animal glue, and keep it at its heat.']]);
    expect(of('methylcellulose-2-5')).toEqual([[-24, expect.stringMatching(/^Make the jelly: /)]]);
    expect(of('pva')).toEqual([]);
  });
});
