/** From swatches to counts: one cell per paper and adhesive, two adhesives side by side, pass against weight. */
import { boschlooExact } from '../stats/boschloo';
import { clopperPearsonInterval, type Interval } from '../stats/clopper-pearson';
import type { Dose } from '../stats/cochran-armitage';
import type { Observation } from '../stats/pass-threshold';
import { stratifiedPermutation, type Outcomes, type Stratum } from '../stats/stratified-permutation';
import { methodKey, methodOf } from './method';
import { outcomeOf, type Outcome, type Swatch, type Trial } from './record';

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

type Judged = Swatch & { readonly outcome: Outcome };

/** Swatches that count for a question; one hold time, or all when it is undefined. */
function judgedIn(trial: Trial, question: string, hold: number | undefined): readonly Judged[] {
  return trial.swatches.flatMap((swatch) => {
    const outcome = outcomeOf(swatch, question);
    return outcome === undefined || swatch.spoiled || (hold !== undefined && swatch.hold !== hold)
      ? []
      : [{ ...swatch, outcome }];
  });
}

/** The list by a key, in the order in which the keys come up. */
function grouped<T>(list: readonly T[], keyFor: (one: T) => string): ReadonlyMap<string, readonly T[]> {
  const groups = new Map<string, T[]>();
  for (const one of list) {
    const key = keyFor(one);
    const group = groups.get(key);
    if (group) group.push(one);
    else groups.set(key, [one]);
  }
  return groups;
}

/** One key of several parts; a name is one line, so none can hold the mark between them. */
const keyOf = (...parts: readonly (string | number)[]): string => parts.join('\n');

/** Whose swatch it is, of which trial, and how it was spread: what differs between two hands or two tools must not look like a difference between two adhesives. */
const handOf = (trial: Trial, swatch: Swatch): readonly string[] => [
  swatch.by ?? trial.by,
  swatch.from?.trial ?? '',
  methodKey(methodOf(swatch, trial)),
];

/** Swatches of one stratum differ in nothing but the adhesive: maker, trial, tool, paper and hold are the same. */
const stratumOf = (trial: Trial, swatch: Swatch): string => keyOf(...handOf(trial, swatch), swatch.paper, swatch.hold);

const tally = (swatches: readonly { readonly outcome: Outcome }[]): Outcomes => {
  const counts = { pass: 0, partly: 0, fail: 0 };
  for (const { outcome } of swatches) counts[outcome] += 1;
  return counts;
};

const intervals = new Map<string, Interval>();
function intervalOf(passes: number, n: number): Interval {
  const key = `${passes} ${n}`;
  const known = intervals.get(key) ?? clopperPearsonInterval(passes, n);
  intervals.set(key, known);
  return known;
}

function cellOf(paper: string, glue: string, swatches: readonly { readonly outcome: Outcome }[]): Cell {
  const { pass: passes, partly, fail: fails } = tally(swatches);
  const n = swatches.length;
  return { paper, glue, passes, partly, fails, n, interval: n === 0 ? undefined : intervalOf(passes, n) };
}

/** Every paper × adhesive of the trial, paper by paper. "Partly" is no clean pass and counts as none in the interval (Clopper–Pearson, 95 %). */
export function cellsOf(trial: Trial, question: string, hold?: number): readonly Cell[] {
  const cells = grouped(judgedIn(trial, question, hold), ({ paper, glue }) => `${paper} ${glue}`);
  return trial.papers.flatMap(({ id: paper }) =>
    trial.glues.map(({ id: glue }) => cellOf(paper, glue, cells.get(`${paper} ${glue}`) ?? [])),
  );
}

/** The judged swatches of one question, sorted once for all comparisons. */
export interface Judgements {
  readonly trial: Trial;
  /** adhesive → stratum → swatches */
  readonly byGlue: ReadonlyMap<string, ReadonlyMap<string, readonly Judged[]>>;
}

/** The judged swatches of one question, by adhesive and by the place in which they can be compared; of one hold alone where it is given. */
export function judgementsOf(trial: Trial, question: string, hold?: number): Judgements {
  const byGlue = new Map<string, ReadonlyMap<string, readonly Judged[]>>();
  for (const [glue, swatches] of grouped(judgedIn(trial, question, hold), (one) => one.glue))
    byGlue.set(
      glue,
      grouped(swatches, (one) => stratumOf(trial, one)),
    );
  return { trial, byGlue };
}

export interface Comparison {
  readonly first: Cell;
  readonly second: Cell;
  /** mean score of the first less that of the second within strata, −1 to 1 */
  readonly difference: number;
  /** two-sided; of this comparison alone */
  readonly p: number;
  /** the smallest p that these swatches could have given; 0 where another test would have been used for other outcomes */
  readonly least: number;
  readonly test: 'permutation' | 'boschloo';
  /** swatches of the same stratum and repeat: where only the first, or only the second, passed */
  readonly pairs: { readonly onlyFirst: number; readonly onlySecond: number; readonly all: number };
  /** makers × trials × papers × holds in which both were tried */
  readonly blocks: number;
  /** papers on which both were tried: where the first came out ahead by mean score, where the second, and how many there are */
  readonly papers: { readonly firstAhead: number; readonly secondAhead: number; readonly all: number };
}

/** Boschloo's test is for small tallies: beyond this it is no sharper and takes long. */
const MOST_FOR_BOSCHLOO = 60;

/**
 * Two adhesives where one hand tried both on the same paper, for the same hold, in the same trial; undefined while
 * there is no such place. In one such place, with clean passes and fails alone, by Boschloo's test, which is the
 * sharper; else by the exact stratified permutation test.
 */
export function compareIn({ byGlue }: Judgements, first: string, second: string): Comparison | undefined {
  const [ofFirst, ofSecond] = [byGlue.get(first), byGlue.get(second)];
  if (!ofFirst || !ofSecond) return undefined;
  const shared = [...ofFirst].flatMap(([key, a]) => {
    const b = ofSecond.get(key);
    return b ? [{ a, b }] : [];
  });
  if (shared.length === 0) return undefined;
  const tallies = [
    cellOf(
      '',
      first,
      shared.flatMap(({ a }) => a),
    ),
    cellOf(
      '',
      second,
      shared.flatMap(({ b }) => b),
    ),
  ] as const;
  const strata = shared.map(({ a, b }): Stratum => ({ first: tally(a), second: tally(b) }));
  const permuted = stratifiedPermutation(strata);
  const small = shared.length === 1 && tallies.every(({ n }) => n <= MOST_FOR_BOSCHLOO);
  const boschloo = small && tallies.every(({ partly }) => partly === 0);
  return {
    first: tallies[0],
    second: tallies[1],
    difference: permuted.difference,
    p: boschloo ? boschlooExact(tallies[0], tallies[1]) : permuted.p,
    least: small ? 0 : permuted.least,
    test: boschloo ? 'boschloo' : 'permutation',
    pairs: pairsOf(shared),
    blocks: shared.length,
    papers: papersAhead(shared),
  };
}

/** The same for one pair of a question alone. */
export const compareGlues = (
  trial: Trial,
  question: string,
  first: string,
  second: string,
  hold?: number,
): Comparison | undefined => compareIn(judgementsOf(trial, question, hold), first, second);

interface Place {
  readonly a: readonly Judged[];
  readonly b: readonly Judged[];
}
const SCORES: Readonly<Record<Outcome, number>> = { pass: 1, partly: 0.5, fail: 0 };
const meanScore = (swatches: readonly Judged[]): number =>
  swatches.reduce((sum, { outcome }) => sum + SCORES[outcome], 0) / swatches.length;

/** Paper by paper, who came out ahead; several places of one paper are weighed as the test weighs them. */
function papersAhead(shared: readonly Place[]): Comparison['papers'] {
  const leads = [...grouped(shared, ({ a }) => a[0]!.paper).values()].map((places) =>
    places.reduce(
      (sum, { a, b }) => sum + ((meanScore(a) - meanScore(b)) * a.length * b.length) / (a.length + b.length),
      0,
    ),
  );
  return {
    firstAhead: leads.filter((lead) => lead > 1e-9).length,
    secondAhead: leads.filter((lead) => lead < -1e-9).length,
    all: leads.length,
  };
}

function pairsOf(shared: readonly Place[]): Comparison['pairs'] {
  let [onlyFirst, onlySecond, all] = [0, 0, 0];
  for (const { a, b } of shared) {
    const partners = grouped(b, ({ block }) => String(block));
    for (const one of a) {
      const [other, ...more] = partners.get(String(one.block)) ?? [];
      if (!other || more.length > 0) continue;
      all += 1;
      const [x, y] = [one.outcome === 'pass', other.outcome === 'pass'];
      if (x && !y) onlyFirst += 1;
      if (y && !x) onlySecond += 1;
    }
  }
  return { onlyFirst, onlySecond, all };
}

/** Clean passes by weight for one adhesive, of all hands together: what the curve is drawn through. Papers without a weight are left out. */
export function observationsOf(
  trial: Trial,
  question: string,
  glue: string,
  hold?: number,
): readonly Required<Observation>[] {
  return observationsIn(judgementsOf(trial, question, hold), glue);
}

/** Passes of one adhesive by grammage, for papers whose grammage is known. */
export function observationsIn({ trial, byGlue }: Judgements, glue: string): readonly Required<Observation>[] {
  const papers = grouped([...(byGlue.get(glue)?.values() ?? [])].flat(), ({ paper }) => paper);
  return trial.papers.flatMap(({ id, grammage }) => {
    const here = papers.get(id);
    return grammage === undefined || !here ? [] : [{ grammage, passes: tally(here).pass, n: here.length }];
  });
}

/** Clean passes by weight for one adhesive, a list for each maker × trial × hold; what has one weight alone is left out. */
export function dosesIn({ trial, byGlue }: Judgements, glue: string): readonly (readonly Dose[])[] {
  const swatches = [...(byGlue.get(glue)?.values() ?? [])].flat();
  const grammages = new Map(trial.papers.map(({ id, grammage }) => [id, grammage]));
  const strata = grouped(swatches, (one) => keyOf(...handOf(trial, one), one.hold));
  return [...strata.values()].flatMap((stratum) => {
    const doses = [...grouped(stratum, ({ paper }) => paper)].flatMap(([paper, here]): Dose[] => {
      const amount = grammages.get(paper);
      return amount === undefined ? [] : [{ amount, passes: tally(here).pass, n: here.length }];
    });
    return new Set(doses.map(({ amount }) => amount)).size > 1 ? [doses] : [];
  });
}
