import { describe, expect, it } from 'vitest';
import { MOST_READINGS, readings } from '../../../src/core/bench/readings';

const GRAMS = readings({ field: 'before', what: 'weights', low: 0.01, high: 5000, unit: 'g' });

describe('several readings in one field', () => {
  it('apart by spaces or semicolons, with a comma or a point', () => {
    expect(GRAMS.parse(' 41,2 40.9;41 ')).toEqual({ ok: true, value: [41.2, 40.9, 41] });
  });
  it('go into a link and out of it, and into the form', () => {
    expect(GRAMS.read(GRAMS.write([41.2, 0.5]))).toEqual([41.2, 0.5]);
    expect(GRAMS.show([41.2, 0.5])).toBe('41.2 0.5');
  });
  it.for([
    ['', 'empty'],
    ['forty', 'not-a-number'],
    ['41 0', 'not-a-number'],
    ['41 6000', 'not-a-number'],
    [Array.from({ length: MOST_READINGS + 1 }, () => '1').join(' '), 'not-a-number'],
  ] as const)('“%s” is told what is allowed', ([typed, code]) => {
    const found = GRAMS.parse(typed);
    expect(!found.ok && found.errors).toMatchObject([{ field: 'before', code }]);
    expect(!found.ok && found.errors[0]!.message).toMatch(/1 to 10 weights, each from 0\.01 to 5000/);
  });
  it.for(['', '41_', 'a', '41_9000', '1'.repeat(40)])('a link with “%s” holds none', (text) => {
    expect(GRAMS.read(text)).toBeUndefined();
  });
});
