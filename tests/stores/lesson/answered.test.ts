// @vitest-environment happy-dom
/** What was answered is kept, counted and forgotten; a browser that keeps nothing is told apart. */
import { beforeEach, expect, test } from 'vitest';
import { ANSWERED_KEY, answeredIn, forgetAnswered, keepAnswered } from '../../../src/stores/lesson/answered';

beforeEach(() => {
  for (const lesson of ['grain', 'sizing']) forgetAnswered(lesson, localStorage);
  localStorage.clear();
});

test('an answer is kept once, beside those of other lessons', () => {
  for (const question of ['a', 'b', 'a']) expect(keepAnswered('grain', question, localStorage)).toBe(true);
  keepAnswered('sizing', 'c', localStorage);
  expect([...answeredIn('grain', localStorage)]).toEqual(['a', 'b']);
  expect(JSON.parse(localStorage.getItem(ANSWERED_KEY)!)).toEqual({ grain: ['a', 'b'], sizing: ['c'] });
});

test('a lesson is forgotten without the others, and with the last nothing stays', () => {
  keepAnswered('grain', 'a', localStorage);
  keepAnswered('sizing', 'c', localStorage);
  forgetAnswered('grain', localStorage);
  expect(answeredIn('grain', localStorage).size).toBe(0);
  expect([...answeredIn('sizing', localStorage)]).toEqual(['c']);
  forgetAnswered('sizing', localStorage);
  expect(localStorage.getItem(ANSWERED_KEY)).toBeNull();
});

test.for(['', 'null', '[]', '{"grain": 7}', '{"grain": [1, "a"]}', '{'])('what is kept may be anything: %s', (text) => {
  localStorage.setItem(ANSWERED_KEY, text);
  expect([...answeredIn('grain', localStorage)].every((id) => id === 'a')).toBe(true);
});

test('without storage, or with one that refuses, it counts for the visit and says that it is not kept', () => {
  const refuses = {
    getItem: () => null,
    setItem: () => {
      throw new Error('full');
    },
  } as unknown as Storage;
  expect(keepAnswered('grain', 'a', undefined)).toBe(false);
  expect(keepAnswered('grain', 'b', refuses)).toBe(false);
  expect([...answeredIn('grain', undefined)]).toEqual(['a', 'b']);
});
