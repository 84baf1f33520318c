/** Answers to questions with a number: what is right, what is nearly right, and what is no number. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { judgeNumber, type NumberWanted } from '../../../src/stores/lesson/judge';

// 40 g of starch at 1:7 by mass: 7 × 40 = 280
const wanted: NumberWanted = {
  is: 280,
  within: 2,
  unit: 'ml',
  slips: [{ is: 240, because: 'That is 1:6.' }],
};
const verdict = (typed: string) => judgeNumber(typed, wanted).verdict;

describe('a number', () => {
  test.for(['280', ' 280 ', '280 ml', '280ML', '278', '282', '280,0', '+280'])('%s is right', (typed) => {
    expect(verdict(typed)).toBe('right');
  });
  test.for(['277.9', '282.1', '28', '0', '-280', '1e3 ml'])('%s is not', (typed) => {
    expect(verdict(typed)).not.toBe('right');
  });
  test('says which way it is wrong', () => {
    expect(judgeNumber('300', wanted).says).toMatch(/too large/);
    expect(judgeNumber('200', wanted).says).toMatch(/too small/);
  });
  test('knows a common slip, and a decimal point that is out of place', () => {
    expect(judgeNumber('240', wanted).says).toMatch(/That is 1:6/);
    for (const typed of ['28', '2800', '0.28']) expect(judgeNumber(typed, wanted).says).toMatch(/decimal point/);
  });
  test.for(['', 'ml', 'a cup', '2 or 3', 'NaN', 'Infinity'])(
    '“%s” is not judged, and the message says what is',
    (typed) => {
      expect(judgeNumber(typed, wanted)).toEqual({
        verdict: 'unread',
        says: 'Type a number in ml, such as 12 or 0.5.',
      });
    },
  );
  test('is right within the tolerance and wrong outside it, whatever is wanted', () => {
    fc.assert(
      fc.property(fc.integer({ min: -9999, max: 9999 }), fc.integer({ min: 1, max: 50 }), (is, within) => {
        const judged = (typed: number) => judgeNumber(String(typed), { is, within, unit: '', slips: [] }).verdict;
        expect(judged(is + within)).toBe('right');
        expect(judged(is - within - 1)).toBe('wrong');
      }),
    );
  });
  test('says something, whatever is typed', () => {
    fc.assert(fc.property(fc.string(), (typed) => judgeNumber(typed, wanted).says !== ''));
  });
});
