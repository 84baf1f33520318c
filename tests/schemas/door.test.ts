/** Slips that people make in records and lessons, made on a copy of all of content/: each is told with file, line and advice. */
import { expect, test } from 'vitest';
import { contentFiles, lessonParts } from '../../src/schemas/read-content';
import { admit, faultText } from '../../src/schemas/door';

const FILES = contentFiles();
const PARTS = lessonParts();

/** What is said once a piece of one file has been written in another way; '' when nothing is. */
function saidOf(file: string, from: string | RegExp, to: string): string {
  const old = FILES.find((one) => one.file === `content/${file}`)?.text ?? '';
  const text = old.replace(from, to);
  expect(text, `${file} holds ${String(from)}`).not.toBe(old);
  const { faults } = admit([...FILES.filter((one) => one.text !== old), { file: `content/${file}`, text }], PARTS);
  return faults.map(faultText).join('\n');
}

test('nothing is said of content as it stands', () => {
  expect(FILES.length).toBeGreaterThan(200);
  expect(admit(FILES, PARTS).faults).toEqual([]);
});

test('a record comes in with its defaults, and one that has a fault does not come in', () => {
  const { content } = admit(FILES, PARTS);
  expect(content.papers.get('copy')).toMatchObject({ harmedByWater: false, closed: false });
  const broken = FILES.map((one) =>
    one.file === 'content/papers/copy.yaml' ? { ...one, text: 'name: Copy paper' } : one,
  );
  expect(admit(broken, PARTS).content.papers.has('copy')).toBe(false);
});

/** file, what is written there, what somebody writes instead, what has to be said of it */
const SLIPS: readonly (readonly [what: string, string, string | RegExp, string, readonly string[]])[] = [
  [
    'hazards left out',
    'ingredients/pva.yaml',
    /^hazards:.*\n/m,
    '',
    ['content/ingredients/pva.yaml, line 1\n', 'hazards: is missing', '[powder, wheat]', '[] if it cannot'],
  ],
  [
    'a unit misspelt',
    'papers/copy.yaml',
    'unit: g/m²,',
    'unit: gsm,',
    ['line 7', 'grammage › unit: has to be g/m², not "gsm"'],
  ],
  ['a number beyond its limits', 'papers/copy.yaml', 'low: 70', 'low: 4', ['grammage › low: has to be from 5 to 600']],
  [
    'a word for a number',
    'papers/copy.yaml',
    'low: 70',
    'low: seventy',
    ['has to be a number, but is a text, "seventy"; write it in digits'],
  ],
  [
    'a number between quotation marks',
    'papers/copy.yaml',
    'low: 70',
    'low: "70"',
    ['is a text, "70"; write it in digits, with a point and no quotation marks'],
  ],
  [
    'a comma in a number',
    'papers/copy.yaml',
    'low: 70',
    'low: 70,5',
    ['grammage: no field is called "5"; write numbers with a point and no comma: 2.5'],
  ],
  [
    'a range left out',
    'papers/copy.yaml',
    /^grammage:.*\n/m,
    '',
    ['grammage: is missing', '{ low: …, high: …, unit: g/m²'],
  ],
  [
    'a field misspelt',
    'papers/copy.yaml',
    /^grammage:/m,
    'gramage:',
    ['line 7', '"gramage"; did you mean "grammage"?'],
  ],
  [
    'a class misspelt',
    'papers/copy.yaml',
    /^sizing:.*$/m,
    'sizing: sizd',
    ['did you mean "sized"?', 'unsized, lightly-sized, sized, hard-sized, coated'],
  ],
  [
    'a form misspelt',
    'adhesives/pva.yaml',
    'form: wet',
    'form: liquid',
    ['form: "liquid" is not allowed; write one of wet, dry'],
  ],
  ['a form left out', 'adhesives/pva.yaml', 'form: wet\n', '', ['form: is missing; write one of wet, dry']],
  [
    'a class like none there is',
    'papers/copy.yaml',
    /^sizing:.*$/m,
    'sizing: moderate',
    ['sizing: "moderate" is not allowed; write one of unsized, lightly-sized, sized, hard-sized, coated'],
  ],
  [
    'a source that is not there',
    'papers/wove-text.yaml',
    /source: [\w-]+/,
    'source: roberts-etherington',
    ['content/sources', 'did you mean "roberts-etherington-1982"?'],
  ],
  [
    'a hazard that is not there',
    'ingredients/wheat-starch.yaml',
    /^hazards: \[[\w-]+/m,
    'hazards: [wheet',
    ['hazards › no. 1', 'did you mean "wheat"?'],
  ],
  [
    'a part that is not there',
    'adhesives/pva-mc-1-1.yaml',
    'of: pva,',
    'of: pvc,',
    ['parts › no. 1 › of', 'content/ingredients or content/adhesives', '"pva"'],
  ],
  [
    'a recipe made of itself',
    'adhesives/pva-mc-1-1.yaml',
    'of: pva,',
    'of: pva-mc-1-1,',
    ['goes round in a ring: pva-mc-1-1 → pva-mc-1-1'],
  ],
  [
    'a recipe made of a dry adhesive',
    'adhesives/pva-mc-1-1.yaml',
    'of: pva,',
    'of: glue-stick,',
    ['the last of these is dry: pva-mc-1-1 → glue-stick'],
  ],
  [
    'a colon left out',
    'papers/copy.yaml',
    /^name:/m,
    'name',
    ['content/papers/copy.yaml, line 1', 'cannot be read from here on', 'colons'],
  ],
  [
    'a lesson of the glossary that is not there',
    'glossary/grain.yaml',
    'seeLesson: grain',
    'seeLesson: grains',
    ['content/lessons', 'did you mean "grain"?'],
  ],
  [
    'a source of a check that is not there',
    'checks/curl.yaml',
    /source: [\w-]+/,
    'source: nobody-1900',
    ['rows › no.', 'no file in content/sources is called "nobody-1900"'],
  ],
  [
    'a source in the head of a lesson',
    'lessons/paper-weight.mdx',
    'sources: [gnu-units',
    'sources: [gnu-unts',
    ['line 10', 'sources › no. 1', 'did you mean "gnu-units"?'],
  ],
  [
    'a field in the head of a lesson',
    'lessons/paper-weight.mdx',
    /^summary:/m,
    'sumary:',
    ['line 4', '"sumary"; did you mean "summary"?'],
  ],
  [
    'a head that is not closed',
    'lessons/paper-weight.mdx',
    /^---\n/,
    '',
    ['line 1', 'begins with a line of three dashes'],
  ],
  [
    'a source in the text of a lesson',
    'lessons/paper-weight.mdx',
    '<Cite id="gnu-units"',
    '<Cite id="gnu-unit"',
    ['<Cite id="gnu-unit">: no file in content/sources', 'did you mean "gnu-units"?'],
  ],
  [
    'a preset misspelt',
    'lessons/paper-weight.mdx',
    'preset="light-sheet"',
    'preset="ligth-sheet"',
    ['no preset is called "ligth-sheet"; did you mean "light-sheet"?'],
  ],
  [
    'a preset like none there is',
    'lessons/paper-weight.mdx',
    'preset="light-sheet"',
    'preset="nothing-like-it"',
    ['no preset is called "nothing-like-it"; those there are: ', 'light-sheet'],
  ],
  [
    'a paper misspelt in a list',
    'lessons/paper-weight.mdx',
    '<ChooseLab ',
    '<ChooseLab paper={["copy", "blottin"]} ',
    ['<ChooseLab paper="blottin">: no file in content/papers', 'did you mean "blotting"?'],
  ],
  [
    'the cautions of a lesson left out',
    'lessons/paper-weight.mdx',
    /^cautions: .*\n/m,
    '',
    ['content/lessons/paper-weight.mdx', 'cautions: is missing', 'content/cautions', '[]'],
  ],
  [
    'a calculator without its preset',
    'lessons/paper-weight.mdx',
    '<ChooseLab preset="light-sheet" />',
    '<ChooseLab />',
    ['<ChooseLab>: says no preset; write preset="…" with one of ', 'light-sheet'],
  ],
  [
    'a component misspelt',
    'lessons/paper-weight.mdx',
    '<ChooseLab ',
    '<ChoseLab ',
    ['<ChoseLab>: there is no component of this name; did you mean "ChooseLab"?'],
  ],
  [
    'a component without its import',
    'lessons/paper-weight.mdx',
    /^import ChooseLab .*\n/m,
    '',
    ["add this line under the head: import ChooseLab from '#components/choose/ChooseLab.astro';"],
  ],
  [
    'a ground misspelt in a sentence that the model is asked about',
    'lessons/choosing.mdx',
    '<Suits paper="lokta-light"',
    '<Suits on="glas" paper="lokta-light"',
    ['<Suits on="glas">: no file in content/substrates is called "glas"; did you mean "glass"?'],
  ],
  [
    'what such a sentence says',
    'lessons/choosing.mdx',
    / says="likely"/,
    ' says="certain"',
    ['<Suits says="certain">: is not allowed; write one of first, first-three, likely, possible, ruled-out'],
  ],
  [
    'what it compares with',
    'lessons/choosing.mdx',
    'than="pva"',
    'than="pvb"',
    ['<Suits than="pvb">: no file in content/adhesives is called "pvb"; did you mean "pva"'],
  ],
  [
    'a question without its answer',
    'lessons/paper-weight.mdx',
    /(<Choice says="[^"]*") right>/,
    '$1>',
    ['<Question asks="', 'has 0 choices that are right; write right in one of them: <Choice says="…" right>'],
  ],
  [
    'a question that asks for no number and has no choices',
    'lessons/paper-weight.mdx',
    /(<Question\b[^>]*?) number\b/,
    '$1',
    ['needs two or more <Choice says="…">, or the word number where a number is asked for'],
  ],
  [
    'an import misspelt',
    'lessons/paper-weight.mdx',
    'choose/ChooseLab.astro',
    'choose/ChoseLab.astro',
    ['import ChooseLab: there is no component', 'did you mean "choose/ChooseLab.astro"'],
  ],
];

test.for(SLIPS)('%s', ([, file, from, to, says]) => {
  const said = saidOf(file, from, to);
  expect(said).toContain(`content/${file}`);
  for (const part of says) expect(said).toContain(part);
});

test('a file in a folder of another name, or with another ending, is told', () => {
  const stray = (file: string) =>
    admit([...FILES, { file, text: 'name: x' }], PARTS)
      .faults.map(faultText)
      .join('\n');
  expect(stray('content/paper/copy.yaml')).toMatch(/the folders of content are papers, /);
  expect(stray('content/papers/copy.yml')).toContain('files in content/papers end in .yaml');
  expect(stray('content/papers/Copy paper.yaml')).toContain(
    'a file is named in lower case, its words joined by hyphens: wove-text.yaml',
  );
});

test('what a comment or a piece of code in a lesson says is not run, and so not looked up', () => {
  const quiet = (text: string) =>
    saidOf('lessons/paper-weight.mdx', '## Pounds for a ream', `${text}\n\n## Pounds for a ream`);
  expect(quiet('{/* <Nothing preset="nowhere" /> */}')).toBe('');
  expect(quiet('Write `<Cite id="nobody" />`.')).toBe('');
  expect(quiet('<Cite id="nobody" />')).toContain('"nobody"');
});
