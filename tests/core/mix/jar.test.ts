/**
 * A jar made weaker or stronger. Reckoned by hand: mass in is mass out, water 1 g/ml (0.998 where it is stirred into PVA), the rest from the
 * records: methylcellulose 1.3 g/ml and 4000 mPa·s, gelatine 1.35, starch 1.5, PVA 1.08 g/ml with 54 % solids. A jug
 * shows 1 ml below 50 and 5 ml below 500.
 */
import { describe, expect, it } from 'vitest';
import type { MixAnswer } from '../../../src/core/mix/answer';
import { mixAnswerer } from '../../../src/core/mix/any';
import { DEFAULT_MIX, type MixPlan } from '../../../src/core/mix/plan';
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
    expect(made({ kind: 'dilute', jar: 'gelatine', stock: 4, target: 1, need: 33 }).cautions).toContain('hot-liquid');
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
    expect(more.cautions).toEqual(['hot-liquid', 'powder-dust']);
    const stiffer = made({ kind: 'correct', jar: 'gelatine', have: 120, stock: 2, target: 4 });
    expect(stiffer.steps[0]).toMatch(/about 55 °C, 60 at the most/);
    expect(stiffer.cautions).toEqual(expect.arrayContaining(['hot-liquid', 'animal-allergen']));
  });
  it('PVA with PVA, from 20 to 40 % with what has 54: 120 × 20 ÷ 14 ml; no stronger than that', () => {
    const more = made({ kind: 'correct', jar: 'pva', have: 120, stock: 20, target: 40 });
    expect(more.portions).toEqual([{ name: expect.stringMatching(/as supplied$/), amount: '170 ml' }]);
    expect(more.figures[1]).toBeCloseTo(2400 / 14, 6);
    expect(more.steps[0]).toMatch(/a little at a time/);
    expect(more.cautions).toEqual(['ready-made-glue', 'frost']);
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
