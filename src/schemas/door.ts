/**
 * The one door through which records and lessons come in: text in, parsed records out, and a list of faults, each
 * with its file, its field and what is allowed. Reads no disk, so a test may hand it what it likes.
 */
import type { z } from 'astro/zod';
import { isMap, LineCounter, parseDocument, type Document } from 'yaml';
import { memoize } from '../core/base/memoize';
import { id as idShape, withKnownIds, type Kind, type KnownIds } from './ids';
import { SHAPES, type Content } from './kinds';
import { bodyFaults, type LessonParts } from './lesson-body';
import { plainWords } from './plain-words';

/** One file below content/. */
export interface ContentFile {
  /** from the folder that holds content/, with forward slashes: "content/papers/copy.yaml" */
  readonly file: string;
  readonly text: string;
}

export interface Fault {
  readonly file: string;
  /** counted from 1, where it is known */
  readonly line?: number | undefined;
  /** "grammage › unit"; empty where the whole file is meant */
  readonly field: string;
  /** what is wrong and what is allowed */
  readonly says: string;
}

/** A fault as it is shown. */
export const faultText = ({ file, line, field, says }: Fault): string =>
  `${file}${line === undefined ? '' : `, line ${line}`}\n    ${field ? `${field}: ` : ''}${says}`;

interface Placed extends ContentFile {
  readonly kind: Kind;
  readonly id: string;
}

const isKind = (folder: string): folder is Kind => folder in SHAPES;
const KINDS = Object.keys(SHAPES) as Kind[];
/** Trials stand as the site saves them; what is read as YAML reads JSON too. */
const ENDINGS: Readonly<Record<string, string>> = { lessons: '.mdx', trials: '.json' };

/**
 * Parses every file by the shape of its kind. `parts` says which components and presets a lesson may name. What has
 * a fault is left out of the content.
 */
export function admit(files: readonly ContentFile[], parts: LessonParts): { content: Content; faults: Fault[] } {
  const faults: Fault[] = [];
  const placed = files.flatMap((one): Placed[] => {
    const [, folder = '', name = ''] = one.file.split('/');
    const ending = ENDINGS[folder] ?? '.yaml';
    const id = name.slice(0, -ending.length);
    if (isKind(folder) && name.endsWith(ending) && idShape.safeParse(id).success) return [{ ...one, kind: folder, id }];
    const says = !isKind(folder)
      ? `the folders of content are ${KINDS.join(', ')}`
      : name.endsWith(ending)
        ? `a file is named in lower case, its words joined by hyphens: wove-text${ending}`
        : `files in content/${folder} end in ${ending}`;
    faults.push({ file: one.file, field: '', says });
    return [];
  });
  const ids = Object.fromEntries(
    KINDS.map((kind) => [kind, new Set(placed.filter((one) => one.kind === kind).map(({ id }) => id))]),
  ) as unknown as KnownIds;

  const content = Object.fromEntries(KINDS.map((kind) => [kind, new Map<string, unknown>()]));
  for (const one of placed) {
    const read = withKnownIds(ids, () => parsed(one));
    faults.push(...read.faults);
    if (one.kind === 'lessons')
      faults.push(...bodyFaults(one.text, parts, ids).map((fault) => ({ file: one.file, ...fault })));
    if (read.faults.length === 0) content[one.kind]!.set(one.id, read.value);
  }
  // each map was filled by the shape of its own kind, which is what Content says
  const whole = content as unknown as Content;
  faults.push(...recipeFaults(whole, placed));
  return { content: whole, faults };
}

/** One file by the shape of its kind. */
function parsed({ file, text, kind }: Placed): { value: unknown; faults: Fault[] } {
  const head = kind === 'lessons' ? /^---\r?\n([\s\S]*?)\r?\n---/.exec(text)?.[1] : text;
  if (head === undefined) {
    const says = 'a lesson begins with a line of three dashes, its title, order and so on, and three dashes again';
    return { value: undefined, faults: [{ file, line: 1, field: '', says }] };
  }
  // the head of a lesson begins on its second line
  const before = kind === 'lessons' ? 1 : 0;
  const { document, lines, value } = yamlOf(head);
  // the first of them brings the others about
  const slip = document.errors[0];
  if (slip) {
    const says = `cannot be read from here on; compare this line and the one above, their spaces, colons and quotation marks, with another file of the folder (${slip.message})`;
    return { value: undefined, faults: [{ file, line: lines.linePos(slip.pos[0]).line + before, field: '', says }] };
  }
  const read = SHAPES[kind].safeParse(value, { errorMap: plainWords });
  const faults = (read.error?.issues ?? []).map((issue: z.ZodIssue) => ({
    file,
    line:
      lineOf(document, issue.code === 'unrecognized_keys' ? [...issue.path, issue.keys[0]!] : issue.path, lines) +
      before,
    field: issue.path.map((step) => (typeof step === 'number' ? `no. ${step + 1}` : step)).join(' › '),
    says: issue.message,
  }));
  return { value: read.data, faults };
}

interface Yaml {
  readonly document: Document;
  readonly lines: LineCounter;
  readonly value: unknown;
}
/** A build asks for the same texts three times over, and reading them is nine tenths of the work. */
const yamlOf = memoize((text: string): Yaml => {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false });
  return { document, lines, value: document.errors.length > 0 ? undefined : (document.toJS() as unknown) };
});

/** The line on which a field stands; of one that is missing, that of what it belongs in. */
function lineOf(document: Document, path: readonly (string | number)[], lines: LineCounter): number {
  for (let depth = path.length; depth > 0; depth -= 1) {
    const holder = document.getIn(path.slice(0, depth - 1), true);
    const key = isMap(holder) && holder.items.find((pair) => String(pair.key) === path[depth - 1])?.key;
    const node = key || (document.getIn(path.slice(0, depth), true) as unknown);
    const range = (node as { range?: readonly number[] } | undefined)?.range;
    if (range) return lines.linePos(range[0] ?? 0).line;
  }
  return 1;
}

/** A recipe is made of ingredients, or of liquid adhesives that are made of them, and never of itself. */
function recipeFaults({ adhesives, ingredients }: Content, placed: readonly Placed[]): Fault[] {
  const faults: Fault[] = [];
  const fileOf = (id: string) => placed.find((one) => one.kind === 'adhesives' && one.id === id)?.file ?? '';
  const follow = (id: string, trail: readonly string[]): void => {
    const made = adhesives.get(id);
    if (ingredients.has(id) || !made) return;
    const way = [...trail, id];
    const fault = (says: string) =>
      faults.push({ file: fileOf(way[0]!), field: 'parts', says: `${says}: ${way.join(' → ')}` });
    if (trail.includes(id)) fault('the recipe goes round in a ring');
    else if (made.form !== 'wet')
      fault('a recipe can be made of ingredients and of wet adhesives, and the last of these is dry');
    else for (const part of made.parts) follow(part.of, way);
  };
  for (const [id, { form }] of adhesives) if (form === 'wet') follow(id, []);
  return faults;
}
