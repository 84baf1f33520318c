/** Holm's procedure with Tarone's allowance, against R and by hand. */
import { describe, expect, it } from 'vitest';
import { seededUniform } from '../../../src/core/base/random';
import { holmTarone } from '../../../src/core/stats/holm';

describe('with every least at 0 it is Holm’s', () => {
  it('R 4.2.2, p.adjust(c(0.01, 0.04, 0.03, 0.005, 0.5), "holm")', () =>
    expect(holmTarone([0.01, 0.04, 0.03, 0.005, 0.5].map((p) => ({ p, least: 0 })))).toEqual(
      [0.04, 0.09, 0.09, 0.025, 0.5].map((p) => expect.closeTo(p, 12)),
    ));
  it('one claim is itself, and none are none', () => {
    expect(holmTarone([{ p: 0.03, least: 0 }])).toEqual([0.03]);
    expect(holmTarone([])).toEqual([]);
  });
  it('never above 1', () => expect(holmTarone([0.6, 0.9, 0.7].map((p) => ({ p, least: 0 })))).toEqual([1, 1, 1]));
});

describe('Tarone’s allowance, by hand', () => {
  it('a test that could call nothing takes nothing from the others', () =>
    expect(holmTarone([{ p: 0.02, least: 0.001 }, { p: 1, least: 1 }, { p: 0.3, least: 0.1 }])).toEqual([0.02, 1, 0.3])); // prettier-ignore
  it('one that could have come out as small counts', () =>
    expect(holmTarone([{ p: 0.02, least: 0.001 }, { p: 0.5, least: 0.02 }])).toEqual([0.04, 0.5])); // prettier-ignore
  it('the adjusted never fall as p rises', () => {
    // 0.02 × 3, then 0.021 × 1: held at 0.06
    const found = holmTarone([
      { p: 0.02, least: 0.001 },
      { p: 0.021, least: 0.001 },
      { p: 0.9, least: 0.02 },
    ]);
    expect(found.map((p) => Number(p.toFixed(6)))).toEqual([0.06, 0.06, 0.9]);
  });
});

it('of families without any difference at most 1 in 20 makes a claim', () => {
  // p of a fair coin thrown 5 to 9 times, two-sided: steps of 2 ÷ 2ⁿ; ten to a family, half of them of 5 throws
  const uniform = seededUniform(3);
  const p = (throws: number): number => {
    let heads = 0;
    for (let i = 0; i < throws; i += 1) heads += uniform() < 0.5 ? 1 : 0;
    const few = Math.min(heads, throws - heads);
    let [tail, ways] = [0, 1];
    for (let k = 0; k <= few; k += 1) {
      tail += ways;
      ways = (ways * (throws - k)) / (k + 1);
    }
    return Math.min(1, (2 * tail) / 2 ** throws);
  };
  let called = 0;
  for (let family = 0; family < 4000; family += 1) {
    const claims = Array.from({ length: 10 }, (_, i) => {
      const throws = i < 5 ? 5 : 9;
      return { p: p(throws), least: 2 / 2 ** throws };
    });
    if (holmTarone(claims).some((adjusted) => adjusted <= 0.05)) called += 1;
  }
  // three standard errors of 1 in 20 among 4000
  expect(called / 4000).toBeLessThan(0.05 + 3 * Math.sqrt((0.05 * 0.95) / 4000));
  expect(called).toBeGreaterThan(0);
});

it('what is no chance is refused', () => {
  for (const claim of [
    { p: -0.1, least: 0 },
    { p: 1.1, least: 0 },
    { p: NaN, least: 0 },
    { p: 0.5, least: -1 },
    { p: 0.1, least: 0.2 },
  ])
    expect(() => holmTarone([claim])).toThrow(RangeError);
});
