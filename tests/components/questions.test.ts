/** The number that a question wants is the one that its answer computed; a question's name is its first words. */
import { describe, expect, test } from 'vitest';
import { expectedIn } from '../../src/components/lesson/expected';
import { questionId, questionIds } from '../../src/components/lesson/question-ids';

const span = (text: string) => `<p>It is <span class="number" data-at="1">${text}</span>.</p>`;

describe('the number that is wanted', () => {
  test.for([
    ['280 ml', 280, 'ml'],
    ['1\u2009200\u00a0g', 1200, 'g'],
    ['about 0.35 g/cm³', 0.35, 'g/cm³'],
    ['15 %', 15, '%'],
    ['12', 12, ''],
  ] as const)('%s', ([text, is, unit]) => expect(expectedIn(span(text), 0)).toEqual({ is, unit }));
  test('is the one at its place', () => {
    expect(expectedIn(span('31 g') + span('62 g'), 1)).toEqual({ is: 62, unit: 'g' });
  });
  test.for(['3 to 5 g', '3–5 g', 'half a minute', ''])('“%s” is not one, and the build stops', (text) => {
    expect(() => expectedIn(span(text), 0)).toThrow(/is not one number/);
  });
  test('a place that is empty stops the build', () => {
    expect(() => expectedIn(span('31 g'), 1)).toThrow(/place 1 .* is empty/);
  });
});

test('a question is named by its first words', () => {
  expect(questionId('You’ve laid a sheet, 30 g/m², on glass. Which?')).toBe('youve-laid-a-sheet-30-g');
  expect(questionIds('<Question asks="How thick is it?" number>\n<Question asks="Why?">')).toEqual([
    'how-thick-is-it',
    'why',
  ]);
});
