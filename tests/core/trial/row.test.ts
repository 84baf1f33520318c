/** Rows of a spreadsheet, typed as people type them, to swatches: what is read, what is left out and what is said of it. */
import { describe, expect, it, test } from 'vitest';
import { TRIAL_LIMITS } from '../../../src/core/trial/record';
import { trialFromRows } from '../../../src/core/trial/rows';

const INFO = { id: 'read', name: 'Read', by: 'Bo', createdAt: '2026-03-02' };
const HEAD = ['swatch', 'paper', 'family', 'gsm', 'drop', 'adhesive', 'shelf adhesive', 'hold', 'repeat', 'lift'];
const REST = ['by', 'date', 'set aside', 'note'];
const HEADINGS = [...HEAD, ...REST];

type Cells = Readonly<Record<string, string>>;
const sheet = (rows: readonly Cells[], headings: readonly string[] = HEADINGS) =>
  trialFromRows(
    [headings, ...rows.map((row) => headings.map((heading) => ({ paper: 'A', adhesive: 'P', ...row })[heading] ?? ''))],
    INFO,
  );
const swatches = (...rows: readonly Cells[]) => sheet(rows).trial?.swatches ?? [];
const said = (...rows: readonly Cells[]) =>
  sheet(rows).problems.map(({ row, column, message }) => `${row} ${column ?? '-'}: ${message}`);

describe('figures', () => {
  test.for([
    ['hold', 'hold', ['20', '20 s', '20s', '20,0', ' 20 S ']],
    ['gsm', 'grammage', ['20', '20 gsm', '20 g/m2', '20 g/m²', '20,0g/m²', '20 GSM']],
    ['drop', 'dropSeconds', ['20', '20 s']],
  ] as const)('%s: with their unit or without', ([column, field, cells]) => {
    for (const cell of cells) {
      const { trial, problems } = sheet([{ [column]: cell, lift: 'pass' }]);
      expect(problems, cell).toEqual([]);
      expect({ ...trial!.papers[0], ...trial!.swatches[0] }, cell).toHaveProperty(field, 20);
    }
  });
  it('from the low to the high of each, both taken; what lies outside is named with what is allowed', () => {
    // 5–600 g/m², 0.2–1800 s, 0–86 400 s: what a trial holds
    for (const [column, inside, outside] of [
      ['gsm', ['5', '600'], ['4.9', '601']],
      ['drop', ['0.2', '1800'], ['0.1', '1801']],
      ['hold', ['0', '86400'], ['-1', '86401']],
    ] as const) {
      for (const cell of inside) expect(said({ [column]: cell, lift: 'pass' })).toEqual([]);
      for (const cell of outside)
        expect(said({ [column]: cell, lift: 'pass' })).toEqual([
          expect.stringMatching(
            new RegExp(
              `^2 ${column}: .*${cell}.*from ${inside[0]} to ${inside[1]}`.replace('.2', '\\.2').replace('.9', '\\.9'),
            ),
          ),
        ]);
    }
  });
  it('an unreadable one leaves the swatch without it, and is quoted no longer than forty letters', () => {
    const long = 'x'.repeat(60);
    expect(swatches({ hold: long, lift: 'pass' })).toMatchObject([{ hold: 0, spoiled: true }]);
    const [message] = said({ hold: long, lift: 'pass' });
    expect(message).toContain('x'.repeat(40));
    expect(message).not.toContain('x'.repeat(41));
    // a sheet is not weighed in hours, and a unit stands after its figure
    for (const odd of ['80 h', 's20', '2 s 0']) expect(said({ gsm: odd, lift: 'pass' }), odd).toHaveLength(1);
  });
  it('none is no mistake', () => {
    const { trial, problems } = sheet([{ lift: 'pass' }]);
    expect(problems).toEqual([]);
    expect(trial!.papers).toStrictEqual([{ id: 'paper-1', name: 'A' }]);
    expect(trial!.glues).toEqual([{ id: 'glue-1', name: 'P' }]);
    expect(trial!.swatches).toEqual([
      { number: 1, paper: 'paper-1', glue: 'glue-1', hold: 0, block: 1, outcomes: { lift: 'pass' } },
    ]);
  });
});

describe('papers and adhesives', () => {
  it('each once, with its kind, its weight and its drop, and its record', () => {
    const row = { family: 'lokta', gsm: '25,5', drop: '4', 'shelf adhesive': 'pva', lift: 'pass' };
    const { trial } = sheet([row, { ...row, adhesive: 'Q', 'shelf adhesive': '' }, row]);
    expect(trial!.papers).toEqual([{ id: 'paper-1', name: 'A', family: 'lokta', grammage: 25.5, dropSeconds: 4 }]);
    expect(trial!.glues).toEqual([
      { id: 'glue-1', name: 'P', record: 'pva' },
      { id: 'glue-2', name: 'Q' },
    ]);
    expect(trial!.swatches.map(({ glue }) => glue)).toEqual(['glue-1', 'glue-2', 'glue-1']);
  });
  it('the same name in another weight is another paper; without a weight it is the one of that name', () => {
    const papers = swatches({ gsm: '25', lift: 'pass' }, { gsm: '50', lift: 'pass' }, { lift: 'pass' }, { paper: 'B' });
    expect(papers.map(({ paper }) => paper)).toEqual(['paper-1', 'paper-2', 'paper-1', 'paper-3']);
  });
  it('a kind or a record is an id or nothing', () => {
    const { trial } = sheet([{ family: 'Some Paper', 'shelf adhesive': '../x', lift: 'pass' }]);
    expect(trial!.papers[0]).not.toHaveProperty('family');
    expect(trial!.glues[0]).not.toHaveProperty('record');
  });
  it('a row without one or the other is left out, and which it is is said', () => {
    const { trial, problems } = sheet([{ paper: '', lift: 'pass' }, { adhesive: '', lift: 'pass' }, { lift: 'pass' }]);
    expect(trial!.swatches).toHaveLength(1);
    expect(problems).toMatchObject([
      { row: 2, message: expect.stringMatching(/paper is missing/) },
      { row: 3, message: expect.stringMatching(/adhesive is missing/) },
    ]);
    expect(problems[0]).not.toHaveProperty('column');
  });
  test.for([
    ['paper', TRIAL_LIMITS.papers],
    ['adhesive', TRIAL_LIMITS.glues],
  ] as const)('as many of %s as a trial holds, and what is known still after that', ([column, most]) => {
    const rows = Array.from({ length: most + 1 }, (_, i) => ({ [column]: `n${i}`, lift: 'pass' }));
    const { trial, problems } = sheet([...rows, rows[0]!]);
    expect(trial!.swatches).toHaveLength(most + 1);
    expect(problems).toMatchObject([{ row: most + 2, message: expect.stringContaining(`${most}`) }]);
  });
});

describe('the number on the card', () => {
  const numbers = (...cells: readonly string[]) => swatches(...cells.map((swatch) => ({ swatch, lift: 'pass' })));
  it('is the one that stands there, from 1 to 9999; other rows take the next that is free', () => {
    expect(numbers('7', '9999', '1').map(({ number }) => number)).toEqual([1, 7, 9999]);
    for (const odd of ['0', '10000', '1.5', '-1', 'one']) expect(numbers(odd)[0]!.number).toBe(1);
  });
  it('one that stands there twice is given once, and said', () => {
    const rows = ['1', '1', '3'].map((swatch) => ({ swatch, lift: 'pass' }));
    expect(swatches(...rows).map(({ number }) => number)).toEqual([1, 2, 3]);
    expect(said(...rows)).toEqual([expect.stringMatching(/^3 -: Swatch 1 stands here twice: .* became 2/)]);
  });
  it('a double or a missing one takes no number that is written on another card', () => {
    const doubled = ['1', '1', '2', '3'].map((swatch) => ({ swatch, note: swatch, lift: 'pass' }));
    expect(swatches(...doubled).map(({ number, note }) => [number, note])).toEqual([
      [1, '1'],
      [2, '2'],
      [3, '3'],
      [4, '1'],
    ]);
    expect(said(...doubled)).toEqual([expect.stringMatching(/^3 -: Swatch 1 stands here twice: .* became 4/)]);
    const missing = ['', '1', '2'].map((swatch) => ({ swatch, lift: 'pass' }));
    expect(said(...missing)).toEqual([]);
    expect(swatches(...missing).map(({ number }) => number)).toEqual([1, 2, 3]);
  });
});

describe('what a swatch showed', () => {
  it('in the words that people use; another word leaves it open, and is said in its column', () => {
    const found = swatches({ lift: 'Yes' }, { lift: 'half' }, { lift: '0' }, { lift: '' }, { lift: 'perhaps' });
    expect(found.map(({ outcomes }) => outcomes.lift)).toEqual(['pass', 'partly', 'fail', undefined, undefined]);
    expect(said({ lift: 'Yes' }, { lift: '' }, { lift: 'perhaps' })).toEqual([
      expect.stringMatching(/^4 lift: .*perhaps/),
    ]);
    const long = 'y'.repeat(60);
    const [message] = said({ lift: 'pass' }, { lift: long });
    expect(message).toMatch(/y{40}/);
    expect(message).not.toMatch(/y{41}/);
  });
  it('by whom, when and with what note; a day that is no date is none', () => {
    expect(swatches({ lift: 'pass', by: 'Ada', date: '2026-03-01', note: 'a; b' })[0]).toMatchObject({
      by: 'Ada',
      judgedAt: '2026-03-01',
      note: 'a; b',
    });
    expect(swatches({ lift: 'pass', date: '1 March' })[0]).not.toHaveProperty('judgedAt');
  });
  it('set aside where it says yes, and nowhere else', () => {
    const aside = ['yes', '', 'no', 'half', 'torn'].map((cell) => ({ lift: 'pass', 'set aside': cell }));
    expect(swatches(...aside).map(({ spoiled }) => spoiled)).toEqual([
      true,
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });
  it('in which repeat, the first where none is given', () => {
    const blocks = ['3', '', '0', 'x'].map((repeat) => ({ repeat, lift: 'pass' }));
    expect(swatches(...blocks).map(({ block }) => block)).toEqual([3, 1, 1, 1]);
  });
});
