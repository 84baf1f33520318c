/** What a class buys, mixes and does when, on pieces and sheets made up for it. Numbers a head are common practice, no source. */
import { askedOf } from '../../../src/core/link/fields';
import { describe, expect, it } from 'vitest';
import type { CutAnswer } from '../../../src/core/cut/answer';
import { NO_TURN, piece, type MakePiece } from '../../../src/core/make/piece';
import type { WetAdhesive } from '../../../src/core/records/records';
import { classAnswer } from '../../../src/core/class/answer';
import { momentText, startOf } from '../../../src/core/class/clock';
import { besideSheet } from '../../../src/core/class/cutting';
import { chooserJob, classCover, slipsFor } from '../../../src/core/class/glue';
import { CLASS_FIELDS, DEFAULT_CLASS, kitsOf, projectOf, type ClassPlan } from '../../../src/core/class/plan';
import { cuttingMinutes, scheduleFor } from '../../../src/core/class/schedule';
import { tools } from '../../../src/core/class/shopping';
import { catalogue } from '../../../src/data/catalogue';

const plan = (change: Partial<ClassPlan> = {}): ClassPlan => ({ ...DEFAULT_CLASS, ...change });
const wet = (id: string) => catalogue.adhesives.get(id) as WetAdhesive;

function answerOf(change: Partial<ClassPlan>) {
  const found = classAnswer(plan(change), catalogue);
  if (!found.ok) throw new Error(found.errors[0]?.message);
  return found.value;
}

describe('what to buy', () => {
  const bought = (change: Partial<ClassPlan>) =>
    answerOf(change).materials.map(({ what, amount, note }) => [what, amount, note ?? '']);
  it('sheets by what they are for, with their size and grain, then the glue as it comes', () => {
    const all = bought({
      adhesive: 'pva',
      stock: 'cloth',
      project: 'portfolio',
      people: 1,
      spare: 0,
      boardGrain: 'none',
    });
    expect(all.map(([what]) => what)).toEqual([
      "binder's board (grey board), 2.5\u00a0mm thick",
      'covering: Marbled paper',
      'paper for the inside: endpapers, strips, linings',
      'PVA',
    ]);
    expect(all[0]!.slice(1)).toEqual(['1 sheet', '700 × 1000\u00a0mm, no grain to mind']);
    expect(all.at(-1)![1]).toMatch(/^\d+\u00a0ml$/);
    expect(all.at(-1)![2]).toBe('used as it comes');
  });
  it('bookcloth, where the covering is paper and the spine is not; more than one sheet is sheets', () => {
    const all = bought({ adhesive: 'pva', cover: 'quarter', people: 30 });
    expect(all.map(([what]) => what)).toContain('bookcloth');
    expect(all.map(([what]) => what)).toContain('covering: Marbled paper');
    expect(all[0]![1]).toMatch(/^\d+ sheets$/);
  });
  it('of a mix its powder and its glue, with the volume where one may pour; never the water, nor what is made before', () => {
    const mixed = bought({ people: 2 });
    expect(mixed.slice(3).map(([what]) => what)).toEqual(['methylcellulose powder, 4000 mPa·s grade', 'PVA']);
    expect(mixed.at(-1)![2]).toMatch(/^or \d+\sml$/);
    expect(mixed.at(-2)![2]).toBe('');
    for (const adhesive of ['wheat-starch-paste-thick', 'wheat-starch-paste-thin', 'pva-paste'])
      expect(
        bought({ adhesive, people: 2 })
          .map(([what]) => what)
          .join('; '),
        adhesive,
      ).not.toMatch(/water|paste/);
  });
  it('tools a head: 7 people, of whom pairs share pots and knives, and two spare kits', () => {
    const found = Object.fromEntries(tools(plan({ people: 7, spare: 2 })).map((item) => [item.what, item]));
    const amounts = Object.fromEntries(Object.values(found).map(({ what, amount }) => [what, amount]));
    expect(amounts).toEqual({
      'glue brushes': '8',
      'pots with lids': '4',
      'bone folders': '7',
      'knives, and as many steel rules and mats': '4',
      'press boards with weights': '7',
      'waste sheets': '54',
      'blotters or clean waste sheets for the press': '36',
      'damp cloths': '8',
    });
    expect(found['glue brushes']!.note).toBe('one for you');
    expect(found['bone folders']).not.toHaveProperty('note');
  });
});

describe('what is mixed', () => {
  it('the jelly first, with a little over for what sticks: as much as its share of the batch', () => {
    const { batches } = answerOf({});
    expect(batches.map(({ plan: { kind } }) => kind)).toEqual(['powder', 'stretch']);
    // one to one by mass, so half of what is needed and a share lost: need ÷ (1 − 15 %) ÷ 2
    const [jelly, mixed] = batches.map((one) => one.plan);
    expect(jelly!.need / (mixed!.need / 0.85 / 2)).toBeCloseTo(1, 1);
    expect(jelly!.loss).toBe(5);
    // three of glue to one of jelly: a quarter
    const [less, more] = answerOf({ adhesive: 'pva-mc-3-1' }).batches.map((one) => one.plan);
    expect(less!.need / (more!.need / 0.85 / 4)).toBeCloseTo(1, 1);
  });
  it('one batch of what is made of powder alone, none of what comes in a pot', () => {
    expect(answerOf({ adhesive: 'methylcellulose-2-5' }).batches).toHaveLength(1);
    expect(answerOf({ adhesive: 'pva' }).batches).toEqual([]);
  });
  it('for the pieces of the project, as many times as there are kits', () => {
    const cover = classCover(plan({ people: 5, spare: 2 }), [piece('cover', 'paper', 100, 200)]);
    expect(cover).toMatchObject({ thing: 'own', makers: 7, unit: 'mm', adhesive: 'pva-mc-1-1' });
    expect(cover.pieces[0]).toMatchObject({ widthMm: 100 });
    expect(kitsOf(plan({ people: 5, spare: 2 }))).toBe(7);
  });
});

describe('which piece the chooser is asked about', () => {
  const turned = { top: 10, right: 0, bottom: 0, left: 0 };
  const asked = (...pieces: MakePiece[]) => {
    const { widthMm, heightMm, atHand } = chooserJob(plan(), pieces);
    expect(atHand).toEqual(['pva-mc-1-1']);
    return [widthMm, heightMm];
  };
  const board = piece('board', 'board', 900, 900, { turnIn: turned });
  const dry = piece('dry', 'paper', 800, 800, { gluedFaces: 0, turnIn: turned });
  const lining = piece('lining', 'lining', 300, 300);
  it('the largest that turns in, as it is cut, wherever it turns in', () => {
    const small = piece('a', 'paper', 100, 100, { turnIn: turned });
    const large = piece('b', 'paper', 200, 90, { turnIn: turned });
    expect(asked(board, dry, lining, small, large)).toEqual([200, 100]);
    expect(asked(board, dry, lining, large, small)).toEqual([200, 100]);
    for (const side of ['top', 'right', 'bottom', 'left'] as const)
      expect(asked(lining, piece('c', 'paper', 50, 50, { turnIn: { ...NO_TURN, [side]: 5 } }))).not.toEqual([300, 300]);
    // of long and narrow and square ones the larger by area, not by side
    expect(asked(piece('d', 'paper', 400, 10, { turnIn: turned }), small)).toEqual([100, 110]);
  });
  it('the largest that is glued, where none turns in', () => {
    expect(asked(board, dry, piece('a', 'paper', 100, 100), lining)).toEqual([300, 300]);
  });
  it('in whole millimetres, as far as the chooser goes', () => {
    expect(asked(piece('a', 'paper', 100.4, 4000))).toEqual([100, 3000]);
    expect(asked(piece('a', 'paper', 2, 99.6))).toEqual([5, 100]);
  });
  it('each piece that is laid as a whole is timed, the one that takes longest first', () => {
    const part = piece('tab', 'paper', 500, 500, { gluedPart: { widthMm: 10, heightMm: 10 } });
    const slips = slipsFor(plan(), [board, dry, part, piece('a', 'paper', 100, 100), lining], wet('pva'), catalogue);
    expect(slips.map(({ name }) => name)).toEqual(['lining', 'a']);
    // 56 s for a square metre, and less by the power 0.37 of the area, common practice
    expect(slips.map(({ needed }) => needed)).toEqual([23, 10]);
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
  const day = { batches: [], adhesive: wet('pva'), length: 180, startsAt: 14 * 60, pressed: 'the leaves' };
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
      [160 / 60, 'Into'],
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
  it('in a short class too, the last gluing comes before the press, and both before the end', () => {
    for (let length = 30; length <= 720; length += 15) {
      const at = Object.fromEntries(hours({ length }).map(([hour, what]) => [what, Math.round(Number(hour) * 60)]));
      expect(at.Last!).toBeGreaterThan(0);
      expect(at.Last!).toBeLessThan(at.Into!);
      expect(at.Into!).toBeLessThan(length);
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

describe('the plan of a class', () => {
  it('an accordion’s strips are as long as the inside sheet is across its grain, unless a length is given', () => {
    const own = { project: 'accordion', liningWide: 700, liningHigh: 1000 } as const;
    expect(projectOf(plan({ ...own, liningGrain: 'long' })).sheet).toBe(700);
    expect(projectOf(plan({ ...own, liningGrain: 'short' })).sheet).toBe(1000);
    expect(projectOf(plan({ ...own, liningWide: 1000, liningHigh: 700, liningGrain: 'short' })).sheet).toBe(1000);
    expect(projectOf(plan({ ...own, sheet: 333 })).sheet).toBe(333);
    expect(projectOf(plan({ project: 'notebook' })).sheet).toBeUndefined();
  });
  it('asks the project’s own fields, the class’s, and three for each stock', () => {
    const asked = askedOf(plan(), CLASS_FIELDS);
    for (const field of ['project', 'square', 'people', 'day', 'humidity', 'boardGrain', 'liningHigh'] as const)
      expect(asked).toContain(field);
    expect(asked).not.toContain('tie');
    expect(new Set(asked).size).toBe(asked.length);
  });
});

describe('what a sheet does not hold', () => {
  const pieces = Array.from({ length: 12 }, (_, i) => piece(`p${i}`, i === 11 ? 'cloth' : 'board', 9, 9));
  const said = (...fields: string[]) =>
    besideSheet(
      fields.map((field) => ({ field, code: 'contradiction', message: field })),
      pieces,
    ).map(({ field, message }) => [field, message]);
  it('is said beside the sheet of its stock, once for each field', () => {
    expect(said('piece-0-wide', 'piece-11-high', 'piece-11-grain')).toEqual([
      ['boardWide', 'piece-0-wide'],
      ['clothHigh', 'piece-11-high'],
      ['clothGrain', 'piece-11-grain'],
    ]);
    expect(said('piece-0-wide', 'piece-1-wide')).toEqual([['boardWide', 'piece-0-wide']]);
  });
  it('what is no piece stays where it was, but too many of all are too many people', () => {
    expect(said('kits', 'stock')).toEqual([
      ['people', 'kits'],
      ['stock', 'stock'],
    ]);
    expect(said('pieces')).toEqual([['people', 'pieces']]);
    expect(said('a-piece-0-wide', 'piece-0-wide-')).toEqual([
      ['a-piece-0-wide', 'a-piece-0-wide'],
      ['piece-0-wide-', 'piece-0-wide-'],
    ]);
  });
});

describe('days and hours as they are typed', () => {
  it.each([
    [' 2026-12-04 ', ' 14:00 ', 14 * 60],
    ['', '0:00', 0],
    ['', '23:59', 23 * 60 + 59],
    ['  ', '9:05', 9 * 60 + 5],
    ['2000-01-01', '23:00', 23 * 60],
  ])('%j at %j', (day, time, minute) => {
    const found = startOf(day, time);
    expect(found.ok && found.value.minute).toBe(minute);
    if (found.ok) expect(found.value.dayNumber === undefined).toBe(day.trim() === '');
  });
  it.each([
    ['', '24:00'],
    ['', '12:60'],
    ['', 'at 12:00'],
    ['', '12:00 h'],
    ['', ''],
    ['1999-12-31', '12:00'],
    ['on 2026-12-04', '12:00'],
    ['2026-12-045', '12:00'],
    ['2026-12-32', '12:00'],
    ['2026-00-10', '12:00'],
    ['2026-06-31', '12:00'],
  ])('%j at %j is refused', (day, time) => expect(startOf(day, time).ok).toBe(false));
  it('days after the next are counted, with their hour', () => {
    expect(momentText({ minute: 0 }, 3 * 1440 + 90)).toBe('3 days later, 01:30');
    expect(momentText({ minute: 0 }, -1)).toBe('the day before, 23:59');
    expect(momentText({ minute: 0 }, -1441)).toBe('2 days before');
  });
});
