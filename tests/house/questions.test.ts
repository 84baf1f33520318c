/** Every lesson ends in questions that take an answer, and each of them can be told from the others. */
import { describe, expect, test } from 'vitest';
import { questionIds } from '../../src/components/lesson/question-ids';
import { LESSONS } from './support/claims';
import { textOf } from './support/files';

const QUESTION = /<Question\s+asks="([^"]*)"([^>]*)>([\s\S]*?)<\/Question>/g;

describe('every lesson', () => {
  test.for(LESSONS)('%s', (file) => {
    const text = textOf(file);
    const questions = [...text.matchAll(QUESTION)].map(([, asks = '', props = '', inner = '']) => ({
      asks,
      takesNumber: /\bnumber\b/.test(props),
      choices: inner.match(/<Choice\b/g)?.length ?? 0,
      right: inner.match(/<Choice says="[^"]*" right>/g)?.length ?? 0,
    }));
    expect(questions.length, 'a lesson ends in three questions or more').toBeGreaterThanOrEqual(3);
    expect(questionIds(text)).toHaveLength(questions.length);
    expect(new Set(questionIds(text)).size).toBe(questions.length);
    const faults = questions.filter(({ takesNumber, choices, right }) =>
      takesNumber ? choices !== 0 : choices < 2 || right !== 1,
    );
    expect(
      faults.map(({ asks }) => asks),
      'each has two choices or more, one of them right, or takes a number and has none',
    ).toEqual([]);
    expect(text, 'the questions stand within <Questions>, and nothing comes after them').toMatch(
      /<Questions>\s*<Question\b[\s\S]*<\/Question>\s*<\/Questions>\s*$/,
    );
  });
});
