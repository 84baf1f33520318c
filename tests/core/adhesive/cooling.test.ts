/** When a warm glue gels. */
import { describe, expect, it } from 'vitest';
import { coolingSeconds } from '../../../src/core/adhesive/cooling';

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
