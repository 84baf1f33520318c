import { describe, expect, it } from 'vitest';
import { benchInWords, shownAs, writeBench } from '../../../src/core/bench/bench-text';
import { readBench } from '../../../src/core/bench/own-bench';

const BENCH = {
  measures: [
    { quantity: 'coat', of: 'brush-full', range: { low: 54.2, middle: 62.81, high: 72.9 } },
    { quantity: 'solids', of: 'pva', range: { low: 0.52, middle: 0.54, high: 0.56 } },
  ],
  name: 'Kitchen table',
} as const;

describe('a bench as a text', () => {
  it('is read back as it was written', () => {
    expect(readBench(writeBench(BENCH))).toEqual(BENCH);
  });
  it('with four figures of each number', () => {
    const text = writeBench({ measures: [{ ...BENCH.measures[0], range: { low: 54.21987, middle: 60, high: 70 } }] });
    expect(text).toBe('brush-full_coat_54.22_60_70');
  });
  it('and in words, with its name', () => {
    expect(benchInWords(writeBench(BENCH)).replaceAll('\u00a0', ' ')).toBe(
      '“Kitchen table”: a coat of 63 g/m², solids of 54 %',
    );
  });
  it('is nothing in words where the text is none', () => {
    expect(benchInWords('no bench at all')).toBe('');
  });
});

it('shares are shown in per cent', () => {
  expect(shownAs('solids', 0.54)).toBeCloseTo(54, 12);
  expect(shownAs('coat', 62)).toBe(62);
});
