import { expect, it } from 'vitest';
import { clockText, isWorthAClock } from '../../../src/core/base/clock-text';

it.for([
  [0, '0:00'],
  [7.9, '0:07'],
  [60, '1:00'],
  [3599, '59:59'],
  [3900, '1:05:00'],
] as const)('%d s stand on a clock as %s', ([seconds, text]) => {
  expect(clockText(seconds)).toBe(text);
});

it.for([
  [0.5, false],
  [2.99, false],
  [3, true],
  [45, true],
  [1800, true],
  [1801, false],
] as const)('a clock for %d s: %s', ([seconds, worth]) => {
  expect(isWorthAClock(seconds)).toBe(worth);
});
