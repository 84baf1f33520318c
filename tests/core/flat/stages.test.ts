/** How far a board bows at each stage, and which stage is the worst. */
import { describe, expect, it } from 'vitest';
import { makingOf } from '../../../src/core/flat/making';
import { DEFAULT_FLAT, type FlatPlan } from '../../../src/core/flat/plan';
import { bowsAt, farEnd, rollsUp, worseOf } from '../../../src/core/flat/stages';
import { catalogue } from '../../../src/data/catalogue';
const plan = (change: Partial<FlatPlan> = {}): FlatPlan => ({ ...DEFAULT_FLAT, ...change });

describe('how far it bows', () => {
  it('the worse of two directions by its far end, the width where they are even', () => {
    const bow = (low: number, high: number) => ({ low, middle: (low + high) / 2, high, span: 100 });
    expect(farEnd(bow(-3, 2))).toBe(3);
    expect(worseOf({ width: bow(-3, 2), height: bow(0, 2.9) })).toBe('width');
    expect(worseOf({ width: bow(-1, 2), height: bow(-3, 0) })).toBe('height');
    expect(worseOf({ width: bow(1, 2), height: bow(-2, 0) })).toBe('width');
  });
  it('no further than a quarter of its span: past that it rolls up', () => {
    const thin = plan({ boardThick: 0.3, width: 600, height: 20, adhesive: 'wheat-starch-paste-thin', press: 0 });
    const { width, height } = bowsAt(makingOf(thin, catalogue), 'dry');
    expect(width.high).toBeCloseTo(150, 9);
    expect(rollsUp(width)).toBe(true);
    expect(rollsUp(height)).toBe(false);
  });
});
