/** A trial of three swatches as others get it: a spreadsheet, a post, a page in a file. Wilson's interval of 1 in 1 is 21 to 100 % (published formula). */
import { describe, expect, it, test } from 'vitest';
import { markdownTable, trialCsv, trialHtml, trialMarkdown } from '../../../src/core/trial/publish';
import { TRIAL_VERSION, type Swatch, type Trial } from '../../../src/core/trial/record';
import { summaryOf } from '../../../src/core/trial/summary';

const swatch = (number: number, change: Partial<Swatch> = {}): Swatch => ({
  number,
  paper: 'paper-1',
  glue: 'glue-1',
  hold: 20,
  block: 1,
  outcomes: {},
  ...change,
});
const TRIAL: Trial = {
  version: TRIAL_VERSION,
  id: 'mine',
  name: 'A & B',
  by: 'Ada',
  createdAt: '2026-03-01',
  seed: 7,
  conditions: {},
  papers: [
    { id: 'paper-1', name: 'Lokta', family: 'lokta', grammage: 25.5, dropSeconds: 4 },
    { id: 'paper-2', name: 'Kraft' },
  ],
  glues: [
    { id: 'glue-1', name: 'Paste', record: 'paste-thin' },
    { id: 'glue-2', name: 'Film' },
  ],
  holds: [20],
  replicates: 1,
  widthMm: 50,
  heightMm: 50,
  questions: [
    { id: 'q-1', kind: 'own', text: 'Lies flat', criterion: 'Pass: no gap.' },
    { id: 'q-2', kind: 'own', text: 'Holds', criterion: '' },
  ],
  swatches: [
    swatch(1, { outcomes: { 'q-1': 'pass', 'q-2': 'fail' }, by: 'Bo', judgedAt: '2026-03-01T10:00:00Z', note: 'a; b' }),
    swatch(2, { paper: 'paper-2', glue: 'glue-2', hold: 60, block: 2, outcomes: { 'q-1': 'partly' } }),
    swatch(3, { glue: 'glue-2', outcomes: { 'q-1': 'fail' }, spoiled: true, by: 'Cy' }),
  ],
};
const plainly = (text: string) => text.replaceAll('\u00a0', ' ');

describe('a spreadsheet', () => {
  const lines = (trial: Trial = TRIAL) => trialCsv(trial).split('\r\n');
  it('is marked as UTF-8 and has one row a swatch below its headings, each ended', () => {
    expect(trialCsv(TRIAL).startsWith('\ufeff')).toBe(true);
    expect(lines()).toHaveLength(1 + 3 + 1);
    expect(lines().at(-1)).toBe('');
  });
  it('has a column for each thing, the questions in their own words', () => {
    expect(lines()[0]!.slice(1)).toBe(
      'swatch,paper,paper family,grammage g/m2,drop test s,adhesive,shelf adhesive,hold s,repeat,Lies flat,Holds,set aside,judged by,judged at,note',
    );
  });
  it('says all of a swatch, and leaves empty what nobody said', () => {
    expect(lines().slice(1, 4)).toEqual([
      '1,Lokta,lokta,25.5,4,Paste,paste-thin,20,1,pass,fail,,Bo,2026-03-01T10:00:00Z,"a; b"',
      '2,Kraft,,,,Film,,60,2,partly,,,,,',
      '3,Lokta,lokta,25.5,4,Film,,20,1,fail,,yes,Cy,,',
    ]);
  });
  it('a swatch whose paper and adhesive are not in the lists keeps its row', () => {
    const lost = { ...TRIAL, swatches: [swatch(1, { paper: 'gone', glue: 'gone', outcomes: { 'q-1': 'pass' } })] };
    expect(lines(lost)[1]).toBe('1,,,,,,,20,1,pass,,,,,');
  });
  it('each name stands beside its own swatch, wherever it is in the lists', () => {
    const names = lines()
      .slice(1, 4)
      .map((line) => [line.split(',')[1], line.split(',')[5]]);
    expect(names).toEqual([
      ['Lokta', 'Paste'],
      ['Kraft', 'Film'],
      ['Lokta', 'Film'],
    ]);
  });
});

describe('a post', () => {
  it('has the trial as its title, its facts, and each question with what counts as a pass', () => {
    const text = trialMarkdown(TRIAL, summaryOf(TRIAL));
    expect(text.startsWith('# A &amp; B\n\n')).toBe(true);
    expect(text).toMatch(/\n\n2 papers, 2 adhesives.*\n\n/);
    // what came out stands before the table, how sure it is after it
    expect(text).toMatch(/\n\n## Lies flat\n\nPass: no gap\.\n\n\* Paste: 1 of 1 passed\.\n[^|]*\n\n\| Paper \|/);
    // a question without a criterion has no empty paragraph in its place
    expect(text).toMatch(/\n\n## Holds\n\n\* .+\n\n\| Paper \|/);
    expect(text).toMatch(/\n\n\* .+\n/);
    expect(text.endsWith('\n')).toBe(true);
    expect(text.endsWith('\n\n')).toBe(false);
  });
  it('sets the list of what it showed apart from the table', () => {
    const bare = { ...TRIAL, swatches: [] };
    expect(trialMarkdown(bare, summaryOf(bare))).toMatch(/not judged \|\n\n\* Nothing is judged yet\.\n/);
  });
  test('the table: a column an adhesive, a row a paper, passes of swatches with how far the truth may lie', () => {
    expect(markdownTable(TRIAL, 'q-1').map(plainly)).toEqual([
      '| Paper | Paste | Film |',
      '| --- | --- | --- |',
      '| Lokta, 25.5 g/m² | 1 of 1 (2 % to 100 %) | not judged |',
      '| Kraft | not judged | 0 of 1 (0 % to 98 %) |',
    ]);
  });
});

describe('a page in a file', () => {
  const photo = 'data:image/jpeg;base64,AAAA';
  const page = (photos?: ReadonlyMap<number, string>, trial: Trial = TRIAL) =>
    plainly(trialHtml(trial, summaryOf(trial), photos));
  const rows = (html: string) => html.split('<h2>Every swatch</h2>')[1]!.match(/<tr>.*?<\/tr>/g)!;

  it('is titled by the trial, and says its facts in paragraphs', () => {
    expect(page()).toContain('<title>A &amp; B</title>');
    expect(page()).toContain('<h1>A &amp; B</h1>');
    expect(page()).toMatch(/<p>2 papers, 2 adhesives.*<\/p>\n<p>Lifted after 20 s/);
  });
  it('has a table for each question with adhesives across and papers down', () => {
    const [, flat] = page().split('<h2>Lies flat</h2>');
    const table = flat!.split('</table>')[0]!;
    expect(table).toContain('<p>Pass: no gap.</p>');
    expect(table.match(/<th scope="col">([^<]*)<\/th>/g)!.join()).toMatch(/>Paper<.*>Paste<.*>Film</);
    const [lokta, kraft] = table.match(/<tr><th scope="row">.*?<\/tr>/g)!;
    expect(lokta).toMatch(/^<tr><th scope="row">Lokta, 25\.5 g\/m²<\/th><td>.*<small>1 of 1 passed.*<td>.*Not judged/);
    expect(kraft).toMatch(/^<tr><th scope="row">Kraft<\/th><td>.*Not judged.*<td>.*0 of 1 passed/);
    expect(lokta!.match(/<td>/g)).toHaveLength(2);
    expect(flat).toMatch(/<ul><li>.+<\/li>/);
    // a question without a criterion has no empty paragraph in its place
    expect(page()).toContain('<h2>Holds</h2>\n<ul><li>Paste: 0 of 1 passed.</li></ul>\n<div');
  });
  it('lists every swatch, with what it showed or that it was set aside', () => {
    const [head, ...all] = rows(page());
    expect(head!.match(/>([^<]+)<\/th>/g)!.map((one) => one.slice(1, -5))).toEqual([
      ...['Swatch', 'Paper', 'Adhesive', 'Hold', 'Lies flat', 'Holds', 'Notes', 'Photo'],
    ]);
    expect(all).toEqual([
      '<tr><td>1</td><td>Lokta</td><td>Paste</td><td>20 s</td><td>pass</td><td>fail</td><td>Bo; 2026-03-01; a; b</td><td></td></tr>',
      '<tr><td>2</td><td>Kraft</td><td>Film</td><td>60 s</td><td>partly</td><td></td><td></td><td></td></tr>',
      '<tr><td>3</td><td>Lokta</td><td>Film</td><td>20 s</td><td>set aside</td><td>set aside</td><td>Cy</td><td></td></tr>',
    ]);
  });
  it('shows the photo of a swatch beside it, with words for it', () => {
    const [, first, second] = rows(page(new Map([[1, photo]])));
    expect(first).toContain(`<td><img src="${photo}" alt="Swatch 1"></td>`);
    expect(second).not.toContain('<img');
  });
  test.for([
    ['data:image/jpeg;base64,AA+/09az', true],
    ['data:image/png;base64,AAA=', true],
    ['data:image/webp;base64,AA==', true],
    ['data:image/gif;base64,AAAA', false],
    ['data:image/svg+xml;base64,AAAA', false],
    ['data:text/html;base64,AAAA', false],
    ['xdata:image/png;base64,AAAA', false],
    ['data:image/png;base64,', false],
    ['data:image/png;base64,A===', false],
    ['data:image/png;base64,AAAA" onerror="x', false],
    ['https://example.org/a.png', false],
  ] as const)('%s is a photo: %s', ([data, shown]) => {
    expect(page(new Map([[1, data]])).includes('<img')).toBe(shown);
  });
  it('loads nothing and runs nothing', () => {
    expect(page()).toMatch(/default-src 'none'; style-src 'unsafe-inline'; img-src data:/);
    expect(page()).not.toMatch(/<script|<link|https?:/);
  });
  it('runs its lines on without commas between', () => {
    expect(page()).not.toMatch(/<\/(tr|p|li|th|td)>,/);
  });
});
