/** The loose sets lie within what was searched, differ widely, and are reached step by step from those of the answers. */
import { describe, expect, test } from 'vitest';
import { BOND_CONSTANTS, SEARCHED } from '../../../src/core/joint/constants';
import { ENSEMBLE, FREE, SETS } from '../../../src/core/joint/ensemble';
import { LOOSE_SETS, partWay } from '../../../src/core/learn/loose-sets';

describe('the loose sets', () => {
  test('are as many for each set of the ensemble, and what was not fitted stays', () => {
    expect(LOOSE_SETS.length % SETS).toBe(0);
    expect(LOOSE_SETS.length).toBeGreaterThan(0);
    for (const set of LOOSE_SETS) expect(set.drainableShare).toBe(BOND_CONSTANTS.drainableShare);
  });
  test.for(FREE)('%s: within its range but for rounding, and wider than the ensemble', (key) => {
    const [low, high] = SEARCHED[key] as readonly [number, number];
    const logs = LOOSE_SETS.map((set) => Math.log(set[key]));
    expect(Math.min(...logs)).toBeGreaterThanOrEqual(Math.log(low) - 0.026);
    expect(Math.max(...logs)).toBeLessThanOrEqual(Math.log(high) + 0.026);
    const span = (values: readonly number[]) => Math.max(...values) - Math.min(...values);
    expect(span(logs)).toBeGreaterThan(span(ENSEMBLE.map((set) => Math.log(set[key]))));
  });
});

describe('between two sets', () => {
  const other = { ...BOND_CONSTANTS, freshPull: 4 * BOND_CONSTANTS.freshPull };
  test('nothing of the other is the first, all of it the other, half of it their geometric mean', () => {
    expect(partWay(BOND_CONSTANTS, other, 0)).toEqual(BOND_CONSTANTS);
    expect(partWay(BOND_CONSTANTS, other, 1).freshPull).toBeCloseTo(other.freshPull, 9);
    expect(partWay(BOND_CONSTANTS, other, 0.5).freshPull).toBeCloseTo(2 * BOND_CONSTANTS.freshPull, 9);
    expect(partWay(BOND_CONSTANTS, other, 0.5).boardFace).toBeCloseTo(BOND_CONSTANTS.boardFace, 9);
  });
});
