/** What a class buys: whole packs, sheets and tools. */
import { describe, expect, it } from 'vitest';
import { classAnswer } from '../../../src/core/class/answer';
import { DEFAULT_CLASS, type ClassPlan } from '../../../src/core/class/plan';
import { tools } from '../../../src/core/class/shopping';
import { catalogue } from '../../../src/data/catalogue';
const plan = (change: Partial<ClassPlan> = {}): ClassPlan => ({ ...DEFAULT_CLASS, ...change });

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
    expect(mixed.at(-1)![2]).toMatch(/^[\d.]+\sg of it goes in, or \d+\sml$/);
    expect(mixed.at(-2)![2]).toMatch(/^[\d.]+\sg of it goes in$/);
    for (const adhesive of ['wheat-starch-paste-thick', 'wheat-starch-paste-thin', 'pva-paste'])
      expect(
        bought({ adhesive, people: 2 })
          .map(([what]) => what)
          .join('; '),
        adhesive,
      ).not.toMatch(/water|paste/);
  });
  it.each(['pva-mc-1-1', 'wheat-starch-paste-thick', 'gelatine', 'pva-paste'])(
    'of %s a round weight of each thing, which is enough for what goes in, and less than twice it past 10 g',
    (adhesive) => {
      const grams = (text = '') => Number(/^([\d.]+)\sg$/.exec(text.replace(/\u202f/g, ''))?.[1]);
      const { materials } = answerOf({ adhesive, people: 9 });
      const weighed = materials.filter(({ buy }) => buy !== undefined);
      expect(weighed.length).toBeGreaterThan(0);
      for (const { buy, amount, note } of weighed) {
        expect(grams(buy)).toBeGreaterThanOrEqual(grams(amount));
        expect(grams(buy)).toBeLessThanOrEqual(Math.max(10, 2 * grams(amount)));
        expect(buy).toMatch(/^(?:1|1\.?5|2|2\.?5|3|4|5|6|8)0*\s?0*\sg$/);
        expect(note).toContain(amount);
      }
    },
  );
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
