/** What the text of a lesson names: components that it imports, and the records and presets handed to them. */
import { SAYINGS } from '../core/choose/claim';
import { NEEDS } from '../core/choose/job';
import { TASKS } from '../core/records/task';
import { didYouMean, type Kind, type KnownIds } from './ids';

/** What a lesson may name. */
export interface LessonParts {
  /** files of src/components, from there: "choose/ChooseLab.astro" */
  readonly components: readonly string[];
  /** by component: the presets that it opens at */
  readonly presets: Readonly<Record<string, readonly string[]>>;
}

interface BodyFault {
  readonly line: number;
  readonly field: string;
  readonly says: string;
}

/** Attributes that hold the id of a record, whichever component they stand on, or on one alone. */
const RECORD_IN: Readonly<Record<string, readonly Kind[]>> = {
  'Cite id': ['sources'],
  'Caution id': ['cautions'],
  'MixOf with': ['ingredients', 'adhesives'],
  'Suits on': ['substrates'],
  'Suits than': ['adhesives'],
  paper: ['papers'],
  adhesive: ['adhesives'],
  substrate: ['substrates'],
};

/** Attributes that hold one of a few words. */
const WORD_IN: Readonly<Record<string, readonly string[]>> = {
  'Suits says': SAYINGS,
  'Suits task': TASKS,
  'Suits needs': NEEDS,
};

const IMPORT = /^import\s+(\w+)\s+from\s+['"]#components\/([^'"]+)['"];?[ \t]*$/gm;
const TAG = /<([A-Z]\w*)((?:\s+[\w-]+(?:=(?:"[^"]*"|\{[^}]*\}))?)*)\s*\/?>/g;
/** paper="copy", or a list: paper={["copy", "card"]} */
const ATTRIBUTE = /([\w-]+)=(?:"([^"]*)"|\{\[([^\]]*)\]\})/g;

const QUESTION = /<Question\s+asks="([^"]*)"([^>]*)>([\s\S]*?)<\/Question>/g;

/** Everything in a lesson's text that leads nowhere. `text` is the whole file. */
export function bodyFaults(text: string, { components, presets }: LessonParts, ids: KnownIds): BodyFault[] {
  const faults: BodyFault[] = [];
  // comments and code are shown or dropped, not run; their letters give way to spaces, so that lines stay as they are
  const live = text.replace(/```[\s\S]*?```|`[^`\n]*`|\{\/\*[\s\S]*?\*\/\}/g, (part) => part.replace(/[^\n]/g, ' '));
  const lineAt = (at: number) => text.slice(0, at).split('\n').length;
  const say = (at: number, field: string, says: string) => faults.push({ line: lineAt(at), field, says });
  const nameOf = (file: string) => file.replace(/^.*\/|\.astro$/g, '');

  const imported = new Set<string>();
  for (const { 1: name = '', 2: file = '', index } of live.matchAll(IMPORT)) {
    imported.add(name);
    if (components.includes(file)) continue;
    say(index, `import ${name}`, `there is no component at #components/${file}${didYouMean(file, components)}`);
  }
  const told = new Set<string>();
  for (const { 1: name = '', 2: attributes = '', index } of live.matchAll(TAG)) {
    if (!imported.has(name) && !told.has(name)) {
      told.add(name);
      const file = components.find((one) => nameOf(one) === name);
      const advice = file
        ? `is used, but not imported; add this line under the head: import ${name} from '#components/${file}';`
        : `there is no component of this name${didYouMean(name, components.map(nameOf))}`;
      say(index, `<${name}>`, advice);
    }
    const opensAt = presets[name];
    if (opensAt && !/\spreset=/.test(attributes))
      say(index, `<${name}>`, `says no preset; write preset="…" with one of ${opensAt.join(', ')}`);
    const written = [...attributes.matchAll(ATTRIBUTE)].flatMap(([, attribute = '', value, list = '']) =>
      value === undefined
        ? [...list.matchAll(/["']([^"']*)["']/g)].map(([, one = '']) => [attribute, one] as const)
        : [[attribute, value] as const],
    );
    for (const [attribute, value] of written) {
      const words = WORD_IN[`${name} ${attribute}`];
      if (words && !words.includes(value))
        say(
          index,
          `<${name} ${attribute}="${value}">`,
          `is not allowed${didYouMean(value, words, 0)}; write one of ${words.join(', ')}`,
        );
      const kinds = RECORD_IN[`${name} ${attribute}`] ?? RECORD_IN[attribute];
      const allowed = attribute === 'preset' ? presets[name] : kinds && kinds.flatMap((kind) => [...ids[kind]]);
      if (!allowed || allowed.includes(value)) continue;
      const where =
        attribute === 'preset' ? 'preset' : `file in ${kinds!.map((kind) => `content/${kind}`).join(' or ')}`;
      say(
        index,
        `<${name} ${attribute}="${value}">`,
        `no ${where} is called "${value}"${didYouMean(value, allowed, attribute === 'preset' ? Infinity : undefined)}`,
      );
    }
  }
  for (const { 1: asks = '', 2: props = '', 3: inner = '', index } of live.matchAll(QUESTION)) {
    const takesNumber = /\bnumber\b/.test(props);
    const choices = [...inner.matchAll(/<Choice\b([^>]*)>/g)];
    const right = choices.filter(({ 1: attributes = '' }) => /\sright\b/.test(attributes)).length;
    const where = `<Question asks="${asks}">`;
    if (takesNumber && choices.length > 0)
      say(index, where, 'takes a number, and so has no <Choice>; leave out one of the two');
    if (!takesNumber && choices.length < 2)
      say(index, where, 'needs two or more <Choice says="…">, or the word number where a number is asked for');
    if (!takesNumber && choices.length >= 2 && right !== 1)
      say(index, where, `has ${right} choices that are right; write right in one of them: <Choice says="…" right>`);
  }
  return faults;
}
