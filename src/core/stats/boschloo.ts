/** Boschloo's exact test: two tallies from one place. */
import { mustBeWithin } from '../base/result';
import { binomialChance } from './distributions';
import { memoize } from '../base/memoize';
import { fisherExact, mustBeCount, SAME, type Alternative } from './fisher-exact';

export interface PassCount {
  readonly passes: number;
  readonly n: number;
}

/**
 * Where the common pass rate is tried. The worst case is a smooth function of the rate, so steps of a quarter of
 * a per cent are plenty for the sizes of a bench trial.
 */
const RATES = Array.from({ length: 399 }, (_, i) => (i + 1) / 400);

/** Boschloo's p for every outcome of `m` against `n` swatches, [x][y]: one walk from the least likely outcome to the likeliest for each rate. */
const tableOf = memoize(
  (m: number, n: number, alternative: Alternative): readonly Float64Array[] => {
    const outcomes = Array.from({ length: (m + 1) * (n + 1) }, (_, i) => {
      const [x, y] = [Math.floor(i / (n + 1)), i % (n + 1)];
      const rows = [
        [x, m - x],
        [y, n - y],
      ] as const;
      return { x, y, fisher: fisherExact(rows, alternative) };
    }).sort((a, b) => a.fisher - b.fisher);
    const worst = new Float64Array(outcomes.length);
    for (const rate of RATES) {
      const [ofFirst, ofSecond] = [m, n].map((of) =>
        Float64Array.from({ length: of + 1 }, (_, k) => binomialChance(k, of, rate)),
      ) as [Float64Array, Float64Array];
      let sum = 0;
      outcomes.forEach(({ x, y }, i) => {
        sum += ofFirst[x]! * ofSecond[y]!;
        if (sum > worst[i]!) worst[i] = sum;
      });
    }
    const table = Array.from({ length: m + 1 }, () => new Float64Array(n + 1));
    // outcomes that Fisher finds as likely count together
    let last = outcomes.length - 1;
    for (let i = last; i >= 0; i -= 1) {
      if (outcomes[i]!.fisher * SAME < outcomes[last]!.fisher) last = i;
      table[outcomes[i]!.x]![outcomes[i]!.y] = Math.min(1, worst[last]!);
    }
    return table;
  },
  (m, n, alternative) => `${m} ${n} ${alternative}`,
);

/**
 * Boschloo's exact unconditional test of one tally against another.
 * Null hypothesis: both pass equally often, at some rate that nobody knows; each swatch falls by itself.
 * It orders outcomes by Fisher's p and takes the worst case over the unknown rate, so it fixes only what a bench
 * fixes (how many swatches each got) and is never less sharp than Fisher's. For one block only: one hand, one
 * paper, one hold.
 *
 * Published: R. D. Boschloo, Statistica Neerlandica 24 (1970) 1. Whole counts, n 1–200; 'greater' and 'less' are
 * about the first. Returns p in (0, 1]. Throws RangeError outside these.
 */
export function boschlooExact(first: PassCount, second: PassCount, alternative: Alternative = 'two-sided'): number {
  for (const { passes, n } of [first, second]) {
    mustBeCount('n', n);
    mustBeWithin('n', n, 1, 200);
    mustBeCount('passes', passes);
    mustBeWithin('passes', passes, 0, n);
  }
  return tableOf(first.n, second.n, alternative)[first.passes]![second.passes]!;
}
