/** What a number of replicates can tell apart, by counting through every outcome there could be. */
import { seededUniform } from '../base/random';
import { mustBeWithin } from '../base/result';
import { atOnce, type InTurns } from '../base/turns';
import { memoize } from '../base/memoize';
import { boschlooExact } from './boschloo';
import { binomialChance } from './distributions';
import { stratifiedPermutation, type Outcomes } from './stratified-permutation';

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

/** noticed[x][y]: would x of n against y of n be called different, with at most 1 − confidence false calls. */
const noticedOutcomes = memoize(
  (n: number, confidence: number): readonly (readonly boolean[])[] => {
    const counts = Array.from({ length: n + 1 }, (_, k) => k);
    return counts.map((x) =>
      counts.map((y) => x !== y && boschlooExact({ passes: x, n }, { passes: y, n }) <= 1 - confidence + 1e-9),
    );
  },
  (n, confidence) => `${n} ${confidence}`,
);

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

/**
 * What `replicates` swatches of each can tell apart: two-sided at `confidence`, noticed with chance `power`.
 * Exact: every outcome is enumerated. replicates whole 1–40. Throws RangeError outside.
 */
export function detectableDifference(replicates: number, options: PowerOptions = {}): Detectable {
  const { confidence = 0.95, power = 0.8 } = options;
  mustBeReplicates(replicates);
  mustBeWithin('confidence', confidence, 0.5, 0.9999);
  mustBeWithin('power', power, 0.01, 0.9999);
  return detected(replicates, confidence, power);
}

const detected = memoize(
  (replicates: number, confidence: number, power: number): Detectable => {
    const outcomes = noticedOutcomes(replicates, confidence);
    return {
      replicates,
      difference: least((gap) => powerOf(outcomes, 0.5 - gap / 2, 0.5 + gap / 2), power),
      fromNever: least((rate) => powerOf(outcomes, 0, rate), power),
      noticed: outcomes.map((row, x) => {
        const y = row.findIndex((seen, other) => other > x && seen);
        return y < 0 ? undefined : y;
      }),
    };
  },
  (replicates, confidence, power) => `${replicates} ${confidence} ${power}`,
);

export interface PlanPower {
  readonly replicates: number;
  readonly blocks: number;
  readonly claims: number;
  /** least count of passes in every block, against none, that is noticed; undefined: none */
  readonly noticed: number | undefined;
  /** least gap between two true rates that is noticed 4 times in 5, in steps of 5 %; undefined: none */
  readonly gap: number | undefined;
  /** the same where 1 swatch in 5 comes out "partly", whichever adhesive it bears */
  readonly gapWithPartly: number | undefined;
}

export interface PlanShape {
  /** swatches of each adhesive in each block, whole, 1–40 */
  readonly replicates: number;
  /** papers × holds, whole, 1 or more */
  readonly blocks: number;
  /** comparisons and claims about weight that share the 5 %, whole, 1 or more */
  readonly claims: number;
}

/** Share of swatches that come out "partly" where the words speak of them. Choice of ours. */
export const PARTLY = 0.2;
const GAP_STEP = 0.05;
/** Trials drawn for each gap: the chance of noticing is then known to 2 in 100 (one standard error). */
const DRAWS = 400;
/** More than so many blocks, or swatches of each, show more still: what is said of so many is safe. */
const MOST_BLOCKS = 24;
const MOST_SWATCHES = 48;

/**
 * What a planned trial can tell apart, in turns, by the very tests that will read it: Boschloo's in one block, the
 * exact stratified permutation test in several, at the level that Holm asks of the first of `claims`.
 * Gaps are the same in every block, one rate as far above a half as the other is below, and found by drawing 400
 * trials with a seeded lot for each; with "partly" the sharper test of one block falls away, and each "partly" brings
 * the two nearer to each other. Throws RangeError outside the ranges of `PlanShape`.
 */
export function* planPowerInTurns({ replicates, blocks, claims }: PlanShape): InTurns<PlanPower> {
  mustBeReplicates(replicates);
  mustBeWithin('blocks', blocks, 1, 10_000);
  mustBeWithin('claims', claims, 1, 100_000);
  const level = 0.05 / claims;
  const counted = Math.min(MOST_BLOCKS, blocks);
  const drawn = Math.min(counted, Math.max(1, Math.floor(MOST_SWATCHES / replicates)));
  let noticed: number | undefined;
  for (let pass = replicates; pass >= 1; pass -= 1) {
    yield;
    const same = { pass, partly: 0, fail: replicates - pass };
    const none = { pass: 0, partly: 0, fail: replicates };
    const strata = Array.from({ length: counted }, () => ({ first: same, second: none }));
    if (pOf(strata, blocks === 1) > level + 1e-9) break;
    noticed = pass;
  }
  const leastGap = function* (partly: number): InTurns<number | undefined> {
    let [failing, holding] = [0, Math.round(1 / GAP_STEP) + 1];
    while (holding - failing > 1) {
      const step = Math.floor((failing + holding) / 2);
      if (
        (yield* shareNoticed({
          blocks: drawn,
          replicates,
          gap: step * GAP_STEP,
          partly,
          level,
          single: blocks === 1,
        })) >= 0.8
      )
        holding = step;
      else failing = step;
    }
    const gap = Number((holding * GAP_STEP).toFixed(2));
    return gap > 1 ? undefined : gap;
  };
  const gap = noticed === undefined ? undefined : yield* leastGap(0);
  const gapWithPartly = gap === undefined ? undefined : yield* leastGap(PARTLY);
  return { replicates, blocks, claims, noticed, gap, gapWithPartly };
}

/** The same in one go. */
export const planPower = (shape: PlanShape): PlanPower => atOnce(planPowerInTurns(shape));

type Strata = readonly { readonly first: Outcomes; readonly second: Outcomes }[];

/** p of the test that such a trial is read by; `single`: it has one block and no more. */
function pOf(strata: Strata, single: boolean): number {
  const { first, second } = strata[0]!;
  return single && first.partly + second.partly === 0
    ? boschlooExact(
        { passes: first.pass, n: first.pass + first.fail },
        { passes: second.pass, n: second.pass + second.fail },
      )
    : stratifiedPermutation(strata).p;
}

interface Drawn {
  readonly blocks: number;
  readonly replicates: number;
  readonly gap: number;
  readonly partly: number;
  readonly level: number;
  readonly single: boolean;
}

/** Share of drawn trials in which a gap is noticed. The same lots are drawn for every gap, so a wider one is noticed oftener. */
function* shareNoticed({ blocks, replicates, gap, partly, level, single }: Drawn): InTurns<number> {
  const uniform = seededUniform(1);
  const drawn = (rate: number): Outcomes => {
    const counts = { pass: 0, partly: 0, fail: 0 };
    for (let i = 0; i < replicates; i += 1) {
      const [between, lot] = [uniform(), uniform()];
      counts[between < partly ? 'partly' : lot < rate ? 'pass' : 'fail'] += 1;
    }
    return counts;
  };
  let seen = 0;
  for (let draw = 0; draw < DRAWS; draw += 1) {
    if (draw % 20 === 0) yield;
    const strata = Array.from({ length: blocks }, () => ({
      first: drawn(0.5 + gap / 2),
      second: drawn(0.5 - gap / 2),
    }));
    if (pOf(strata, single) <= level + 1e-9) seen += 1;
  }
  return seen / DRAWS;
}
