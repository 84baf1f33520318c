/** Evenly spread points and seeded draws, against their published recipes. */
import { describe, expect, it } from 'vitest';
import { lowDiscrepancyPoints, seededUniform } from '../../../src/core/base/random';

describe('points and draws', () => {
  it('steps by the golden ratio in one dimension and by the plastic number’s powers in two (published)', () => {
    const near = (a: number, b: number) => expect(Math.abs(a - b)).toBeLessThan(1e-9);
    const line = lowDiscrepancyPoints(3, 1);
    expect(line).toHaveLength(3);
    // 0.5 + n × 0.6180339887498949, without the whole part
    [0.1180339887498949, 0.7360679774997898, 0.3541019662496847].forEach((x, i) => near(line[i]!, x));
    const plane = lowDiscrepancyPoints(2, 2);
    expect(plane).toHaveLength(4);
    // steps 0.7548776662466927 and 0.5698402909980532
    [0.2548776662466927, 0.0698402909980532, 0.0097553324933854, 0.6396805819961064].forEach((x, i) =>
      near(plane[i]!, x),
    );
  });
  it('draws what the recipe draws when it is done with whole numbers of any size', () => {
    const mask = 0xffffffffn;
    const product = (a: bigint, b: bigint) => (a * b) & mask;
    let state = 11n;
    const uniform = seededUniform(11);
    for (let i = 0; i < 20; i += 1) {
      state = (state + 0x6d2b79f5n) & mask;
      let t = product(state ^ (state >> 15n), state | 1n);
      t ^= (t + product(t ^ (t >> 7n), t | 61n)) & mask;
      expect(uniform()).toBe(Number((t ^ (t >> 14n)) & mask) / 2 ** 32);
    }
  });
});
