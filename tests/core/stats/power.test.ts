/** What replicates can tell apart: by hand, and the drawn power against the counted. */
import { describe, expect, it } from 'vitest';
import { detectableDifference, planPower, trialPower } from '../../../src/core/stats/power';

describe('one comparison, counted through every outcome', () => {
  it('with 3 each: always against never, not 2 of 3 against 1 of 3', () => {
    const { noticed, fromNever, difference } = detectableDifference(3);
    expect(noticed).toEqual([3, undefined, undefined, undefined]);
    // from never: p³ ≥ 0.8 from 0.9283 on; two rates 1/2 ± g/2: ((1+g)/2)^6 + ((1−g)/2)^6 ≥ 0.8 from 0.927 on
    expect([fromNever, difference]).toEqual([0.93, 0.93]);
    expect(detectableDifference(3, { power: 0.5 }).fromNever).toBe(0.8);
  });
  it('with 1 or 2 each: nothing', () => {
    expect(detectableDifference(2)).toMatchObject({ difference: undefined, fromNever: undefined });
    expect(detectableDifference(1)).toMatchObject({ difference: undefined, noticed: [undefined, undefined] });
  });
  it('three each show a difference only as 3 against 0: p³(1−q)³ and its mirror', () => {
    expect(trialPower(0.9, 0.2, 3)).toBeCloseTo((0.9 * 0.8) ** 3 + (0.1 * 0.2) ** 3, 12);
    expect([trialPower(1, 0, 3), trialPower(1, 0, 2), trialPower(0, 0, 3)]).toEqual([expect.closeTo(1, 12), 0, 0]);
  });
  it('equal rates are called different at most 1 time in 20, whatever they are', () => {
    for (const n of [3, 5, 8])
      for (let rate = 0; rate <= 1; rate += 0.05) expect(trialPower(rate, rate, n)).toBeLessThanOrEqual(0.05 + 1e-9);
  });
  it('at the stated gap it is noticed 4 times in 5, and no longer one step below', () => {
    const { difference = NaN } = detectableDifference(8);
    expect(trialPower(0.5 - difference / 2, 0.5 + difference / 2, 8)).toBeGreaterThanOrEqual(0.8);
    expect(trialPower(0.505 - difference / 2, 0.495 + difference / 2, 8)).toBeLessThan(0.8);
  });
  it('each count on one side has a least count above it on the other, or none', () =>
    detectableDifference(6).noticed.forEach((least, passes) => {
      if (least !== undefined) expect(least).toBeGreaterThan(passes);
    }));
});

describe('a plan, read by the tests that will read it', () => {
  it('the least count that is noticed, by hand', () => {
    // 4 of 4 against none by Boschloo: 2 ÷ 256, below 1 in 40; 3 of 4 against none is 0.0703 (R 4.2.2, brute force)
    expect(planPower({ replicates: 4, blocks: 1, claims: 2 }).noticed).toBe(4);
    // 2 ÷ 256 is not below 0.05 ÷ 7
    expect(planPower({ replicates: 4, blocks: 1, claims: 7 }).noticed).toBeUndefined();
    // in two blocks of three: 2 of 3 against none in each, 2 × (3/15)² = 0.08; 3 of 3, 2 ÷ 400
    expect(planPower({ replicates: 3, blocks: 2, claims: 1 }).noticed).toBe(3);
    // 2 ÷ 400 is 0.05 ÷ 10
    expect(planPower({ replicates: 3, blocks: 2, claims: 10 }).noticed).toBe(3);
    expect(planPower({ replicates: 3, blocks: 2, claims: 11 }).noticed).toBeUndefined();
    // one each in eight blocks: 2 ÷ 2⁸
    expect(planPower({ replicates: 1, blocks: 8, claims: 6 }).noticed).toBe(1);
    expect(planPower({ replicates: 1, blocks: 8, claims: 7 }).noticed).toBeUndefined();
  });
  it.each([
    [8, 1],
    [12, 4],
    [10, 2],
  ])('%i each with %i claims: the drawn gap is the counted one to the step and its error', (replicates, claims) => {
    const { gap = NaN } = planPower({ replicates, blocks: 1, claims });
    const counted = (wide: number) => trialPower(0.5 - wide / 2, 0.5 + wide / 2, replicates, 1 - 0.05 / claims);
    // 400 draws know a chance of 0.8 to 0.02; two of those
    expect(counted(gap)).toBeGreaterThan(0.76);
    expect(counted(gap - 0.05)).toBeLessThan(0.84);
  });
  it('“partly” costs: it takes a wider gap, or there is none', () => {
    for (const shape of [
      { replicates: 8, blocks: 1, claims: 1 },
      { replicates: 6, blocks: 3, claims: 36 },
      { replicates: 4, blocks: 4, claims: 6 },
    ]) {
      const { gap = NaN, gapWithPartly = 2 } = planPower(shape);
      expect(gapWithPartly).toBeGreaterThan(gap);
    }
    expect(planPower({ replicates: 3, blocks: 1, claims: 1 })).toMatchObject({ gap: 0.95, gapWithPartly: undefined });
  });
  it('more claims take a wider gap, more papers a narrower', () => {
    const gap = (blocks: number, claims: number) => planPower({ replicates: 4, blocks, claims }).gap!;
    expect(gap(4, 20)).toBeGreaterThan(gap(4, 1));
    expect(gap(4, 4)).toBeLessThan(gap(2, 4));
  });
});

it('counts that are none are refused', () => {
  for (const call of [
    () => trialPower(0.1, 0.9, 0),
    () => trialPower(0.1, 0.9, 41),
    () => trialPower(0.1, 0.9, 2.5),
    () => trialPower(-0.1, 0.9, 3),
    () => trialPower(0.1, 1.1, 3),
    () => detectableDifference(0),
    () => detectableDifference(3, { confidence: 0.4 }),
    () => detectableDifference(3, { power: 0 }),
    () => planPower({ replicates: 0, blocks: 1, claims: 1 }),
    () => planPower({ replicates: 3, blocks: 0, claims: 1 }),
    () => planPower({ replicates: 3, blocks: 1, claims: 0 }),
  ])
    expect(call).toThrow(RangeError);
});
