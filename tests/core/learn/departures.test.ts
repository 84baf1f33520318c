/** How far the constants may depart: about themselves, within what was searched, and not at all where nothing is known. */
import { describe, expect, test } from 'vitest';
import { BOND_CONSTANTS, SEARCHED } from '../../../src/core/joint/constants';
import { FREE, SETS } from '../../../src/core/joint/ensemble';
import { departed, DEPARTURES } from '../../../src/core/learn/departures';

describe('departures', () => {
  test('there is one for each set, no two alike, and a number for each constant', () => {
    expect(DEPARTURES).toHaveLength(SETS);
    expect(new Set(DEPARTURES.map((one) => one.join())).size).toBe(SETS);
    for (const one of DEPARTURES) expect(one).toHaveLength(FREE.length);
  });
  test.for(FREE.map((key, k) => [key, k] as const))('%s: as far up as down, and within its range', ([key, k]) => {
    const logs = DEPARTURES.map((one) => one[k]!);
    expect(logs.reduce((sum, log) => sum + log, 0)).toBeCloseTo(0, 9);
    const [low, high] = SEARCHED[key] as readonly [number, number];
    expect(Math.max(...logs) - Math.min(...logs)).toBeLessThanOrEqual(Math.log(high / low) + 0.01);
    expect(Math.max(...logs)).toBeGreaterThan(0.1);
  });
  test('a constant is multiplied: by 2 for the log of 2, by nothing for 0, and what was not fitted stays', () => {
    const by = FREE.map((_, k) => (k === 0 ? Math.LN2 : 0));
    const found = departed(BOND_CONSTANTS, by);
    expect(found[FREE[0]]).toBeCloseTo(2 * BOND_CONSTANTS[FREE[0]], 12);
    expect({ ...found, [FREE[0]]: BOND_CONSTANTS[FREE[0]] }).toEqual(BOND_CONSTANTS);
    expect(
      departed(
        BOND_CONSTANTS,
        FREE.map(() => 1e-12),
      ),
    ).toEqual(BOND_CONSTANTS);
  });
});
