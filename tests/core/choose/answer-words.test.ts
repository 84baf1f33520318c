/** The answer in a sentence, from a choice made by hand: what a student does next. */
import type { Ranked, Verdict } from '../../../src/core/choose/finding';
import { describe, expect, it, test } from 'vitest';
import {
  aboutAsGood,
  adhesiveName,
  answerSentence,
  marginSaid,
  VERDICT_WORDS,
} from '../../../src/core/choose/answer-words';
import type { Catalogue } from '../../../src/core/records/records';
import { factsOf, SIZE_GLUE, TACK_FILM, type Found } from '../support/facts';

const catalogue = { adhesives: new Map([SIZE_GLUE, TACK_FILM].map((one) => [one.id, one])) } as unknown as Catalogue;

interface Case extends Found {
  readonly verdict?: Verdict;
  readonly tool?: string;
  readonly before?: boolean;
}

function sentence({ verdict = 'sound', tool = 'brush', before = false, ...found }: Case = {}): string {
  const facts = factsOf(found);
  const { adhesive, slipSeconds } = facts;
  const placement = {
    glueGoesOn: 'the back of the paper',
    tool,
    relaxMinutes: 0,
    placeBeforeContact: before,
    ...(adhesive.form === 'wet' && { coat: { low: 30, middle: 45, high: 60, basis: 'from-memory' } }),
  };
  return answerSentence({ adhesiveId: adhesive.id, verdict, placement, slipSeconds, facts } as Ranked, catalogue);
}

describe('what to do', () => {
  it('put what is spread, by fingertip where that is the tool; use what is not spread', () => {
    expect(sentence()).toMatch(/^Put size glue on the back of the paper; /);
    expect(sentence({ tool: 'fingertip' })).toMatch(/^With a fingertip, put size glue on the back of the paper; /);
    expect(sentence({ adhesive: TACK_FILM })).toMatch(/^Use tack film on the back of the paper; /);
    expect(sentence({ adhesive: TACK_FILM, tool: 'fingertip' })).toMatch(/^Use tack film/);
  });
  it('how long there is to move it, an hour or more without "about"', () => {
    expect(sentence({ slip: [40, 60, 90] })).toMatch(/you have about 40 to 90\ss to move it\.$/);
    expect(sentence({ slip: [3599, 5000, 9000] })).toMatch(/you have about 60\smin or more to move it\.$/);
    expect(sentence({ slip: [3600, 5000, 9000] })).toMatch(/you have an hour or more to move it\.$/);
  });
  it('place it first where it grabs before it can be placed, and in what time', () => {
    const early = sentence({ before: true, slip: [5, 29, 40], needed: 30 });
    expect(early).toMatch(/in place before it touches, for it grabs in about 5 to 40\ss\.$/);
    expect(early).not.toMatch(/to move it|light/);
    // what may be under a second is said from its end alone
    expect(sentence({ before: true, slip: [0.4, 2, 3], needed: 30 })).toMatch(/for it grabs within about 3\ss\.$/);
    expect(sentence({ slip: [0.4, 31, 60], needed: 30 })).toMatch(/you have at most about 60\ss to move it\.$/);
  });
  it('place it first where the sheet is too light to slide, though there is just time enough', () => {
    for (const middle of [30, 31]) {
      const light = sentence({ before: true, slip: [5, middle, 40], needed: 30 });
      expect(light).toMatch(/in place before it touches, for so light a sheet tears/);
      expect(light).not.toMatch(/grabs/);
    }
  });
});

describe('what it is worth', () => {
  test.for(['sound', 'likely', 'touch-and-go'] as const)('%s: what to do and no more', (verdict) => {
    expect(sentence({ verdict })).toBe(sentence());
  });
  test.for([
    ['unlikely', /^Nothing here is likely.*The least bad: /],
    ['defer', /^Ask a conservator before you touch.*For a copy, or for practice: /],
  ] as const)('%s: that first, and what to do after it, still whole', ([verdict, first]) => {
    const text = sentence({ verdict });
    expect(text).toMatch(first);
    expect(text.endsWith(sentence().replace(/^Put/, 'put'))).toBe(true);
    expect(text.match(/put size glue/gi)).toHaveLength(1);
  });
  test.for([
    ['ruled-out', /ruled out.*take away a need, or add an adhesive/],
    ['refused', /^No answer.*food/],
  ] as const)('%s: nothing to do that could be mistaken for advice', ([verdict, word]) => {
    const text = sentence({ verdict });
    expect(text).toMatch(word);
    expect(text).not.toMatch(/size glue|move it|least bad|conservator/);
  });
  it('in a word: each another, and none that promises', () => {
    const words = Object.values(VERDICT_WORDS);
    expect(new Set(words).size).toBe(words.length);
    expect(VERDICT_WORDS.defer).toMatch(/conservator/);
    expect(VERDICT_WORDS.refused).toMatch(/food/);
  });
});

it('an adhesive by its name; one that nobody knows any more by what the link called it', () => {
  expect(adhesiveName('tack-film', catalogue)).toBe('Tack film');
  expect(adhesiveName('gone-since', catalogue)).toBe('gone-since');
});

describe('what does about as well as the first', () => {
  const shown = (...ones: readonly (readonly [id: string, chance: number, change?: Partial<Ranked>])[]) =>
    aboutAsGood(
      ones.map(
        ([adhesiveId, chance, change]) => ({ adhesiveId, chance, verdict: 'sound', atHand: true, ...change }) as Ranked,
      ),
      catalogue,
    );
  const [size, film] = [SIZE_GLUE.id, TACK_FILM.id];
  it('is named where it lies within five in a hundred, of the two that follow', () => {
    expect(shown([size, 0.9], [film, 0.86])).toBe('About as good here: tack film.');
    expect(shown([size, 0.9], [film, 0.84])).toBe('');
    expect(shown([size, 0.9], [film, 0.89], [size, 0.88], [film, 0.87])).toBe(
      'About as good here: tack film, or size glue.',
    );
    expect(shown([size, 0.9], [film, 0.8], [size, 0.88], [film, 0.87])).toBe('About as good here: size glue.');
  });
  it('is not what carries another word, or what is not at hand', () => {
    expect(shown([size, 0.8], [film, 0.78, { verdict: 'likely' }])).toBe('');
    expect(shown([size, 0.8], [film, 0.78, { atHand: false }])).toBe('');
  });
  it.each(['unlikely', 'ruled-out', 'refused', 'defer'] as const)(
    'is not looked for where the first is %s',
    (verdict) => {
      expect(shown([size, 0.3, { verdict }], [film, 0.29, { verdict }])).toBe('');
    },
  );
  it('is nothing where there is one adhesive, or none', () => {
    expect(shown([size, 0.9])).toBe('');
    expect(shown()).toBe('');
  });
});

test.for([
  [100, 'margin over 20'],
  [20, 'margin 20'],
  [4.52, 'margin 4.5'],
  [0.05, 'margin 0.05'],
  [0.01, 'margin under 0.05'],
] as const)('%d is told no further than it says something: %s', ([margin, said]) =>
  expect(marginSaid(margin)).toBe(said),
);
