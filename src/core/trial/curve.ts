/** Pass chance against weight as it is drawn: the curve, its band, and the numbers at the weights that were tried. */
import type { InTurns } from '../base/turns';
import { thresholdInTurns, type BandPoint, type Observation, type PassThreshold } from '../stats/pass-threshold';

export type CurvePoint = BandPoint & { readonly grammage: number };

export interface Curve {
  readonly threshold: PassThreshold;
  /** even in the logarithm of grammage, from a little below the lightest to a little above the heaviest */
  readonly line: readonly CurvePoint[];
  /** at the weight of each observation, in their order */
  readonly tried: readonly CurvePoint[];
}

const STEPS = 24;
/** How far the line goes on beyond the weights tried. */
const BEYOND = 1.15;

/** In turns, one point at a time. Grammages in g/m², at least two of them different, else RangeError. */
export function* curveInTurns(observations: readonly Observation[]): InTurns<Curve> {
  const threshold = yield* thresholdInTurns(observations);
  const weights = observations.map(({ grammage }) => grammage);
  const [least, most] = [Math.min(...weights) / BEYOND, Math.max(...weights) * BEYOND];
  const even = Array.from({ length: STEPS + 1 }, (_, i) => least * Math.pow(most / least, i / STEPS));
  const pointsAt = function* (grammages: readonly number[]): InTurns<CurvePoint[]> {
    const points: CurvePoint[] = [];
    for (const grammage of grammages) {
      yield;
      points.push({ grammage, ...threshold.chanceAt(grammage) });
    }
    return points;
  };
  return { threshold, line: yield* pointsAt(even), tried: yield* pointsAt(weights) };
}
