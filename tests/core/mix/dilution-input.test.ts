/** What a reader asks of a dilution, and what is said back: sums by hand (mass in is mass out, water 1 g/ml). */
import { describe, expect, it } from 'vitest';
import {
  askDilution,
  askPowder,
  askStretch,
  DILUTION_LIMITS,
  dilutionProblem,
} from '../../../src/core/mix/dilution-input';
import type { Result } from '../../../src/core/base/result';

function answered<T>(found: Result<T>): T {
  if (!found.ok) throw new Error(found.errors[0]?.message);
  return found.value;
}
const errors = (found: Result<unknown>) => (found.ok ? [] : found.errors);

const dilution = {
  stockPercent: 20,
  targetPercent: 5,
  batchMillilitres: 100,
  basis: 'w/v',
  stockDensity: () => 1.25,
} as const;
const stretched = {
  haveMillilitres: 100,
  fromPercent: 20,
  toPercent: 5,
  basis: 'w/v',
  stockDensity: () => 1.25,
} as const;
const powder = { targetPercent: 20, batchMillilitres: 100, basis: 'w/v', powderDensity: 1.6 } as const;

describe('how far the two ways of counting per cent part', () => {
  it('stock for a batch: 25 ml of 1.25 g/ml by volume, 100 ÷ (1 ÷ 1.25 + 3) g by mass', () => {
    const [byVolume, byMass] = [31.25, 100 / 3.8];
    expect(answered(askDilution(dilution)).value.stockGrams).toBeCloseTo(byVolume, 9);
    expect(answered(askDilution(dilution)).basesPartBy).toBeCloseTo((byMass / byVolume - 1) * 100, 9);
    expect(answered(askDilution({ ...dilution, basis: 'w/w' })).value.stockGrams).toBeCloseTo(byMass, 9);
    expect(answered(askDilution({ ...dilution, basis: 'w/w' })).basesPartBy).toBeCloseTo(18.75, 9);
  });
  it('all there is: to 400 ml by volume; by mass 125 g take three times their weight of water, 475 ml', () => {
    expect(answered(askStretch(stretched)).value.batchMillilitres).toBeCloseTo(400, 9);
    expect(answered(askStretch(stretched)).basesPartBy).toBeCloseTo(18.75, 9);
    expect(answered(askStretch({ ...stretched, basis: 'w/w' })).basesPartBy).toBeCloseTo((400 / 475 - 1) * 100, 9);
  });
  it('each way with the density of its own liquid: half its mass of 2 g/ml is 1.33 g/ml, half its volume in grams 1.25', () => {
    const densities = { 'w/v': 1.25, 'w/w': 4 / 3 };
    const of = {
      ...dilution,
      stockPercent: 50,
      targetPercent: 25,
      stockDensity: (basis: 'w/v' | 'w/w') => densities[basis],
    };
    // by volume 50 ml of 1.25; by mass as many grams of water as of stock: 100 ÷ (1 ÷ 1.333 + 1) g
    const [byVolume, byMass] = [62.5, 100 / 1.75];
    expect(answered(askDilution(of)).value.stockGrams).toBeCloseTo(byVolume, 9);
    expect(answered(askDilution(of)).value.batchGrams).toBeCloseTo(112.5, 9);
    expect(answered(askDilution(of)).basesPartBy).toBeCloseTo((byMass / byVolume - 1) * 100, 9);
    expect(answered(askDilution({ ...of, basis: 'w/w' })).value.stockGrams).toBeCloseTo(byMass, 9);
  });
  it('powder: 20 g in 100 ml, or 20 g in 100 g with water round 1.6 g/ml of powder: 100 ÷ (1 ÷ 1.6 + 4) g', () => {
    expect(answered(askPowder(powder)).value.powderGrams).toBeCloseTo(20, 9);
    expect(answered(askPowder(powder)).basesPartBy).toBeCloseTo((100 / 4.625 / 20 - 1) * 100, 9);
    expect(answered(askPowder({ ...powder, basis: 'w/w' })).basesPartBy).toBeCloseTo(-7.5, 9);
  });
  it('is not said up to 10 %', () => {
    expect(answered(askDilution({ ...dilution, stockPercent: 10 }))).not.toHaveProperty('basesPartBy');
    expect(answered(askDilution({ ...dilution, stockPercent: 10.1 }))).toHaveProperty('basesPartBy');
    expect(answered(askStretch({ ...stretched, fromPercent: 10 }))).not.toHaveProperty('basesPartBy');
    expect(answered(askPowder({ ...powder, targetPercent: 10 }))).not.toHaveProperty('basesPartBy');
  });
});

describe('what cannot be made', () => {
  it('as strong as it is needs no water, stronger needs powder: 100 ml from 5 to 10 % takes 5 ÷ (1 − 0.1) g', () => {
    expect(answered(askDilution({ ...dilution, targetPercent: 20 })).value.waterGrams).toBeCloseTo(0, 9);
    expect(answered(askStretch({ ...stretched, toPercent: 20 })).value.waterGrams).toBe(0);
    for (const found of [
      askDilution({ ...dilution, stockPercent: 5, targetPercent: 10 }),
      askStretch({ ...stretched, fromPercent: 5, toPercent: 10 }),
    ]) {
      expect(errors(found)).toMatchObject([
        { field: 'targetPercent', code: 'contradiction', limits: { low: 0.01, high: 5, unit: '%' } },
      ]);
      expect(errors(found)[0]!.message).toMatch(/Give at most 5 %, or stir about 5\.6 g of powder into 100 ml of it/);
    }
  });
  it.each([
    ['stockPercent', askDilution({ ...dilution, stockPercent: 101 })],
    ['targetPercent', askDilution({ ...dilution, targetPercent: 0 })],
    ['batchMillilitres', askDilution({ ...dilution, batchMillilitres: NaN })],
    ['haveMillilitres', askStretch({ ...stretched, haveMillilitres: 0.5 })],
    ['stockPercent', askStretch({ ...stretched, fromPercent: -1 })],
    ['targetPercent', askStretch({ ...stretched, toPercent: Infinity })],
    ['targetPercent', askPowder({ ...powder, targetPercent: 99.5 })],
    ['batchMillilitres', askPowder({ ...powder, batchMillilitres: 100_001 })],
  ] as const)('%s is refused beside its field, with what is allowed', (field, found) => {
    const [problem] = errors(found);
    const { low, high, unit } = DILUTION_LIMITS[field];
    expect(problem).toMatchObject({ field, limits: { low, high, unit } });
    expect(problem!.message).toContain(`must be a number from ${low} to`);
  });
});

describe('strengths that cannot be', () => {
  it('says why a figure cannot be', () => {
    const code = (value: number) => dilutionProblem('haveMillilitres', value)?.code;
    // from 1 to 100 000 ml, as the field's own limits say
    expect([1, 100_000].map(code)).toEqual([undefined, undefined]);
    expect([0, -1, 0.5, 100_001, NaN, Infinity].map(code)).toEqual([
      ...['not-positive', 'not-positive', 'too-small', 'too-large', 'not-a-number', 'not-a-number'],
    ]);
  });
});
