/**
 * A trial being read. The tables come first, question by question; then, in turns, every comparison; then what they
 * show. A large trial is thousands of comparisons, and the page stays usable while they are made.
 */
import { atom, type ReadableAtom } from 'nanostores';
import type { InTurns } from '../../core/base/turns';
import type { Observation } from '../../core/stats/pass-threshold';
import { cellsOf, type Cell } from '../../core/trial/analysis';
import { curveInTurns, type Curve } from '../../core/trial/curve';
import type { Question, Trial } from '../../core/trial/record';
import { PAGE_LEVEL, factsOf, summaryInTurns, type QuestionSummary, type TrialSummary } from '../../core/trial/summary';
import { answersAhead, inLine, inTurns } from '../shared/time-slice';

export interface QuestionRead {
  readonly question: Question;
  readonly cells: readonly Cell[];
  /** undefined while the comparisons are still being made */
  readonly summary?: QuestionSummary;
}

export interface Reading {
  readonly facts: readonly string[];
  readonly questions: readonly QuestionRead[];
  /** undefined while it is still being worked out */
  readonly whole?: TrialSummary;
}

export interface ReadingStore {
  readonly $reading: ReadableAtom<Reading>;
  readonly stop: () => void;
}

/** Tables larger than this are drawn one to a turn. */
const LARGE = 100;

/** Hands over what is done as it goes. */
function* read(trial: Trial, level: number, tell: (reading: Reading) => void): InTurns<void> {
  const facts = factsOf(trial);
  let questions: readonly QuestionRead[] = [];
  const large = trial.papers.length * trial.glues.length * trial.questions.length > LARGE;
  const handOver = function* (reading: Reading): InTurns<void> {
    tell(reading);
    yield large ? 'rest' : undefined;
  };
  for (const question of trial.questions) {
    questions = [...questions, { question, cells: cellsOf(trial, question.id) }];
    yield* handOver({ facts, questions });
  }
  const whole = yield* summaryInTurns(trial, level);
  for (const [place, summary] of whole.questions.entries()) {
    questions = questions.map((one, i) => (i === place ? { ...one, summary } : one));
    yield* handOver({ facts, questions });
  }
  tell({ facts, questions, whole });
}

/**
 * Reads a trial; the first turn is taken at once, so that a small one is there when it is first drawn. `level`: the
 * share of pages on which a claim may be false. The invented trial is read in one go, since the build draws it.
 */
export function createReading(trial: Trial, level: number = PAGE_LEVEL): ReadingStore {
  const $reading = atom<Reading>({ facts: [], questions: [] });
  const work = read(trial, level, (reading) => $reading.set(reading));
  if (!trial.demo) return { $reading, stop: inTurns(work, () => {}) };
  const whole = known.now(trial);
  const questions = whole.questions.map((summary) => ({ ...summary, summary }));
  $reading.set({ facts: whole.facts, questions, whole });
  return { $reading, stop: () => {} };
}

const known = answersAhead(JSON.stringify, (trial: Trial) => summaryInTurns(trial));
const curves = answersAhead(JSON.stringify, (points: readonly Observation[]) => curveInTurns(points));
const line = inLine();

/** The curve through what was counted, now: for the build, and for what was prepared. */
export const curveNow = (points: readonly Observation[]): Curve => curves.now(points);

/** The same in turns, one curve of a page after another. Returns a function that stops it. */
export const curveLater = (points: readonly Observation[], done: (curve: Curve) => void): (() => void) =>
  line(curveInTurns(points), done);

/** Works out what the page opens with: the invented trial and its first curves. */
export async function prepareReading(demo: Trial): Promise<void> {
  await known.prepare(demo);
  for (const { weighed } of known.now(demo).questions) {
    const [first] = weighed;
    if (first) await curves.prepare(first.observations);
  }
}

/** A summary for those who give a trial away, in turns. */
export const summaryLater = (trial: Trial): Promise<TrialSummary> =>
  new Promise((resolve) => inTurns(summaryInTurns(trial), resolve));

/** What each hold may claim where one is looked at alone: they share what the page may. */
export const levelOf = (trial: Trial, oneHold: boolean): number =>
  oneHold ? PAGE_LEVEL / Math.max(1, trial.holds.length) : PAGE_LEVEL;
