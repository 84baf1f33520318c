/** Who gets the glue, with what and when; and what a person asks for. Common practice throughout, no source. */
import type { Finding } from '../../../src/core/choose/finding';
import { describe, expect, it, test } from 'vitest';
import { DEFAULT_JOB, type Job, type Need } from '../../../src/core/choose/job';
import { choose } from '../../../src/core/choose/choose';
import { heatAtBench } from '../../../src/core/adhesive/natures';
import { askedFor } from '../../../src/core/choose/needs';
import { calledBelow, LIGHT_GRAMMAGE, placementOf } from '../../../src/core/choose/placement';
import type { Method } from '../../../src/core/choose/method';
import type { Adhesive, DryAdhesive, YesNo } from '../../../src/core/records/records';
import type { Task } from '../../../src/core/records/task';
import { sheetOf, type Sheet } from '../../../src/core/paper/sheet';
import { suitability } from '../../../src/core/choose/suitability';
import { catalogue } from '../../../src/data/catalogue';
import { factsOf } from '../support/facts';

const pva = catalogue.adhesives.get('pva')!;
const film = catalogue.adhesives.get('film-double-sided')!;

interface Case {
  readonly job?: Partial<Job>;
  readonly grammage?: number;
  readonly slip?: number;
  readonly needed?: number;
  readonly adhesive?: Adhesive;
  readonly method?: Partial<Method>;
}

const COAT = { low: 40, middle: 65, high: 110, basis: 'from-memory' } as const;

/** A 100 g/m² sheet that slides for a minute and is placed in half of one, done as the method says. */
function placed({ job, grammage = 100, slip = 60, needed = 30, adhesive = pva, method }: Case) {
  const whole = { ...DEFAULT_JOB, paper: { family: 'wove-text', grammage }, ...job };
  const facts: Finding = {
    ...factsOf({ adhesive, needed, slip: [slip / 2, slip, slip * 2] }),
    job: whole,
    sheet: sheetOf(whole, catalogue),
    method: { face: 'sheet', tool: 'brush-full', coat: COAT, wait: 'none', minutes: 0, press: 'weight', ...method },
  };
  return placementOf(facts, catalogue);
}

describe('where the glue goes', () => {
  it('where the method has it, in the words of the task', () => {
    expect(placed({}).glueGoesOn).toBe('the back of the paper');
    expect(placed({ method: { face: 'ground' } }).glueGoesOn).toBe('the board, not the paper');
    expect(placed({ method: { face: 'both' } }).glueGoesOn).toBe('both faces');
    expect(placed({ job: { task: 'mend' }, method: { face: 'sheet-on-support' } }).glueGoesOn).toBe(
      'the mending strip, laid out on glass or film',
    );
    expect(placed({ job: { task: 'line-spine' }, method: { face: 'ground' } }).glueGoesOn).toBe(
      'the spine, not the lining',
    );
  });
  it('calls by its name what is backed with, mounted, or decorated', () => {
    expect(placed({ job: { task: 'laminate' } }).glueGoesOn).toBe('the backing');
    expect(placed({ job: { task: 'laminate' }, method: { face: 'ground' } }).glueGoesOn).toBe(
      'the piece that is backed, not the backing',
    );
    expect(placed({ job: { task: 'mount' } }).glueGoesOn).toBe('the back of the print');
    expect(placed({ job: { task: 'mount' }, method: { face: 'ground' } }).glueGoesOn).toBe('the board, not the print');
    expect(placed({ job: { task: 'decorate' }, method: { face: 'ground' } }).glueGoesOn).toBe(
      'the thing itself, not the paper',
    );
  });
  it('calls a board a board', () => {
    const called = (id: string) => calledBelow(catalogue.substrates.get(id)!, 'cover');
    expect(['binders-board', 'millboard', 'mount-board'].map(called)).toEqual(['the board', 'the board', 'the board']);
    expect(called('metal')).toBe('the surface below');
  });
});

describe('with what', () => {
  it('with the tool and the coat of the method', () => {
    expect(placed({})).toMatchObject({ tool: 'brush-full', coat: COAT });
    expect(placed({ method: { tool: 'card' } }).tool).toBe('card');
  });
});

describe('when', () => {
  it('place it first when it grabs before it can be placed, or is too light to be lifted wet', () => {
    expect(placed({ slip: 30, needed: 30 }).placeBeforeContact).toBe(false);
    expect(placed({ slip: 29, needed: 30 }).placeBeforeContact).toBe(true);
    expect(placed({ grammage: LIGHT_GRAMMAGE, slip: 600 }).placeBeforeContact).toBe(true);
    expect(placed({ grammage: LIGHT_GRAMMAGE + 1, slip: 600 }).placeBeforeContact).toBe(false);
    expect(placed({ adhesive: film, slip: 5 }).placeBeforeContact).toBe(true);
    expect(placed({ adhesive: film, slip: 50, grammage: 20 }).placeBeforeContact).toBe(false);
  });
  it('a sheet relaxes as long as the method says, to the minute, and else not at all', () => {
    expect(placed({ method: { wait: 'relax', minutes: 3.2 } }).relaxMinutes).toBe(3);
    expect(placed({ method: { wait: 'none', minutes: 0 } }).relaxMinutes).toBe(0);
    expect(placed({ method: { wait: 'tacky', minutes: 15 } }).relaxMinutes).toBe(0);
  });
});

/** What is said of a need: out, or the share that is left, or in favour. */
function said(
  need: Need,
  change: Partial<Adhesive>,
  scalding = false,
): readonly (readonly [string, number | 'out' | 'pro'])[] {
  const heard: [string, number | 'out' | 'pro'][] = [];
  askedFor(
    { ...pva, needsHeat: false, ...change } as Adhesive,
    new Set([need]),
    {
      off: (left, code) => heard.push([code, left]),
      out: (code) => heard.push([code, 'out']),
      pro: (code) => heard.push([code, 'pro']),
    },
    { scalds: scalding, natures: ['bottled'] },
  );
  return heard;
}

/** The sentences said of a need. */
function told(need: Need, change: Partial<Adhesive>, scalding = false): string {
  const heard: string[] = [];
  askedFor(
    { ...pva, ...change } as Adhesive,
    new Set([need]),
    {
      off: (_left, _code, text) => heard.push(text),
      out: (_code, text) => heard.push(text),
      pro: (_code, text) => heard.push(text),
    },
    { scalds: scalding, natures: ['bottled'] },
  );
  return heard.join(' ');
}

describe('a need against a trait', () => {
  const all: readonly YesNo[] = ['yes', 'partly', 'no'];
  test.for([
    ['undo', 'undoneWithWater', 'pro', 'out'],
    ['long-lived', 'longLived', 'pro', 'out'],
    ['children', 'childSafe', undefined, 'out'],
    ['flexes', 'flexes', undefined, 'share'],
    ['damp', 'bearsDamp', undefined, 'share'],
  ] as const)('%s: met, in part, not met', ([need, trait, met, unmet]) => {
    const [yes, partly, no] = all.map((value) => said(need, { [trait]: value }));
    expect(yes).toEqual(met ? [[need, met]] : []);
    expect(partly).toEqual([[need, expect.any(Number)]]);
    const left = partly![0]![1] as number;
    expect(left).toBeGreaterThan(0);
    expect(left).toBeLessThan(1);
    expect(told(need, { [trait]: 'partly' })).not.toBe(told(need, { [trait]: 'no' }));
    if (unmet === 'out') expect(no).toEqual([[need, 'out']]);
    else expect(no![0]![1]).toBeLessThan(left);
  });
  it('no heat: out when it is hot at the bench, a share off when it is only cooked first', () => {
    expect(said('no-heat', { needsHeat: true, form: 'wet', usedAt: 60 })).toEqual([['no-heat', 'out']]);
    expect(said('no-heat', { needsHeat: true, form: 'dry' })).toEqual([['no-heat', 'out']]);
    const [cooked] = said('no-heat', { needsHeat: true, form: 'wet' });
    expect(cooked).toEqual(['no-heat', expect.any(Number)]);
    expect(said('no-heat', { needsHeat: false, form: 'wet', usedAt: 60 })).toEqual([]);
    expect(said('no-heat', { needsHeat: false, form: 'dry' })).toEqual([]);
  });
  it('what was not asked for says nothing', () => {
    const worst: Partial<Adhesive> = { undoneWithWater: 'no', longLived: 'no', flexes: 'no', bearsDamp: 'no' };
    expect(said('colours', { ...worst, childSafe: 'no', needsHeat: true })).toEqual([]);
    expect(heatAtBench({ ...pva, needsHeat: true } as Adhesive)).toBe(false);
  });
});

describe('what is left of one adhesive', () => {
  const on = (
    change: Partial<Adhesive>,
    needs: readonly Need[] = [],
    sheet: Partial<Sheet> = {},
    job = DEFAULT_JOB,
  ) => {
    const asked = { ...job, needs };
    const best = { undoneWithWater: 'yes', longLived: 'yes', flexes: 'yes', bearsDamp: 'yes', childSafe: 'yes' };
    const adhesive = { ...pva, ...best, needsHeat: false, ...change } as Adhesive;
    const whole = { ...sheetOf(asked, catalogue), coloursRun: 'unlikely', harmedByWater: false, ...sheet } as Sheet;
    const { share, notes, verdict, cautions } = suitability(adhesive, asked, whole, catalogue);
    return { share, verdict, cautions, codes: notes.map(({ code }) => code) };
  };
  const alcohol = catalogue.adhesives.get('hpc-alcohol') as Adhesive & { form: 'wet' };
  const parts = { parts: alcohol.parts };

  it('all of one that has no fault, with nothing said against it', () => {
    expect(on({})).toEqual({ share: 1, verdict: undefined, cautions: [], codes: [] });
  });
  it('a little less of one that ages badly or dries stiff, the more the worse, said once', () => {
    for (const [trait, code] of [
      ['longLived', 'ages'],
      ['flexes', 'stiff'],
    ] as const) {
      const [partly, no] = (['partly', 'no'] as const).map((value) => on({ [trait]: value }));
      expect(partly!.codes).toEqual([code]);
      expect(no!.codes).toEqual([code]);
      expect(partly!.share).toBeLessThan(1);
      expect(no!.share).toBeLessThan(partly!.share);
    }
    // who asks for it hears of the need instead
    expect(on({ longLived: 'partly' }, ['long-lived']).codes).toEqual(['long-lived']);
    expect(on({ flexes: 'partly' }, ['flexes']).codes).toEqual(['flexes']);
    expect(on({ longLived: 'partly', flexes: 'no' }).share).toBeCloseTo(
      on({ longLived: 'partly' }).share * on({ flexes: 'no' }).share,
      12,
    );
  });
  it('less of one that is hot at the bench, or gives off fumes', () => {
    expect(on({ needsHeat: true, usedAt: 60 } as Partial<Adhesive>)).toMatchObject({ codes: ['heat'] });
    // cooked, and then used cold
    expect(on({ needsHeat: true })).toMatchObject({ codes: ['cooked'] });
    expect(on({ needsHeat: true }).share).toBeGreaterThan(
      on({ needsHeat: true, usedAt: 60 } as Partial<Adhesive>).share,
    );
    // one that lifts at a touch, so that only its fumes speak against it
    const easy = { low: 0, middle: 0, high: 0, basis: 'estimate' } as const;
    const traits = { undoneWithWater: 'yes', longLived: 'yes', flexes: 'yes', needsHeat: false } as const;
    const best = { ...(film as DryAdhesive), pull: easy, ...traits };
    const flat = (one: object) => on(one as Partial<DryAdhesive>, [], {}, { ...DEFAULT_JOB, task: 'mount' });
    for (const nature of ['solvent', 'contact', 'mist'] as const)
      expect(flat({ ...best, hazards: ['bottled', nature] })).toMatchObject({ codes: ['fumes'] });
    const cold = { ...best, hazards: ['bottled', 'powder'], does: ['cut'] };
    expect(flat(cold)).toMatchObject({ share: 1, codes: [] });
  });
  it('where colours run: water harms more than alcohol, a likely run more than a possible one, one who asks minds more', () => {
    const likely: Partial<Sheet> = { coloursRun: 'likely' };
    const possible: Partial<Sheet> = { coloursRun: 'possible' };
    // alcohol has its fumes against it whatever the colours do
    const clean = (one: Partial<Adhesive>) => on(one).share;
    for (const one of [{}, parts]) {
      const [askedLikely, left, askedPossible, clear] = [
        on(one, ['colours'], likely).share,
        on(one, [], likely).share,
        on(one, ['colours'], possible).share,
        on(one, [], possible).share,
      ] as const;
      for (const [less, more] of [
        [askedLikely, left],
        [askedPossible, clear],
        [askedLikely, askedPossible],
        [left, clear],
      ] as const)
        expect(less).toBeLessThan(more);
      // a warning and little more, where nobody asked
      expect(left).toBeGreaterThan(0.8 * clear);
      expect(clear).toBe(clean(one));
    }
    expect(on(parts, [], likely).share / clean(parts)).toBeGreaterThan(on({}, [], likely).share / clean({}));
    expect(on({}, [], likely).codes).toEqual(['colours']);
    expect(on({}, [], possible).codes).toEqual([]);
  });
  it('films where things are round, turned in or turned like leaves, each in its own words; not where a print is mounted', () => {
    const said = (task: Task) =>
      choose({ ...DEFAULT_JOB, task }, catalogue)
        .find(({ adhesiveId }) => adhesiveId === 'film-double-sided')!
        .facts.fit.notes.find(({ code }) => code === 'films')?.text;
    expect(said('decorate')).toMatch(/flat face/);
    expect(said('cover')).toMatch(/Turn-ins/);
    expect(said('tip-in')).toMatch(/leaf/);
    expect(said('mount')).toBeUndefined();
  });
  it('what damp lets go where things are decorated, for they are handled; a little less of what damp softens', () => {
    const share = (task: Task, bearsDamp: YesNo) => on({ bearsDamp }, [], {}, { ...DEFAULT_JOB, task }).share;
    expect(share('decorate', 'no')).toBeLessThan(share('decorate', 'partly'));
    expect(share('decorate', 'partly')).toBeLessThan(share('decorate', 'yes'));
    expect(share('cover', 'no')).toBe(share('cover', 'yes'));
    // said once, where it is asked for
    expect(on({ bearsDamp: 'no' }, ['damp'], {}, { ...DEFAULT_JOB, task: 'decorate' }).codes).not.toContain('hands');
  });
  it('less of what is wet on a sheet that water harms, and less by water than by alcohol', () => {
    const harmed = { harmedByWater: true };
    expect(on({}, [], harmed).codes).toEqual(['harmed']);
    expect(on({}, [], harmed).share).toBeLessThan(on(parts, [], harmed).share);
    expect(on(parts, [], harmed).share).toBeLessThan(1);
    const dry = { ...film, longLived: 'yes', flexes: 'yes', needsHeat: false } as Partial<Adhesive>;
    expect(on(dry, [], harmed).share).toBe(on(dry).share);
  });
  it('none of what is wet between two closed faces', () => {
    const glass = { ...DEFAULT_JOB, substrate: 'glass' };
    const closed = { closed: true };
    expect(on({}, [], closed, glass)).toMatchObject({ share: 0, verdict: 'ruled-out', codes: ['closed'] });
    expect(on(parts, [], closed, glass)).toMatchObject({ share: 0, verdict: 'ruled-out', codes: ['fumes', 'closed'] });
    expect(on({}, [], closed)).toMatchObject({ share: 1, codes: [] });
    expect(on({}, [], { closed: false }, glass)).toMatchObject({ share: 1, codes: [] });
  });
  it('for a valued original: by how well water undoes it, none of what is ruled out; and always the caution', () => {
    const left = (undoneWithWater: YesNo, needs: readonly Need[] = []) => on({ undoneWithWater }, ['valued', ...needs]);
    expect(left('yes')).toMatchObject({
      share: 1,
      verdict: 'defer',
      codes: ['valued'],
      cautions: ['valued-original', 'old-pigments', 'mould'],
    });
    expect(left('partly').share).toBeLessThan(1);
    expect(left('no').share).toBeLessThan(left('partly').share);
    expect(left('no').share).toBeGreaterThan(0);
    expect(left('no', ['undo'])).toMatchObject({ share: 0, verdict: 'defer', codes: ['valued', 'undo'] });
    expect(on({}, ['undo']).cautions).toEqual([]);
  });
  it('for food: nothing', () => {
    expect(on({}, ['food'])).toMatchObject({ share: 0, verdict: 'refused', cautions: ['food-contact'] });
  });
  it('says what the bench does to a wet one: too thick for the tool, too cold for its film, grabbing as it cools', () => {
    const notes = (id: string, change: Partial<Job> = {}) => {
      const job = { ...DEFAULT_JOB, ...change };
      const found = suitability(catalogue.adhesives.get(id)!, job, sheetOf(job, catalogue), catalogue).notes;
      return Object.fromEntries(found.map(({ code, against, text }) => [code, { against, text }]));
    };
    // a 4 % solution stands far above the 25 Pa·s that the record of the roller bears, and thin paste below it
    expect(notes('methylcellulose-4', { tool: 'roller' })).toHaveProperty('tool.against', true);
    expect(notes('methylcellulose-4', { tool: 'fingertip' })).not.toHaveProperty('tool');
    expect(notes('fish-glue', { tool: 'roller' })).not.toHaveProperty('tool');
    // 5 °C in the record of PVA
    expect(notes('pva', { celsius: 4.9 })).toHaveProperty('cold.against', true);
    expect(notes('pva', { celsius: 4.9 }).cold!.text).toMatch(/Below about 5 °C/);
    expect(notes('pva', { celsius: 5 })).not.toHaveProperty('cold');
    expect(notes('fish-glue', { celsius: 5 })).not.toHaveProperty('cold');
    // used at 60 °C, gels at 33 °C, in the records
    expect(notes('animal-glue-hot')).toHaveProperty('cools.against', false);
    expect(notes('animal-glue-hot').cools!.text).toMatch(/in about \d+\u00a0s in this room/);
    expect(notes('animal-glue-hot', { celsius: 34 })).not.toHaveProperty('cools');
    expect(notes('film-double-sided', { tool: 'roller', celsius: 2 })).not.toHaveProperty('cold');
  });
  it('says alcohol of alcohol and water of water, and of a dry film that colours stay where they are', () => {
    const runs: Partial<Sheet> = { coloursRun: 'likely' };
    const said = (id: string, sheet: Partial<Sheet> = runs) => {
      const whole = { ...sheetOf(DEFAULT_JOB, catalogue), ...sheet };
      const { notes } = suitability(catalogue.adhesives.get(id)!, DEFAULT_JOB, whole, catalogue);
      return notes.find(({ code }) => code === 'colours');
    };
    expect(said('hpc-alcohol')!.text).toMatch(/^Its alcohol may make the colours run/);
    expect(said('pva')!.text).toMatch(/^Its water may make the colours run/);
    expect(said('glue-stick')!.text).toMatch(/^Its water may make the colours run/);
    expect(said('film-double-sided')).toMatchObject({ against: false, text: expect.stringMatching(/brings no water/) });
    for (const id of ['hpc-alcohol', 'pva', 'glue-stick', 'film-double-sided'])
      expect(said(id, { coloursRun: 'unlikely' })).toBeUndefined();
    // possible, and nobody minds: nothing is said against what is wet, nor that it brings no water
    expect(said('pva', { coloursRun: 'possible' })).toBeUndefined();
  });
  it('what takes more off weighs more', () => {
    const job: Job = { ...DEFAULT_JOB, needs: ['undo', 'damp'] };
    const adhesive = { ...pva, undoneWithWater: 'partly', bearsDamp: 'partly' } as Adhesive;
    const { notes } = suitability(adhesive, job, sheetOf(job, catalogue), catalogue);
    const weight = (of: string) => notes.find(({ code }) => code === of)!.weight;
    // half is left of the one, 0.85 of the other
    expect(weight('undo')).toBeGreaterThan(weight('damp'));
    expect(weight('damp')).toBeGreaterThan(1);
    expect(weight('undo')).toBeLessThan(9);
    expect(notes.every(({ against }) => against)).toBe(true);
  });
});
