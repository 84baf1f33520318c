/** Words that mixes share: how much a scale shows, how thick a mix is beside its base, and what rounding does to its strength. */
import { describe, expect, it, test } from 'vitest';
import type { Dilution } from '../../../src/core/adhesive/dilution';
import { BASIS_APART, likeness, roundedStrength, roundingWords, thicknessWords } from '../../../src/core/mix/words';

describe('how thick a mix is beside its base', () => {
  const words = (thinner: number) => thicknessWords(thinner, 'PVA');
  test.for([
    [0.4, /^about 2\.5 times as thick as PVA$/],
    [0.84, /^about 1\.2 times as thick/],
    [0.85, /^about as thick as PVA$/],
    [1, /^about as thick as PVA$/],
    [1.2, /^about as thick as PVA$/],
    [1.21, /^a little thinner than PVA$/],
    [1.49, /^a little thinner/],
    [1.5, /^about half as thick as PVA$/],
    [3.1, /^about a third as thick/],
    [4, /^about a quarter as thick/],
    [8, /^about an eighth as thick/],
    // nobody feels a ninth from a tenth, or that from a twelfth
    [10, /^about a tenth as thick/],
    [12.4, /^about a tenth as thick/],
    [12.6, /^about 1\/10 as thick/],
    [17, /^about 1\/20 as thick/],
    [30.4, /^about 1\/30 as thick/],
    [30.6, /^far thinner than PVA$/],
  ] as const)('%s times as thin', ([thinner, told]) => {
    expect(words(thinner)).toMatch(told);
  });
});

test('what a viscosity is like: from milk to jelly, each from its own step on (from memory)', () => {
  const words = [1, 14.9, 15, 199, 200, 999, 1000, 4999, 5000, 19999, 20000, 79999, 80000, 1e6].map(likeness);
  const steps = [/milk/, /light oil/, /thin cream/, /paint/, /honey/, /soft jelly/, /stiff jelly/];
  steps.forEach((step, i) => {
    expect(words[2 * i]).toMatch(step);
    expect(words[2 * i + 1]).toMatch(step);
  });
});

describe('what rounding does to the strength', () => {
  it('nothing is said of half a per cent of it', () => {
    expect(roundingWords(10, 10.04)).toBeUndefined();
    expect(roundingWords(10, 9.96)).toBeUndefined();
    expect(roundingWords(10, 10.06)).toMatch(/comes to 10\.1 % in place of 10 %: 0\.6 % stronger/);
  });
  test.for([
    [10.4, /4 % stronger, too little to notice/],
    [9.6, /4 % weaker, too little to notice/],
    [10.51, /5 % stronger, noticeable; a finer scale/],
    [9.4, /6 % weaker, noticeable/],
    [11.2, /12 % stronger, noticeable/],
    [11.49, /15 % stronger, noticeable/],
    [11.51, /15 % stronger, too much/],
    [8, /20 % weaker, too much/],
  ] as const)('%s for 10', ([made, told]) => {
    expect(roundingWords(10, made)).toMatch(told);
  });
});

it('above a tenth the two ways of counting part company: which needs more is said', () => {
  expect(BASIS_APART(12, 7)).toMatch(/12 % would need 7 % more/);
  expect(BASIS_APART(12, -7)).toMatch(/12 % would need 7 % less/);
});

describe('the strength of a dilution as a jug measures it', () => {
  // 8 g in 100 ml of stock, which weigh 104 g
  const dilution = (stockMillilitres: number, waterMillilitres: number) =>
    ({
      stockMillilitres,
      waterMillilitres,
      stockGrams: stockMillilitres * 1.04,
      solidsGrams: stockMillilitres * 0.08,
    }) as Dilution;
  it('what comes out whole stays as it is: 8 g in 400 ml, or in 404 g', () => {
    expect(roundedStrength(dilution(100, 300), 'w/v')).toBeCloseTo(2, 9);
    expect(roundedStrength(dilution(100, 300), 'w/w')).toBeCloseTo(800 / 404, 9);
  });
  it('is that of the rounded parts: 103.3 ml is 105 on the jug; of nothing of the stock it is nothing', () => {
    expect(roundedStrength(dilution(0.01, 300), 'w/v')).toBe(0);
    expect(roundedStrength(dilution(103.3, 300), 'w/v')).toBeCloseTo((100 * 105 * 0.08) / 405, 9);
    expect(roundedStrength(dilution(103.3, 300), 'w/w')).toBeCloseTo((100 * 105 * 0.08) / (105 * 1.04 + 300), 9);
  });
});

describe('thickness in words', () => {
  it('says how thick a mix is beside its base', () => {
    const words = (thinner: number) => thicknessWords(thinner, 'paste');
    expect([0.85, 1, 1.2].map(words)).toEqual(Array(3).fill('about as thick as paste'));
    expect(words(0.5)).toBe('about 2 times as thick as paste');
    expect(words(0.84)).toMatch(/^about 1\.2 times/);
    expect(words(1.3)).toBe('a little thinner than paste');
    expect(words(2)).toBe('about half as thick as paste');
    expect(words(6.2)).toBe('about a sixth as thick as paste');
    expect(words(30.4)).not.toContain('far thinner');
    expect(words(31)).toBe('far thinner than paste');
  });
});
