/** What is offered against a bow, and that it helps. */
import { describe, expect, it } from 'vitest';
import { waterOf } from '../../../src/core/flat/making';
import { DEFAULT_FLAT, type FlatPlan } from '../../../src/core/flat/plan';
import { remediesFor } from '../../../src/core/flat/remedies';
import { catalogue } from '../../../src/data/catalogue';
const plan = (change: Partial<FlatPlan> = {}): FlatPlan => ({ ...DEFAULT_FLAT, ...change });

describe('remedies', () => {
  const offered = (change: Partial<FlatPlan> = {}) => remediesFor(plan(change), catalogue);
  const names = (change: Partial<FlatPlan> = {}) => offered(change).map(({ what }) => what.replaceAll('\u00a0', ' '));
  const remedy = (start: string, change: Partial<FlatPlan> = {}) =>
    offered(change).find(({ what }) => what.startsWith(start));

  const usual = () => offered({ press: 23 });
  it('each changes one thing of the plan', () => {
    const changed = (start: string) => {
      const found = usual().find(({ what }) => what.replaceAll('\u00a0', ' ').startsWith(start))!.plan;
      return Object.fromEntries(
        Object.entries(found).filter(([key, value]) => plan({ press: 23 })[key as 'press'] !== value),
      );
    };
    expect(changed('The cover paper’s grain')).toEqual({ paperGrain: 'width' });
    expect(changed('The board’s grain')).toEqual({ boardGrain: 'width' });
    expect(changed('Board of 2.5 mm')).toEqual({ boardThick: 2.5 });
    expect(changed('Left under weight for 24 h')).toEqual({ press: 24 });
    expect(changed('Made and dried in the air it will live in, 35 %')).toEqual({ humidity: 35 });
    // the screen lays the thinnest coat
    expect(changed('A thinner coat: through a screen')).toEqual({ tool: 'screen' });
    expect(changed('Both faces covered alike')).toEqual({ lining: 'paper', liningPaper: 'marbled' });
    expect(Object.keys(changed('Lined inside'))).toEqual(['lining', 'liningWeight']);
  });
  it('glues that bring less water: the driest wet one and the driest dry one, neither unsafe with children', () => {
    const [wet, dry] = (['wet', 'dry'] as const).map((form) => {
      const all = [...catalogue.adhesives.values()].filter((one) => one.form === form && one.childSafe !== 'no');
      return Math.min(...all.map((one) => waterOf(one, plan(), catalogue).middle));
    });
    const swaps = usual().filter(({ what }) => what.startsWith('Glued with'));
    const water = swaps.map(
      ({ plan: { adhesive } }) => waterOf(catalogue.adhesives.get(adhesive)!, plan(), catalogue).middle,
    );
    expect(water.toSorted((a, b) => a - b)).toEqual([dry, wet].toSorted((a, b) => a! - b!));
    expect(swaps.map(({ note }) => note).join()).toMatch(/it brings no water, yours about \d+ g\/m²/);
    expect(swaps.map(({ note }) => note).join()).toMatch(/it brings about \d+ g\/m² of water/);
  });
  it('what does not bear is not offered', () => {
    const none = names({
      paper: 'lokta-light',
      board: 'glass',
      boardThick: 19.6,
      adhesive: 'film-double-sided',
      humidity: 35,
    });
    expect(none.filter((what) => !/^(Lined|Both)/.test(what))).toEqual([]);
    expect(names({ boardThick: 19.5 })).toContain('Board of 20 mm');
    const open = names({ paperGrain: 'unknown', boardGrain: 'unknown', tool: 'screen' }).join('; ');
    expect(open).not.toMatch(/turned|thinner coat|under weight/);
    // a glue stick is dry already, so only the film brings less
    const stick = names({ adhesive: 'glue-stick' });
    expect(stick.filter((what) => what.startsWith('Glued with'))).toHaveLength(1);
    expect(stick.join()).not.toMatch(/thinner coat/);
  });
  it('a coat too thick for a tool is not brushed out with it: hot glue and jelly above 100 Pa·s go through no screen', () => {
    const { plan: found } = remedy('A thinner coat', { adhesive: 'methylcellulose-4' })!;
    const { coat } = catalogue.techniques.get(found.tool)!;
    expect(coat.middle).toBeLessThan(65);
    expect(names({ paperGrain: 'width', boardGrain: 'width' })).toEqual(
      expect.arrayContaining(['The cover paper’s grain turned', 'The board’s grain turned']),
    );
  });
  it('a lining keeps its own grain where there is one, else it takes the cover’s', () => {
    const fresh = remedy('Lined inside', { paperGrain: 'width' })!;
    expect(fresh.plan).toMatchObject({ lining: 'paper', liningGrain: 'width' });
    expect(fresh.note).toMatch(/from 10 to 300 g\/m², same glue, grain as the cover’s/);
    const own = remedy('Lined inside', { lining: 'paper', paperGrain: 'width', liningGrain: 'height' })!;
    expect(own.plan.liningGrain).toBe('height');
    expect(own.note).toMatch(/its grain as it is/);
  });
  it('both faces alike are not offered to what is alike already', () => {
    const alike = { lining: 'paper', liningPaper: 'marbled', liningGrain: 'height', liningWeight: undefined } as const;
    expect(names(alike).join()).not.toMatch(/alike/);
    expect(names({ ...alike, liningGrain: 'width' }).join()).toMatch(/alike/);
  });
});
