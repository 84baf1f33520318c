/** What a number of replicates can tell apart, by counting through every outcome there could be. */
import { boschlooExact } from './compare';
import { binomialChance } from './functions';
import { mustBeWithin } from '../base/result';

export interface Detectable {
  readonly replicates: number;
  /** least gap between two true pass rates, one as far above a half as the other is below; undefined: none */
  readonly difference: number | undefined;
  /** least true rate that is told from one that never passes; undefined: none */
  readonly fromNever: number | undefined;
  /** for each count of passes on one side, the least count above it on the other that is noticed */
  readonly noticed: readonly (number | undefined)[];
}

export interface PowerOptions {
  /** 0.95: at most 1 in 20 equal pairs is called different */
  readonly confidence?: number;
  /** 0.8: a gap counts as told apart when it is noticed 4 times in 5 */
  readonly power?: number;
}

const outcomeCache = new Map<string, readonly (readonly boolean[])[]>();

/** noticed[x][y]: would x of n against y of n be called different, with at most 1 − confidence false calls. */
function noticedOutcomes(n: number, confidence: number): readonly (readonly boolean[])[] {
  const key = `${n} ${confidence}`;
  const known = outcomeCache.get(key);
  if (known) return known;
  const counts = Array.from({ length: n + 1 }, (_, k) => k);
  const found = counts.map((x) =>
    counts.map((y) => x !== y && boschlooExact({ passes: x, n }, { passes: y, n }) <= 1 - confidence + 1e-9),
  );
  outcomeCache.set(key, found);
  return found;
}

/** Chance that a trial with `n` swatches each notices true pass rates `first` and `second`. */
function powerOf(noticed: readonly (readonly boolean[])[], first: number, second: number): number {
  const n = noticed.length - 1;
  let sum = 0;
  for (let x = 0; x <= n; x += 1) {
    const chance = binomialChance(x, n, first);
    for (let y = 0; y <= n; y += 1) if (noticed[x]![y]) sum += chance * binomialChance(y, n, second);
  }
  return sum;
}

/** Chance that `replicates` swatches each would show two true pass rates to be different (Boschloo's test). */
export function trialPower(first: number, second: number, replicates: number, confidence = 0.95): number {
  mustBeReplicates(replicates);
  mustBeWithin('first', first, 0, 1);
  mustBeWithin('second', second, 0, 1);
  return powerOf(noticedOutcomes(replicates, confidence), first, second);
}

function mustBeReplicates(replicates: number): void {
  mustBeWithin('replicates', replicates, 1, 40);
  if (!Number.isInteger(replicates)) throw new RangeError('replicates must be a whole number');
}

/** In steps of one per cent, the least `gap` at which `power(gap)` is reached and kept. */
function least(power: (gap: number) => number, wanted: number): number | undefined {
  let found: number | undefined;
  for (let percent = 100; percent >= 1; percent -= 1) {
    if (power(percent / 100) < wanted) break;
    found = percent / 100;
  }
  return found;
}

const cache = new Map<string, Detectable>();

/**
 * What `replicates` swatches of each can tell apart: two-sided at `confidence`, noticed with chance `power`.
 * Exact: every outcome is enumerated. replicates whole 1–40. Throws RangeError outside.
 */
export function detectableDifference(replicates: number, options: PowerOptions = {}): Detectable {
  const { confidence = 0.95, power = 0.8 } = options;
  mustBeReplicates(replicates);
  mustBeWithin('confidence', confidence, 0.5, 0.9999);
  mustBeWithin('power', power, 0.01, 0.9999);
  const key = `${replicates} ${confidence} ${power}`;
  const known = cache.get(key);
  if (known) return known;
  const outcomes = noticedOutcomes(replicates, confidence);
  const found: Detectable = {
    replicates,
    difference: least((gap) => powerOf(outcomes, 0.5 - gap / 2, 0.5 + gap / 2), power),
    fromNever: least((rate) => powerOf(outcomes, 0, rate), power),
    noticed: outcomes.map((row, x) => {
      const y = row.findIndex((seen, other) => other > x && seen);
      return y < 0 ? undefined : y;
    }),
  };
  cache.set(key, found);
  return found;
}
