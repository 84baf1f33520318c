import { expect, test, vi } from 'vitest';
import { memoize } from '../../../src/core/base/memoize';

test('the same question is worked out once, also when its answer is undefined', () => {
  const work = vi.fn((n: number) => (n > 0 ? n * n : undefined));
  const square = memoize(work);
  expect([square(3), square(3), square(-1), square(-1), square(4)]).toEqual([9, 9, undefined, undefined, 16]);
  expect(work).toHaveBeenCalledTimes(3);
});

test('questions are told apart by their key', () => {
  const work = vi.fn((a: number, b: number) => a + b);
  const sum = memoize(work, (a, b) => `${a} ${b}`);
  expect([sum(1, 2), sum(2, 1), sum(1, 2)]).toEqual([3, 3, 3]);
  expect(work).toHaveBeenCalledTimes(2);
});

test('of no more answers than are kept the oldest goes', () => {
  const work = vi.fn((n: number) => n);
  const last = memoize(work, (n) => n, 2);
  for (const n of [1, 2, 1, 3, 2, 3, 1]) last(n);
  // 1, 2, then 3 in the place of 1, then 1 in the place of 2
  expect(work.mock.calls.flat()).toEqual([1, 2, 3, 1]);
});

test('what throws is asked again', () => {
  let broken = true;
  const open = memoize((name: string) => {
    if (broken) throw new Error(name);
    return name;
  });
  expect(() => open('a')).toThrow('a');
  broken = false;
  expect(open('a')).toBe('a');
});
