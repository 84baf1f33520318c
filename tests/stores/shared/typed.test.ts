/** What was typed before a calculator's script had come, as the texts of its fields. */
import { expect, it } from 'vitest';
import { isTyped, textsTyped } from '../../../src/stores/shared/typed';

const FIELDS = { weight: 0, on: 0, needs: 0 };

it('fields are known by their ids without the prefix; what is none of them is left out', () => {
  const typed = { 'ch-weight': '55', 'ch-on': 'glass', 'ch-link': 'x', 'other-weight': '7', 'ch-needs': true };
  expect(textsTyped({ typed, prefix: 'ch-' }, FIELDS)).toEqual({ weight: '55', on: 'glass' });
});

it('text stays as it was typed, sense or none', () => {
  expect(textsTyped({ typed: { weight: ' heavy ' }, prefix: '' }, FIELDS)).toEqual({ weight: ' heavy ' });
  expect(textsTyped({ typed: { weight: '' }, prefix: '' }, FIELDS)).toEqual({ weight: '' });
});

it('nothing typed is nothing', () => {
  expect(textsTyped({ prefix: 'ch-' }, FIELDS)).toEqual({});
  expect([isTyped(undefined), isTyped({}), isTyped({ a: '' })]).toEqual([false, false, true]);
});
