/** What a trial showed, in words that never say more than it did. */
import { figure } from '../base/format';
import type { Cell, Comparison } from './analysis';
import type { PlanPower } from '../stats/power';
import type { Trend } from '../stats/cochran-armitage';
import type { PassThreshold } from '../stats/pass-threshold';

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

/** What two counts of swatches say of each other, in words. */
export function standingOf({ interval }: Cell): Standing {
  if (!interval) return 'not judged';
  if (interval.low > 0.5) return 'mostly passes';
  if (interval.high < 0.5) return 'mostly fails';
  return 'not enough to tell';
}

/** p as a count of chances, no finer than it is worth: "about 1 time in 30". */
export function oddsOf(p: number): string {
  if (p >= 0.5) return 'more often than not';
  if (p < 0.001) return 'less than 1 time in 1000';
  const times = 1 / p;
  const round = times < 10 ? Math.round(times) : times < 100 ? 5 * Math.round(times / 5) : Number(times.toPrecision(1));
  return `about 1 time in ${round}`;
}

/** How one claim stands among all claims of its page. */
export interface Standings {
  /** p with all claims reckoned in */
  readonly adjusted: number;
  readonly claims: number;
  readonly level: number;
}

/**
 * Two adhesives in a plain sentence, for those who want the result before its figures. "Did better" is said only
 * where the comparison stands among all claims of the page; what luck could do is said to be so.
 */
export function resultWords(
  { first, second, difference, papers }: Comparison,
  firstName: string,
  secondName: string,
  { adjusted, level }: Pick<Standings, 'adjusted' | 'level'>,
): string {
  if (Math.abs(difference) < 1e-9)
    return `${firstName} and ${secondName} came out alike: ${first.passes} of ${first.n} and ${second.passes} of ${second.n} passed.`;
  const [ahead, behind] = difference > 0 ? [first, second] : [second, first];
  const [better, other] = difference > 0 ? [firstName, secondName] : [secondName, firstName];
  const on = difference > 0 ? papers.firstAhead : papers.secondAhead;
  const where =
    papers.all === 1
      ? 'on the one paper that both were tried on'
      : on === papers.all
        ? papers.all === 2
          ? 'on both papers'
          : `on all ${papers.all} papers`
        : `on ${on} of ${papers.all} papers`;
  const counts = `${ahead.passes} of ${ahead.n} passed, against ${behind.passes} of ${behind.n}`;
  return adjusted <= level
    ? `${better} did better than ${other} ${where}: ${counts}.`
    : `${better} came out ahead of ${other} ${where} (${counts}), but luck alone could do that.`;
}

/** Two adhesives side by side, with how often luck alone would part them so. */
export function comparisonWords(
  { first, second, p, difference, pairs }: Comparison,
  firstName: string,
  secondName: string,
  { adjusted, claims, level }: Standings,
): string {
  const counts = `${firstName} passed ${first.passes} of ${first.n}, ${secondName} ${second.passes} of ${second.n}`;
  if (Math.abs(difference) < 1e-9)
    return `${counts}: no difference to be seen, which does not show that there is none.`;
  const better = difference > 0 ? firstName : secondName;
  const paired =
    pairs.all > 0 && (pairs.onlyFirst > 0 || pairs.onlySecond > 0)
      ? ` Side by side in ${pairs.all} pairs, ${firstName} alone passed ${times(pairs.onlyFirst)}, ${secondName} alone ${times(pairs.onlySecond)}.`
      : '';
  const luck = `luck alone would give a gap like this ${oddsOf(p)}`;
  if (adjusted <= level) {
    const among = claims > 1 ? `, and somewhere among the ${claims} comparisons of this page ${oddsOf(adjusted)}` : '';
    return `${counts}. ${better} did better: ${luck}${among}.${paired}`;
  }
  if (p <= level)
    return `${counts}. Not enough to tell: ${luck}, but somewhere among the ${claims} comparisons of this page ${oddsOf(adjusted)}.${paired}`;
  return `${counts}. Not enough to tell: ${luck}.${paired}`;
}

/** The same comparison with the other adhesive named first. */
export const turnedRound = ({ first, second, difference, pairs, papers, ...rest }: Comparison): Comparison => ({
  ...rest,
  first: second,
  second: first,
  difference: -difference,
  pairs: { ...pairs, onlyFirst: pairs.onlySecond, onlySecond: pairs.onlyFirst },
  papers: { ...papers, firstAhead: papers.secondAhead, secondAhead: papers.firstAhead },
});

const times = (count: number) => (count === 1 ? 'once' : `${count} times`);

export interface WeightClaim {
  readonly trend: Trend;
  /** p with every claim of the page reckoned in (Holm, Tarone) */
  readonly adjusted: number;
  /** worked out where the claim stands */
  readonly threshold?: PassThreshold;
}

/** Do the heavier or the lighter of these papers pass more often, and from which weight on. */
export function weightWords({ trend, adjusted, threshold }: WeightClaim, level: number): string {
  if (adjusted > level || !threshold)
    return 'Not enough to tell whether the heavier or the lighter papers pass more often.';
  const way = `Of these papers the ${trend.direction > 0 ? 'heavier' : 'lighter'} pass more often`;
  // Hands that differ can turn the curve through all of them the other way: then no weight is named.
  return Math.sign(threshold.slope) === Math.sign(trend.direction) ? `${way}; ${whereHalf(threshold)}.` : `${way}.`;
}

/** Where half of them pass, as far as that is known. */
export function whereHalf({ half, low, high }: Pick<PassThreshold, 'half' | 'low' | 'high'>): string {
  const grams = (value: number) => `${figure(value)}\u00a0g/m²`;
  if (half !== undefined && low !== undefined && high !== undefined)
    return `half of them pass at about ${grams(half)}, somewhere from ${figure(low)} to ${grams(high)}`;
  if (low !== undefined) return `half of them pass at some weight above ${grams(low)}`;
  if (high !== undefined) return `half of them pass at some weight below ${grams(high)}`;
  return `where half of them pass cannot be told`;
}

/** What holds of all claims of a page together. */
export function familyWords(claims: number, level: number, weightCalled: boolean): readonly string[] {
  return [
    claims > 1
      ? `This page asks ${claims} times whether something differs: each two adhesives, each weight, each question. If nothing differed, it would still say somewhere “did better” or “pass more often” in at most 1 trial of ${Math.round(1 / level)}.`
      : '',
    weightCalled
      ? 'Whether weight is what makes papers pass, or something else in which these papers differ, such a trial cannot tell.'
      : '',
  ].filter((text) => text !== '');
}

/** What a plan can and cannot show, before the trial is run. */
export function powerWords({ replicates, blocks, claims, noticed, gap, gapWithPartly }: PlanPower): string {
  const where = blocks > 1 ? ` in each of ${blocks} places (papers × holds)` : '';
  const each = `With ${replicates} each${where}`;
  const among = claims > 1 ? `, with ${claims} comparisons on the page,` : '';
  if (noticed === undefined)
    return `${each}${among} no outcome tells two adhesives apart, not even always against never. It can only show what happens.`;
  const everywhere = blocks > 1 ? ' everywhere' : '';
  const least = noticed === replicates ? 'always against never' : `${noticed} of ${replicates} against none`;
  const told = `${each}${among} you would notice ${least}${everywhere}${blocks > 1 ? '' : `, not ${nearMiss(replicates)}`}.`;
  if (gap === undefined) return `${told} ${NO_GAP}`;
  const apart = ` Two adhesives whose true rates differ by ${percent(gap)} or more would be told apart 4 times in 5`;
  return gapWithPartly === undefined
    ? `${told}${apart}; where 1 swatch in 5 comes out “partly”, no difference is told so surely.`
    : gapWithPartly > gap
      ? `${told}${apart}; where 1 swatch in 5 comes out “partly”, it takes ${percent(gapWithPartly)}.`
      : `${told}${apart}, also where 1 swatch in 5 comes out “partly”.`;
}

const NO_GAP = 'No difference in true rates would be told apart 4 times in 5.';

/** An outcome that looks like a difference and is not: one more than half against one less. */
function nearMiss(n: number): string {
  const above = Math.floor(n / 2) + 1;
  return `${above} of ${n} against ${n - above} of ${n}`;
}
