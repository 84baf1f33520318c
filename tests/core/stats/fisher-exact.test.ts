/** Fisher's exact test, against published tables and R. */
import { describe, expect, it } from 'vitest';
import { fisherExact, type TwoByTwo } from '../../../src/core/stats/fisher-exact';

const ALL: TwoByTwo = [
  [4, 0],
  [0, 4],
];
const MOST: TwoByTwo = [
  [3, 1],
  [1, 3],
];

describe('the lady tasting tea', () => {
  it('three of four: p = 0.2429 (R help of fisher.test, after Agresti)', () =>
    expect(fisherExact(MOST, 'greater')).toBeCloseTo(0.2429, 4));
  it('by hand: 70 ways to choose four cups of eight, one of them right, sixteen with three right', () => {
    expect(fisherExact(ALL, 'greater')).toBeCloseTo(1 / 70, 12);
    expect(fisherExact(ALL)).toBeCloseTo(2 / 70, 12);
    expect(fisherExact(ALL, 'less')).toBeCloseTo(1, 12);
    expect(fisherExact(MOST, 'greater')).toBeCloseTo(17 / 70, 12);
  });
});

it('twins of convicts, Fisher 1962 (R help of fisher.test prints 0.0005367; R 4.2.2 gives more digits)', () => {
  const twins: TwoByTwo = [
    [2, 15],
    [10, 3],
  ];
  expect(fisherExact(twins)).toBeCloseTo(0.000536724119143, 12);
  const other: TwoByTwo = [
    [7, 12],
    [8, 3],
  ];
  expect(fisherExact(other)).toBeCloseTo(0.128135932034, 11);
});

it('a table of nothing tells nothing', () => {
  const none: TwoByTwo = [
    [0, 0],
    [0, 0],
  ];
  expect(fisherExact(none)).toBe(1);
});

it.each([
  [1.5, 1, 1, 1],
  [1, -1, 1, 1],
  [1, 1, 1, 10_001],
])('%d, %d, %d, %d are no counts', (a, b, c, d) => {
  const table: TwoByTwo = [
    [a, b],
    [c, d],
  ];
  expect(() => fisherExact(table)).toThrow(RangeError);
});
