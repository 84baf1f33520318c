/**
 * What a trial page promises beside its claims: that the curve through the weights is the best there is, and that a true
 * gap of the width that the planning page names is noticed 4 times in 5.
 */
import { firthLine } from '../../src/core/stats/firth';
import { planPower } from '../../src/core/stats/power';
import { drawOrder } from '../../src/core/trial/design';
import { TRIAL_VERSION, type Outcome, type Trial } from '../../src/core/trial/record';
import { lotOf } from './null-trials';
import { claimRates } from './rates';

type Uniform = () => number;

export interface Tried {
  /** natural log of g/m² */
  readonly x: number;
  readonly passes: number;
  readonly n: number;
}
interface Line {
  readonly intercept: number;
  readonly slope: number;
}

/** Seven papers of 20 to 400 g/m² with 1 to 6 swatches each: nothing passes below a weight drawn by lot, everything above. */
export function drawSeven(uniform: Uniform): readonly Tried[] {
  const limit = 60 + 240 * uniform();
  return Array.from({ length: 7 }, () => {
    const [grammage, n] = [20 + 380 * uniform(), 1 + Math.floor(6 * uniform())];
    return { x: Math.log(grammage), passes: grammage < limit ? 0 : n, n };
  }).sort((a, b) => a.x - b.x);
}

/** Log likelihood and half the log of the information, written out anew: what Firth's estimate is the highest point of. */
function heightOf(points: readonly Tried[], { intercept, slope }: Line): number {
  let [likelihood, a, b, c] = [0, 0, 0, 0];
  for (const { x, passes, n } of points) {
    const p = 1 / (1 + Math.exp(-(intercept + slope * x)));
    const clear = Math.min(Math.max(p, 1e-15), 1 - 1e-15);
    likelihood += passes * Math.log(clear) + (n - passes) * Math.log(1 - clear);
    const weight = n * clear * (1 - clear);
    a += weight;
    b += weight * x;
    c += weight * x * x;
  }
  return likelihood + 0.5 * Math.log(Math.max(a * c - b * b, 1e-300));
}

/** Slopes and halves of a coarse net: enough to find a higher peak, too coarse to reach its top. */
const SLOPES = Array.from({ length: 60 }, (_, i) => 0.3 * 1.15 ** i);

/** Whether some line of the net lies clearly above this one. */
export function isTopped(points: readonly Tried[], line: Line): boolean {
  const reached = heightOf(points, line);
  const xs = points.map(({ x }) => x);
  const halves = xs.slice(1).flatMap((x, i) => [0.25, 0.5, 0.75].map((share) => xs[i]! + share * (x - xs[i]!)));
  return SLOPES.some((slope) =>
    halves.some((half) => heightOf(points, { slope, intercept: -slope * half }) > reached + 0.05),
  );
}

/** A trial of two adhesives on one paper, `gap` between their rates; 1 swatch in 5 comes out partly, whichever it is. */
export function drawGap(gap: number, replicates: number, uniform: Uniform): Trial {
  const design = {
    papers: [{ id: 'p', name: 'Paper', grammage: 60 }],
    glues: [
      { id: 'a', name: 'a' },
      { id: 'b', name: 'b' },
    ],
    holds: [20],
    replicates,
  };
  const outcome = (glue: string): Outcome => {
    const [between, lot] = [uniform(), uniform()];
    return between < 0.2 ? 'partly' : lot < 0.5 + (glue === 'a' ? gap : -gap) / 2 ? 'pass' : 'fail';
  };
  return {
    version: TRIAL_VERSION,
    id: 'gap',
    name: 'gap',
    by: 'Ada',
    createdAt: '2026-01-01',
    ...design,
    questions: [{ id: 'q-1', kind: 'own', text: 'Question', criterion: '' }],
    widthMm: 50,
    heightMm: 70,
    seed: 1,
    conditions: {},
    swatches: drawOrder(design, 1).map((swatch) => ({ ...swatch, outcomes: { 'q-1': outcome(swatch.glue) } })),
  };
}

interface Kept {
  readonly id: string;
  readonly says: string;
  /** share of trials in which it was kept by the program as it was on 25 November 2026, counted with the same lot */
  readonly before: number;
  /** the share in `trials` drawn by a lot of this name */
  readonly kept: (lot: string, trials: number) => number;
}

/** Share of trials whose gap is as wide as the planning page says is noticed 4 times in 5 with 1 in 5 partly, and is. */
const noticed = (replicates: number) => (lot: string, trials: number) => {
  const { gapWithPartly = 1 } = planPower({ replicates, blocks: 1, claims: 1 });
  return claimRates(lot, (uniform) => drawGap(gapWithPartly, replicates, uniform), trials).better;
};

export const PROMISES: readonly Kept[] = [
  {
    id: 'highest-fit',
    says: 'no other curve fits better than the one that is drawn; seven papers of 1 to 6 swatches, none passing below some weight and all above it',
    before: 0.9705,
    kept: (lot, trials) => {
      const uniform = lotOf(lot);
      const bad = Array.from({ length: trials }, () => drawSeven(uniform)).filter((points) =>
        isTopped(points, firthLine(points)),
      );
      return 1 - bad.length / trials;
    },
  },
  {
    id: 'gap-8',
    says: 'a true gap of the width that the planning page names is noticed; 8 swatches of each, of which 1 in 5 comes out partly (aim: 80 %)',
    before: 0.6875,
    kept: noticed(8),
  },
  {
    id: 'gap-12',
    says: 'the same with 12 swatches of each',
    before: 0.657,
    kept: noticed(12),
  },
];
