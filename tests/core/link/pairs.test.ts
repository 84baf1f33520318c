/** Links as pairs of key and value, and the fingerprint of an answer. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { figuresIn, fingerprint, parsePairs, sameFigures, writePairs } from '../../../src/core/link/pairs';

describe('key=value pairs', () => {
  const map = (text: unknown) => Object.fromEntries(parsePairs(text).query);
  it('reads pairs with or without a mark before them', () => {
    expect(map('a=1&b=two+words&c=%C3%A9')).toEqual({ a: '1', b: 'two words', c: 'é' });
    expect(map('?a=1')).toEqual({ a: '1' });
    expect(map('#a=1')).toEqual({ a: '1' });
    expect(map('a?=1&b=?')).toEqual({ 'a?': '1', b: '?' });
    expect(map('=1&x&y=')).toEqual({ y: '' });
    expect(map(7)).toEqual({});
  });
  it('reads a link that a program on its way has escaped once more', () => {
    const pairs = { paper: 'kozo-tissue~named Grey & blue', on: 'glass' };
    const link = writePairs(Object.entries(pairs));
    expect(map(`?${encodeURIComponent(link)}`)).toEqual(pairs);
    expect(map(link.replace('&', '&amp;'))).toEqual(pairs);
  });
  it('names what cannot be read', () => {
    expect(parsePairs('a=%E0%A4%A&b=1')).toEqual({ query: new Map([['b', '1']]), broken: ['a'] });
  });
  it('cuts a text of more than 4000 characters between two pairs, and says so', () => {
    const fits = `a=1&b=${'9'.repeat(3994)}`;
    expect(fits).toHaveLength(4000);
    expect(parsePairs(fits).broken).toEqual([]);
    const long = `a=1&b=${'9'.repeat(3995)}`;
    expect(map(long)).toEqual({ a: '1' });
    expect(parsePairs(long).broken).toEqual(['all past its first 4000 characters']);
    expect(map('9'.repeat(5000))).toEqual({});
    // the mark before a pair that begins at the very end counts as the end of the last
    expect(Object.keys(map(`a=${'1'.repeat(3998)}&b=2`))).toEqual(['a']);
  });
  it('writes what it reads', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 60 }), (text) => {
        expect(map(writePairs([['k', text]]))).toEqual({ k: text });
      }),
    );
  });
  it('knows an answer by its figures, to 2 %', () => {
    expect(fingerprint(3, [1234.5, 0.5])).toBe('3_1230_0.5');
    expect(figuresIn('3_1230_0.5')).toEqual([1230, 0.5]);
    for (const text of ['', '3', 'x_1', '3_1_2_3_4_5_6_7', '3_-1', '3_1e9']) expect(figuresIn(text)).toBeUndefined();
    expect(sameFigures('1_100_50', '2_102_50')).toBe(true);
    expect(sameFigures('1_100_50', '1_103_50')).toBe(false);
    expect(sameFigures('1_103', '1_100')).toBe(false);
    expect(sameFigures('1_98', '1_100')).toBe(true);
    expect(sameFigures('1_97', '1_100')).toBe(false);
    expect(sameFigures('1_100', '1_100_50')).toBe(false);
    expect(sameFigures('nonsense', 'nonsense')).toBe(false);
    expect(sameFigures('1_0', '1_0')).toBe(true);
  });
});
