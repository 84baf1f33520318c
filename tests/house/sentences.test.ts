/** Lessons are written in sentences that a reader of thirteen can follow. */
import { describe, expect, test } from 'vitest';
import { LESSONS } from './support/claims';
import { textOf } from './support/files';
import { interfaceText } from './support/interface-text';
import { blocksOf, sentencesIn, wordsIn } from './support/sentences';

/** words */
const MEAN = 18;
const LONG = 30;
/** Long sentences that a lesson may have; all are printed. */
const LONG_ONES = 3;
const LONG_IN_ALL = 12;

/** Lessons that are being rewritten, with the long sentences that they have now. */
const UNTIL_REWRITTEN: Readonly<Record<string, number>> = { 'content/lessons/testing-your-own-papers.mdx': 8 };

const read = (file: string) => blocksOf(textOf(file)).flatMap(sentencesIn);
const mean = (sentences: readonly string[]) =>
  sentences.reduce((sum, sentence) => sum + wordsIn(sentence), 0) / sentences.length;

describe('a lesson', () => {
  test.for(LESSONS)('%s', (file) => {
    const sentences = read(file);
    expect(sentences.length, 'a lesson of so few sentences was not read whole, or is not finished').toBeGreaterThan(40);
    expect(mean(sentences), 'words to a sentence, in the mean').toBeLessThan(MEAN);
    const long = sentences.filter((sentence) => wordsIn(sentence) > LONG);
    expect(long.length, long.join('\n')).toBeLessThanOrEqual(UNTIL_REWRITTEN[file] ?? LONG_ONES);
  });
});

test('the long sentences are listed', () => {
  const long = LESSONS.flatMap((file) =>
    read(file)
      .filter((sentence) => wordsIn(sentence) > LONG)
      .map((sentence) => `${wordsIn(sentence)} words, ${file}: ${sentence}`),
  );
  console.log(
    [`Sentences of more than ${LONG} words in lessons: ${long.length}, no fault up to ${LONG_IN_ALL}`, ...long].join(
      '\n',
    ),
  );
  expect(long.length, long.join('\n')).toBeLessThanOrEqual(LONG_IN_ALL);
});

describe('the interface', () => {
  /** Of some 1300; most stand on the pages about the model and its checks. */
  const LONG_IN_INTERFACE = 32;
  const sentences = interfaceText().flatMap(({ file, text }) =>
    sentencesIn(text).map((sentence) => ({ file, sentence, words: wordsIn(sentence) })),
  );
  test('is read: pages, components, islands and what core says', () => {
    expect(sentences.length).toBeGreaterThan(900);
    for (const layer of ['pages', 'components', 'islands', 'core'])
      expect(sentences.filter(({ file }) => file.startsWith(`src/${layer}/`)).length, layer).toBeGreaterThan(50);
    expect(sentences.map(({ sentence }) => sentence)).toContain('Choose one of the answers first.');
  });
  test('speaks in sentences of fewer than 18 words in the mean, with few long ones', () => {
    expect(mean(sentences.map(({ sentence }) => sentence))).toBeLessThan(MEAN);
    const long = sentences
      .filter(({ words }) => words > LONG)
      .map((one) => `${one.words}, ${one.file}: ${one.sentence}`);
    console.log(
      [
        `Sentences of more than ${LONG} words in the interface: ${long.length}, no fault up to ${LONG_IN_INTERFACE}`,
        ...long,
      ].join('\n'),
    );
    expect(long.length, long.join('\n')).toBeLessThanOrEqual(LONG_IN_INTERFACE);
  });
});

describe('words that puzzled readers', () => {
  const PUZZLING = [
    /before your eyes/,
    /\b(?:is|are|was|were|be) reckoned\b|\breckoning\b/,
    /\bby lot\b/,
    /\bEmpty:/,
    /of what passes as flat/,
    /stands? ready/,
    /a hand’s coat/,
    /taken for granted/,
  ];
  test('are gone from the interface and from lessons', () => {
    const said = [
      ...interfaceText(),
      ...LESSONS.filter((file) => !(file in UNTIL_REWRITTEN)).map((file) => ({
        file,
        text: blocksOf(textOf(file)).join(' '),
      })),
    ];
    expect(
      said.flatMap(({ file, text }) =>
        PUZZLING.filter((words) => words.test(text)).map((words) => `${file}: ${String(words)}: ${text.slice(0, 90)}`),
      ),
    ).toEqual([]);
  });
});

describe('a lesson is read as its reader meets it', () => {
  const lesson = [
    "---\ntitle: 'T'\nsummary: 'One. Two.'\n---\n\nimport A from 'a';\n\n## A heading\n",
    'Paste <Term word="kozo">a long explanation. Of two sentences</Term> now, at 60 °C <Cite id="x" />. It is <Of show="y" /> long.\n',
    '1. Brush.\n2. Wait for 2.5 min.\n',
    '<Question asks="How much?" number slips={[{ is: 3, because: "No. Not so." }]}>\n  It is much.\n</Question>',
  ].join('\n');
  test('words of tags are left out, those of questions and items are read', () => {
    expect(blocksOf(lesson).flatMap(sentencesIn)).toEqual([
      'One.',
      'Two.',
      'Paste kozo now, at 60 °C .',
      'It is so-much long.',
      'Brush.',
      'Wait for 2.5 min.',
      'How much?',
      'It is much.',
    ]);
  });
  test('words are counted', () => {
    expect(wordsIn('It’s 2.5 g/m², or so-much.')).toBe(5);
  });
});
