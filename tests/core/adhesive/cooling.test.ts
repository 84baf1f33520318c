/** When a warm glue gels. */
import { describe, expect, it } from 'vitest';
import { COOLING_THICKENS, coolingSeconds, thickenedBy } from '../../../src/core/adhesive/cooling';

describe('cooling to a gel', () => {
  it('gels only what is used hotter than its gel, in a room that is colder', () => {
    // half-way from 60 to 20 °C is 40: 20 s × ln 2
    expect(coolingSeconds(60, 40, 20)).toBeCloseTo(20 * Math.LN2, 9);
    for (const [used, gel, room] of [
      ...([
        [40, 40, 20],
        [39, 40, 20],
        [60, 40, 40],
        [60, 40, 41],
        [undefined, 40, 20],
        [60, undefined, 20],
      ] as const),
    ])
      expect(coolingSeconds(used, gel, room)).toBe(Infinity);
  });
});

describe('thicker as it cools', () => {
  it('in a cold room all of it, above its gel soon nothing, at its gel half-way, and without a step between', () => {
    expect(thickenedBy(60, 33, 18)).toBeCloseTo(COOLING_THICKENS, 2);
    expect(thickenedBy(60, 33, 33)).toBeCloseTo((1 + COOLING_THICKENS) / 2, 12);
    expect(thickenedBy(60, 33, 45)).toBeCloseTo(1, 2);
    for (let celsius = 20; celsius < 45; celsius += 0.1) {
      const [here, there] = [thickenedBy(60, 33, celsius), thickenedBy(60, 33, celsius + 0.1)];
      expect(there).toBeLessThan(here);
      expect(here - there).toBeLessThan(0.15);
    }
  });

  it('but not what is used cold, or what never gels', () => {
    for (const [used, gel] of [
      [undefined, 33],
      [60, undefined],
      [30, 33],
    ] as const)
      expect(thickenedBy(used, gel, 20)).toBe(1);
  });
});
