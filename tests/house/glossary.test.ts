/** Trade words: each is explained somewhere, and no lesson uses one before its reader can have met it. */
import { parse } from 'yaml';
import { describe, expect, test } from 'vitest';
import { glossarySchema } from '../../src/schemas/glossary';
import { filesIn, textOf } from './support/files';

const GLOSSARY = filesIn('content/glossary').map((file) => ({
  file,
  id: file.replace(/^.*\/|\.yaml$/g, ''),
  ...glossarySchema.parse(parse(textOf(file))),
}));

interface Head {
  readonly title: string;
  readonly order: number;
  readonly needs?: readonly string[];
}
const LESSONS = filesIn('content/lessons').map((file) => {
  const [, head = '', body = ''] = /^---\r?\n([\s\S]*?)\r?\n---\r?\n([\s\S]*)$/.exec(textOf(file)) ?? [];
  const { title, order, needs = [] } = parse(head) as Head;
  return { id: file.replace(/^.*\/|\.mdx$/g, ''), title, order, needs, body };
});
const lessonOf = (id: string) => LESSONS.find((lesson) => lesson.id === id);

/** Every name that a word goes by, in lower case, with the id of its entry. */
const ENTRY_OF = new Map(
  GLOSSARY.flatMap(({ id, word, alsoCalled }) =>
    [word, ...alsoCalled].map((name) => [name.toLowerCase(), id] as const),
  ),
);

/** Words that a lesson explains on the spot or links, with where in the text each stands first. */
function marked(body: string): { word: string; entry: string | undefined; at: number }[] {
  return [...body.matchAll(/<(?:Term|Gloss)\s+word="([^"]+)"/g)].map(({ 1: word = '', index }) => ({
    word,
    entry: ENTRY_OF.get(word.toLowerCase()),
    at: index,
  }));
}

test('there are words, and lessons that use them', () => {
  expect(GLOSSARY.length).toBeGreaterThanOrEqual(40);
  expect(LESSONS.flatMap(({ body }) => marked(body)).length).toBeGreaterThan(40);
});

test('a word’s address on the page is the word', () => {
  const wrong = GLOSSARY.filter(
    ({ id, word }) =>
      id !==
      word
        .toLowerCase()
        .replace(/'/g, '')
        .replace(/[^a-z0-9]+/g, '-'),
  );
  expect(wrong.map(({ file, word }) => `${file}: ${word}`)).toEqual([]);
});

test('no two entries share a name', () => {
  const names = GLOSSARY.flatMap(({ word, alsoCalled }) => [word, ...alsoCalled]).map((name) => name.toLowerCase());
  expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
});

test('the lesson that an entry names exists', () => {
  const lost = GLOSSARY.filter(({ seeLesson }) => lessonOf(seeLesson) === undefined);
  expect(lost.map(({ file, seeLesson }) => `${file}: ${seeLesson}`)).toEqual([]);
});

test('the lesson that an entry names speaks of it', () => {
  const silent = GLOSSARY.filter(({ id, word, alsoCalled, seeLesson }) => {
    const { title, body } = lessonOf(seeLesson) ?? { title: '', body: '' };
    const text = `${title}\n${body}`.toLowerCase();
    const named = [word, ...alsoCalled].some((name) => text.includes(name.toLowerCase()));
    return !named && !marked(body).some(({ entry }) => entry === id);
  });
  expect(silent.map(({ word, seeLesson }) => `${word}: not in ${seeLesson}`)).toEqual([]);
});

describe('every word that a lesson explains or links has an entry', () => {
  test.for(LESSONS.map((lesson) => [lesson.id, lesson] as const))('%s', ([, { body }]) => {
    expect(
      marked(body)
        .filter(({ entry }) => entry === undefined)
        .map(({ word }) => word),
    ).toEqual([]);
  });
});

describe('what a lesson needs stands before it in the course', () => {
  test.for(LESSONS.map((lesson) => [lesson.id, lesson] as const))('%s', ([, { order, needs }]) => {
    const late = needs.filter((id) => !((lessonOf(id)?.order ?? Infinity) < order));
    expect(late).toEqual([]);
  });
});

test('no two lessons stand at one place in the course', () => {
  const orders = LESSONS.map(({ order }) => order);
  expect(orders.filter((order, i) => orders.indexOf(order) !== i)).toEqual([]);
});

/** A lesson and everything that it asks to have been read, however far back. */
function readBefore(id: string, seen: Set<string> = new Set()): Set<string> {
  for (const needed of lessonOf(id)?.needs ?? []) {
    if (seen.has(needed)) continue;
    seen.add(needed);
    readBefore(needed, seen);
  }
  return seen;
}

/**
 * The lesson as it is read, tags and code blanked out so that places stay as they were. What a Term or a
 * Gloss holds is blanked too: that is where the word is given.
 */
function readable(body: string): string {
  const blank = (text: string) => ' '.repeat(text.length);
  return (
    body
      .replace(/^import .*$/gm, blank)
      // a heading announces what its text goes on to explain; a link leads to where it is explained
      .replace(/^#.*$/gm, blank)
      .replace(/<a\b[\s\S]*?<\/a>/g, blank)
      .replace(/\{\/\*[\s\S]*?\*\/\}/g, blank)
      .replace(/<(Term|Gloss)\b[\s\S]*?(?:\/>|<\/\1>)/g, blank)
      .replace(/<(?!Question)[^>]*>/g, blank)
      .replace(/<Question\s+asks=/g, blank)
  );
}

/** Words that people use every day in another sense as well: nobody can tell the two apart by letters alone. */
const EVERYDAY = new Set(['point', 'square', 'set', 'case', 'relax', 'pressing', 'grab', 'grain', 'block']);

test('the everyday words are words of the glossary', () => {
  const ids = new Set(GLOSSARY.map(({ id }) => id));
  expect([...EVERYDAY].filter((id) => !ids.has(id))).toEqual([]);
});

describe('no lesson uses a trade word before it has been explained or linked', () => {
  const words = GLOSSARY.filter(({ id }) => !EVERYDAY.has(id));
  test.for(LESSONS.map((lesson) => [lesson.id, lesson] as const))('%s', ([id, { body }]) => {
    const known = new Set(
      [...readBefore(id)].flatMap((other) => marked(lessonOf(other)?.body ?? '').map(({ entry }) => entry)),
    );
    const here = marked(body);
    const text = readable(body);
    const early = words.filter((word) => {
      if (known.has(word.id)) return false;
      const used = new RegExp(`(?<![\\p{L}-])${word.word.replace(/'/g, "[’']")}(?:s|es)?(?![\\p{L}-])`, 'iu').exec(
        text,
      );
      const given = here.find(({ entry }) => entry === word.id);
      return used !== null && (given === undefined || used.index < given.at);
    });
    expect(early.map(({ word }) => word)).toEqual([]);
  });
});
