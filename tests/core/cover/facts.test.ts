/** The figures beside a coverage, on a square metre of round numbers. */
import { describe, expect, it } from 'vitest';
import { classFacts, coverageFacts } from '../../../src/core/cover/facts';
import { DEFAULT_COVER, type CoverPlan } from '../../../src/core/cover/plan';
import type { Coverage } from '../../../src/core/adhesive/coverage';
import type { Liquid } from '../../../src/core/adhesive/liquid';

const range = (low: number, high: number, basis: 'measured' | 'from-memory' = 'from-memory') =>
  ({ low, middle: (low + high) / 2, high, basis }) as const;
const COVERAGE = {
  squareMetres: 1.5,
  wetGrams: range(60, 120),
  wetMillilitres: range(50, 100),
  wetMicrometres: range(50, 100),
  dryMicrometres: range(10, 20),
  dryGrams: range(12, 24),
  waterPerSquareMetre: range(40, 80),
} as unknown as Coverage;
const plainly = (text = '') => text.replaceAll('\u00a0', ' ');
const film = (change: Partial<Record<keyof Coverage, unknown>> = {}, coat = range(40, 80)) =>
  Object.fromEntries(
    coverageFacts({ ...COVERAGE, ...change } as Coverage, coat, { density: 1.2 } as Liquid).map((fact) => [
      fact.label,
      `${plainly(fact.value)} | ${plainly(fact.note)}`,
    ]),
  );

describe('area, coat and film', () => {
  it('each is named once, from the area to the water', () => {
    expect(Object.keys(film())).toEqual([
      ...['Area to glue', 'Coat, wet', 'On the work', 'Film', 'A litre covers', 'Water brought'],
    ]);
  });
  it('as ranges with their units', () => {
    const facts = film();
    expect(facts['Area to glue']).toMatch(/^1\.50 m² \|.*spare included/);
    expect(facts['On the work']).toMatch(/^60 to 120 g \| 50 to 100 ml at 1\.20 g\/ml/);
    expect(facts.Film).toMatch(/^50 to 100 µm wet \| 10 to 20 µm dry, 12 to 24 g of solids/);
    // a litre on a film of 50 µm is 20 m², of 100 µm 10: the thick film goes the shorter way
    expect(facts['A litre covers']).toMatch(/^10 to 20 m²/);
    expect(facts['Water brought']).toMatch(/^40 to 80 g\/m²/);
  });
  it('a coat that was weighed says so; any other asks to be weighed', () => {
    expect(film({}, range(40, 80, 'measured'))['Coat, wet']).toMatch(/^40 to 80 g\/m² \| weighed/);
    expect(film()['Coat, wet']).toMatch(/from memory: weigh a board/);
  });
  it('no water and no dry film where they are not known', () => {
    const { 'Water brought': _water, ...rest } = film();
    expect(film({ waterPerSquareMetre: undefined })).toEqual(rest);
    for (const unknown of ['dryMicrometres', 'dryGrams'])
      expect(film({ [unknown]: undefined }).Film).toBe('50 to 100 µm wet | ');
  });
});

describe('for many makers', () => {
  const facts = (plan: Partial<CoverPlan>, rest: Partial<Coverage> = {}) =>
    classFacts({ ...DEFAULT_COVER, ...plan }, { ...COVERAGE, ...rest }).map(
      ({ label, value }) => `${label}: ${plainly(value)}`,
    );
  it('how many they are and what is spare, but not of one', () => {
    expect(facts({ makers: 12, spare: 10 })).toEqual(['For the class: 12 makers, 10 % spare']);
    expect(facts({ makers: 2 })).toHaveLength(1);
    expect(facts({ makers: 1, spare: 10 })).toEqual([]);
  });
  it('how many bottles of which size, once both are known', () => {
    expect(facts({ bottle: 250 }, { containers: 3 })).toEqual(['Bottles: 3 of 250 ml']);
    expect(facts({ makers: 2, bottle: 250 }, { containers: 3 })).toHaveLength(2);
    expect(facts({ bottle: undefined }, { containers: 3 })).toEqual([]);
    expect(facts({ bottle: 250 })).toEqual([]);
  });
  it('what they cost, in three figures below a hundred and four from there', () => {
    const cost = (price: number) => facts({ bottle: 250 }, { containers: 3, cost: price })[1];
    expect([7.5, 99.96, 100.04, 123.44].map(cost)).toEqual(['Cost: 7.50', 'Cost: 100', 'Cost: 100.0', 'Cost: 123.4']);
    expect(cost(100)).toBe('Cost: 100.0');
  });
});
