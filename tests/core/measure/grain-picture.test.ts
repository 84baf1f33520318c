/** The picture of the grain that was found. */
import { describe, expect, it } from 'vitest';
import { drawGrain } from '../../../src/core/measure/grain-picture';
import { findGrain } from '../../../src/core/paper/grain-tests';
import { type MeasurePlan } from '../../../src/core/measure/plan';
describe('the picture', () => {
  /** How much of each fibre's length runs up and down, over all of them: 0.5 when they lie every way. */
  const upright = (shape: MeasurePlan['shape'], way: 'height' | 'width' | 'untried') => {
    const finding = findGrain({ bend: way, strips: way, damp: way, tear: way }, 'marked');
    const drawing = drawGrain(finding, shape);
    const [up, all] = drawing.fibres.reduce(
      ([sum, whole], [x1, y1, x2, y2]) => [sum + (y2 - y1) ** 2, whole + (x2 - x1) ** 2 + (y2 - y1) ** 2],
      [0, 0],
    );
    return { share: up / all, drawing };
  };
  it('lays its fibres along the grain, or every way', () => {
    expect(upright('taller', 'height').share).toBeGreaterThan(0.9);
    expect(upright('taller', 'width').share).toBeLessThan(0.1);
    expect(Math.abs(upright('taller', 'untried').share - 0.5)).toBeLessThan(0.1);
  });
  it('draws the sheet as it is held, its fibres inside', () => {
    for (const shape of ['taller', 'wider', 'square'] as const) {
      const { width, height, fibres, says } = upright(shape, 'height').drawing;
      expect(Math.sign(width - height)).toBe({ taller: -1, wider: 1, square: 0 }[shape]);
      for (const [x1, y1, x2, y2] of fibres) {
        for (const x of [x1, x2]) expect(x >= 0 && x <= width).toBe(true);
        for (const y of [y1, y2]) expect(y >= 0 && y <= height).toBe(true);
      }
      expect(says).toContain('up and down');
    }
  });
});
