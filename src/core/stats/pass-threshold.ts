/** From which grammage on does it pass: the pass chance against the logarithm of grammage, with its band. */
import { mustBePositive, mustBeWithin } from '../base/result';
import { atOnce, type InTurns } from '../base/turns';
import { zFor } from './distributions';
import { chanceOf, firthLine, hasSpread, penalised, profileOf, type DosePoint } from './firth';

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
  /** g/m² at which the pass chance is one half; undefined where that lies far outside the weights tried, or nowhere */
  readonly half: number | undefined;
  /** ends of the profile interval of `half`, g/m²; undefined where the trial sets no bound */
  readonly low: number | undefined;
  readonly high: number | undefined;
  /** pass chance at a grammage (g/m² > 0) with its pointwise profile band */
  readonly chanceAt: (grammage: number) => BandPoint;
}

/** Beyond this factor outside the weights tried, a bound is no bound. Choice of ours. */
const FARTHEST = Math.log(8);
/** Steps in which an end is looked for from outside, before it is closed in on. */
const LOOKS = 48;
/** A logit of ±40 is a chance of 0 or 1 to seventeen digits. */
const MOST_LOGIT = 40;

/**
 * In turns: logistic regression on ln(grammage) with Firth's penalty, and the intervals of its profile penalised likelihood
 * (Heinze and Schemper, Stat. Med. 21 (2002) 2409), which do not pretend to be symmetric. Each reaches out to the
 * farthest value that the profile does not rule out, though there may be two peaks. It takes swatches as
 * independent and the papers as alike but for their weight. `confidence` 0.5–0.9999. Throws RangeError unless every
 * grammage is above 0, counts are sound and two grammages differ.
 */
export function* thresholdInTurns(observations: readonly Observation[], confidence = 0.95): InTurns<PassThreshold> {
  const points: readonly DosePoint[] = observations.map(({ grammage, passes, n = 1 }) => {
    mustBePositive('grammage', grammage);
    mustBeWithin('n', n, 1, 100_000);
    mustBeWithin('passes', Number(passes), 0, n);
    return { x: Math.log(grammage), passes: Number(passes), n };
  });
  if (!hasSpread(points)) throw new RangeError('a threshold needs at least two different grammages');
  const fit = firthLine(points);
  const z = zFor(confidence);
  const floor = penalised(points, fit) - (z * z) / 2;
  const profile = profileOf(points);
  const xs = points.map(({ x }) => x);
  const [least, greatest] = [Math.min(...xs) - FARTHEST, Math.max(...xs) + FARTHEST];
  const middle = -fit.intercept / fit.slope;
  const told = Number.isFinite(middle) && middle >= least && middle <= greatest;
  const low = told ? yield* endOf((x) => profile(x, 0) >= floor, middle, least, evenly) : undefined;
  const high = told ? yield* endOf((x) => profile(x, 0) >= floor, middle, greatest, evenly) : undefined;
  return {
    ...fit,
    half: told ? Math.exp(middle) : undefined,
    low: low === undefined ? undefined : Math.exp(low),
    high: high === undefined ? undefined : Math.exp(high),
    chanceAt: (grammage) => {
      mustBePositive('grammage', grammage);
      const x = Math.log(grammage);
      const logit = Math.max(-MOST_LOGIT, Math.min(MOST_LOGIT, fit.intercept + fit.slope * x));
      const holds = (value: number) => profile(x, value) >= floor;
      return {
        chance: chanceOf(logit),
        low: chanceOf(atOnce(endOf(holds, logit, -MOST_LOGIT, closing)) ?? -MOST_LOGIT),
        high: chanceOf(atOnce(endOf(holds, logit, MOST_LOGIT, closing)) ?? MOST_LOGIT),
      };
    },
  };
}

/** The same in one go. */
export const passThreshold = (observations: readonly Observation[], confidence = 0.95): PassThreshold =>
  atOnce(thresholdInTurns(observations, confidence));

/** Shares of the way back in from the far end, in equal steps. */
const evenly: readonly number[] = Array.from({ length: LOOKS }, (_, i) => 1 - (i + 1) / LOOKS);
/** The same, in steps that shorten by a third. */
const closing: readonly number[] = Array.from({ length: 14 }, (_, i) => Math.pow(2 / 3, i + 1));

/** The value farthest from `inside` towards `far` that still holds; undefined when `far` itself does. */
function* endOf(
  holds: (value: number) => boolean,
  inside: number,
  far: number,
  looks: readonly number[],
): InTurns<number | undefined> {
  if (holds(far)) return undefined;
  let outside = far;
  let within = inside;
  for (const share of looks) {
    yield;
    const value = inside + share * (far - inside);
    if (holds(value)) {
      within = value;
      break;
    }
    outside = value;
  }
  for (let step = 0; step < 22; step += 1) {
    yield;
    const value = (within + outside) / 2;
    if (holds(value)) within = value;
    else outside = value;
  }
  return (within + outside) / 2;
}
