/** From swatches to counts: one cell per paper and adhesive, two adhesives side by side, pass against weight. */
import { boschlooExact, mcnemarExact } from '../stats/compare';
import { wilsonInterval, type Interval } from '../stats/intervals';
import { permutationTest, type Block } from '../stats/permutation';
import { outcomeOf, type Outcome, type Swatch, type Trial } from './record';
import type { Observation } from '../stats/threshold';

export interface Cell {
  readonly paper: string;
  readonly glue: string;
  readonly passes: number;
  readonly partly: number;
  readonly fails: number;
  /** judged and not set aside */
  readonly n: number;
  /** of clean passes; undefined when nothing is judged */
  readonly interval: Interval | undefined;
}

/** Swatches that count for a question; one hold time, or all when it is undefined. */
function judged(trial: Trial, question: string, hold: number | undefined): readonly (Swatch & { outcome: Outcome })[] {
  return trial.swatches.flatMap((swatch) => {
    const outcome = outcomeOf(swatch, question);
    return outcome === undefined || swatch.spoiled || (hold !== undefined && swatch.hold !== hold)
      ? []
      : [{ ...swatch, outcome }];
  });
}

function cellOf(paper: string, glue: string, swatches: readonly { outcome: Outcome }[], confidence: number): Cell {
  const count = (outcome: Outcome) => swatches.filter((swatch) => swatch.outcome === outcome).length;
  const passes = count('pass');
  const n = swatches.length;
  const interval = n === 0 ? undefined : wilsonInterval(passes, n, confidence);
  return { paper, glue, passes, partly: count('partly'), fails: count('fail'), n, interval };
}

/** Every paper × adhesive of the trial, paper by paper. "Partly" is no clean pass and counts as none in the interval. */
export function cellsOf(trial: Trial, question: string, hold?: number, confidence = 0.95): readonly Cell[] {
  const swatches = judged(trial, question, hold);
  return trial.papers.flatMap(({ id: paper }) =>
    trial.glues.map(({ id: glue }) =>
      cellOf(
        paper,
        glue,
        swatches.filter((one) => one.paper === paper && one.glue === glue),
        confidence,
      ),
    ),
  );
}

const SCORE: Readonly<Record<Outcome, number>> = { pass: 1, partly: 0.5, fail: 0 };

export interface Comparison {
  readonly first: Cell;
  readonly second: Cell;
  /** mean score of the first less that of the second on the same papers and holds, −1 to 1 */
  readonly difference: number;
  /** two-sided; within papers and holds when there are several, else Boschloo's test on clean passes */
  readonly p: number;
  readonly test: 'permutation' | 'boschloo';
  /** swatches of the same paper, hold and repeat: where only the first, or only the second, passed */
  readonly pairs: { readonly onlyFirst: number; readonly onlySecond: number; readonly all: number; readonly p: number };
  /** papers × holds on which both were tried */
  readonly blocks: number;
}

/** Two adhesives on the same papers; undefined while no paper was judged with both. */
export function compareGlues(
  trial: Trial,
  question: string,
  first: string,
  second: string,
  hold?: number,
): Comparison | undefined {
  const swatches = judged(trial, question, hold);
  const keys = [...new Set(swatches.map(({ paper, hold: seconds }) => `${paper} ${seconds}`))];
  const groups = keys.flatMap((key) => {
    const here = swatches.filter(({ paper, hold: seconds }) => `${paper} ${seconds}` === key);
    const [a, b] = [here.filter(({ glue }) => glue === first), here.filter(({ glue }) => glue === second)];
    return a.length > 0 && b.length > 0 ? [{ a, b }] : [];
  });
  if (groups.length === 0) return undefined;
  const [allA, allB] = [groups.flatMap(({ a }) => a), groups.flatMap(({ b }) => b)];
  const tallies = [cellOf('', first, allA, 0.95), cellOf('', second, allB, 0.95)] as const;
  const blocks: Block[] = groups.map(({ a, b }) => ({
    first: a.map(({ outcome }) => SCORE[outcome]),
    second: b.map(({ outcome }) => SCORE[outcome]),
  }));
  const permuted = permutationTest(blocks);
  // On a single paper the sharper test is at hand; it takes whole passes and not too many of them.
  const single = groups.length === 1 && tallies.every(({ n, partly }) => n <= 60 && partly === 0);
  return {
    first: tallies[0],
    second: tallies[1],
    difference: permuted.difference,
    p: single ? boschlooExact(tallies[0], tallies[1]) : permuted.p,
    test: single ? 'boschloo' : 'permutation',
    pairs: pairsOf(allA, allB),
    blocks: groups.length,
  };
}

type Judged = Swatch & { readonly outcome: Outcome };

function pairsOf(first: readonly Judged[], second: readonly Judged[]): Comparison['pairs'] {
  const pairs = first.flatMap((a) => {
    const partners = second.filter(
      (b) => b.paper === a.paper && b.hold === a.hold && b.block === a.block && b.from?.trial === a.from?.trial,
    );
    return partners.length === 1 ? [{ a, b: partners[0]! }] : [];
  });
  const only = (one: 'a' | 'b', other: 'a' | 'b') =>
    pairs.filter((pair) => pair[one].outcome === 'pass' && pair[other].outcome !== 'pass').length;
  const [onlyFirst, onlySecond] = [only('a', 'b'), only('b', 'a')];
  return { onlyFirst, onlySecond, all: pairs.length, p: mcnemarExact(onlyFirst, onlySecond) };
}

/** Clean passes by weight for one adhesive; papers without a weight are left out. */
export function observationsOf(
  trial: Trial,
  question: string,
  glue: string,
  hold?: number,
): readonly Required<Observation>[] {
  const swatches = judged(trial, question, hold).filter((one) => one.glue === glue);
  return trial.papers.flatMap(({ id, grammage }) => {
    const here = swatches.filter(({ paper }) => paper === id);
    if (grammage === undefined || here.length === 0) return [];
    return [{ grammage, passes: here.filter(({ outcome }) => outcome === 'pass').length, n: here.length }];
  });
}
