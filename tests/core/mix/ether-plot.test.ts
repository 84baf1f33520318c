/** The plate of a cellulose ether's viscosity: where things stand on it. */
import { expect, test } from 'vitest';
import { DECADES, etherPlot, MOST_PERCENT } from '../../../src/core/mix/ether-plot';
import { evenScale } from '../../../src/core/base/scale';

const plot = etherPlot(314);
/** Points of a path of straight strokes. */
const pointsOf = (path: string) =>
  path
    .split(/[ML]/)
    .slice(1)
    .map((point) => point.split(' ').map(Number));

test('strengths are spaced evenly, and what is stronger than the plate shows stands at its end', () => {
  expect(plot.x(0)).toBe(plot.left);
  expect(plot.x(MOST_PERCENT)).toBe(314);
  expect(plot.x(MOST_PERCENT / 2)).toBeCloseTo((plot.left + 314) / 2, 9);
  expect(plot.x(12)).toBe(314);
});

test('each tenfold step takes the same height, the thinnest at the foot', () => {
  const heights = DECADES.map(plot.y);
  expect(heights[0]).toBe(plot.bottom);
  expect(heights.at(-1)).toBe(plot.top);
  const step = (plot.bottom - plot.top) / 6;
  for (let i = 1; i < heights.length; i += 1) expect(heights[i - 1]! - heights[i]!).toBeCloseTo(step, 9);
});

// the label of a grade is the viscosity of its 2 % solution in water at 20 °C (pharmacopoeias' definition, from memory)
test.for([400, 4000])('the curve of the %i grade passes its label at 2 %%, and rises all the way', (grade) => {
  const points = pointsOf(plot.curve(grade));
  const [, height] = points.find(([across]) => Math.abs(across! - plot.x(2)) < 0.06)!;
  expect(height).toBeCloseTo(plot.y(grade), 1);
  expect(points[0]![0]).toBe(plot.left);
  expect(points.at(-1)![0]).toBe(314);
  for (let i = 1; i < points.length; i += 1) expect(points[i]![1]!).toBeLessThan(points[i - 1]![1]!);
});

test('an even scale keeps shares, and holds what lies outside at its ends', () => {
  const y = evenScale([0, 130], [200, 12]);
  expect(y(0)).toBe(200);
  expect(y(65)).toBe(106);
  expect(y(130)).toBe(12);
  expect(y(-5)).toBe(200);
  expect(y(1e9)).toBe(12);
});
