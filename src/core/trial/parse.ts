/** From any value whatever to a trial, or to a list of what is wrong with it. Never throws. */
import { readMethod } from './read-method';
import { readConditions, readGlue, readTrialPaper, readQuestion, readSwatch } from './read';
import { dateIn, idIn, isObject, numberIn, own, type Loose } from './read-value';
import { TRIAL_LIMITS, TRIAL_VERSION, type Trial } from './record';
import { lineOf } from './text';

export type ParsedTrial =
  | { readonly ok: true; readonly trial: Trial; readonly notes: readonly string[] }
  | { readonly ok: false; readonly problems: readonly string[] };

const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);
const idsOf = (list: readonly { id: string }[]): ReadonlySet<string> => new Set(list.map(({ id }) => id));

/** Steps from one version of the shape to the next. Version 0 is a file without a version. */
const MIGRATIONS: readonly ((old: Loose) => Loose)[] = [
  // 0 → 1: adhesives were listed under their own name, one hold time stood alone, and nobody was named
  (old) => ({
    ...old,
    version: 1,
    glues: own(old, 'glues') ?? own(old, 'adhesives'),
    holds: own(old, 'holds') ?? [own(old, 'holdSeconds')],
    by: own(old, 'by') ?? '',
  }),
  // 1 → 2: the planner's two default rows kept their names when another adhesive was picked from the shelf
  (old) => ({ ...old, version: 2, glues: listOf(own(old, 'glues')).map(doubted) }),
  // 2 → 3: how swatches were made was not said, and what is not said was done with a full brush
  (old) => ({ ...old, version: 3 }),
];

/** The default rows as the planner of version 1 named them, with the records they were for. */
const OLD_ROWS: ReadonlyMap<unknown, string> = new Map([
  ['PVA', 'pva'],
  ['Wheat starch paste', 'wheat-starch-paste-thin'],
]);

function doubted(glue: unknown): unknown {
  if (!isObject(glue)) return glue;
  const [meant, record] = [OLD_ROWS.get(own(glue, 'name')), own(glue, 'record')];
  return meant !== undefined && record !== undefined && record !== meant ? { ...glue, doubtful: true } : glue;
}

/** Reads a trial. Parts that cannot be used are left out and named in `notes`; without papers, adhesives or questions there is none. */
export function parseTrial(value: unknown): ParsedTrial {
  if (!isObject(value)) return { ok: false, problems: ['This is not a trial: it holds no record.'] };
  const version = own(value, 'version') ?? 0;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 0)
    return { ok: false, problems: ['The version of this file is not a number.'] };
  if (version > TRIAL_VERSION)
    return {
      ok: false,
      problems: ['This file was made by a later version of this page. Load the page anew and try again.'],
    };
  const record = MIGRATIONS.slice(version).reduce((old, step) => step(old), value);
  const notes: string[] = [];
  const papers = readList(own(record, 'papers'), TRIAL_LIMITS.papers, 'papers', readTrialPaper, notes);
  const glues = readList(own(record, 'glues'), TRIAL_LIMITS.glues, 'adhesives', readGlue, notes);
  const questions = readList(own(record, 'questions'), TRIAL_LIMITS.questions, 'questions', readQuestion, notes);
  const missing = [
    papers.length === 0 && 'It names no papers.',
    glues.length === 0 && 'It names no adhesives.',
    questions.length === 0 && 'It asks no questions.',
  ].filter((text) => text !== false);
  if (missing.length > 0) return { ok: false, problems: missing };
  const holds = [
    ...new Set(
      listOf(own(record, 'holds'))
        .map((hold) => numberIn(hold, TRIAL_LIMITS.hold))
        .filter((hold) => hold !== undefined),
    ),
  ].slice(0, TRIAL_LIMITS.holds);
  const known = { papers: idsOf(papers), glues: idsOf(glues), questions: idsOf(questions) };
  const swatches = readList(
    own(record, 'swatches'),
    TRIAL_LIMITS.swatches,
    'swatches',
    (one, i) => readSwatch(one, i, known),
    notes,
  );
  const numbers = new Set<number>();
  const unique = swatches.filter(({ number }) => !numbers.has(number) && numbers.add(number));
  if (unique.length < swatches.length)
    notes.push(`${swatches.length - unique.length} swatches bear a number that another has: left out.`);
  const side = (key: string) => numberIn(own(record, key), TRIAL_LIMITS.side) ?? 50;
  const substrate = idIn(own(record, 'substrate'));
  const { method, unread } = readMethod(own(record, 'method'));
  const strayed = listOf(own(record, 'swatches')).filter(
    (one) => isObject(one) && readMethod(own(one, 'method')).unread.length > 0,
  ).length;
  if (unread.length > 0)
    notes.push(`How it was spread cannot be read (${unread.join(', ')}): it counts as done with another tool.`);
  if (strayed > 0)
    notes.push(`How ${strayed} of the swatches were spread cannot be read: they count as done with another tool.`);
  return {
    ok: true,
    notes,
    trial: {
      version: TRIAL_VERSION,
      id: idIn(own(record, 'id')) ?? 'imported',
      name: lineOf(own(record, 'name'), TRIAL_LIMITS.name) || 'A trial without a name',
      by: lineOf(own(record, 'by'), TRIAL_LIMITS.name),
      createdAt: dateIn(own(record, 'createdAt')) ?? '',
      ...(own(record, 'demo') === true && { demo: true }),
      ...(substrate && { substrate }),
      ...(method && { method }),
      papers,
      glues,
      questions,
      holds: holds.length > 0 ? holds : [...new Set(unique.map(({ hold }) => hold))].slice(0, TRIAL_LIMITS.holds),
      replicates: numberIn(own(record, 'replicates'), { low: 1, high: TRIAL_LIMITS.replicates }) ?? 1,
      widthMm: side('widthMm'),
      heightMm: side('heightMm'),
      seed: numberIn(own(record, 'seed'), { low: 0, high: 4294967295 }) ?? 1,
      conditions: readConditions(own(record, 'conditions')),
      swatches: unique.sort((a, b) => a.number - b.number),
    },
  };
}

/** Reads each entry, at most `most`; entries that cannot be read, and later ones with the same id, are left out and counted. */
function readList<T extends object>(
  value: unknown,
  most: number,
  what: string,
  read: (one: Loose, place: number) => T | undefined,
  notes: string[],
): T[] {
  const all = listOf(value);
  if (all.length > most) notes.push(`${all.length} ${what} are more than fit: the first ${most} were read.`);
  const seen = new Set<unknown>();
  const found = all.slice(0, most).flatMap((one, place) => {
    const entry = isObject(one) ? read(one, place) : undefined;
    const id = entry && 'id' in entry ? entry.id : place;
    return entry === undefined || seen.has(id) ? [] : (seen.add(id), [entry]);
  });
  const lost = Math.min(all.length, most) - found.length;
  if (lost > 0) notes.push(`${lost} of ${all.length} ${what} could not be read: left out.`);
  return found;
}
