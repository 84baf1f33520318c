/** Places on a drawing. */

/** Maps `domain` to `range` evenly; values outside are held at the ends. The domain's ends must differ. */
export function evenScale(
  domain: readonly [number, number],
  range: readonly [number, number],
): (value: number) => number {
  const [low, high] = domain;
  return (value) => {
    const held = Math.min(high, Math.max(low, value));
    return range[0] + ((range[1] - range[0]) * (held - low)) / (high - low);
  };
}

/** Maps `domain` to `range` evenly in log; values outside are held at the ends. Domain ends must be above 0. */
export function logScale(
  domain: readonly [number, number],
  range: readonly [number, number],
): (value: number) => number {
  const [low, high] = domain;
  const span = Math.log(high / low);
  return (value) => {
    const held = Math.min(high, Math.max(low, value));
    return range[0] + ((range[1] - range[0]) * Math.log(held / low)) / span;
  };
}
