/** A whole trial in words and tables, the same for the screen, the page-in-a-file and the post. */
import { atOnce, type InTurns } from '../base/turns';
import { trendInTurns } from '../stats/cochran-armitage';
import { holmTarone } from '../stats/holm';
import { thresholdInTurns, type Observation } from '../stats/pass-threshold';
import {
  cellsOf,
  compareIn,
  dosesIn,
  judgementsOf,
  observationsIn,
  type Cell,
  type Comparison,
  type Judgements,
} from './analysis';
import { count, doneCount } from './counts';
import { LEAST_WEIGHTS } from './design';
import { madeInWords } from './method';
import { nameIn, type Question, type Trial } from './record';
import {
  cellWords,
  comparisonWords,
  familyWords,
  resultWords,
  standingOf,
  weightWords,
  type WeightClaim,
} from './words';

/** Two adhesives, and how the comparison stands among all claims of the page. */
export interface Compared {
  readonly comparison: Comparison;
  /** p with every claim of the page reckoned in (Holm, Tarone) */
  readonly adjusted: number;
}

/** One adhesive over papers of three weights or more. */
export interface Weighed extends WeightClaim {
  readonly glue: string;
  readonly observations: readonly Required<Observation>[];
}

export interface QuestionSummary {
  readonly question: Question;
  readonly cells: readonly Cell[];
  readonly compared: readonly Compared[];
  readonly weighed: readonly Weighed[];
  /** what came out, in plain sentences */
  readonly results: readonly string[];
  /** how sure that is: ranges of rates, and how often luck alone would do the same */
  readonly takeaways: readonly string[];
}

export interface TrialSummary {
  readonly facts: readonly string[];
  readonly questions: readonly QuestionSummary[];
  /** comparisons of adhesives and claims about weight, over all questions: one family */
  readonly claims: number;
  /** false claims are held to this share of pages */
  readonly level: number;
  /** what holds of all questions together */
  readonly notes: readonly string[];
}

/** Of pages without any true difference, at most this share makes even one claim. */
export const PAGE_LEVEL = 0.05;

/** In one go: for the build, for tests, and where nobody waits. */
export const summaryOf = (trial: Trial, level: number = PAGE_LEVEL): TrialSummary =>
  atOnce(summaryInTurns(trial, level));

/**
 * The summary, stopping after each comparison. All comparisons of adhesives and all claims about weight, over all
 * questions, are one family: on trials without a true difference at most `level` of the pages call anything.
 */
export function* summaryInTurns(trial: Trial, level: number = PAGE_LEVEL): InTurns<TrialSummary> {
  const drafts: { question: Question; compared: Comparison[]; weighed: Omit<Weighed, 'adjusted'>[] }[] = [];
  for (const question of trial.questions) {
    const judgements = judgementsOf(trial, question.id);
    drafts.push({
      question,
      compared: yield* comparisonsIn(judgements),
      weighed: yield* weightsIn(judgements),
    });
  }
  yield;
  const comparisons = drafts.flatMap(({ compared }) => compared);
  // Where Boschloo's test may stand in, what the margins allow is not settled beforehand: plain Holm then.
  const plain = comparisons.some(({ least }) => least === 0);
  const tests = drafts.flatMap(({ compared, weighed }) => [...compared, ...weighed.map(({ trend }) => trend)]);
  const adjusted = holmTarone(tests.map(({ p, least }) => ({ p, least: plain ? 0 : least })));
  const adjustedOf = new Map(tests.map((test, i) => [test as object, adjusted[i]!]));
  const claims = tests.length;
  const questions: QuestionSummary[] = [];
  for (const { question, compared, weighed } of drafts) {
    const stood: Weighed[] = [];
    for (const one of weighed) {
      const p = adjustedOf.get(one.trend)!;
      yield;
      stood.push({ ...one, adjusted: p, ...(p <= level && { threshold: yield* thresholdInTurns(one.observations) }) });
    }
    const cells = cellsOf(trial, question.id);
    yield;
    const summary = {
      question,
      cells,
      weighed: stood,
      compared: compared.map((comparison) => ({ comparison, adjusted: adjustedOf.get(comparison)! })),
    };
    yield;
    questions.push({
      ...summary,
      results: resultsOf(trial, summary, level),
      takeaways: takeawaysOf(trial, summary, claims, level),
    });
  }
  const called = questions.flatMap(({ weighed }) => weighed).some((one) => one.adjusted <= level);
  return { facts: factsOf(trial), questions, claims, level, notes: familyWords(claims, level, called) };
}

function* comparisonsIn(judgements: Judgements): InTurns<Comparison[]> {
  const { glues } = judgements.trial;
  const found: Comparison[] = [];
  for (const [i, a] of glues.entries()) {
    for (const b of glues.slice(i + 1)) {
      yield;
      const comparison = compareIn(judgements, a.id, b.id);
      if (comparison) found.push(comparison);
    }
  }
  return found;
}

function* weightsIn(judgements: Judgements): InTurns<Omit<Weighed, 'adjusted'>[]> {
  const found: Omit<Weighed, 'adjusted'>[] = [];
  for (const { id: glue } of judgements.trial.glues) {
    yield;
    const observations = observationsIn(judgements, glue);
    const doses = dosesIn(judgements, glue);
    if (new Set(observations.map(({ grammage }) => grammage)).size < LEAST_WEIGHTS || doses.length === 0) continue;
    found.push({ glue, observations, trend: yield* trendInTurns(doses) });
  }
  return found;
}

/** What a trial was made of, each a sentence. */
export function factsOf(trial: Trial): readonly string[] {
  const { papers, glues, holds, replicates, swatches, conditions } = trial;
  const spoiled = swatches.filter((swatch) => swatch.spoiled).length;
  const others = new Set(swatches.flatMap(({ from }) => (from ? [from.trial] : [])));
  const who = [...new Set([trial.by, ...swatches.map(({ by }) => by ?? '')])].filter((name) => name !== '');
  const room = [
    conditions.celsius === undefined ? '' : `${conditions.celsius}\u00a0°C`,
    conditions.humidity === undefined ? '' : `${conditions.humidity}\u00a0% relative humidity`,
  ].filter(Boolean);
  return [
    trial.demo ? 'An invented trial that shows how the page works: nobody laid these swatches.' : '',
    `${count(papers.length, 'paper')}, ${count(glues.length, 'adhesive')}, ${count(holds.length, 'hold time')}, ${replicates} of each: ${count(swatches.length, 'swatch', 'swatches')}, ${doneCount(trial)} done${spoiled > 0 ? `, ${spoiled} of them set aside` : ''}.`,
    `Lifted after ${holds.map((hold) => `${hold}\u00a0s`).join(', ')}, in random order (number ${trial.seed}).`,
    madeFact(trial),
    judgedIn(who, swatches.flatMap(({ judgedAt }) => judgedAt?.slice(0, 10) ?? []).sort()),
    room.length > 0 ? `Room: ${room.join(', ')}.` : '',
    conditions.batch ? `Batches: ${conditions.batch}` : '',
    others.size > 0 ? `Holds swatches of ${count(others.size, 'other trial')}.` : '',
  ].filter((text) => text !== '');
}

/** "Spread with: roller." Empty where nothing was said of it. */
function madeFact({ method, swatches }: Trial): string {
  const others = [...new Set(swatches.flatMap((one) => (one.method ? [madeInWords(one.method)] : [])))];
  if (!method && others.length === 0) return '';
  return `Spread with: ${madeInWords(method ?? {})}${others.length > 0 ? `. Some of them otherwise: ${others.join(' / ')}` : ''}.`;
}

/** By whom and when: "Judged by Ada, from 2026-03-01 to 2026-03-02." */
function judgedIn(who: readonly string[], days: readonly string[]): string {
  const [first, last] = [days[0], days.at(-1)];
  const when = first === undefined ? '' : first === last ? ` on ${first}` : `, from ${first} to ${last}`;
  if (who.length === 0 && when === '') return '';
  return `Judged${who.length > 0 ? ` by ${who.join(', ')}` : ''}${when}.`;
}

/** More comparisons than this are left to the reader. */
const MOST_PAIRS = 6;
const MOST_CELLS = 4;

type Reckoned = Omit<QuestionSummary, 'results' | 'takeaways'>;
const sharpestOf = (compared: readonly Compared[]): readonly Compared[] =>
  [...compared].sort((a, b) => a.comparison.p - b.comparison.p).slice(0, MOST_PAIRS);

/** What came out, before how sure it is: each two adhesives, then weight; where nothing is set side by side, what passed. */
function resultsOf(trial: Trial, { cells, compared, weighed }: Reckoned, level: number): readonly string[] {
  if (cells.every(({ n }) => n === 0)) return ['Nothing is judged yet.'];
  const glue = (id: string) => nameIn(trial.glues, id);
  const told = sharpestOf(compared).map(({ comparison, adjusted }) =>
    resultWords(comparison, glue(comparison.first.glue), glue(comparison.second.glue), { adjusted, level }),
  );
  for (const one of weighed)
    if (one.adjusted <= level && one.threshold) told.push(`${glue(one.glue)}: ${weightWords(one, level)}`);
  if (told.length > 0) return told;
  return trial.glues.flatMap(({ id, name }) => {
    const own = cells.filter((cell) => cell.glue === id && cell.n > 0);
    const [passes, n] = [sum(own.map((cell) => cell.passes)), sum(own.map((cell) => cell.n))];
    return n > 0 ? [`${name}: ${passes} of ${n} passed.`] : [];
  });
}
const sum = (numbers: readonly number[]): number => numbers.reduce((total, number) => total + number, 0);

function takeawaysOf(
  trial: Trial,
  { cells, compared, weighed }: Reckoned,
  claims: number,
  level: number,
): readonly string[] {
  if (cells.every(({ n }) => n === 0)) return ['Nothing is judged yet.'];
  const glue = (id: string) => nameIn(trial.glues, id);
  const name = (cell: Cell) => `${nameIn(trial.papers, cell.paper)} with ${glue(cell.glue)}`;
  // What is clear comes first, then what passed or failed every time, which a few swatches do not make clear.
  const clear = cells.filter((cell) => standingOf(cell) === 'mostly passes' || standingOf(cell) === 'mostly fails');
  const every = cells.filter(
    (cell) => cell.n > 0 && !clear.includes(cell) && (cell.passes === cell.n || cell.passes === 0),
  );
  const told = [...clear, ...every].slice(0, MOST_CELLS).map((cell) => `${name(cell)}: ${cellWords(cell)}`);
  const unclear = cells.filter((cell) => standingOf(cell) === 'not enough to tell').length;
  if (unclear > 0)
    told.push(
      `For ${unclear} of ${cells.length} pairings there is not enough to tell whether they pass more often than not.`,
    );
  for (const { comparison, adjusted } of sharpestOf(compared)) {
    const [first, second] = [glue(comparison.first.glue), glue(comparison.second.glue)];
    told.push(comparisonWords(comparison, first, second, { adjusted, claims, level }));
  }
  if (compared.length > MOST_PAIRS)
    told.push(`${compared.length} pairs of adhesives were compared; these are the ${MOST_PAIRS} that differ most.`);
  for (const one of weighed) told.push(`${glue(one.glue)}: ${weightWords(one, level)}`);
  return told;
}
