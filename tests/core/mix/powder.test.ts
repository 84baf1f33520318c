/**
 * A powder into water. Reckoned by hand: mass in is mass out, water 1 g/ml (0.998 where it is stirred into PVA), the rest from the
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
const fact = (change: Partial<MixPlan>, label: string) => made(change).facts.find((one) => one.label.startsWith(label));

describe('a powder into water', () => {
  // 200 ml so that 180 reach the work: 5 g, which take up 5 ÷ 1.3 ml
  const jelly = { kind: 'powder', percent: 2.5, need: 180, loss: 10 } as const;
  it('2.5 % in 200 ml', () => {
    const { sentence, brief, portions: all, figures, curve, steps, rounding, cautions } = made(jelly);
    expect(all).toEqual([
      { name: 'methylcellulose powder, 4000 mPa·s grade', amount: '5 g', grams: expect.closeTo(5, 9) },
      { name: 'water', amount: '195 ml' },
    ]);
    expect(sentence).toMatch(/^Stir 5 g of methylcellulose into 195 ml of water: 2\.5 %, 180 ml for the work/);
    expect(brief).toEqual(['Methylcellulose', '5 g in 195 ml']);
    expect(figures[0]).toBeCloseTo(5, 9);
    expect(figures[1]).toBeCloseTo(200 - 5 / 1.3, 9);
    expect(curve!.grade).toBe(4000);
    expect(curve!.percent).toBeCloseTo(500 / (205 - 5 / 1.3), 9);
    // a third of 196 ml hot, the rest iced: (80 + 2 · 2) ÷ 3 °C
    expect(steps.join(' ')).toMatch(/two thirds of the water, 130 ml, .*the other third, 65 ml, to about 80 °C/);
    expect(steps.join(' ')).toMatch(/comes to about 28 °C.*overnight.*below about 12 °C.*below about 25 °C/);
    // 5 in 200 against 5 in 201.15
    expect(rounding).toMatch(
      /^So measured it comes to 2\.51 % in place of 2\.5 %: 0\.6 % stronger, too little to notice/,
    );
    expect(cautions).toEqual(['hot-liquid', 'powder-dust']);
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
    expect(fact({ kind: 'powder', percent: 4 }, 'Clear')?.value).toBe('about a day in the cold');
    expect(fact({ kind: 'powder', percent: 3.9 }, 'Clear')?.value).toBe('a night in the cold');
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
