/**
 * Logistic regression of one yes-or-no outcome on one number, with Firth's penalty: half the log of the
 * information is added to the log likelihood. Small trials often separate perfectly (all light papers
 * fail, all heavy ones pass), where the plain method runs off to infinity; this one stays finite.
 * Published: D. Firth, Biometrika 80 (1993) 27; G. Heinze and M. Schemper, Stat. Med. 21 (2002) 2409.
 */

export interface Point {
  readonly x: number;
  /** swatches that passed; halves are allowed */
  readonly passes: number;
  readonly n: number;
}

export interface Line {
  readonly intercept: number;
  readonly slope: number;
}

export const chanceOf = (logit: number): number => 1 / (1 + Math.exp(-logit));

/** ln(1 + e^z) without overflow. */
const softPlus = (z: number) => Math.max(z, 0) + Math.log1p(Math.exp(-Math.abs(z)));

interface Information {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly determinant: number;
}

function information(points: readonly Point[], { intercept, slope }: Line): Information {
  let [a, b, c] = [0, 0, 0];
  for (const { x, n } of points) {
    const p = chanceOf(intercept + slope * x);
    const weight = n * p * (1 - p);
    a += weight;
    b += weight * x;
    c += weight * x * x;
  }
  return { a, b, c, determinant: a * c - b * b };
}

/** Log likelihood with Firth's penalty; −∞ where the information vanishes. */
export function penalised(points: readonly Point[], line: Line): number {
  const { determinant } = information(points, line);
  let sum = 0.5 * Math.log(Math.max(0, determinant));
  for (const { x, passes, n } of points) {
    const logit = line.intercept + line.slope * x;
    sum += passes * logit - n * softPlus(logit);
  }
  return sum;
}

/** Are there two different x, so that a slope can be told. */
export const hasSpread = (points: readonly Point[]): boolean => points.some(({ x, n }) => n > 0 && x !== points[0]!.x);

/**
 * The penalised estimates. Steps of Fisher scoring on the modified score, halved whenever they would
 * lower the penalised likelihood. Throws RangeError when every x is the same.
 */
export function firthLine(points: readonly Point[]): Line {
  if (!hasSpread(points)) throw new RangeError('a slope needs at least two different values of x');
  let line: Line = { intercept: 0, slope: 0 };
  let height = penalised(points, line);
  for (let step = 0; step < 200; step += 1) {
    const { a, b, c, determinant } = information(points, line);
    let [scoreA, scoreB] = [0, 0];
    for (const { x, passes, n } of points) {
      const p = chanceOf(line.intercept + line.slope * x);
      const leverage = (n * p * (1 - p) * (c - 2 * b * x + a * x * x)) / determinant;
      const residual = passes - n * p + leverage * (0.5 - p);
      scoreA += residual;
      scoreB += residual * x;
    }
    const move = { a: (c * scoreA - b * scoreB) / determinant, b: (a * scoreB - b * scoreA) / determinant };
    let share = 1;
    let next = line;
    let reached = -Infinity;
    for (; share > 1e-9; share /= 2) {
      next = { intercept: line.intercept + share * move.a, slope: line.slope + share * move.b };
      reached = penalised(points, next);
      if (reached >= height - 1e-12) break;
    }
    if (reached < height - 1e-12) break;
    [line, height] = [next, reached];
    if (share * Math.max(Math.abs(move.a), Math.abs(move.b)) < 1e-10) break;
  }
  return line;
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * The best penalised likelihood among the lines through (`x`, `logit`): the profile. The best slope is
 * looked for around `slope`, outwards until it falls on both sides, then by golden section.
 */
export function profileThrough(
  points: readonly Point[],
  x: number,
  logit: number,
  slope: number,
): { height: number; slope: number } {
  const at = (trial: number) => penalised(points, { intercept: logit - trial * x, slope: trial });
  let width = Math.max(0.5, Math.abs(slope) / 2);
  let best = slope;
  for (let step = 0; step < 60; step += 1) {
    if (at(best + width) > at(best)) best += width;
    else if (at(best - width) > at(best)) best -= width;
    else break;
    width *= 1.3;
  }
  let [low, high] = [best - width, best + width];
  // 0.618 to the power of 45 is less than 1e-9
  for (let step = 0; step < 45; step += 1) {
    const [left, right] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
    if (at(left) > at(right)) high = right;
    else low = left;
  }
  const found = (low + high) / 2;
  return { height: at(found), slope: found };
}
