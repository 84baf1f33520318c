/**
 * Mixes reckoned by hand: mass in is mass out, water 1 g/ml (0.998 where
 * it is stirred into PVA), the rest from the records: methylcellulose 1.3 g/ml and
 * 4000 mPa·s, gelatine 1.35, starch 1.5, PVA 1.08 g/ml with 54 % solids. A jug shows 1 ml below 50 and 5 ml below 500.
 */
import { describe, expect, it } from 'vitest';
import type { MixAnswer } from '../../../src/core/mix/answer';
import { mixAnswerer } from '../../../src/core/mix/any';
import { askedIn, DEFAULT_MIX, type MixPlan } from '../../../src/core/mix/plan';
import { mixStretched } from '../../../src/core/mix/stretch';
import { catalogue } from '../../../src/data/catalogue';

const answer = mixAnswerer((plan, records) => mixStretched(plan, records));
/** As it is read, its no-break spaces made plain. */
const plainly = <T>(value: T): T => JSON.parse(JSON.stringify(value).replace(/\u00a0|\u202f/g, ' ')) as T;
function made(change: Partial<MixPlan>): MixAnswer {
  const found = answer({ ...DEFAULT_MIX, loss: 0, ...change }, catalogue);
  if (!found.ok) throw new Error(found.errors[0]?.message);
  return plainly(found.value);
}
const errorOf = (change: Partial<MixPlan>) => {
  const found = answer({ ...DEFAULT_MIX, loss: 0, ...change }, catalogue);
  return found.ok ? undefined : plainly(found.errors[0]);
};
const portions = (change: Partial<MixPlan>) => made(change).portions.map(({ name, amount, or }) => [name, amount, or]);
const fact = (change: Partial<MixPlan>, label: string) => made(change).facts.find((one) => one.label.startsWith(label));

describe('a powder into water', () => {
  // 200 ml so that 180 reach the work: 5 g, which take up 5 ÷ 1.3 ml
  const jelly = { kind: 'powder', percent: 2.5, need: 180, loss: 10 } as const;
  it('2.5 % in 200 ml', () => {
    const { sentence, brief, portions: all, figures, curve, steps, rounding, cautions } = made(jelly);
    expect(all).toEqual([
      { name: 'methylcellulose powder, 4000 mPa·s grade', amount: '5 g' },
      { name: 'water', amount: '195 ml' },
    ]);
    expect(sentence).toMatch(/^Stir 5 g of methylcellulose into 195 ml of water: 2\.5 %, 180 ml for the work/);
    expect(brief).toEqual(['Methylcellulose', '5 g in 195 ml']);
    expect(figures[0]).toBeCloseTo(5, 9);
    expect(figures[1]).toBeCloseTo(200 - 5 / 1.3, 9);
    expect(curve!.grade).toBe(4000);
    expect(curve!.percent).toBeCloseTo(500 / (205 - 5 / 1.3), 9);
    // a third of 196 ml hot, the rest cold
    expect(steps.join(' ')).toMatch(/a third of the water, 65 ml, to about 80 °C.*the rest, 130 ml, cold/);
    // 5 in 200 against 5 in 201.15
    expect(rounding).toMatch(
      /^So measured it comes to 2\.51 % in place of 2\.5 %: 0\.6 % stronger, too little to notice/,
    );
    expect(cautions).toEqual(['powder-dust']);
  });
  it('counted by mass, 2.5 of 100 g', () => {
    const [grams, water] = made({ ...jelly, basis: 'w/w' }).figures;
    expect((100 * grams!) / (grams! + water!)).toBeCloseTo(2.5, 9);
    expect(fact({ ...jelly, basis: 'w/w' }, 'Strength')?.note).toMatch(/in 100 g/);
    expect(fact(jelly, 'Strength')).toMatchObject({ value: '2.5 %', note: expect.stringMatching(/in 100 ml/) });
  });
  it('gelatine, 20 %: 40 g of 1.35 g/ml in 200 ml; by mass it would be 200 ÷ (1 ÷ 1.35 + 4) g', () => {
    const strong = made({ kind: 'powder', powder: 'gelatine', percent: 20, need: 200 });
    expect(strong.portions.map(({ name, amount }) => [name, amount])).toEqual([
      ['gelatine', '40 g'],
      ['water', '170 ml'],
    ]);
    expect(strong.warnings).toEqual([expect.stringMatching(/counted the other way, 20 % would need 5 % more/)]);
    expect(strong.cautions).toEqual(expect.arrayContaining(['hot-liquid', 'animal-allergen', 'spoilage']));
    expect(strong).not.toHaveProperty('curve');
    expect(strong.steps.join(' ')).toMatch(/40 g of gelatine\. Pour 170 ml of cold water.*Do not boil/);
    expect(strong.facts.map(({ label }) => label)).toEqual([
      'Strength',
      'Sets to a jelly',
      'Keeps',
      'In level teaspoons',
    ]);
    expect(strong.sentence).toMatch(/^Stir 40 g of gelatine into/);
    expect(strong.brief[0]).toBe('Gelatine');
    // 40 ÷ 3.3 is 12 spoons; they hold 39.6 g, a quarter more or less
    expect(strong.facts.at(-1)!.value).toMatch(/^about 12, which is 30 to (49|50) g$/);
  });
  it('the label is the viscosity of 2 %, a fifth either way for one’s own', () => {
    expect(fact({ kind: 'powder', percent: 2, grade: 400 }, 'Viscosity')).toMatchObject({
      value: '320 to 480 mPa·s',
      note: expect.stringMatching(/^like thin cream/),
    });
    expect(fact({ kind: 'powder', percent: 2 }, 'Viscosity')?.note).toMatch(/^like thick cream or paint/);
    expect(made({ kind: 'powder', percent: 2, grade: 400 }).curve!.grade).toBe(400);
  });
  it('the law reads high above 4 %, and is not trusted past 5', () => {
    const warned = (percent: number) => made({ kind: 'powder', percent }).warnings.length;
    expect([4, 4.1, 5, 5.1].map(warned)).toEqual([0, 1, 1, 0]);
    const known = (percent: number) => !/not known/.test(fact({ kind: 'powder', percent }, 'Viscosity')!.value);
    expect([5, 5.1].map(known)).toEqual([true, false]);
    expect(fact({ kind: 'powder', percent: 5.1 }, 'Viscosity')?.note).toMatch(/not to be trusted past 5 %/);
    expect(made({ kind: 'powder', powder: 'gelatine', percent: 4.5 }).warnings).toEqual([]);
    expect(fact({ kind: 'powder', percent: 4 }, 'Clear')?.value).toBe('about a day');
    expect(fact({ kind: 'powder', percent: 3.9 }, 'Clear')?.value).toMatch(/^an hour or more/);
  });
  it('says what each strength is good for', () => {
    const use = (percent: number) => fact({ kind: 'powder', percent }, 'Good for')!.value;
    expect(use(0.1)).toMatch(/thinner than a size/);
    expect(use(10)).toMatch(/stiff stock/);
    expect(use(2.5)).not.toMatch(/thinner|stock/);
  });
  it('more than a jug holds is said beside the amount', () => {
    expect(errorOf({ kind: 'powder', need: 50_000, loss: 60 })?.field).toBe('need');
    expect(errorOf({ kind: 'powder', percent: 0 })?.field).toBe('percent');
  });
});

describe('paste', () => {
  // one to four less a tenth of the water: 4.6 g of paste to a gram of starch, 21.7 %
  const paste = { kind: 'paste', waterParts: 4, by: 'mass', boiledOff: 10, need: 100 } as const;
  it('thinned to 8 %: 105 g hold 8.4 g of starch, cooked in 33.6 ml, and 105 − 38.64 ml more', () => {
    const thin = made({ ...paste, use: 'lining' });
    expect(thin.portions).toEqual([
      { name: 'wheat starch', amount: '8.4 g', or: '15 ml spooned loosely, from memory' },
      { name: 'water into the pan', amount: '34 ml' },
      { name: 'water to thin it, cold', amount: '65 ml' },
    ]);
    expect(thin.figures.map((one) => Number(one.toFixed(6)))).toEqual([8.4, 33.6, 66.36]);
    expect(thin.sentence).toBe(
      'Cook 8.4 g of wheat starch in 34 ml of water, then work in about 65 ml more when it is cold.',
    );
    expect(thin.steps.at(-1)).toMatch(/Work in the 65 ml of cold water .* for lining\./);
    const of = (label: string) => thin.facts.find((one) => one.label.startsWith(label))!;
    expect(of('Cooked')).toMatchObject({
      value: '22 % starch by mass',
      note: '20 % before cooking; 3 ml of water leaves as steam',
    });
    expect(of('For the work')).toMatchObject({
      value: '8 % starch by mass',
      note: expect.stringMatching(/single cream/),
    });
    // a twentieth or a fifth of the water gone: 1 in 4.8, 1 in 4.2
    expect(of('If less').value).toBe('21 to 24 % starch');
    // 8.4 ÷ 2.7 is 3 spoons of 8.1 g, a quarter more or less
    expect(of('In level').value).toBe('about 3, which is 6.1 to 10 g');
    expect(thin.warnings).toEqual([]);
    expect(thin.cautions).toEqual(expect.arrayContaining(['hot-liquid', 'flour-allergen']));
  });
  it('as cooked: 105 ÷ 4.6 g, nothing to thin it', () => {
    const thick = made({ ...paste, use: 'as-cooked' });
    expect(thick.portions.map(({ amount }) => amount)).toEqual(['22.8 g', '90 ml']);
    expect(thick.sentence).toBe('Cook 22.8 g of wheat starch in 90 ml of water.');
    expect(thick.steps.at(-1)).toMatch(/until it is smooth/);
    expect(thick.figures[2]).toBeCloseTo(0, 9);
    expect(thick.facts.find(({ label }) => label === 'For the work')?.note).toMatch(/from the pan/);
  });
  it('by volume a part of starch weighs 0.55: 1 in 7.5, too thin for covering, not for hinging', () => {
    expect(errorOf({ ...paste, by: 'volume', use: 'covering' })).toMatchObject({
      field: 'waterParts',
      message: expect.stringMatching(/has 13 % starch, already thinner than the 16 %/),
    });
    const hinging = made({ ...paste, by: 'volume', use: 'hinging' });
    // 12 % of 105 g
    expect(hinging.figures[0]).toBeCloseTo(12.6, 9);
    expect(hinging.warnings).toEqual([expect.stringMatching(/spoonful with air/)]);
  });
});

describe('a jar made weaker', () => {
  it('PVA from 50 to 25 %: as much water by volume; by mass as many grams', () => {
    // as supplied it has 54 % and weighs 1.08 g/ml: 50 g of solids are in 92.6 g of it, which take up 85.7 ml
    const supplied = 50 / 0.54;
    const byVolume = (supplied + 100 - supplied / 1.08) / 100;
    const byMass = 100 / (supplied / 1.08 + 100 - supplied);
    expect(byVolume * 50).toBeCloseTo(53.4, 1);
    expect(100 / (1 / byMass + 1)).toBeCloseTo(51.8, 1);
    const half = { kind: 'dilute', jar: 'pva', stock: 50, target: 25, need: 100 } as const;
    const { portions: all, warnings, sentence, brief, figures } = made(half);
    expect(all.map(({ amount, or }) => [amount, or])).toEqual([
      ['50 ml', '53.4 g'],
      ['50 ml', undefined],
    ]);
    expect(all[0]!.name).toMatch(/, 50 %$/);
    expect(warnings).toEqual([expect.stringMatching(/would need 3 % less/)]);
    expect(sentence).toBe('Measure 50 ml of the 50 % stock and stir in 50 ml of water: 100 ml at 25 %.');
    expect(brief).toEqual(['50 % to 25 %', '50 ml + 50 ml']);
    expect(figures).toEqual([50, 50]);
    expect(made({ ...half, basis: 'w/w' }).figures[0]).toBeCloseTo(100 / (1 / byMass + 1) / byMass, 9);
    expect(made(half)).not.toHaveProperty('curve');
  });
  it('methylcellulose from 4 to 2 %: 50 ml hold 2 g of 1.3 g/ml and the rest water, and 2 % is the label', () => {
    const thin = made({ kind: 'dilute', stock: 4, target: 2, need: 90, loss: 10 });
    expect(thin.portions[0]).toEqual({
      name: expect.stringMatching(/^methylcellulose.*, 4 %$/),
      amount: '50 ml',
      or: '50.5 g',
    });
    expect(thin.facts[0]).toMatchObject({ label: 'It makes', value: '100 ml', note: 'with 10 % for pot and brush' });
    expect(thin.facts[1]).toMatchObject({
      label: 'Viscosity',
      value: expect.stringMatching(/^4 000 mPa·s, like thick/),
    });
    expect(thin.curve).toEqual({ grade: 4000, percent: 2 });
    expect(thin.warnings).toEqual([]);
    expect(thin).not.toHaveProperty('rounding');
  });
  it('says what the jug does to the strength: 8 and 25 ml for 8.25 and 24.75', () => {
    const small = made({ kind: 'dilute', stock: 4, target: 1, need: 33 });
    expect(small.portions.map(({ amount }) => amount)).toEqual(['8 ml', '25 ml']);
    // 0.32 in 33 ml
    expect(small.rounding).toMatch(/^So measured it comes to 0\.97 % in place of 1 %: 3 % weaker, too little/);
    expect(small.cautions).toEqual([]);
  });
  it('all there is: 120 ml from 4 to 2.5 % take 72 ml; as strong as it is, nothing', () => {
    const more = made({ kind: 'correct', have: 120, stock: 4, target: 2.5 });
    expect(more.sentence).toBe('Stir 70 ml of water into your 120 ml: it becomes 190 ml at 2.5 %.');
    expect(more.brief).toEqual(['4 % to 2.5 %', 'add 70 ml']);
    expect(more.figures[1]).toBeCloseTo(72, 9);
    expect(more.facts[0]).toEqual({ label: 'It makes', value: '190 ml' });
    expect([more.warnings, more.cautions]).toEqual([[], []]);
    const same = made({ kind: 'correct', have: 120, stock: 4, target: 4 });
    expect(same.sentence).toMatch(/add nothing/);
    expect(same.brief[1]).toBe('add nothing');
    expect(same.portions).toHaveLength(1);
    expect(made({ kind: 'correct', jar: 'pva', have: 100, stock: 50, target: 25 }).warnings).toHaveLength(1);
  });
  it.each([
    ['target', { kind: 'dilute', stock: 2, target: 4 }],
    ['need', { kind: 'dilute', stock: 4, target: 2, need: 50_000, loss: 60 }],
    ['stock', { kind: 'dilute', stock: 0, target: 0 }],
    ['have', { kind: 'correct', stock: 4, target: 2, have: 0 }],
  ] as const)('what cannot be is said beside %s', (field, change) => expect(errorOf(change)?.field).toBe(field));
});

describe('a jar made stronger', () => {
  it('methylcellulose, 120 ml from 2 to 4 %: 2.4 ÷ (1 − 0.04 ÷ 1.3) g of powder, or half of the water gone', () => {
    const more = made({ kind: 'correct', have: 120, stock: 2, target: 4 });
    expect(more.portions).toEqual([{ name: expect.stringMatching(/^methylcellulose powder/), amount: '2.5 g' }]);
    expect(more.figures[1]).toBeCloseTo(2.4 / (1 - 0.04 / 1.3), 9);
    expect(more.facts[0]).toMatchObject({ value: '60 ml', note: expect.stringMatching(/^60 ml remains/) });
    expect(more.steps[0]).toMatch(/about 80 °C/);
    expect(more.cautions).toEqual(['powder-dust']);
    expect(made({ kind: 'correct', jar: 'gelatine', have: 120, stock: 2, target: 4 }).steps[0]).toMatch(/50 to 60 °C/);
  });
  it('PVA with PVA, from 20 to 40 % with what has 54: 120 × 20 ÷ 14 ml; no stronger than that', () => {
    const more = made({ kind: 'correct', jar: 'pva', have: 120, stock: 20, target: 40 });
    expect(more.portions).toEqual([{ name: expect.stringMatching(/as supplied$/), amount: '170 ml' }]);
    expect(more.figures[1]).toBeCloseTo(2400 / 14, 6);
    expect(more.steps[0]).toMatch(/a little at a time/);
    expect(more.cautions).toEqual([]);
    expect(errorOf({ kind: 'correct', jar: 'pva', have: 120, stock: 20, target: 54 })).toMatchObject({
      field: 'target',
      limits: { high: 54 },
    });
    expect(errorOf({ kind: 'correct', jar: 'pva', have: 120, stock: 20, target: 53 })).toBeUndefined();
  });
  it('paste with paste cooked twice as strong, at most 60 %: 100 × 2 ÷ 10 ml; nobody stirs more than 29 %', () => {
    const more = made({ kind: 'correct', jar: 'wheat-starch', have: 100, stock: 8, target: 10 });
    expect(more.portions).toEqual([{ name: 'paste cooked at 20 %', amount: '20 ml' }]);
    expect(more.steps[0]).toMatch(/a little at a time/);
    expect(made({ kind: 'correct', jar: 'rice-starch', have: 100, stock: 8, target: 29 }).portions[0]!.name).toMatch(
      /58 %/,
    );
    expect(errorOf({ kind: 'correct', jar: 'rice-starch', have: 100, stock: 8, target: 29.5 })).toMatchObject({
      field: 'target',
      limits: { high: 29 },
    });
    expect(errorOf({ kind: 'correct', jar: 'gelatine', have: 100, stock: 8, target: 35 })).toBeUndefined();
  });
});

describe('PVA made to go further', () => {
  const water = { kind: 'stretch', base: 'pva', extender: 'water', need: 100 } as const;
  const amounts = (change: Partial<MixPlan>) => portions(change).map(([, amount, or]) => [amount, or]);
  it('with as much water: 50 ml of each, 54 and 49.9 g, 0.54 × 54 of 103.9 g dry', () => {
    const half = made(water);
    expect(amounts(water)).toEqual([
      ['54 g', '50 ml'],
      ['49.9 g', '50 ml'],
    ]);
    expect(half.brief).toEqual(['1:1 by volume', '100 ml']);
    expect(half.figures[2]).toBeCloseTo((100 * 0.54 * 54) / 103.9, 6);
    expect(half.facts[0]).toMatchObject({ value: '28 % by mass', note: '54 % in PVA; the rest, 72 %, is water' });
    expect(half.steps.join(' ')).not.toMatch(/methylcellulose|paste/);
    // dry film 28 % of the brush's wet coat; 103.9 g over that coat
    const { low, high } = catalogue.techniques.get('brush-full')!.coat;
    const covers = fact(water, 'Covers')!
      .value.split(/ to | /)
      .map(Number);
    expect(covers[0]).toBeCloseTo(103.9 / high, 1);
    expect(covers[1]).toBeCloseTo(103.9 / low, 1);
    const film = fact(water, 'Dry film')!
      .value.split(/ to | /)
      .map(Number);
    expect(film[0]! / (low * 0.2807)).toBeCloseTo(1, 1);
    expect(film[1]! / (high * 0.2807)).toBeCloseTo(1, 1);
  });
  it('as much more as stays in pot and brush', () => {
    expect(amounts({ ...water, need: 90, loss: 10 })).toEqual(amounts(water));
  });
  it('from what is left: 80 g are 74.1 ml, twice that of water', () => {
    expect(amounts({ ...water, from: 'have', haveGrams: 80, extenderParts: 2 })).toEqual([
      ['80 g', '75 ml'],
      ['147.9 g', '150 ml'],
    ]);
  });
  it('to 27 %: half of 54, so one to one by mass; nothing outside what the two have', () => {
    const to27 = made({ ...water, aim: 'solids', solids: 27, from: 'have', haveGrams: 80 });
    expect(to27.portions.map(({ amount }) => amount)).toEqual(['80 g', '80 g']);
    expect(to27.brief[0]).toBe('1:1 by mass');
    expect(to27.figures[2]).toBeCloseTo(27, 9);
    expect(errorOf({ ...water, aim: 'solids', solids: 54 })).toMatchObject({ field: 'solids', limits: { high: 54 } });
    expect(errorOf({ ...water, aim: 'solids', extender: 'methylcellulose-4', solids: 3 })?.field).toBe('solids');
    expect(errorOf({ ...water, aim: 'parts', solids: 60 })).toBeUndefined();
  });
  it('with nothing: one portion', () => {
    expect(made({ ...water, extenderParts: 0 }).portions).toHaveLength(1);
    expect(fact({ ...water, extenderParts: 0 }, 'Thickness')?.value).toBe('about as thick as PVA');
  });
  it('as far as it goes: to where a middling coat leaves the 10 g/m² dry of the record', () => {
    const { middle } = catalogue.techniques.get('brush-full')!.coat;
    // s = 10 ÷ coat; parts of water to one: 0.54 ÷ s − 1
    const parts = (0.54 * middle) / 10 - 1;
    const far = fact({ ...water, from: 'have', haveGrams: 100 }, 'As far')!.value;
    expect(far).toMatch(/^1:[\d.]+ by mass: [\d ]+ g to your 100 g$/);
    expect(Number(/1:([\d.]+)/.exec(far)![1]) / parts).toBeCloseTo(1, 1);
    expect(Number(/mass: (\d+) g/.exec(far)![1]) / (100 * parts)).toBeCloseTo(1, 1);
    expect(fact({ ...water }, 'As far')!.value).toMatch(/by mass$/);
  });
  it('warns of a film too thin, a room too cold, and of what spoils', () => {
    const warned = (change: Partial<MixPlan>) => made({ ...water, ...change }).warnings.join(' ');
    expect(warned({})).toBe(warned({ celsius: 5 }));
    expect(warned({ celsius: 4.9 })).toMatch(/At 4\.9 °C this dispersion may dry to a powder.* about 5 °C/);
    expect(warned({ extenderParts: 20 })).toMatch(/^Too thin to trust: .* Use less water, or lay two coats/);
    expect(warned({ extenderParts: 20, extender: 'methylcellulose-1-5' })).toMatch(/Use less of what is added/);
    expect(warned({ extenderParts: 5 })).toMatch(/Water thins PVA fast/);
    expect(warned({ extenderParts: 0.1 })).toBe('');
    expect(warned({ extender: 'methylcellulose-1-5' })).toBe('');
    expect(warned({ extender: 'wheat-starch-paste-thick' })).toMatch(/spoils as paste does/);
    expect(made({ ...water, extender: 'wheat-starch-paste-thick' }).cautions).toContain('spoilage');
    expect(made(water).cautions).not.toContain('spoilage');
    expect(made({ ...water, extender: 'methylcellulose-4' }).steps[0]).toMatch(/dissolved and clear beforehand/);
    expect(made({ ...water, extender: 'wheat-starch-paste-thin' }).steps[0]).toMatch(/Sieve the paste first/);
  });
  it('how long the sheet slides is told where the model was asked, in words and as spans', () => {
    const slip = {
      ...{ base: { p10: 20, p50: 30, p90: 50 }, mixed: { p10: 60, p50: 100, p90: 180 }, times: 3.3, neededSeconds: 15 },
    };
    const found = mixStretched({ ...DEFAULT_MIX, ...water }, catalogue, () => slip);
    if (!found.ok) throw new Error('no mix');
    expect(found.value.slip).toEqual({
      neededSeconds: 15,
      rows: [
        { name: 'PVA alone', low: 20, middle: 30, high: 50 },
        { name: 'this mix', low: 60, middle: 100, high: 180 },
      ],
    });
    const told = plainly(found.value.facts.find(({ label }) => label.startsWith('Time to move'))!);
    expect(told.value).toBe('60 s to 3 min');
    expect(told.note).toMatch(/^20 to 50 s with PVA alone; about 3\.3 times as long/);
    expect(made(water)).not.toHaveProperty('slip');
    expect(fact(water, 'Time to move')).toBeUndefined();
  });
  it('two parts to one: 1:0.5, and the sentence says what is weighed', () => {
    const two = made({ ...water, baseParts: 2, from: 'have', haveGrams: 80 });
    expect(two.brief[0]).toBe('1:0.5 by volume');
    // 80 g are 74.07 ml; half of that of water
    expect(two.sentence).toMatch(/^Stir 37 g of water into 80 g of PVA: 110 ml of a mix/);
    expect(two.figures[0]).toBeCloseTo(80, 9);
    expect(two.figures[1]).toBeCloseTo((0.998 * 80) / 1.08 / 2, 6);
  });
  it('has no answer, and no fault, while nobody answers for it', () => {
    expect(mixAnswerer()({ ...DEFAULT_MIX, ...water }, catalogue)).toEqual({ ok: false, errors: [] });
    expect(mixAnswerer()(DEFAULT_MIX, catalogue).ok).toBe(true);
  });
  it('names a paper or a tool that is not known', () => {
    expect(errorOf({ ...water, paper: 'moon' })?.field).toBe('paper');
    expect(errorOf({ ...water, tool: 'spoon' })?.field).toBe('tool');
  });
});

describe('what is asked', () => {
  const asked = (change: Partial<MixPlan>) => askedIn({ ...DEFAULT_MIX, ...change });
  it('each kind its own, and the amount where something is made', () => {
    const amount = ['need', 'loss', 'scale'];
    expect(asked({ kind: 'powder' })).toEqual(['kind', 'powder', 'grade', 'percent', 'basis', ...amount]);
    expect(asked({ kind: 'paste' })).toEqual(['kind', 'starch', 'waterParts', 'by', 'boiledOff', 'use', ...amount]);
    expect(asked({ kind: 'dilute' })).toEqual(['kind', 'jar', 'stock', 'target', 'basis', ...amount]);
    expect(asked({ kind: 'correct' })).toEqual(['kind', 'jar', 'have', 'stock', 'target', 'basis', 'scale']);
    expect(asked({ kind: 'stretch', aim: 'parts', from: 'need' })).toEqual(
      expect.arrayContaining(['baseParts', 'extenderParts', ...amount]),
    );
    expect(asked({ kind: 'stretch', aim: 'solids', from: 'have' })).toEqual(
      expect.arrayContaining(['solids', 'haveGrams', 'scale']),
    );
    expect(asked({ kind: 'stretch', aim: 'solids', from: 'have' })).not.toEqual(expect.arrayContaining(['need']));
    expect(asked({ kind: 'stretch', aim: 'solids' })).not.toContain('baseParts');
  });
});
