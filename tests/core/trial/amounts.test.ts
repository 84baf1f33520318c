/** What a trial takes, worked by hand. */
import { describe, expect, it } from 'vitest';
import { amountsNeeded } from '../../../src/core/trial/amounts';
import { swatchCount } from '../../../src/core/trial/design';
import { DESIGN } from '../support/trial';

describe('what a trial takes', () => {
  // 2 papers × 2 glues × 2 holds × 3
  const design = { ...DESIGN, holds: [60, 180] };
  const coat = { low: 40, middle: 60, high: 80, basis: 'estimate' } as const;
  it('24 swatches with two minutes of hold on the mean, and 1.5 to 3.5 of work', () => {
    const needed = amountsNeeded(design, 50, 70, coat);
    expect(swatchCount(design)).toBe(24);
    expect(needed.swatches).toBe(24);
    expect(needed.minutes).toEqual({ low: 24 * 3.5, high: 24 * 5.5 });
    // four by four of 50 × 70 from A4; boards of 70 × 90, three by three
    expect(needed.perPaper).toEqual({ pieces: 12, sheets: 1 });
    expect(needed.board).toEqual({ widthMm: 70, heightMm: 90, pieces: 24, sheets: 3 });
    // 12 × 0.0035 m², half as much again in the brush
    expect(needed.gluePerAdhesive.middle).toBeCloseTo(12 * 0.0035 * 60 * 1.5, 9);
    expect(needed.gluePerAdhesive.high / needed.gluePerAdhesive.low).toBeCloseTo(2, 9);
  });
  it('no sheets where a swatch is larger than one', () => {
    expect(amountsNeeded(design, 211, 70, coat).perPaper.sheets).toBeUndefined();
    expect(amountsNeeded(design, 210, 297, coat)).toMatchObject({
      perPaper: { sheets: 12 },
      board: { sheets: undefined },
    });
  });
});
