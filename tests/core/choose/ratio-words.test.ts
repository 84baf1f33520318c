/** The best ratio in words, from curves made by hand. */
import { describe, expect, it, test } from 'vitest';
import { bestRatio, type RatioCurve } from '../../../src/core/choose/best-ratio';
import { DEFAULT_JOB } from '../../../src/core/choose/job';
import { chanceAt, ratiosTold, ratioTold } from '../../../src/core/choose/ratio-words';
import { catalogue } from '../../../src/data/catalogue';

const method = { face: 'sheet', tool: 'brush-full', wait: 'none', minutes: 0, press: 'weight' } as const;
const curve = (chances: readonly number[], rest: Partial<RatioCurve>): RatioCurve => {
  const points = chances.map((chance, i) => ({ share: i / (chances.length - 1), chance, method }));
  return { of: 'pva', with: 'methylcellulose-2-5', points, best: points[0]!, easy: [1, 1], ...rest };
};
const told = (chances: readonly number[], rest: Partial<RatioCurve>) =>
  ratioTold(curve(chances, rest), DEFAULT_JOB, catalogue);

describe('a run that works', () => {
  const found = told([0.1, 0.9, 0.9, 0.9, 0.2], { works: { from: 0.25, to: 0.75 }, easy: [2, 1] });
  it('says the parts, one singular, and what they are worth', () => {
    expect(found.advice).toBe(
      'Mix 2 parts of PVA with 1 part of methylcellulose at 2.5 %, by volume. The chance that it works is about 9 in 10.',
    );
    expect(found.brief).toBe('2 : 1');
    expect(found.share).toBeCloseTo(2 / 3);
  });
  it('says how far one may stray, in tenths', () => {
    expect(found.leeway).toMatch(/anything from 2½ parts to 7½ of PVA in 10/);
  });
  it('up to an end is said as such', () => {
    const up = told([0.1, 0.9, 0.9], { works: { from: 0.5, to: 1 }, easy: [3, 1] });
    expect(up.leeway).toMatch(/from 5 parts of PVA in 10 up to nothing else/);
  });
  it('that is narrow asks for care', () => {
    expect(told([0.1, 0.9, 0.1], { works: { from: 0.5, to: 0.5 } }).leeway).toMatch(/with care/);
  });
});

it('one alone is used at the strength that the answer names, and nothing is said of leeway', () => {
  const found = told([0.9, 0.5, 0.4], { works: { from: 0, to: 0 }, easy: [0, 1] });
  expect(found.advice).toMatch(/^Nothing is gained by mixing PVA into methylcellulose here: use it alone\./);
  expect(found.parts).toEqual([{ of: 'methylcellulose-2-5', parts: 1 }]);
  expect(found.leeway).toBe('');
  expect(found.brief).toBe('alone');
});
it('where nothing works, that comes first', () => {
  const found = told([0.1, 0.3, 0.1], { easy: [1, 1] });
  expect(found.advice).toMatch(
    /^No mix of PVA and methylcellulose at 2.5 % is likely to work here\. The least bad is 1 part of PVA, 1 part of/,
  );
  expect(found.works).toBeUndefined();
});

test('between two points the chance lies between theirs', () => {
  const { points } = curve([0, 1, 0.5], {});
  expect([0, 0.25, 0.5, 0.75, 1].map((share) => chanceAt(points, share))).toEqual([0, 0.5, 1, 0.75, 0.5]);
});

test('the pair that the answer is made of comes first', () => {
  const found = bestRatio(DEFAULT_JOB, catalogue, [])!;
  const first = (kind: string) => {
    const [pair] = ratiosTold(found, kind, DEFAULT_JOB, catalogue).pairs;
    return `${pair!.of} and ${pair!.with}`;
  };
  expect(first('ether+vinyl')).toMatch(/PVA and methylcellulose/);
  expect(first('starch+vinyl')).toMatch(/PVA and wheat/);
  expect(first('ether+starch')).toMatch(/wheat.* and methylcellulose/);
});
