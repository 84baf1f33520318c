/**
 * PVA made to go further. Reckoned by hand: mass in is mass out, water 1 g/ml (0.998 where it is stirred into PVA), the rest from the
 * records: methylcellulose 1.3 g/ml and 4000 mPa·s, gelatine 1.35, starch 1.5, PVA 1.08 g/ml with 54 % solids. A jug
 * shows 1 ml below 50 and 5 ml below 500.
 */
import { describe, expect, it } from 'vitest';
import type { MixAnswer } from '../../../src/core/mix/answer';
import { LOADING } from '../../../src/core/base/result';
import { mixAnswerer, mixWithoutModel } from '../../../src/core/mix/any';
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
const portions = (change: Partial<MixPlan>) => made(change).portions.map(({ name, amount, or }) => [name, amount, or]);
const fact = (change: Partial<MixPlan>, label: string) => made(change).facts.find((one) => one.label.startsWith(label));

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
    expect(half.facts[0]).toMatchObject({ value: '28 % by mass', note: 'and 72 % water (PVA alone: 54 % solids)' });
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
  it('as far as it goes: to where a middling coat leaves the 8 g/m² dry of the record', () => {
    const { middle } = catalogue.techniques.get('brush-full')!.coat;
    // s = 8 ÷ coat; parts of water to one: 0.54 ÷ s − 1
    const parts = (0.54 * middle) / 8 - 1;
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
    expect(made({ ...water, extender: 'wheat-starch-paste-thick' }).cautions).toEqual([
      ...['valued-original', 'flour-allergen', 'ready-made-glue', 'spoilage', 'preservatives', 'frost'],
    ]);
    expect(made(water).cautions).not.toContain('spoilage');
    expect(made({ ...water, extender: 'methylcellulose-4' }).steps[1]).toMatch(/dissolved and clear beforehand/);
    expect(made({ ...water, extender: 'wheat-starch-paste-thin' }).steps[1]).toMatch(/Sieve the paste first/);
    expect(made(water).steps[0]).toMatch(/^Look at the .*frozen/);
  });
  it('how long the sheet slides is told where the model was asked, in words and as spans', () => {
    const slip = {
      base: { p10: 20, p50: 30, p90: 50 },
      mixed: { p10: 60, p50: 100, p90: 180 },
      times: 3.3,
      neededSeconds: 15,
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
  it('is loading, and at no fault, while nobody answers for it', () => {
    expect(mixWithoutModel({ ...DEFAULT_MIX, ...water }, catalogue)).toBe(LOADING);
    expect(mixWithoutModel(DEFAULT_MIX, catalogue).ok).toBe(true);
  });
  it('names a paper or a tool that is not known', () => {
    expect(errorOf({ ...water, paper: 'moon' })?.field).toBe('paper');
    expect(errorOf({ ...water, tool: 'spoon' })?.field).toBe('tool');
  });
});
