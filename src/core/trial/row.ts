/** One row of a spreadsheet to one swatch. */
import { parseNumber } from '../base/number-text';
import { outcomeIn, type ColumnKey, type Columns } from './columns';
import { methodOfRow } from './row-method';
import { dateIn, idIn, numberIn } from './read-value';
import { TRIAL_LIMITS, type Outcome, type Swatch, type TrialGlue, type TrialPaper } from './record';
import { lineOf, notesOf } from './text';

export interface RowProblem {
  /** as a spreadsheet counts: the heading is row 1 */
  readonly row: number;
  readonly column?: string;
  readonly message: string;
}

/** What the rows read so far have brought, and where complaints go. */
export interface RowsSoFar {
  readonly papers: Map<string, TrialPaper>;
  readonly glues: Map<string, TrialGlue>;
  readonly numbers: Set<number>;
  /** numbers that some row asks for: those are its own, wherever it stands */
  readonly wished: ReadonlySet<number>;
  /** the tools of the shelf, by id: what each is called */
  readonly tools: ReadonlyMap<string, string>;
  readonly report: (problem: RowProblem) => void;
}

/** The swatch of one row; undefined, with a complaint, when its paper or adhesive is missing. */
export function readRow(row: readonly string[], line: number, columns: Columns, bench: RowsSoFar): Swatch | undefined {
  const { headings, place, asked } = columns;
  const cell = (key: ColumnKey) => row[place.get(key) ?? -1] ?? '';
  const complain = (message: string, column?: number) =>
    bench.report({ row: line, message, ...(column !== undefined && { column: headings[column]! }) });
  const figure = (
    key: ColumnKey,
    limits: { low: number; high: number; unit: string },
    instead = '',
  ): number | undefined => {
    if (cell(key) === '') return undefined;
    const value = numberIn(parseNumber(cell(key).replace(/\s*(?:s|gsm|g\/m[2²])$/i, '')), limits);
    if (value !== undefined) return value;
    complain(
      `“${cell(key).slice(0, 40)}” must be a number from ${limits.low} to ${limits.high} ${limits.unit}${instead}.`,
      place.get(key),
    );
    return undefined;
  };
  const [paperName, glueName] = [lineOf(cell('paper'), TRIAL_LIMITS.name), lineOf(cell('glue'), TRIAL_LIMITS.name)];
  if (paperName === '' || glueName === '') {
    complain(`The ${paperName === '' ? 'paper' : 'adhesive'} is missing: this row was left out.`);
    return undefined;
  }
  const [grammage, dropSeconds] = [figure('grammage', TRIAL_LIMITS.grammage), figure('drop', TRIAL_LIMITS.dropSeconds)];
  // nobody knows after how long it was lifted: it is kept, and counts nowhere
  const hold = figure('hold', TRIAL_LIMITS.hold, ': the swatch is set aside');
  const isAside = hold === undefined && cell('hold') !== '';
  const [family, record] = [idIn(cell('family')), idIn(cell('record'))];
  // A row that leaves the weight out means the paper of that name, where there is one.
  const same = grammage === undefined ? [...bench.papers.values()].find(({ name }) => name === paperName) : undefined;
  const paper =
    same ??
    entry(bench.papers, `${paperName} ${grammage ?? ''}`, 'paper', TRIAL_LIMITS.papers, {
      name: paperName,
      ...(family && { family }),
      ...(grammage !== undefined && { grammage }),
      ...(dropSeconds !== undefined && { dropSeconds }),
    });
  const glue = entry(bench.glues, glueName, 'glue', TRIAL_LIMITS.glues, { name: glueName, ...(record && { record }) });
  if (!paper || !glue) {
    complain(`A trial holds ${TRIAL_LIMITS.papers} papers and ${TRIAL_LIMITS.glues} adhesives: this row was left out.`);
    return undefined;
  }
  const outcomes = asked.flatMap(({ column, question }): [string, Outcome][] => {
    const text = row[column]!;
    const outcome = outcomeIn(text);
    if (text !== '' && !outcome) complain(`“${text.slice(0, 40)}” is not pass, partly or fail: left open.`, column);
    return outcome ? [[question.id, outcome]] : [];
  });
  const method = methodOfRow(cell, bench.tools, (key, message) => complain(message, place.get(key)));
  const wished = wholeIn(cell('number'));
  const free = wished !== undefined && !bench.numbers.has(wished) ? wished : nextFree(bench);
  if (wished !== undefined && wished !== free) complain(`Swatch ${wished} stands here twice: this one became ${free}.`);
  bench.numbers.add(free);
  const [by, at, note] = [
    lineOf(cell('by'), TRIAL_LIMITS.name),
    dateIn(cell('at')),
    notesOf(cell('note'), TRIAL_LIMITS.note),
  ];
  return {
    number: free,
    paper: paper.id,
    glue: glue.id,
    hold: hold ?? 0,
    block: wholeIn(cell('block')) ?? 1,
    outcomes: Object.fromEntries(outcomes),
    ...(Object.keys(method).length > 0 && { method }),
    ...(by && { by }),
    ...(at && { judgedAt: at }),
    ...(note && { note }),
    ...((isAside || outcomeIn(cell('spoiled')) === 'pass') && { spoiled: true }),
  };
}

/** The entry of this name, made with the next id when it is new; undefined when the list is full. */
function entry<T extends object>(
  list: Map<string, T & { id: string }>,
  key: string,
  kind: string,
  most: number,
  made: T,
): (T & { id: string }) | undefined {
  const known = list.get(key);
  if (known !== undefined || list.size >= most) return known;
  const fresh = { id: `${kind}-${list.size + 1}`, ...made };
  list.set(key, fresh);
  return fresh;
}

/** A swatch's or a repeat's number: whole, 1–9999; undefined for anything else. */
export function wholeIn(cell: string): number | undefined {
  const value = numberIn(parseNumber(cell), { low: 1, high: 9999 });
  return Number.isInteger(value) ? value : undefined;
}

function nextFree({ numbers, wished }: RowsSoFar): number {
  let number = numbers.size + 1;
  while (numbers.has(number) || wished.has(number)) number += 1;
  return number;
}
