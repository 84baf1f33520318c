/** A bow in words, on spans of a metre: 20 mm passes, 8 mm where it must lie flat (common practice, no source), and a quarter of the span is a roll. */
import { describe, expect, it, test } from 'vitest';
import { bowBrief, bowWords, liesHow, tenths } from '../../../src/core/flat/words';

const bow = (low: number, high: number, span = 1000) => ({ low, middle: (low + high) / 2, high, span });
const words = (low: number, high: number, span?: number) => bowWords(bow(low, high, span)).replaceAll('\u00a0', ' ');
const brief = (low: number, high: number, span?: number) => bowBrief(bow(low, high, span)).replaceAll('\u00a0', ' ');

test('millimetres to a tenth below ten, whole above, without their sign', () => {
  expect([1.24, -1.24, 9.94, 0].map(tenths)).toEqual(['1.2', '1.2', '9.9', '0']);
  expect([9.95, 10.4, -12.6, 123.4].map(tenths)).toEqual(['10', '10', '13', '123']);
});

describe('how far, and towards which face', () => {
  test.for([
    [1.2, 3, '1.2 to 3 mm towards the paper'],
    [-3, -1.2, '1.2 to 3 mm away from the paper'],
    [2, 2, '2 mm towards the paper'],
    [-2, -2, '2 mm away from the paper'],
    // alike to a tenth is one figure
    [2.01, 2.04, '2 mm towards the paper'],
    [-1, 3, '1 mm away to 3 mm towards the paper'],
    [-3, 1, '3 mm away to 1 mm towards the paper'],
    // one end that nobody could measure is no other side
    [-0.04, 3, '0 to 3 mm towards the paper'],
    [-3, 0.04, '0 to 3 mm away from the paper'],
    [0, 3, '0 to 3 mm towards the paper'],
    [-3, 0, '0 to 3 mm away from the paper'],
    [-0.05, 3, '0.1 mm away to 3 mm towards the paper'],
    [-3, 0.05, '3 mm away to 0.1 mm towards the paper'],
  ] as const)('%s to %s', ([low, high, told]) => {
    expect(words(low, high)).toBe(told);
  });
  it('flat within a twentieth of a millimetre, both ends', () => {
    expect(words(-0.04, 0.04)).toMatch(/^flat within 0\.05 mm$/);
    expect(words(0, 0.049)).toMatch(/^flat/);
    expect(words(0.05, 0.05)).toBe('0.1 mm towards the paper');
    expect(words(-0.05, -0.05)).toBe('0.1 mm away from the paper');
    expect(words(0.04, 0.2)).not.toMatch(/^flat/);
    expect(words(-0.2, -0.04)).not.toMatch(/^flat/);
  });
  it('past a quarter of the span it rolls up, and no range is claimed', () => {
    expect(words(20, 30, 100)).toBe('more than 25 mm towards the paper: it rolls up');
    expect(words(-30, -20, 100)).toBe('more than 25 mm away from the paper: it rolls up');
    expect(words(20, 28, 100)).toBe('20 to 28 mm towards the paper');
  });
});

describe('the same, for a strip', () => {
  test.for([
    [2, 4, 'about 3 mm'],
    [-4, -2, 'about 3 mm'],
    [-1, 3, 'up to 3 mm, either way'],
    [-3, 1, 'up to 3 mm, either way'],
    [-0.04, 0.06, 'flat'],
    [0, 0.1, 'about 0.1 mm'],
    [-0.04, 3.04, 'about 1.5 mm'],
  ] as const)('%s to %s', ([low, high, told]) => {
    expect(brief(low, high)).toBe(told);
  });
  it('over so much where it rolls up', () => {
    expect(brief(20, 30, 100)).toBe('over 25 mm');
    // either way does not matter any more
    expect(brief(-10, 60, 100)).toBe('over 25 mm');
  });
});

describe('whether it will lie flat', () => {
  const still = bow(0, 0);
  test.for([
    [0, 8, 'flat'],
    [-8, 0, 'flat'],
    [0, 8.1, 'nearly'],
    [-8.1, 2, 'nearly'],
    [0, 20, 'nearly'],
    [-20, -19, 'nearly'],
    // some of the range passes, so it may
    [19, 20.1, 'may-warp'],
    [20, 40, 'may-warp'],
    [-40, -20, 'may-warp'],
    [-30, 30, 'may-warp'],
    [-40, 25, 'may-warp'],
    [0, 40, 'may-warp'],
    // none of it does, so it will
    [20.1, 40, 'warps'],
    [-40, -20.1, 'warps'],
  ] as const)('%s to %s mm on a metre', ([low, high, lies]) => {
    expect(liesHow({ width: bow(low, high), height: still })).toBe(lies);
    expect(liesHow({ width: still, height: bow(low, high) })).toBe(lies);
  });
  it('as a share of the span: what warps a hand’s breadth bows a metre a little', () => {
    const lies = (span: number) => liesHow({ width: bow(9, 9, span), height: still });
    expect([100, 1000, 2000].map(lies)).toEqual(['warps', 'nearly', 'flat']);
  });
});
