/** The statistics of trials at the ends of what they take, and in their tails; figures from elsewhere where named, else by hand. */
import { describe, expect, it } from 'vitest';
import { boschlooExact, fisherExact, mcnemarExact } from '../../../src/core/stats/compare';
import { betaQuantile, binomialChance, binomialUpTo, normalQuantile, zFor } from '../../../src/core/stats/functions';
import { firthLine, hasSpread, penalised, profileThrough } from '../../../src/core/stats/firth';
import { clopperPearsonInterval, wilsonInterval } from '../../../src/core/stats/intervals';
import { permutationTest } from '../../../src/core/stats/permutation';
import { detectableDifference, trialPower } from '../../../src/core/stats/power';
import { passThreshold } from '../../../src/core/stats/threshold';

const fails = (...calls: readonly (() => unknown)[]) => {
  for (const call of calls) expect(call).toThrow(RangeError);
};

describe('counts that are none are refused, and the ends are taken', () => {
  it('Fisher and McNemar', () => {
    fails(
      () =>
        fisherExact([
          [1.5, 1],
          [1, 1],
        ]),
      () =>
        fisherExact([
          [1, -1],
          [1, 1],
        ]),
      () =>
        fisherExact([
          [1, 1],
          [1, 10_001],
        ]),
      () => mcnemarExact(1.5, 1),
      () => mcnemarExact(1, -1),
    );
    // [[3, 0], [0, 3]]: 1 of the 20 ways to choose three of six, and its mirror
    expect(
      fisherExact([
        [3, 0],
        [0, 3],
      ]),
    ).toBeCloseTo(0.1, 12);
    expect(
      fisherExact(
        [
          [3, 0],
          [0, 3],
        ],
        'greater',
      ),
    ).toBeCloseTo(0.05, 12);
    expect(
      fisherExact(
        [
          [3, 0],
          [0, 3],
        ],
        'less',
      ),
    ).toBeCloseTo(1, 12);
    expect(
      fisherExact([
        [0, 0],
        [0, 0],
      ]),
    ).toBe(1);
    // five pairs one way and none the other: twice 1/32
    expect(mcnemarExact(5, 0)).toBeCloseTo(0.0625, 12);
    expect(mcnemarExact(0, 5)).toBeCloseTo(0.0625, 12);
    expect(mcnemarExact(0, 0)).toBe(1);
    // one against one: 2 × (1/4 + 2/4) is more than 1
    expect(mcnemarExact(1, 1)).toBe(1);
  });
  it('Boschloo', () => {
    fails(
      () => boschlooExact({ passes: 1, n: 0 }, { passes: 0, n: 3 }),
      () => boschlooExact({ passes: 4, n: 3 }, { passes: 0, n: 3 }),
      () => boschlooExact({ passes: 1, n: 3 }, { passes: 0.5, n: 3 }),
      () => boschlooExact({ passes: 1, n: 2.5 }, { passes: 0, n: 3 }),
      () => boschlooExact({ passes: 1, n: 201 }, { passes: 0, n: 3 }),
    );
    // 1 of 1 against 0 of 1: worst at a rate of a half, where each of the two extremes has a quarter
    expect(boschlooExact({ passes: 1, n: 1 }, { passes: 0, n: 1 }, 'greater')).toBeCloseTo(0.25, 12);
    expect(boschlooExact({ passes: 0, n: 1 }, { passes: 1, n: 1 }, 'less')).toBeCloseTo(0.25, 12);
    // all against none of three: 2 × (1/2)^6
    expect(boschlooExact({ passes: 3, n: 3 }, { passes: 0, n: 3 })).toBeCloseTo(2 / 64, 9);
  });
  it('intervals', () => {
    fails(
      () => wilsonInterval(1, 0),
      () => wilsonInterval(4, 3),
      () => wilsonInterval(1, 2.5),
      () => wilsonInterval(1, 3, 0.49),
      () => wilsonInterval(1, 100_001),
      () => clopperPearsonInterval(0.5, 3),
      () => clopperPearsonInterval(1, 3, 0.99999),
    );
    expect(wilsonInterval(1.5, 3).estimate).toBe(0.5);
    expect([wilsonInterval(0, 3).low, wilsonInterval(3, 3).high]).toEqual([0, 1]);
    // none of n: the upper end is 1 − (α/2)^(1/n)
    expect(clopperPearsonInterval(0, 3).high).toBeCloseTo(1 - 0.025 ** (1 / 3), 9);
    expect(clopperPearsonInterval(3, 3).low).toBeCloseTo(0.025 ** (1 / 3), 9);
    expect([clopperPearsonInterval(0, 3).low, clopperPearsonInterval(3, 3).high]).toEqual([0, 1]);
  });
  it('power', () => {
    fails(
      () => trialPower(0.1, 0.9, 0),
      () => trialPower(0.1, 0.9, 41),
      () => trialPower(0.1, 0.9, 2.5),
      () => trialPower(-0.1, 0.9, 3),
      () => trialPower(0.1, 1.1, 3),
      () => detectableDifference(0),
      () => detectableDifference(2.5),
      () => detectableDifference(3, { confidence: 0.4 }),
      () => detectableDifference(3, { power: 0 }),
    );
    // always against never is noticed or it is not: of three each at 1 in 32, yes; of two at 1 in 8, no
    expect(trialPower(1, 0, 3)).toBeCloseTo(1, 12);
    expect(trialPower(1, 0, 2)).toBe(0);
    // at equal rates of 0 or 1 the two never differ
    expect(trialPower(0, 0, 3)).toBe(0);
    // three each show a difference only as 3 against 0: p³(1−q)³ and its mirror
    expect(trialPower(0.9, 0.2, 3)).toBeCloseTo((0.9 * 0.8) ** 3 + (0.1 * 0.2) ** 3, 12);
    const three = detectableDifference(3);
    expect(three.noticed).toEqual([3, undefined, undefined, undefined]);
    // from never: p³ ≥ 0.8 from 0.9283 on; two rates 1/2 ± g/2: ((1+g)/2)^6 + ((1−g)/2)^6 ≥ 0.8 from 0.927 on
    expect(three.fromNever).toBe(0.93);
    expect(three.difference).toBe(0.93);
    expect(detectableDifference(2)).toMatchObject({ difference: undefined, fromNever: undefined });
    expect(detectableDifference(3)).toBe(three);
    expect(detectableDifference(3, { power: 0.5 }).fromNever).toBe(0.8);
  });
});

describe('functions', () => {
  it('the normal quantile in the middle and in both tails (Python’s NormalDist, to sixteen digits)', () => {
    for (const [p, z] of [
      [0.5, 0],
      [0.9, 1.2815516],
      [0.075, -1.4395315],
      [0.975, 1.959964],
      [0.999999, 4.7534243],
      [1e-10, -6.3613409],
      [1e-13, -7.3487961],
    ] as const)
      expect(normalQuantile(p)).toBeCloseTo(z, 5);
    fails(
      () => normalQuantile(0),
      () => normalQuantile(1),
      () => zFor(0.4),
      () => zFor(1),
    );
    expect(zFor(0.95)).toBeCloseTo(1.959964, 5);
  });
  it('binomial chances at certain rates, and the beta’s ends', () => {
    expect([0, 1, 2].map((k) => binomialChance(k, 2, 0.5))).toEqual(
      [0.25, 0.5, 0.25].map((x) => expect.closeTo(x, 12)),
    );
    expect([
      binomialChance(0, 3, 0),
      binomialChance(1, 3, 0),
      binomialChance(3, 3, 1),
      binomialChance(2, 3, 1),
    ]).toEqual([...[1, 0, 1, 0]]);
    expect(binomialUpTo(1, 2, 0.5)).toBeCloseTo(0.75, 12);
    expect([betaQuantile(0, 2, 3), betaQuantile(1, 2, 3)]).toEqual([0, 1]);
    // beta(1, 1) is even, beta(2, 1) has the square root for its quantile
    expect(betaQuantile(0.3, 1, 1)).toBeCloseTo(0.3, 9);
    expect(betaQuantile(0.49, 2, 1)).toBeCloseTo(0.7, 9);
  });
});

describe('permutations by hand', () => {
  it('counts the ways that look as different', () => {
    // two passes against two fails: of six ways, this and its mirror
    expect(
      permutationTest([
        [1, 1],
        [0, 0],
      ]),
    ).toMatchObject({ difference: 1, exact: true, arrangements: 6 });
    expect(
      permutationTest([
        [1, 1],
        [0, 0],
      ]).p,
    ).toBeCloseTo(1 / 3, 12);
    expect(
      permutationTest([
        [0, 0],
        [1, 1],
      ]),
    ).toMatchObject({ difference: -1 });
    expect(permutationTest([[1], [1]]).p).toBe(1);
    // in blocks labels stay within the paper: 2 × 2 ways, one as seen and its mirror
    const blocks = [
      { first: [1], second: [0] },
      { first: [1], second: [0] },
    ];
    expect(permutationTest(blocks)).toMatchObject({ difference: 1, arrangements: 4 });
    expect(permutationTest(blocks).p).toBeCloseTo(0.5, 12);
    // blocks with one side empty say nothing
    expect(permutationTest([...blocks, { first: [0, 0], second: [] }])).toEqual(permutationTest(blocks));
    // a block of one against three weighs 3/4, one of two against two weighs 1: (0.75 × 1 + 1 × 0) / 1.75
    const uneven = [
      { first: [1], second: [0, 0, 0] },
      { first: [1, 0], second: [1, 0] },
    ];
    expect(permutationTest(uneven).difference).toBeCloseTo(0.75 / 1.75, 12);
    expect(permutationTest(uneven).arrangements).toBe(4 * 6);
  });
  it('samples when there are too many sums, and says so', () => {
    const [first, second] = [
      Array.from({ length: 8 }, (_, i) => 1 + 0.37 * i * i),
      Array.from({ length: 8 }, (_, i) => 0.11 * i * i * i),
    ];
    const exact = permutationTest([first, second]);
    const drawn = permutationTest([first, second], { most: 10, draws: 4000, seed: 3 });
    expect([exact.exact, drawn.exact, drawn.arrangements]).toEqual([true, false, 4000]);
    // four standard errors of a share at 4000 draws
    expect(Math.abs(drawn.p - exact.p)).toBeLessThan(4 * Math.sqrt((exact.p * (1 - exact.p)) / 4000) + 1 / 4000);
    expect(drawn.difference).toBe(exact.difference);
    expect(permutationTest([first, second], { most: 10, draws: 9 }).p).toBeGreaterThanOrEqual(0.1 - 1e-12);
  });
  it('refuses what cannot be compared', () => {
    fails(
      () => permutationTest([[], [1]]),
      () => permutationTest([[NaN], [1]]),
      () => permutationTest([[1], [Infinity]]),
    );
  });
});

describe('a line through passes', () => {
  const points = [
    { x: 0, passes: 1, n: 4 },
    { x: 1, passes: 2, n: 4 },
    { x: 2, passes: 4, n: 4 },
  ];
  it('is the highest there is: no step to any side goes up', () => {
    const line = firthLine(points);
    const top = penalised(points, line);
    for (const [a, b] of [
      [1e-3, 0],
      [-1e-3, 0],
      [0, 1e-3],
      [0, -1e-3],
      [1e-3, -1e-3],
    ] as const)
      expect(penalised(points, { intercept: line.intercept + a, slope: line.slope + b })).toBeLessThan(top);
    // the profile through its own middle reaches it
    const middle = profileThrough(points, 1, line.intercept + line.slope, line.slope);
    expect(middle.height).toBeCloseTo(top, 8);
    expect(middle.slope).toBeCloseTo(line.slope, 4);
  });
  it('mirrors when passes and fails change places', () => {
    const line = firthLine(points);
    const turned = firthLine(points.map((point) => ({ ...point, passes: point.n - point.passes })));
    expect(turned.slope).toBeCloseTo(-line.slope, 8);
    expect(turned.intercept).toBeCloseTo(-line.intercept, 8);
  });
  it('needs two different x that were tried', () => {
    expect(hasSpread(points)).toBe(true);
    expect(hasSpread([points[0]!, { ...points[0]!, passes: 3 }])).toBe(false);
    expect(hasSpread([points[0]!, { x: 1, passes: 0, n: 0 }])).toBe(false);
    fails(
      () => firthLine([points[0]!, points[0]!]),
      () =>
        passThreshold([
          { grammage: 50, passes: 1 },
          { grammage: 50, passes: 0 },
        ]),
      () =>
        passThreshold([
          { grammage: 0, passes: 1 },
          { grammage: 50, passes: 0 },
        ]),
      () =>
        passThreshold([
          { grammage: 20, passes: 2 },
          { grammage: 50, passes: 0 },
        ]),
      () =>
        passThreshold([
          { grammage: 20, passes: 0, n: 0 },
          { grammage: 50, passes: 0 },
        ]),
    );
    expect(penalised([points[0]!], { intercept: 0, slope: 0 })).toBe(-Infinity);
  });
});
