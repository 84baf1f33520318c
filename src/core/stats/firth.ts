/**
 * Logistic regression of one yes-or-no outcome on one number, with Firth's penalty: half the log of the
 * information is added to the log likelihood. Small trials often separate perfectly (all light papers
 * fail, all heavy ones pass), where the plain method runs off to infinity; this one stays finite.
 * Published: D. Firth, Biometrika 80 (1993) 27; G. Heinze and M. Schemper, Stat. Med. 21 (2002) 2409.
 */

export interface DosePoint {
  readonly x: number;
  /** swatches that passed; halves are allowed */
  readonly passes: number;
  readonly n: number;
}

export interface LogitLine {
  readonly intercept: number;
  readonly slope: number;
}

/** The chance of a logit: 1/(1 + e^−x). */
export const chanceOf = (logit: number): number => 1 / (1 + Math.exp(-logit));

interface Information {
  /** of the logit at `centre` */
  readonly level: number;
  /** of the slope about `centre` */
  readonly slope: number;
  /** the mean x, weighed by information */
  readonly centre: number;
}

/** About its own centre, so that no two large numbers are taken from each other where the curve is steep. */
function information(points: readonly DosePoint[], line: LogitLine): Information {
  let [level, moment] = [0, 0];
  const weights = points.map(({ x, n }) => {
    const p = chanceOf(line.intercept + line.slope * x);
    const weight = n * p * (1 - p);
    level += weight;
    moment += weight * x;
    return weight;
  });
  const centre = moment / level;
  let slope = 0;
  points.forEach(({ x }, i) => (slope += weights[i]! * (x - centre) * (x - centre)));
  return { level, slope, centre };
}

/** Log likelihood with Firth's penalty; −∞ where the information vanishes. */
export const penalised = (points: readonly DosePoint[], { intercept, slope }: LogitLine): number =>
  heightOf(points)(intercept, slope);

/** The same for many lines through the same points. */
function heightOf(points: readonly DosePoint[]): (intercept: number, slope: number) => number {
  const weights = new Float64Array(points.length);
  return (intercept, slope) => {
    let [likelihood, level, moment, spread] = [0, 0, 0, 0];
    for (let i = 0; i < points.length; i += 1) {
      const { x, passes, n } = points[i]!;
      const logit = intercept + slope * x;
      const small = Math.exp(-Math.abs(logit));
      // ln(1 + e^logit) without overflow, and p (1 − p)
      likelihood += passes * logit - n * (Math.max(logit, 0) + Math.log1p(small));
      const weight = (n * small) / ((1 + small) * (1 + small));
      weights[i] = weight;
      level += weight;
      moment += weight * x;
    }
    const centre = moment / level;
    for (let i = 0; i < points.length; i += 1) {
      const off = points[i]!.x - centre;
      spread += weights[i]! * off * off;
    }
    return level > 0 && spread > 0 ? likelihood + 0.5 * (Math.log(level) + Math.log(spread)) : -Infinity;
  };
}

/** Are there two different x, so that a slope can be told. */
export const hasSpread = (points: readonly DosePoint[]): boolean =>
  points.some(({ x, n }) => n > 0 && x !== points[0]!.x);

/**
 * The penalised estimates: the highest point of the penalised likelihood.
 * It may have two peaks, a gentle slope and a steep one, or one each way; a climb finds the one it started below.
 * So it is climbed from level ground and from two steep slopes either way between any two neighbours in x, and the
 * highest peak is kept. Published: D. Firth, Biometrika 80 (1993) 27; R's brglm and logistf maximise the same. `n`
 * 0 or more, halves allowed in `passes`. Throws RangeError when every x is the same.
 */
export function firthLine(points: readonly DosePoint[]): LogitLine {
  if (!hasSpread(points)) throw new RangeError('a slope needs at least two different values of x');
  const xs = [...new Set(points.flatMap(({ x, n }) => (n > 0 ? [x] : [])))].sort((a, b) => a - b);
  const starts: LogitLine[] = [{ intercept: 0, slope: 0 }];
  xs.slice(1).forEach((x, i) => {
    const [gap, middle] = [x - xs[i]!, (x + xs[i]!) / 2];
    // logits of 3 and of 6 on either side: from the one a first step may leap past a peak that the other stands below
    for (const logits of [6, -6, 12, -12]) starts.push({ intercept: (-logits / gap) * middle, slope: logits / gap });
  });
  let best = climb(points, starts[0]!);
  for (const start of starts.slice(1)) {
    const found = climb(points, start);
    if (found.height > best.height + 1e-9) best = found;
  }
  return best.line;
}

/** Steps of Fisher scoring on the modified score, halved whenever they would lower the penalised likelihood. */
function climb(points: readonly DosePoint[], start: LogitLine): { readonly line: LogitLine; readonly height: number } {
  let line = start;
  let height = penalised(points, line);
  for (let step = 0; step < 200 && height > -Infinity; step += 1) {
    const { level, slope, centre } = information(points, line);
    let [scoreLevel, scoreSlope] = [0, 0];
    for (const { x, passes, n } of points) {
      const p = chanceOf(line.intercept + line.slope * x);
      const leverage = n * p * (1 - p) * (1 / level + ((x - centre) * (x - centre)) / slope);
      const residual = passes - n * p + leverage * (0.5 - p);
      scoreLevel += residual;
      scoreSlope += residual * (x - centre);
    }
    const move = { level: scoreLevel / level, slope: scoreSlope / slope };
    let share = 1;
    let next = line;
    let reached = -Infinity;
    for (; share > 1e-9; share /= 2) {
      next = {
        intercept: line.intercept + share * (move.level - move.slope * centre),
        slope: line.slope + share * move.slope,
      };
      reached = penalised(points, next);
      if (reached >= height - 1e-12) break;
    }
    if (reached < height - 1e-12) break;
    [line, height] = [next, reached];
    if (share * Math.max(Math.abs(move.level), Math.abs(move.slope)) < 1e-10) break;
  }
  return { line, height };
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** Slopes between which every peak of a profile is looked for, in steps of half as much again. */
function slopesFor(points: readonly DosePoint[]): readonly number[] {
  const xs = [...new Set(points.map(({ x }) => x))].sort((a, b) => a - b);
  const gaps = xs.slice(1).map((x, i) => x - xs[i]!);
  const [least, most] = [0.1 / (xs.at(-1)! - xs[0]!), 20 / Math.min(...gaps)];
  const steps = Math.ceil(Math.log(most / least) / Math.log(1.5));
  const rising = Array.from({ length: steps + 1 }, (_, i) => least * Math.pow(1.5, i));
  return [...rising.map((slope) => -slope).reverse(), 0, ...rising];
}

/**
 * The profile of the penalised likelihood: the best that a line through (x, logit) can reach. Every slope is tried in
 * coarse steps, since there may be two peaks, and the best closed in on by golden section. `points` as for
 * `firthLine`. Published: Heinze and Schemper, Stat. Med. 21 (2002) 2409, for intervals from it.
 */
export function profileOf(points: readonly DosePoint[]): (x: number, logit: number) => number {
  const slopes = slopesFor(points);
  const height = heightOf(points);
  return (x, logit) => {
    const at = (slope: number) => height(logit - slope * x, slope);
    let best = 0;
    let highest = -Infinity;
    slopes.forEach((slope, i) => {
      const here = at(slope);
      if (here > highest) [best, highest] = [i, here];
    });
    let [low, high] = [slopes[Math.max(0, best - 1)]!, slopes[Math.min(slopes.length - 1, best + 1)]!];
    // 0.618 to the power of 22 is less than 1e-4, and a peak is flat: the height is out by the square of that
    for (let step = 0; step < 22; step += 1) {
      const [left, right] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
      if (at(left) > at(right)) high = right;
      else low = left;
    }
    return Math.max(highest, at((low + high) / 2));
  };
}
