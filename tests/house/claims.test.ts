/** Every sentence of a lesson that states which adhesive suits what agrees with the model. */
import { describe, expect, test } from 'vitest';
import { claimFaults, jobsOf, type Claim } from '../../src/core/choose/claim';
import { choose } from '../../src/core/choose/choose';
import { encodeJob } from '../../src/core/choose/write-link';
import { memoize } from '../../src/core/base/memoize';
import { catalogue } from '../../src/data/catalogue';
import { textOf } from './support/files';
import { LESSONS, TIED, tiedIn } from './support/claims';
import { untiedIn } from './support/untied';

const answer = memoize((job: Parameters<typeof choose>[0]) => choose(job, catalogue), encodeJob);

test('sentences are tied in most lessons', () => {
  expect(TIED.length).toBeGreaterThanOrEqual(60);
  expect(new Set(TIED.map(({ file }) => file)).size).toBeGreaterThanOrEqual(14);
});

/** Beginnings of sentences that read like such a claim and are none, each with why. */
const NO_CLAIM: readonly string[] = [
  // how old glue ages, whatever it is on
  'Old manuals used hot glue',
  // how warm a room may be for one powder to dissolve
  'Hydroxypropyl methylcellulose does so below',
  // a bowl
  'Take a glass or glazed bowl',
  // the order of swatches
  'If all the paste comes first',
  // which paper and glue forgive beginners is left to the job below it
  'Choose one paper, one board and one adhesive',
  // what is taken off is old paste
  'Take the swollen paste off',
];

describe('no sentence says which adhesive suits what without a tie', () => {
  test.for(LESSONS)('%s', (file) => {
    const loose = untiedIn(textOf(file)).filter((sentence) => !NO_CLAIM.some((known) => sentence.startsWith(known)));
    expect(loose, 'wrap these in <Suits>, or say in NO_CLAIM why they are none').toEqual([]);
  });
  test('such a sentence is found, and a tied one is not', () => {
    const claim = 'Change the paper to a tissue, and dry ones come forward.';
    expect(untiedIn(`A. ${claim} B.`)).toEqual([claim]);
    expect(untiedIn(`A. <Suits paper="unryu" adhesive="film-double-sided" says="first">${claim}</Suits> B.`)).toEqual(
      [],
    );
    expect(untiedIn('- **2 to 5 %** of methylcellulose is an adhesive for light papers.')).toHaveLength(1);
    expect(untiedIn('Lay film on its face so that it cannot form a skin.')).toEqual([]);
  });
});

describe('the model says what the sentence says', () => {
  test.for(TIED.map((tied) => [`${tied.file}: ${tied.sentence}`, tied] as const))('%s', ([, { claim }]) => {
    expect(claimFaults(claim, catalogue, answer)).toEqual([]);
  });
});

describe('a sentence that is wrong is caught', () => {
  const claim: Claim = { paper: 'wove-text', adhesive: 'pva', says: 'possible' };
  const said = (change: Partial<Claim>) => claimFaults({ ...claim, ...change }, catalogue, answer).join('; ');
  test('the same claim passes as it stands and fails turned round', () => {
    expect(said({})).toBe('');
    expect(said({ says: 'ruled-out' })).toMatch(
      /^of PVA, as supplied, for Wove text paper on Binder's board.*place \d+ of \d+/,
    );
    expect(said({ needs: ['undo'] })).toMatch(/Ruled out/);
    // what is unlikely to work is no more possible than it is ruled out
    const weak = { paper: 'kozo-tissue', adhesive: 'methylcellulose-2-5', needs: ['undo'] } as const;
    expect(said({ ...weak, says: 'unlikely' })).toBe('');
    expect(said({ ...weak, says: 'possible' })).toMatch(/Unlikely to work/);
    expect(said({ ...weak, says: 'ruled-out' })).toMatch(/Unlikely to work/);
    expect(said({ says: 'longer', than: 'wheat-starch-paste-thin' })).not.toBe('');
    expect(said({ says: 'shorter', than: 'wheat-starch-paste-thin' })).toBe('');
  });
  test('of a list, each is asked about', () => {
    expect(said({ adhesive: ['pva', 'wheat-starch-paste-thin'], needs: ['undo'] })).toMatch(
      /^of PVA, as supplied[^;]*$/,
    );
    expect(jobsOf({ ...claim, paper: ['wove-text', 'copy'], on: ['glass', 'metal'], task: 'mend' })).toMatchObject([
      { paper: { family: 'wove-text' }, substrate: 'glass', task: 'mend' },
      { paper: { family: 'wove-text' }, substrate: 'metal' },
      { paper: { family: 'copy' }, substrate: 'glass' },
      { paper: { family: 'copy' }, substrate: 'metal' },
    ]);
  });
  test('what is misspelt throws', () => {
    expect(() => said({ paper: 'wove' })).toThrow(/no paper is called "wove"/);
    expect(() => said({ adhesive: 'pvb' })).toThrow(/no adhesive is called "pvb"/);
    expect(() => said({ on: 'air' })).toThrow(/no ground is called "air"/);
    expect(() => said({ says: 'good' as never })).toThrow(/says is one of/);
    expect(() => said({ says: 'longer' })).toThrow(/"than" belongs to/);
  });
});

describe('the text of a lesson is read whole', () => {
  test('words and lists', () => {
    const text = 'A. <Suits paper={["a", \'b\']} adhesive="c"\n says="first">It _is_\n so.</Suits> B.';
    expect(tiedIn('x.mdx', text)).toEqual([
      { file: 'x.mdx', sentence: 'It _is_ so.', claim: { paper: ['a', 'b'], adhesive: 'c', says: 'first' } },
    ]);
  });
  test('anything else throws', () => {
    expect(() => tiedIn('x.mdx', '<Suits paper={pulp} says="first">No.</Suits>')).toThrow(/words or lists of words/);
    expect(() => tiedIn('x.mdx', '<Suits paper="a" says="first" />')).toThrow(
      /1 Suits are opened, and 0 could be read/,
    );
  });
});
