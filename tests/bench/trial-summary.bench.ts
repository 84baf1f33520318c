/**
 * `npm run bench`: what reading the largest trials costs, and the longest of its steps. Steps are what a page can stop
 * after: the aim is that none takes more than 50 ms on a phone, which is some five times slower than a desk.
 */
import { bench, describe } from 'vitest';
import { seededUniform } from '../../src/core/base/random';
import { planPower } from '../../src/core/stats/power';
import { curveInTurns } from '../../src/core/trial/curve';
import { atOnce } from '../../src/core/base/turns';
import { drawOrder } from '../../src/core/trial/design';
import { TRIAL_VERSION, type Trial } from '../../src/core/trial/record';
import { summaryInTurns } from '../../src/core/trial/summary';

/** Papers × adhesives × holds × repeats on ten questions: 3 in 10 to 8 in 10 pass, the heavier the more, and 15 in 100 come out partly. */
function largest(papers: number, glues: number, holds: number, replicates: number): Trial {
  const uniform = seededUniform(5);
  const design = {
    papers: Array.from({ length: papers }, (_, i) => ({ id: `p-${i}`, name: `P${i}`, grammage: 20 * 1.12 ** i })),
    glues: Array.from({ length: glues }, (_, i) => ({ id: `g-${i}`, name: `G${i}` })),
    holds: Array.from({ length: holds }, (_, i) => 20 * (i + 1)),
    replicates,
  };
  const questions = Array.from({ length: 10 }, (_, i) => ({
    id: `q-${i}`,
    kind: 'own' as const,
    text: `Q${i}`,
    criterion: '',
  }));
  const rate = (paper: string) => 0.3 + (0.5 * Number(paper.slice(2))) / papers;
  const outcome = (paper: string) => {
    const [between, lot] = [uniform(), uniform()];
    return between < 0.15 ? 'partly' : lot < rate(paper) ? 'pass' : 'fail';
  };
  return {
    version: TRIAL_VERSION,
    id: 'largest',
    name: 'Largest',
    by: '',
    createdAt: '',
    ...design,
    questions,
    widthMm: 50,
    heightMm: 70,
    seed: 1,
    conditions: {},
    swatches: drawOrder(design, 1).map((swatch) => ({
      ...swatch,
      outcomes: Object.fromEntries(questions.map(({ id }) => [id, outcome(swatch.paper)])),
    })),
  };
}

const longest = new Map<string, number>();

/** The whole, and on the side the longest step of any run. */
function read(name: string, trial: Trial): void {
  const work = summaryInTurns(trial);
  for (;;) {
    const began = performance.now();
    const { done } = work.next();
    longest.set(name, Math.max(longest.get(name) ?? 0, performance.now() - began));
    if (done) return;
  }
}

describe('576 swatches, 10 questions', () => {
  for (const [name, papers, glues, holds, replicates] of [
    ['24 papers, 24 adhesives', 24, 24, 1, 1],
    ['24 papers, 1 adhesive, 2 holds, 12 of each', 24, 1, 2, 12],
    ['24 papers, 2 adhesives, 12 of each', 24, 2, 1, 12],
    ['1 paper, 24 adhesives, 2 holds, 12 of each', 1, 24, 2, 12],
  ] as const) {
    const trial = largest(papers, glues, holds, replicates);
    bench(name, () => read(name, trial), {
      iterations: 3,
      warmupIterations: 1,
      time: 0,
      warmupTime: 0,
      teardown: () => console.log(`${name}: longest step ${longest.get(name)?.toFixed(0)} ms`),
    });
  }
});

describe('beside the summary', () => {
  const points = Array.from({ length: 24 }, (_, i) => ({ grammage: 20 * 1.12 ** i, passes: Math.min(24, i), n: 24 }));
  bench('the curve through 24 weights', () => void atOnce(curveInTurns(points)), { iterations: 3, time: 0 });
  bench('the power of a plan of 4 papers', () => void planPower({ replicates: 4, blocks: 4, claims: 6 }), {
    iterations: 3,
    time: 0,
  });
});
