/** What a trial showed, in words that never say more than it did. */
import { figure } from '../base/format';
import type { Cell, Comparison } from './analysis';
import type { Detectable } from '../stats/power';
import type { PassThreshold } from '../stats/threshold';

/** Whole per cent, never rounded to a certainty that is not there. */
export function percent(share: number): string {
  if (share > 0 && share < 0.01) return 'under 1\u00a0%';
  if (share < 1 && share > 0.99) return 'over 99\u00a0%';
  return `${Math.round(share * 100)}\u00a0%`;
}

/** "3 of 3 passed; the true rate could be as low as 44 %." */
export function cellWords({ passes, partly, n, interval }: Cell): string {
  if (!interval) return 'Not judged yet.';
  const half = partly > 0 ? `, ${partly} partly` : '';
  const counts = `${passes} of ${n} passed${half}`;
  if (passes === n) return `${counts}; the true rate could be as low as ${percent(interval.low)}.`;
  if (passes === 0) return `${counts}; the true rate could be as high as ${percent(interval.high)}.`;
  return `${counts}; the true rate could be anywhere from ${percent(interval.low)} to ${percent(interval.high)}.`;
}

/** How a cell stands, for its pattern and its first word: decided by the interval, not by the count. */
export type Standing = 'mostly passes' | 'mostly fails' | 'not enough to tell' | 'not judged';

export function standingOf({ interval }: Cell): Standing {
  if (!interval) return 'not judged';
  if (interval.low > 0.5) return 'mostly passes';
  if (interval.high < 0.5) return 'mostly fails';
  return 'not enough to tell';
}

/** p as a count of chances: "1 time in 32". */
export function oddsOf(p: number): string {
  if (p >= 0.5) return 'more often than not';
  if (p < 0.001) return 'less than 1 time in 1000';
  return `about 1 time in ${Math.round(1 / p)}`;
}

/** Does luck explain the gap; the line is drawn at 1 in 20, and said so. */
export const isNoticed = (p: number): boolean => p <= 0.05;

/** Two adhesives side by side. */
export function comparisonWords(comparison: Comparison, firstName: string, secondName: string): string {
  const { first, second, p, difference, pairs } = comparison;
  const counts = `${firstName} passed ${first.passes} of ${first.n}, ${secondName} ${second.passes} of ${second.n}`;
  if (difference === 0) return `${counts}: no difference to be seen, which does not show that there is none.`;
  const better = difference > 0 ? firstName : secondName;
  const paired =
    pairs.all > 0 && (pairs.onlyFirst > 0 || pairs.onlySecond > 0)
      ? ` Side by side in ${pairs.all} pairs, ${firstName} alone passed ${times(pairs.onlyFirst)}, ${secondName} alone ${times(pairs.onlySecond)}.`
      : '';
  if (isNoticed(p))
    return `${counts}. ${better} did better, and luck alone would give a gap like this ${oddsOf(p)}.${paired}`;
  return `${counts}. Not enough to tell: luck alone would give a gap like this ${oddsOf(p)}.${paired}`;
}

const times = (count: number) => (count === 1 ? 'once' : `${count} times`);

/** From which weight on. */
export function thresholdWords({ slope, slopeP, half, low, high }: PassThreshold): string {
  if (!isNoticed(slopeP)) return 'Not enough to tell whether weight matters here.';
  const grams = (value: number) => `${figure(value)}\u00a0g/m²`;
  const where =
    low !== undefined && high !== undefined
      ? `half of them pass at about ${grams(half)}, somewhere from ${figure(low)} to ${grams(high)}`
      : low !== undefined
        ? `half of them pass at some weight above ${grams(low)}`
        : high !== undefined
          ? `half of them pass at some weight below ${grams(high)}`
          : `where half of them pass cannot be told`;
  return `${slope > 0 ? 'Heavier' : 'Lighter'} sheets pass more often; ${where}.`;
}

/** What a number of replicates can and cannot show, before the trial is run. */
export function powerWords({ replicates, difference, noticed }: Detectable): string {
  const each = `With ${replicates} each`;
  if (noticed.every((count) => count === undefined)) {
    return `${each} no outcome tells two adhesives apart, not even always against never. It can only show what happens.`;
  }
  if (noticed[0] === replicates) return `${each} you would notice always against never, ${nearMiss(replicates)}.`;
  const least = noticed[0]!;
  const gap =
    difference === undefined
      ? ''
      : ` Two adhesives whose true rates differ by ${percent(difference)} or more would be told apart 4 times in 5.`;
  return `${each} you would notice ${least} of ${replicates} against none, ${nearMiss(replicates)}.${gap}`;
}

/** An outcome that looks like a difference and is not: one more than half against one less. */
function nearMiss(n: number): string {
  const above = Math.floor(n / 2) + 1;
  return `not ${above} of ${n} against ${n - above} of ${n}`;
}
