/**
 * From the rows of a spreadsheet to a trial. One row is one swatch. What is wrong is said row by row, and
 * the sound rows are kept.
 */
import { columnsOf, headingsOf } from './columns';
import { methodKey, methodOf } from './method';
import { TRIAL_LIMITS, TRIAL_VERSION, type Trial } from './record';
import { readRow, wholeIn, type RowsSoFar, type RowProblem } from './row';
import { lineOf, unguarded } from './text';

export interface FromRows {
  /** undefined when no row could be read */
  readonly trial: Trial | undefined;
  readonly problems: readonly RowProblem[];
  readonly ignored: readonly string[];
}

const MOST_PROBLEMS = 50;

/** `rows[0]` holds the headings. `info` says whose trial it becomes, `tools` what the shelf calls its tools. Never throws. */
export function trialFromRows(
  rows: readonly (readonly string[])[],
  info: Pick<Trial, 'id' | 'name' | 'by' | 'createdAt'>,
  tools: ReadonlyMap<string, string> = new Map(),
): FromRows {
  const problems: RowProblem[] = [];
  const [head = [], ...below] = rows;
  const headings = headingsOf(head);
  const body = below
    .slice(0, TRIAL_LIMITS.swatches)
    .map((row) => headings.map((_, i) => lineOf(unguarded(row[i] ?? ''), TRIAL_LIMITS.note)));
  const columns = columnsOf(headings, body);
  const numbered = columns.place.get('number');
  const bench: RowsSoFar = {
    papers: new Map(),
    glues: new Map(),
    numbers: new Set(),
    wished: new Set(numbered === undefined ? [] : body.flatMap((row) => wholeIn(row[numbered]!) ?? [])),
    tools,
    report: (problem) => void (problems.length < MOST_PROBLEMS && problems.push(problem)),
  };
  const missing = (['paper', 'glue'] as const).filter((key) => !columns.place.has(key));
  for (const key of missing)
    bench.report({ row: 1, message: `There is no column called “${key === 'glue' ? 'adhesive' : key}”.` });
  if (columns.asked.length === 0) bench.report({ row: 1, message: 'No column holds pass, partly or fail.' });
  if (missing.length > 0 || columns.asked.length === 0) return { trial: undefined, problems, ignored: columns.ignored };
  const swatches = body.flatMap((row, i) =>
    row.every((cell) => cell === '') ? [] : (readRow(row, i + 2, columns, bench) ?? []),
  );
  if (below.length > body.length) {
    bench.report({
      row: body.length + 2,
      message: `A trial holds ${TRIAL_LIMITS.swatches} swatches: the rows from here on were not read.`,
    });
  }
  if (swatches.length === 0) return { trial: undefined, problems, ignored: columns.ignored };
  const trial: Trial = {
    ...info,
    version: TRIAL_VERSION,
    papers: [...bench.papers.values()],
    glues: [...bench.glues.values()],
    holds: [...new Set(swatches.map(({ hold }) => hold))].sort((a, b) => a - b).slice(0, TRIAL_LIMITS.holds),
    replicates: Math.min(TRIAL_LIMITS.replicates, Math.max(...swatches.map(({ block }) => block))),
    questions: columns.asked.map(({ question }) => question),
    widthMm: 50,
    heightMm: 50,
    seed: 1,
    conditions: {},
    swatches: swatches.sort((a, b) => a.number - b.number),
  };
  return { trial: asOneMethod(trial), problems, ignored: columns.ignored };
}

/** What every row says is said once, of the trial. */
function asOneMethod(trial: Trial): Trial {
  const [first] = trial.swatches;
  const alike = first?.method && new Set(trial.swatches.map((one) => methodKey(methodOf(one, trial)))).size === 1;
  if (!alike) return trial;
  return {
    ...trial,
    method: first.method,
    swatches: trial.swatches.map(({ method: _said, ...swatch }) => swatch),
  };
}
