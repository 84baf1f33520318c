/** The covered board as plies, its water and its remedies: by hand from the records, at the middle of every range. */
import { askedOf, unknownRecords } from '../../../src/core/link/fields';
import { describe, expect, it } from 'vitest';
import type { Paper } from '../../../src/core/records/records';
import { flatAnswerFacts } from '../../../src/core/flat/facts';
import { makingOf, waterOf } from '../../../src/core/flat/making';
import { FLAT_FIELDS, DEFAULT_FLAT, type FlatPlan } from '../../../src/core/flat/plan';
import { draws, drawWork, MIDDLE, STIFFER_ALONG, flatPaper, type Work } from '../../../src/core/flat/plies';
import { remediesFor } from '../../../src/core/flat/remedies';
import { bowsAt, farEnd, rollsUp, worseOf } from '../../../src/core/flat/stages';
import { catalogue } from '../../../src/data/catalogue';

const plan = (change: Partial<FlatPlan> = {}): FlatPlan => ({ ...DEFAULT_FLAT, ...change });
const only = (value: number) => ({ low: value, middle: value, high: value, basis: 'estimate' }) as const;

describe('plies', () => {
  // 100 g/m² at 0.7 g/cm³, 24 N·m/g, 2.4 % of growth, 3 against the board's 2.8 g/m² per √s
  const work = (change: Partial<Work> = {}): Work => ({
    cover: { paper: flatPaper(catalogue, 'wove-text')!, grain: 'height' },
    board: catalogue.substrates.get('binders-board')!,
    boardGrain: 'width',
    water: only(50),
    ...change,
  });
  it('the cover: thickness, stiffness each way, growth a tenth along, soaked by its share of the water', () => {
    const { cover } = drawWork(work(), MIDDLE);
    expect(cover.ply.grain).toBe('height');
    expect(cover.ply.thickness).toBeCloseTo(0.1 / 0.7, 9);
    // 105 MPa for each N·m/g and g/cm³; 3800 to 2200 m are the least breaking lengths a specification asks of writing paper
    expect(cover.ply.modulus.across).toBeCloseTo(105 * 24 * 0.7, 6);
    expect(cover.ply.modulus.along).toBeCloseTo((105 * 24 * 0.7 * 3800) / 2200, 6);
    expect(cover.ply.expansion.across).toBeCloseTo(0.024, 12);
    expect(cover.ply.expansion.along).toBeCloseTo(0.0024, 12);
    const wetted = (50 * 3) / 5.8 / 100 / 0.779;
    expect(cover.wetted).toBeCloseTo(wetted, 9);
    // it keeps 7 % when soaked
    expect(cover.stiffWhenWet).toBeCloseTo(1 - 0.93 * wetted, 9);
  });
  it('the board: 2 mm and 2500 MPa, a fifth stiffer along, and half the growth along', () => {
    const { board } = drawWork(work(), MIDDLE);
    expect(board).toEqual({
      thickness: 2,
      grain: 'width',
      modulus: { along: 2500 * 1.2, across: 2500 * 0.83 },
      expansion: { across: 0.009, along: 0.0045 },
    });
    const glass = drawWork(work({ board: catalogue.substrates.get('glass')! }), MIDDLE).board;
    expect(glass.modulus.along).toBe(glass.modulus.across);
    expect(glass.expansion).toEqual({ across: 0, along: 0 });
  });
  it('a lining is the same draw only where it is the same paper of the same weight', () => {
    const draw = draws()[5]!;
    const wetted = (lining: Paper) => {
      const drawn = drawWork(work({ lining: { paper: lining, grain: 'height' } }), draw);
      return [drawn.cover.ply.thickness, drawn.lining!.ply.thickness] as const;
    };
    const [cover, alike] = wetted(flatPaper(catalogue, 'wove-text')!);
    expect(alike).toBe(cover);
    const [, heavier] = wetted(flatPaper(catalogue, 'wove-text', 101)!);
    expect(heavier).not.toBeCloseTo(cover * 1.01, 6);
    expect(wetted(flatPaper(catalogue, 'marbled')!)[1]).not.toBe(cover);
  });
  it('a grain that is not known falls each way on half of the draws; the board’s by its own coin', () => {
    const open = draws().map((draw) =>
      drawWork(
        work({ cover: { paper: flatPaper(catalogue, 'wove-text')!, grain: 'unknown' }, boardGrain: 'unknown' }),
        draw,
      ),
    );
    const ways = open.map(({ cover, board }) => `${cover.ply.grain} ${board.grain}`);
    for (const way of ['height height', 'height width', 'width height', 'width width'])
      expect(ways.filter((one) => one === way)).toHaveLength(16);
    expect(drawWork(work({ boardGrain: 'unknown' }), MIDDLE).board.grain).toBe('height');
  });
  it('a weight that makes the measured thickness impossible is another sheet of the kind', () => {
    const own = 'wove-text~100gsm~140um';
    const density = (weight?: number) => flatPaper(catalogue, own, weight)!.density.middle;
    expect(density()).toBeCloseTo(100 / 140, 6);
    expect(density(120)).toBeCloseTo(120 / 140, 6);
    // 300 in 140 µm would be denser than fibre
    expect(density(300)).toBeCloseTo(0.7, 6);
    expect(flatPaper(catalogue, 'wove-text', 60)!.density.middle).toBeCloseTo(0.7, 6);
  });
});

describe('water', () => {
  const water = (adhesive: string) => waterOf(catalogue.adhesives.get(adhesive)!, plan(), catalogue);
  it('is the brush’s 40, 65 and 110 g/m² less 54 % of solids in PVA', () => {
    const { low, middle, high } = water('pva');
    expect([low, middle, high].map((one) => Number(one.toFixed(6)))).toEqual([18.4, 29.9, 50.6]);
  });
  it('of alcohol a fifth swells fibre: 95.5 % of the coat is alcohol', () => {
    const { low, middle, high } = water('hpc-alcohol');
    expect(low).toBeCloseTo(40 * 0.955 * 0.2, 6);
    expect(middle).toBeCloseTo(65 * 0.955 * 0.2, 6);
    expect(high).toBeCloseTo(110 * 0.955 * 0.2, 6);
  });
  it('of a dry one is what its record says', () => {
    expect(water('glue-stick')).toMatchObject({ low: 4, middle: 9, high: 15 });
    const { glue, work } = makingOf(plan({ adhesive: 'glue-stick', boardThick: 3 }), catalogue);
    expect(glue).toBe('glue stick');
    expect(work.board.thickness).toMatchObject({ low: 3, middle: 3, high: 3 });
    expect(makingOf(plan(), catalogue).glue).toMatch(/: bristle brush, full coat$/);
    expect(makingOf(plan(), catalogue).work.board.thickness.middle).toBe(2);
  });
  it('an unknown lining is named beside its field', () => {
    expect(unknownRecords(plan({ liningPaper: 'moon' }), FLAT_FIELDS, catalogue).map(({ field }) => field)).toEqual([
      'liningPaper',
    ]);
  });
});

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
      ...{ paper: 'lokta-light', board: 'glass', boardThick: 19.6, adhesive: 'film-double-sided', humidity: 35 },
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

describe('how far it bows', () => {
  it('the worse of two directions by its far end, the width where they are even', () => {
    const bow = (low: number, high: number) => ({ low, middle: (low + high) / 2, high, span: 100 });
    expect(farEnd(bow(-3, 2))).toBe(3);
    expect(worseOf({ width: bow(-3, 2), height: bow(0, 2.9) })).toBe('width');
    expect(worseOf({ width: bow(-1, 2), height: bow(-3, 0) })).toBe('height');
    expect(worseOf({ width: bow(1, 2), height: bow(-2, 0) })).toBe('width');
  });
  it('no further than a quarter of its span: past that it rolls up', () => {
    const thin = plan({ boardThick: 0.3, width: 600, height: 20, adhesive: 'wheat-starch-paste-thin', press: 0 });
    const { width, height } = bowsAt(makingOf(thin, catalogue), 'dry');
    expect(width.high).toBeCloseTo(150, 9);
    expect(rollsUp(width)).toBe(true);
    expect(rollsUp(height)).toBe(false);
  });
});

const plainly = (text: string) => text.replaceAll('\u00a0', ' ');

describe('what it rests on', () => {
  const facts = (change: Partial<FlatPlan> = {}) => {
    const asked = plan({ paper: 'wove-text', adhesive: 'pva', ...change });
    const all = flatAnswerFacts(asked, makingOf(asked, catalogue));
    return Object.fromEntries(
      all.map(({ label, value, note }) => [label, { value: plainly(value), note: note && plainly(note) }]),
    );
  };
  it('each figure as by hand', () => {
    const of = facts();
    expect(of['Water brought']!.value).toBe('18 to 51 g/m²');
    // 29.9 × 3 ÷ 5.8 ÷ 100 ÷ 0.779
    expect(of['The sheet is soaked']!.value).toBe('20 %');
    expect(of['It grows']).toMatchObject({
      value: '0.48 % across, 0.048 % along',
      note: expect.stringMatching(/about a tenth/),
    });
    expect(of['Still pulling when dry']!.value).toBe('30 %');
    expect(of.Stiffness!.value).toBe('paper 1\u202f800 MPa across, 1.7 times that along');
    expect(of['The board']).toMatchObject({
      value: '1.8 to 3 mm, 1\u202f500 to 4\u202f000 MPa',
      note: expect.stringMatching(/0\.5 to 1\.5 % across/),
    });
    // wood in 50 % holds 9.2 % at 21 °C and a little more at 20 (Wood Handbook, table 4-2), paper half to 0.85 of that
    expect(of['Moisture, your room']).toMatchObject({
      value: expect.stringMatching(/^4\.[67] to 7\.[89] %$/),
      note: expect.stringMatching(/at 50 % and 20 °C: wood holds 9\.[23] %/),
    });
    expect(of['Moisture, later']!.note).toMatch(/at 35 %, the same warmth: wood [67](\.\d)? ?%/);
    expect(of['The cover']!.value).toMatch(/80 to 150 g\/m², grain up the height$/);
    expect(of.On).toMatchObject({
      value: expect.stringMatching(/148 × 216 mm, grain up the height$/),
      note: 'under weight for 24 h',
    });
    expect(of['Glued with']!.value).toBe('PVA: bristle brush, full coat');
    expect(of).not.toHaveProperty('Lined with');
  });
  it('a lining, a board that does not move, other grains', () => {
    const of = facts({ lining: 'paper', liningGrain: 'unknown', board: 'glass', paper: 'lokta-light' });
    expect(of['Lined with']!.value).toMatch(/grain unknown$/);
    expect(of['The board']!.note).toMatch(/not to move with the air/);
    expect(of['It grows']!.note).toBe('no grain: alike both ways');
    expect(facts({ paper: 'blotting' })['It grows']!.note).toMatch(/a weak grain: along it 0\.4 times/);
    expect(STIFFER_ALONG.none).toBe(1);
  });
});

it('asks about a lining only where there is one', () => {
  const inside = ['liningPaper', 'liningWeight', 'liningGrain'];
  expect(askedOf({ ...DEFAULT_FLAT, lining: 'paper' }, FLAT_FIELDS)).toEqual(
    expect.arrayContaining([...inside, 'paper', 'later']),
  );
  expect(askedOf({ ...DEFAULT_FLAT, lining: 'none' }, FLAT_FIELDS).filter((field) => inside.includes(field))).toEqual(
    [],
  );
  expect(askedOf({ ...DEFAULT_FLAT, lining: 'none' }, FLAT_FIELDS)).toEqual(
    expect.arrayContaining(['paper', 'lining', 'later']),
  );
});
