/** From which grammage on does it pass: the pass chance against the logarithm of grammage, with its band. */
import { mustBePositive, mustBeWithin } from '../base/result';
import { chanceOf, firthLine, hasSpread, penalised, profileThrough, type Point } from './firth';
import { zFor } from './functions';

export interface Observation {
  /** g/m² */
  readonly grammage: number;
  /** passes among `n` swatches; halves are allowed; true and false count as 1 and 0 of 1 */
  readonly passes: number | boolean;
  /** 1 when left out */
  readonly n?: number;
}

export interface BandPoint {
  readonly chance: number;
  readonly low: number;
  readonly high: number;
}

export interface PassThreshold {
  /** of the logit of the pass chance on ln(grammage) */
  readonly intercept: number;
  readonly slope: number;
  /** p of the slope by penalised likelihood ratio: small when weight does matter */
  readonly slopeP: number;
  /** g/m² at which the pass chance is one half */
  readonly half: number;
  /** ends of the profile interval of `half`, g/m²; undefined where the trial sets no bound */
  readonly low: number | undefined;
  readonly high: number | undefined;
  /** pass chance at a grammage (g/m² > 0) with its pointwise profile band */
  readonly chanceAt: (grammage: number) => BandPoint;
}

/** Beyond this factor outside the weights tried, a bound is no bound. Choice of ours. */
const FARTHEST = Math.log(8);

/**
 * Logistic regression on ln(grammage) with Firth's penalty. `confidence` 0.5–0.9999. Intervals are those of
 * the profile penalised likelihood (Heinze and Schemper 2002), which do not pretend to be symmetric.
 * Throws RangeError unless every grammage is above 0, counts are sound and two grammages differ.
 */
export function passThreshold(observations: readonly Observation[], confidence = 0.95): PassThreshold {
  const points: readonly Point[] = observations.map(({ grammage, passes, n = 1 }) => {
    mustBePositive('grammage', grammage);
    mustBeWithin('n', n, 1, 100_000);
    mustBeWithin('passes', Number(passes), 0, n);
    return { x: Math.log(grammage), passes: Number(passes), n };
  });
  if (!hasSpread(points)) throw new RangeError('a threshold needs at least two different grammages');
  const fit = firthLine(points);
  const top = penalised(points, fit);
  const z = zFor(confidence);
  const floor = top - (z * z) / 2;
  const middle = -fit.intercept / fit.slope;

  /** Walks from `from` by growing steps until the profile falls below the floor, then closes in. */
  const edge = (
    heightAt: (value: number) => number,
    from: number,
    step: number,
    farthest: number,
  ): number | undefined => {
    let inside = from;
    let outside = from;
    for (let stride = step; ; stride *= 1.5) {
      outside = step > 0 ? Math.min(farthest, inside + stride) : Math.max(farthest, inside + stride);
      if (heightAt(outside) < floor) break;
      if (outside === farthest) return undefined;
      inside = outside;
    }
    for (let i = 0; i < 40; i += 1) {
      const value = (inside + outside) / 2;
      if (heightAt(value) < floor) outside = value;
      else inside = value;
    }
    return (inside + outside) / 2;
  };

  const xs = points.map(({ x }) => x);
  const [least, greatest] = [Math.min(...xs) - FARTHEST, Math.max(...xs) + FARTHEST];
  const halfHeight = (x: number) => profileThrough(points, x, 0, fit.slope).height;
  const bounded = middle >= least && middle <= greatest;
  const low = bounded ? edge(halfHeight, middle, -0.02, least) : undefined;
  const high = bounded ? edge(halfHeight, middle, 0.02, greatest) : undefined;

  return {
    ...fit,
    slopeP: pOfSlope(points, top),
    half: Math.exp(middle),
    low: low === undefined ? undefined : Math.exp(low),
    high: high === undefined ? undefined : Math.exp(high),
    chanceAt: (grammage) => {
      mustBePositive('grammage', grammage);
      const x = Math.log(grammage);
      const logit = fit.intercept + fit.slope * x;
      const height = (value: number) => profileThrough(points, x, value, fit.slope).height;
      // A logit of ±30 is a chance of 0 or 1 to thirteen digits.
      return {
        chance: chanceOf(logit),
        low: chanceOf(edge(height, Math.max(-30, Math.min(30, logit)), -0.25, -40) ?? -40),
        high: chanceOf(edge(height, Math.max(-30, Math.min(30, logit)), 0.25, 40) ?? 40),
      };
    },
  };
}

/** Twice the fall of the penalised likelihood when the slope is held at 0, as a chi-squared of one degree. */
function pOfSlope(points: readonly Point[], top: number): number {
  let [low, high] = [-30, 30];
  const at = (intercept: number) => penalised(points, { intercept, slope: 0 });
  for (let step = 0; step < 100; step += 1) {
    const [left, right] = [low + (high - low) / 3, high - (high - low) / 3];
    if (at(left) > at(right)) high = right;
    else low = left;
  }
  const fall = Math.max(0, 2 * (top - at((low + high) / 2)));
  return chiSquareAbove(fall);
}

/** Chance that a chi-squared of one degree of freedom exceeds `value`, by the series and fraction of erfc. */
export function chiSquareAbove(value: number): number {
  const x = Math.sqrt(value / 2);
  if (x > 5) return 0;
  if (x < 2) {
    let term = x;
    let sum = x;
    for (let n = 1; n < 80; n += 1) {
      term *= (-x * x) / n;
      sum += term / (2 * n + 1);
    }
    return 1 - (2 / Math.sqrt(Math.PI)) * sum;
  }
  let fraction = x;
  for (let k = 60; k >= 1; k -= 1) fraction = x + k / 2 / fraction;
  return Math.exp(-x * x) / (Math.sqrt(Math.PI) * fraction);
}
