/** Places on a drawing. */
import { describe, expect, it } from 'vitest';
import { logScale } from '../../../src/core/base/scale';

describe('a log axis', () => {
  it('gives equal room to equal factors', () => {
    const scale = logScale([1, 1000], [0, 300]);
    expect([1, 10, 100, 1000].map(scale).map((x) => Number(x.toFixed(9)))).toEqual([0, 100, 200, 300]);
  });
  it('runs the other way when its range does, and holds what lies outside', () => {
    const scale = logScale([10, 1000], [250, 50]);
    expect(scale(100)).toBeCloseTo(150, 9);
    expect(scale(1)).toBe(250);
    expect(scale(1e6)).toBeCloseTo(50, 9);
  });
});
