/** Searching and ordering the shelf. */
import { expect, test } from 'vitest';
import { ordered, says } from '../../src/components/shelf/record-tools';
import { sortValue } from '../../src/components/shelf-rows';

test('a record is found by any of its words, in any order, whatever its accents and capitals', () => {
  const text = 'Crêpe paper. Textured; lightly sized; no grain';
  expect(says(text, 'crepe')).toBe(true);
  expect(says(text, 'GRAIN crê')).toBe(true);
  expect(says(text, '  lightly   sized ')).toBe(true);
  expect(says(text, '')).toBe(true);
  expect(says(text, 'crepe embossed')).toBe(false);
});

test('records stand by name, or by a figure either way, those without one last', () => {
  const names = ['b', 'a', 'c', 'd'];
  const figures = [20, 100, undefined, 3];
  expect(ordered(names, figures, 'family')).toEqual([0, 1, 2, 3]);
  expect(ordered(names, figures, 'name')).toEqual([1, 0, 2, 3]);
  expect(ordered(names, figures, '0 up')).toEqual([3, 0, 1, 2]);
  expect(ordered(names, figures, '0 down')).toEqual([1, 0, 3, 2]);
  expect(ordered(['b', 'a'], [5, 5], '0 down')).toEqual([1, 0]);
});

test('a cell is ordered by the middle of its number, by yes, partly and no, or not at all', () => {
  const number = { low: 10, high: 40, unit: 'g/m²', basis: 'estimate' } as const;
  expect(sortValue({ ...number, middle: 30 })).toBe(30);
  expect(sortValue(number)).toBe(20); // the geometric mean of 10 and 40
  expect(['no', 'partly', 'yes'].map(sortValue)).toEqual([0, 1, 2]);
  expect(sortValue('0.75')).toBe(0.75);
  expect(sortValue('10\u202f000')).toBe(10_000);
  expect(sortValue(undefined)).toBeUndefined();
  expect(sortValue('by hand')).toBeUndefined();
});
