/** Is it the glue or is it luck: exact tests on counts of passes and fails. */
import { binomialChance, logChoose } from './functions';
import { mustBeWithin } from '../base/result';

export type Table = readonly [readonly [number, number], readonly [number, number]];
export type Alternative = 'two-sided' | 'greater' | 'less';

function mustBeCount(name: string, value: number): void {
  mustBeWithin(name, value, 0, 10_000);
  if (!Number.isInteger(value)) throw new RangeError(`${name} must be a whole number`);
}

/** Tables that are as likely as the one seen but for rounding count as no likelier; R uses the same allowance. */
const SAME = 1 + 1e-7;

/**
 * Fisher's exact test on [[a, b], [c, d]]: how often luck alone gives a table like this, its margins fixed.
 * Two-sided: the sum over all tables no likelier than the one seen. 'greater' and 'less' are about a.
 * Counts whole, 0–10 000. Returns p in (0, 1]. Throws RangeError outside these.
 */
export function fisherExact(table: Table, alternative: Alternative = 'two-sided'): number {
  const [[a, b], [c, d]] = table;
  for (const [name, value] of Object.entries({ a, b, c, d })) mustBeCount(name, value);
  const [row, column, all] = [a + b, a + c, a + b + c + d];
  const chance = (x: number) => Math.exp(logChoose(column, x) + logChoose(all - column, row - x) - logChoose(all, row));
  const seen = chance(a);
  let p = 0;
  for (let x = Math.max(0, row + column - all); x <= Math.min(row, column); x += 1) {
    const counts = alternative === 'two-sided' ? chance(x) <= seen * SAME : alternative === 'greater' ? x >= a : x <= a;
    if (counts) p += chance(x);
  }
  return Math.min(1, p);
}

/**
 * McNemar's exact test for pairs: `b` pairs where only the first passed, `c` where only the second did.
 * Two-sided: twice the smaller binomial tail at one half, at most 1. Pairs that agree say nothing.
 */
export function mcnemarExact(b: number, c: number): number {
  mustBeCount('b', b);
  mustBeCount('c', c);
  const n = b + c;
  let tail = 0;
  for (let k = 0; k <= Math.min(b, c); k += 1) tail += binomialChance(k, n, 0.5);
  return Math.min(1, 2 * tail);
}

/**
 * Where the common pass rate is tried in the unconditional test. The worst case is a smooth function of
 * the rate, so steps of a quarter of a per cent are plenty for the sizes of a bench trial.
 */
const RATES = Array.from({ length: 399 }, (_, i) => (i + 1) / 400);

const fisherCache = new Map<string, readonly (readonly number[])[]>();

/** Fisher's p for every outcome of `m` against `n` swatches: [x][y]. */
function fisherOutcomes(m: number, n: number, alternative: Alternative): readonly (readonly number[])[] {
  const key = `${m} ${n} ${alternative}`;
  let table = fisherCache.get(key);
  if (!table) {
    const counts = (most: number) => Array.from({ length: most + 1 }, (_, k) => k);
    table = counts(m).map((x) =>
      counts(n).map((y) =>
        fisherExact(
          [
            [x, m - x],
            [y, n - y],
          ],
          alternative,
        ),
      ),
    );
    fisherCache.set(key, table);
  }
  return table;
}

export interface Tally {
  readonly passes: number;
  readonly n: number;
}

/**
 * Boschloo's exact test of one tally against another. It orders outcomes by Fisher's p and takes the worst
 * case over the unknown common rate, so it fixes only what a bench fixes (how many swatches each got) and is
 * never less sharp than Fisher's. Published: R. D. Boschloo, Statistica Neerlandica 24 (1970) 1. Whole
 * counts, n 1–200. 'greater' and 'less' are about the first. Throws RangeError outside these.
 */
export function boschlooExact(first: Tally, second: Tally, alternative: Alternative = 'two-sided'): number {
  for (const { passes, n } of [first, second]) {
    mustBeCount('n', n);
    mustBeWithin('n', n, 1, 200);
    mustBeCount('passes', passes);
    mustBeWithin('passes', passes, 0, n);
  }
  const fisher = fisherOutcomes(first.n, second.n, alternative);
  const limit = fisher[first.passes]![second.passes]! * SAME;
  const chances = (n: number, rate: number) => Array.from({ length: n + 1 }, (_, k) => binomialChance(k, n, rate));
  let worst = 0;
  for (const rate of RATES) {
    const ofFirst = chances(first.n, rate);
    const ofSecond = chances(second.n, rate);
    let sum = 0;
    for (let x = 0; x <= first.n; x += 1) {
      for (let y = 0; y <= second.n; y += 1) if (fisher[x]![y]! <= limit) sum += ofFirst[x]! * ofSecond[y]!;
    }
    worst = Math.max(worst, sum);
  }
  return Math.min(1, worst);
}
