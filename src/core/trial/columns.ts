/** What the columns of a spreadsheet are: known by their names, or questions by what stands in them. */
import { STANDARD_QUESTIONS } from './design';
import { TRIAL_LIMITS, type Outcome, type Question } from './record';
import { lineOf, unguarded } from './text';

export type ColumnKey =
  | 'number'
  | 'paper'
  | 'family'
  | 'grammage'
  | 'drop'
  | 'glue'
  | 'record'
  | 'hold'
  | 'tool'
  | 'face'
  | 'coat'
  | 'block'
  | 'by'
  | 'at'
  | 'spoiled'
  | 'note';

/** The name in our own export first, then names that people give. */
export const COLUMNS: Readonly<Record<ColumnKey, readonly [string, ...string[]]>> = {
  number: ['swatch', 'number', 'no', 'nr', '#'],
  paper: ['paper'],
  family: ['paper family', 'family'],
  grammage: ['grammage g/m2', 'grammage', 'gsm', 'g/m2', 'weight'],
  drop: ['drop test s', 'drop test', 'drop'],
  glue: ['adhesive', 'glue'],
  record: ['shelf adhesive'],
  hold: ['hold s', 'hold', 'hold time', 'seconds', 'lifted at s'],
  tool: ['spread with', 'tool', 'brush'],
  face: ['glue on', 'face', 'glued'],
  coat: ['coat g/m2', 'coat'],
  block: ['repeat', 'replicate', 'block'],
  by: ['judged by', 'by', 'who'],
  at: ['judged at', 'date', 'when'],
  spoiled: ['set aside', 'spoiled'],
  note: ['note', 'notes', 'remarks'],
};

const WORDS: Readonly<Record<string, Outcome>> = {
  pass: 'pass',
  passed: 'pass',
  yes: 'pass',
  y: 'pass',
  ok: 'pass',
  '1': 'pass',
  partly: 'partly',
  partial: 'partly',
  half: 'partly',
  '0.5': 'partly',
  '0,5': 'partly',
  fail: 'fail',
  failed: 'fail',
  no: 'fail',
  n: 'fail',
  '0': 'fail',
};

/** The outcome that a cell of a spreadsheet names, or undefined. */
export function outcomeIn(cell: string): Outcome | undefined {
  const word = cell.toLowerCase();
  return Object.hasOwn(WORDS, word) ? WORDS[word] : undefined;
}

export interface Columns {
  readonly headings: readonly string[];
  readonly place: ReadonlyMap<ColumnKey, number>;
  /** columns that hold outcomes, with the questions they answer */
  readonly asked: readonly { readonly column: number; readonly question: Question }[];
  /** headings that were not understood */
  readonly ignored: readonly string[];
}

const MOST_COLUMNS = 60;

const tidy = (heading: string) =>
  heading
    .toLowerCase()
    .replace(/²/g, '2')
    .replace(/[()[\],]/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();

/** The heading row, cleaned. */
export const headingsOf = (row: readonly string[]): readonly string[] =>
  row.slice(0, MOST_COLUMNS).map((text) => lineOf(unguarded(text), TRIAL_LIMITS.text));

/** `body` holds the cleaned cells below the headings. */
export function columnsOf(headings: readonly string[], body: readonly (readonly string[])[]): Columns {
  const place = new Map<ColumnKey, number>();
  for (const [key, names] of Object.entries(COLUMNS) as [ColumnKey, readonly string[]][]) {
    const at = headings.findIndex((text) => names.includes(tidy(text)));
    if (at >= 0) place.set(key, at);
  }
  const taken = new Set(place.values());
  const free = headings.flatMap((text, i) => (text !== '' && !taken.has(i) ? [i] : []));
  // A column in which nothing stands yet may be a question that has not been judged.
  const isQuestion = (i: number) => body.some((row) => outcomeIn(row[i]!)) || body.every((row) => row[i] === '');
  const asked = free.filter(isQuestion).slice(0, TRIAL_LIMITS.questions);
  return {
    headings,
    place,
    asked: asked.map((column, i) => ({ column, question: questionFor(headings[column]!, i + 1) })),
    ignored: free.filter((i) => !asked.includes(i)).map((i) => headings[i]!),
  };
}

function questionFor(heading: string, place: number): Question {
  const same = heading.toLowerCase();
  const standard = STANDARD_QUESTIONS.find(({ text, kind }) => text.toLowerCase() === same || kind === same);
  return standard ?? { id: `q-${place}`, kind: 'own', text: heading, criterion: '' };
}
