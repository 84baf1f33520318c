/** That the shown rates are those of today's code, and that they keep what the page promises. */
import { describe, expect, it } from 'vitest';
import { PAGE_LEVEL } from '../../src/core/trial/summary';
import { checkSchema } from '../../src/schemas/checks';
import { readRecords } from '../tools/read-content';
import { CELLS, ROWS } from './null-trials';
import { isTopped, PROMISES } from './promises';
import { cellRate, claimRates } from './rates';

const shown = checkSchema.parse(readRecords('checks')['false-claims.yaml']);
if (shown.kind !== 'simulated') throw new Error('false-claims.yaml is of another kind');

/** Standard error of a share that is counted `n` times. */
const errorOf = (share: number, n: number) => Math.sqrt((share * (1 - share)) / n);
/** Enough to find a rate that has doubled; the 2000 of the script take minutes here. */
const FEW = 150;

it('every row is there', () => {
  expect(shown.rows.map(({ id }) => id)).toEqual(ROWS.map(({ id }) => id));
  expect(shown.cells.map(({ id }) => id)).toEqual(CELLS.map(({ id }) => id));
  expect(shown.promises.map(({ id }) => id)).toEqual(PROMISES.map(({ id }) => id));
  expect(shown.trials).toBeGreaterThanOrEqual(2000);
});

describe('where nothing differs', () => {
  const rows = shown.rows.filter(({ differs }) => !differs);
  it.each(rows.map((row) => [row.id, row] as const))('%s: at most 1 page in 20 says that something does', (_, row) => {
    expect(row.either).toBeLessThanOrEqual(PAGE_LEVEL + 3 * errorOf(PAGE_LEVEL, shown.trials));
    expect(row.either).toBeGreaterThanOrEqual(Math.max(row.better, row.weight));
  });
  it.each(rows.map((row) => [row.id, row] as const))('%s: a fresh draw comes out the same', (id, row) => {
    const { draw } = ROWS.find((one) => one.id === id)!;
    const fresh = claimRates(`${id}, drawn anew`, draw, FEW);
    expect(fresh.either).toBeLessThanOrEqual(row.either + 4 * errorOf(Math.max(row.either, 0.01), FEW));
  });
  it.each(CELLS.map(({ id, swatches }) => [id, swatches] as const))(
    '%s: a range is wrong at most 1 time in 20',
    (id, swatches) => {
      const { rate } = shown.cells.find((one) => one.id === id)!;
      expect(rate).toBeLessThanOrEqual(0.05);
      // nine pairings a trial
      expect(Math.abs(cellRate(`${id}, drawn anew`, swatches, FEW) - rate)).toBeLessThanOrEqual(
        4 * errorOf(Math.max(rate, 0.001), 9 * FEW),
      );
    },
  );
});

it('where one adhesive is much worse the page says so nearly always', () => {
  for (const { id, better } of shown.rows.filter(({ differs }) => differs)) {
    expect(better, id).toBeGreaterThan(0.95);
    expect(claimRates(`${id}, drawn anew`, ROWS.find((one) => one.id === id)!.draw, 40).better).toBeGreaterThan(0.9);
  }
});

it('what was told before stands beside each rate, and was worse wherever something was mended', () => {
  expect(shown.rows.map(({ before }) => before)).toEqual(ROWS.map(({ before }) => before));
  expect(shown.cells.map(({ before }) => before)).toEqual(CELLS.map(({ before }) => before));
  expect(shown.promises.map(({ before }) => before)).toEqual(PROMISES.map(({ before }) => before));
  for (const { either, before } of shown.rows.filter(({ differs }) => !differs))
    expect(before.either).toBeGreaterThan(5 * either);
});

describe('what a page promises beside its claims', () => {
  it.each(PROMISES.map((promise) => [promise.id, promise] as const))('%s is kept', (id, { kept }) => {
    const { rate, before } = shown.promises.find((one) => one.id === id)!;
    const aim = id === 'highest-fit' ? 1 : 0.8;
    expect(rate).toBeGreaterThanOrEqual(aim);
    expect(rate).toBeGreaterThan(before);
    expect(kept(`${id}, drawn anew`, FEW)).toBeGreaterThanOrEqual(aim - 4 * errorOf(rate, FEW));
  });
  it('a curve that is not the best is found out', () => {
    const points = [20, 191, 199, 218].map((grams, i) => ({ x: Math.log(grams), passes: i > 1 ? 5 : 0, n: 5 }));
    const level = { intercept: 0, slope: 0 };
    expect(isTopped(points, level)).toBe(true);
  });
});
