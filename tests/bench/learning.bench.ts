/** `npm run bench`: what learning from swatches costs, whole, and its longest step, which must leave a thumb free (50 ms). */
import { bench, describe } from 'vitest';
import { atOnce } from '../../src/core/base/turns';
import { DEFAULT_JOB } from '../../src/core/choose/job';
import type { Condition } from '../../src/core/learn/condition';
import { nextSwatches } from '../../src/core/learn/next-swatch';
import { learnInTurns } from '../../src/core/learn/reweigh';
import { drawsForTaught, pairsInTurns } from '../../src/core/learn/taught';
import { rank } from '../../src/core/choose/ranking';
import { catalogue } from '../../src/data/catalogue';

const papers = [...catalogue.papers.keys()].slice(0, 12);
const adhesives = ['pva', 'pva-mc-1-1', 'methylcellulose-2-5', 'wheat-starch-paste-12'];
/** 48 swatches, no two alike: the dearest there can be. */
const conditions = papers.flatMap((family, i) =>
  adhesives.map((adhesive, k): Condition => ({
    bench: 'one',
    sheet: `one ${family}`,
    paperName: family,
    paper: { family },
    adhesive,
    job: { ...DEFAULT_JOB, paper: { family }, placeSeconds: 40, lined: false },
    seen: [{ spread: 'pass', lift: (i + k) % 3 ? 'pass' : 'fail', board: 'pass' }],
  })),
);
const learned = atOnce(learnInTurns(conditions, catalogue));

/** Milliseconds of the longest step. */
function longestStep(work: Generator<unknown, unknown>): number {
  let longest = 0;
  for (;;) {
    const start = performance.now();
    const { done } = work.next();
    longest = Math.max(longest, performance.now() - start);
    if (done) return longest;
  }
}
console.log(
  `longest step of learning from 48 swatches: ${longestStep(learnInTurns(conditions, catalogue)).toFixed(1)} ms`,
);
console.log(`longest step of naming what taught: ${longestStep(pairsInTurns(learned)).toFixed(1)} ms`);

describe('48 swatches, no two alike', () => {
  bench('learned from', () => {
    atOnce(learnInTurns(conditions, catalogue));
  });
  bench('which pairs taught most', () => {
    atOnce(pairsInTurns(learned));
  });
  bench('an answer with what was learned', () => {
    rank(DEFAULT_JOB, catalogue, atOnce(drawsForTaught(learned, DEFAULT_JOB.paper)));
  });
  bench('the next swatch worth making', () => {
    nextSwatches(
      {
        job: { ...DEFAULT_JOB, paper: { family: 'marbled' } },
        among: adhesives,
        papers: [{ family: 'marbled' }],
        holds: [20, 60],
      },
      learned,
      catalogue,
    );
  });
});
