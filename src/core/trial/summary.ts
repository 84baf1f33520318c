/** A whole trial in words and tables, the same for the screen, the page-in-a-file and the post. */
import { cellsOf, compareGlues, observationsOf, type Cell } from './analysis';
import { count, doneCount } from './counts';
import { nameIn, type Question, type Trial } from './record';
import { passThreshold } from '../stats/threshold';
import { cellWords, comparisonWords, isNoticed, standingOf, thresholdWords } from './words';

export interface QuestionSummary {
  readonly question: Question;
  readonly cells: readonly Cell[];
  readonly takeaways: readonly string[];
}

export interface TrialSummary {
  readonly facts: readonly string[];
  readonly questions: readonly QuestionSummary[];
}

export function summaryOf(trial: Trial): TrialSummary {
  return { facts: factsOf(trial), questions: trial.questions.map((question) => summaryOfQuestion(trial, question)) };
}

function factsOf(trial: Trial): readonly string[] {
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
    `Lifted after ${holds.map((hold) => `${hold}\u00a0s`).join(', ')}, in an order drawn by lot (number ${trial.seed}).`,
    judgedIn(who, swatches.flatMap(({ judgedAt }) => judgedAt?.slice(0, 10) ?? []).sort()),
    room.length > 0 ? `Room: ${room.join(', ')}.` : '',
    conditions.batch ? `Batches: ${conditions.batch}` : '',
    others.size > 0 ? `Holds swatches of ${count(others.size, 'other trial')}.` : '',
  ].filter((text) => text !== '');
}

/** By whom and when: "Judged by Ada, from 2026-03-01 to 2026-03-02." */
function judgedIn(who: readonly string[], days: readonly string[]): string {
  const [first, last] = [days[0], days.at(-1)];
  const when = first === undefined ? '' : first === last ? ` on ${first}` : `, from ${first} to ${last}`;
  if (who.length === 0 && when === '') return '';
  return `Judged${who.length > 0 ? ` by ${who.join(', ')}` : ''}${when}.`;
}

function summaryOfQuestion(trial: Trial, question: Question): QuestionSummary {
  const cells = cellsOf(trial, question.id);
  return { question, cells, takeaways: takeawaysOf(trial, question, cells) };
}

/** Comparisons beyond this many are left to the reader: the more one looks, the more luck one finds. */
const MOST_PAIRS = 6;
const MOST_CELLS = 4;

function takeawaysOf(trial: Trial, question: Question, cells: readonly Cell[]): readonly string[] {
  if (cells.every(({ n }) => n === 0)) return ['Nothing is judged yet.'];
  const name = (cell: Cell) => `${nameIn(trial.papers, cell.paper)} with ${nameIn(trial.glues, cell.glue)}`;
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
  const pairs = trial.glues.flatMap((a, i) => trial.glues.slice(i + 1).map((b) => [a, b] as const));
  const compared = pairs.flatMap(([a, b]) => {
    const comparison = compareGlues(trial, question.id, a.id, b.id);
    return comparison ? [{ p: comparison.p, text: comparisonWords(comparison, a.name, b.name) }] : [];
  });
  compared.sort((a, b) => a.p - b.p);
  told.push(...compared.slice(0, MOST_PAIRS).map(({ text }) => text));
  if (compared.length > 3 && compared.some(({ p }) => isNoticed(p))) {
    told.push(`${compared.length} pairs were compared: among twenty that do not differ, one looks as if it did.`);
  }
  for (const { id, name: glue } of trial.glues) {
    const points = observationsOf(trial, question.id, id);
    const weights = new Set(points.map(({ grammage }) => grammage));
    if (weights.size >= 3) told.push(`${glue}: ${thresholdWords(passThreshold(points))}`);
  }
  return told;
}
