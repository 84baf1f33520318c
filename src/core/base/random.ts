/**
 * Sampling that gives everyone the same answer. Points of an additive recurrence fill the unit cube
 * evenly (quasi-Monte Carlo), so a few hundred stand in for thousands of random ones.
 */

/**
 * The generalised golden ratio of `dimensions`: the positive root of x^(d+1) = x + 1.
 * From memory: M. Roberts, "The unreasonable effectiveness of quasirandom sequences", 2018.
 */
function goldenRoot(dimensions: number): number {
  let x = 1.5;
  for (let step = 0; step < 64; step += 1) x = Math.pow(1 + x, 1 / (dimensions + 1));
  return x;
}

/**
 * `count` points in [0, 1)^dimensions, row by row in one array: value d of point i is at i·dimensions + d.
 * The same arguments always give the same points. count 1–100 000, dimensions 1–64.
 */
export function lowDiscrepancyPoints(count: number, dimensions: number): Float64Array {
  const root = goldenRoot(dimensions);
  const steps = Array.from({ length: dimensions }, (_, d) => Math.pow(1 / root, d + 1) % 1);
  const points = new Float64Array(count * dimensions);
  for (let i = 0; i < count; i += 1) {
    for (let d = 0; d < dimensions; d += 1) points[i * dimensions + d] = (0.5 + (i + 1) * steps[d]!) % 1;
  }
  return points;
}

/** A seeded uniform generator for shuffles and permutations (mulberry32): the same seed, the same sequence. */
export function seededUniform(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
