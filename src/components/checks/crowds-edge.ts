/** Whether a fitted constant would have gone further, had it been let. */

/** Whether one set in ten or more lies within a fiftieth of an end of its range, counted in steps of a factor. */
export function crowdsEdge(values: readonly number[], [low, high]: readonly [low: number, high: number]): boolean {
  const place = (value: number) => Math.log(value / low) / Math.log(high / low);
  const near = (end: number) => values.filter((value) => Math.abs(place(value) - end) <= 0.02).length;
  return Math.max(near(0), near(1)) * 10 >= values.length;
}
