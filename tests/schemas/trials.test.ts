/** Trials that are handed in: what the door lets in and what it sends back. */
import { describe, expect, test } from 'vitest';
import { contentFiles, lessonParts } from '../../src/schemas/read-content';
import { admit, faultText } from '../../src/schemas/door';

const files = contentFiles();
const parts = lessonParts();
const demo = files.find(({ file }) => file === 'content/trials/invented-demonstration.json')!;
const faultsWith = (change: (text: string) => string, name = demo.file) =>
  admit([...files.filter(({ file }) => file !== demo.file), { file: name, text: change(demo.text) }], parts).faults.map(
    faultText,
  );

describe('a trial that somebody hands in', () => {
  test('the invented one is let in, and says that it is invented', () => {
    const { content, faults } = admit(files, parts);
    expect(faults).toEqual([]);
    const { trial, licence } = content.trials.get('invented-demonstration')!;
    expect(trial.demo).toBe(true);
    expect(licence).toBe('CC0-1.0');
    expect(trial.swatches.length).toBeGreaterThan(0);
  });
  test.for<readonly [string, (text: string) => string, RegExp]>([
    ['without a licence', (text) => text.replace(/ *"licence":.*\n/, ''), /licence/],
    ['with a licence that is none', (text) => text.replace('CC0-1.0', 'mine'), /licence.*CC0-1\.0/],
    ['of another format', (text) => text.replace('open-time-trial', 'a-trial'), /format/],
    [
      'with a paper that is not on the shelf',
      (text) => text.replace('"newsprint"', '"newsprnt"'),
      /newsprnt.*did you mean/,
    ],
    ['with an adhesive that is not on the shelf', (text) => text.replace('"eva"', '"evaa"'), /evaa/],
    ['with an adhesive by its name', (text) => text.replace('"eva"', '"EVA from a tub"'), /record: .*lower case/],
    [
      'with an outcome that is none',
      (text) => text.replace('"pass"', '"perhaps"'),
      /json, line 82\n.*lift: "perhaps" is not allowed; write one of pass, partly, fail/,
    ],
    [
      'with a weight that has its unit',
      (text) => text.replace('"grammage": 45', '"grammage": "45 g"'),
      /json, line 18\n.*grammage: is a number from .* in g\/m² and without the unit/,
    ],
    [
      'with a word in place of a time',
      (text) => text.replace(/"hold": \d+/, '"hold": "soon"'),
      /hold: is a number from 0/,
    ],
    ['with a field misspelt', (text) => text.replace('"grammage"', '"gramage"'), /gramage.*did you mean "grammage"/],
    ['that asks nothing', (text) => text.replace(/"questions": \[[^\]]*\]/, '"questions": []'), /asks no questions/],
    [
      'of a paper that it does not list',
      (text) => text.replace(/("number": 1,\s*)"paper": "[^"]*"/, '$1"paper": "paper-9"'),
      /1 of \d+ swatches could not be read/,
    ],
    ['with a line nobody knows', (text) => text.replace('"licence"', '"whose": "ours", "licence"'), /whose/],
  ])('%s is sent back, with its file', ([, change, says]) => {
    const said = faultsWith(change).join('\n');
    expect(said).toContain('content/trials/invented-demonstration.json');
    expect(said).toMatch(says);
  });
  test('ending otherwise than .json', () => {
    expect(faultsWith((text) => text, 'content/trials/mine.yaml').join()).toContain(
      'files in content/trials end in .json',
    );
  });
});
