/** Trials on their way in and out: parsing, migration, spreadsheets, merging, publishing. */
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { drawOrder, swatchCount } from '../../../src/core/trial/design';
import { amountsNeeded } from '../../../src/core/trial/amounts';
import { mergeTrials } from '../../../src/core/trial/merge';
import { parseTrial } from '../../../src/core/trial/parse';
import { trialCsv, trialHtml, trialMarkdown } from '../../../src/core/trial/publish';
import { TRIAL_VERSION } from '../../../src/core/trial/record';
import { summaryOf } from '../../../src/core/trial/summary';
import { trialFromRows } from '../../../src/core/trial/rows';
import { csvCell, fileNameOf, lineOf, unguarded } from '../../../src/core/trial/text';
import { DESIGN, trialWith } from '../support/trial';

const through = (value: unknown): unknown => JSON.parse(JSON.stringify(value));
const parsed = (value: unknown) => {
  const found = parseTrial(value);
  if (!found.ok) throw new Error(found.problems.join(' '));
  return found;
};
const rowsOf = (csv: string) => Papa.parse<string[]>(csv.replace(/^\ufeff/, ''), { skipEmptyLines: true }).data;
const INFO = { id: 'read', name: 'Read', by: 'Bo', createdAt: '2026-03-02' };

describe('the drawn order', () => {
  test('every combination once in every block, the same for the same seed', () => {
    const order = drawOrder(DESIGN, 11);
    expect(order).toHaveLength(swatchCount(DESIGN));
    expect(order.map(({ number }) => number)).toEqual(Array.from({ length: 12 }, (_, i) => i + 1));
    for (const block of [1, 2, 3]) {
      const keys = order.filter((swatch) => swatch.block === block).map(({ paper, glue }) => `${paper} ${glue}`);
      expect(new Set(keys).size).toBe(4);
    }
    // blocks follow one another, so a trial that is broken off is still balanced
    expect(order.map(({ block }) => block)).toEqual([1, 1, 1, 1, 2, 2, 2, 2, 3, 3, 3, 3]);
    expect(drawOrder(DESIGN, 11)).toEqual(order);
    expect(drawOrder(DESIGN, 12)).not.toEqual(order);
  });
  test('each order of a block of four comes up about as often as any other', () => {
    const seen = new Map<string, number>();
    for (let seed = 0; seed < 4800; seed += 1) {
      const key = drawOrder({ ...DESIGN, replicates: 1 }, seed)
        .map(({ paper, glue }) => paper + glue)
        .join();
      seen.set(key, (seen.get(key) ?? 0) + 1);
    }
    expect(seen.size).toBe(24);
    // 200 each on average; five standard deviations are about 70
    for (const count of seen.values()) expect(Math.abs(count - 200)).toBeLessThan(70);
  });
  test('more swatches than a trial holds are refused', () => {
    expect(() => drawOrder({ ...DESIGN, replicates: 200 }, 1)).toThrow(RangeError);
  });
});

test('what a trial takes, worked by hand', () => {
  // 12 swatches of 50 × 70 mm: 4 × 4 = 16 from an A4; on board 70 × 90 mm: 3 × 3 = 9
  const coat = { low: 40, middle: 65, high: 110, basis: 'from-memory' } as const;
  const needed = amountsNeeded(DESIGN, 50, 70, coat);
  expect(needed.swatches).toBe(12);
  expect(needed.perPaper).toEqual({ pieces: 6, sheets: 1 });
  expect(needed.board).toEqual({ widthMm: 70, heightMm: 90, pieces: 12, sheets: 2 });
  // six swatches of 35 cm² at 65 g/m² are 1.365 g; half as much again stays in the brush
  expect(needed.gluePerAdhesive.middle).toBeCloseTo(2.0475, 6);
});

describe('parsing', () => {
  test('a trial comes back as it went out', () => {
    const trial = trialWith(({ number }) => (number % 2 ? 'pass' : 'partly'), { demo: true });
    const found = parsed(through(trial));
    expect(found.trial).toEqual(trial);
    expect(found.notes).toEqual([]);
  });
  test('a file without a version is brought up to date', () => {
    const { version: _, glues, holds: __, ...old } = trialWith(() => 'pass');
    const found = parsed(through({ ...old, adhesives: glues, holdSeconds: 20, by: undefined }));
    expect(found.trial).toMatchObject({ version: TRIAL_VERSION, glues, holds: [20], by: '' });
    expect(found.trial.swatches).toHaveLength(12);
  });
  test('a file from a later version is refused in words', () => {
    const found = parseTrial({ ...trialWith(() => 'pass'), version: TRIAL_VERSION + 1 });
    expect(found).toMatchObject({ ok: false, problems: [expect.stringContaining('later version')] });
  });
  test('what cannot be used is left out and counted', () => {
    const trial = through(trialWith(() => 'pass')) as { swatches: any[]; papers: any[] };
    trial.swatches[0].paper = 'nowhere';
    trial.swatches[1].number = trial.swatches[2].number;
    trial.swatches[3].outcomes = { lift: 'splendid', constructor: 'pass' };
    trial.papers.push({ id: 'UPPER', name: 'x' });
    const { trial: read, notes } = parsed(trial);
    expect(read.swatches).toHaveLength(10);
    expect(read.swatches.find(({ number }) => number === 4)?.outcomes).toEqual({});
    expect(notes).toHaveLength(3);
  });
  test('a question called "constructor" is a question like any other', () => {
    const trial = trialWith(() => undefined, {
      questions: [{ id: 'constructor', kind: 'own', text: 'x', criterion: '' }],
    });
    expect(trialCsv(parsed(through(trial)).trial)).not.toContain('function');
  });
});

describe('a spreadsheet', () => {
  test('our own CSV is read back to the same swatches', () => {
    const trial = trialWith(({ number }) => (number === 5 ? undefined : number % 3 ? 'pass' : 'fail'));
    const { trial: read, problems, ignored } = trialFromRows(rowsOf(trialCsv(trial)), INFO);
    expect(problems).toEqual([]);
    expect(ignored).toEqual([]);
    expect(read?.questions).toEqual(trial.questions);
    const told = (of: typeof trial) =>
      of.swatches.map(({ number, paper, glue, hold, block, outcomes, judgedAt }) => {
        const [p, g] = [of.papers.find(({ id }) => id === paper), of.glues.find(({ id }) => id === glue)];
        return [
          number,
          p?.name,
          p?.grammage,
          p?.family,
          p?.dropSeconds,
          g?.name,
          g?.record,
          hold,
          block,
          outcomes,
          judgedAt,
        ];
      });
    expect(read && told(read)).toEqual(told(trial));
  });
  test('semicolons, decimal commas, other words and a mark at the start', () => {
    const csv =
      '\ufeffPaper;gsm;Glue;Seconds;Lifts clean;Remarks\r\nLokta;25,5;Paste;20;Yes;"a; b"\r\nLokta;25,5;Paste;20;0,5;\r\n';
    const { trial, problems } = trialFromRows(rowsOf(csv), INFO);
    expect(problems).toEqual([]);
    expect(trial?.papers).toEqual([{ id: 'paper-1', name: 'Lokta', grammage: 25.5 }]);
    expect(trial?.swatches.map(({ outcomes }) => outcomes)).toEqual([{ 'q-1': 'pass' }, { 'q-1': 'partly' }]);
    expect(trial?.swatches[0]?.note).toBe('a; b');
  });
  test('errors name their row and column, and the sound rows stay', () => {
    const csv =
      'swatch,paper,gsm,adhesive,lift,pets\n1,A,heavy,P,pass,cat\n1,A,70,P,perhaps,cat\n3,,70,P,fail,cat\n4,B,9999,P,fail,cat\n';
    const { trial, problems, ignored } = trialFromRows(rowsOf(csv), INFO);
    expect(trial?.swatches).toHaveLength(3);
    expect(ignored).toEqual(['pets']);
    expect(problems.map(({ row, column }) => [row, column])).toEqual([
      ...[
        [2, 'gsm'],
        [3, 'lift'],
        [3, undefined],
        [4, undefined],
        [5, 'gsm'],
      ],
    ]);
    expect(problems[0]?.message).toContain('5 to 600 g/m²');
  });
  test('without the columns it needs it says which', () => {
    const { trial, problems } = trialFromRows(
      [
        ['a', 'b'],
        ['cat', 'dog'],
      ],
      INFO,
    );
    expect(trial).toBeUndefined();
    expect(problems.map(({ message }) => message).join(' ')).toMatch(/“paper”.*“adhesive”.*pass, partly or fail/);
  });
});

describe('merging', () => {
  const mine = trialWith(({ number }) => (number <= 6 ? 'pass' : undefined));
  test('another trial adds its swatches, and who, when and whence stay with them', () => {
    const theirs = trialWith(() => 'fail', {
      id: 'theirs',
      name: 'Bo’s',
      by: 'Bo',
      papers: [...DESIGN.papers].reverse(),
    });
    const { trial, added, conflicts } = mergeTrials(mine, theirs);
    expect({ added, conflicts: conflicts.length, papers: trial.papers.length }).toEqual({
      added: 12,
      conflicts: 0,
      papers: 2,
    });
    expect(trial.swatches[12]).toMatchObject({
      number: 13,
      by: 'Bo',
      judgedAt: '2026-03-01T10:00:00Z',
      from: { trial: 'theirs', number: 1 },
    });
    // the same again adds nothing
    expect(mergeTrials(trial, theirs)).toMatchObject({ added: 0, same: 12, conflicts: [] });
  });
  test('the same trial from another device fills what is blank and asks about the rest', () => {
    const theirs = trialWith(({ number }) => (number === 1 ? 'fail' : 'pass'));
    const asked = mergeTrials(mine, theirs);
    expect(asked).toMatchObject({ added: 6, same: 5 });
    expect(asked.conflicts.map(({ number }) => number)).toEqual([1]);
    expect(asked.trial.swatches[0]?.outcomes).toEqual({ lift: 'pass' });
    expect(mergeTrials(mine, theirs, 'theirs').trial.swatches[0]?.outcomes).toEqual({ lift: 'fail' });
    expect(mergeTrials(mine, theirs, 'mine').trial.swatches[0]?.outcomes).toEqual({ lift: 'pass' });
  });
});

describe('a name is always text', () => {
  const nasty = '<img src=x onerror=alert(1)> | [x](javascript:alert(1)) =HYPERLINK("http://x")';
  const trial = trialWith(() => 'pass', {
    name: nasty,
    papers: [
      { ...DESIGN.papers[0], name: nasty },
      { ...DESIGN.papers[1], name: '=1+2' },
    ],
    glues: [
      { ...DESIGN.glues[0], name: '@SUM(A1)' },
      { ...DESIGN.glues[1], name: '"><script>alert(1)</script>' },
    ],
  });
  test('in HTML', () => {
    const page = trialHtml(
      trial,
      summaryOf(trial),
      new Map([
        [1, 'javascript:alert(1)'],
        [2, 'data:image/svg+xml;base64,AAAA'],
        [3, 'data:image/jpeg;base64,AAAA'],
      ]),
    );
    expect(page).not.toMatch(/<script|<img src=x|onerror=alert\(1\)>/i);
    expect(page.match(/<img /g)).toEqual(['<img ']);
    expect(page).toContain("default-src 'none'");
  });
  test('in Markdown', () => {
    const text = trialMarkdown(trial, summaryOf(trial));
    expect(text).not.toMatch(/<img|<script|\]\(javascript/i);
    for (const line of text.split('\n').filter((one) => one.startsWith('|'))) {
      expect(line.replace(/\\\|/g, '').match(/\|/g)).toHaveLength(4);
    }
  });
  test('in a spreadsheet', () => {
    const cells = rowsOf(trialCsv(trial)).slice(1).flat();
    expect(cells.filter((cell) => /^[=@]/.test(cell))).toEqual([]);
    expect(cells).toContain("'=1+2");
    expect(['=1', '-2', '+3.5', '@x', ' =1', '-'].map(csvCell)).toEqual(["'=1", '-2', '+3.5', "'@x", "' =1", "'-"]);
    expect(unguarded("'=1+2")).toBe('=1+2');
    expect(unguarded("'tis")).toBe("'tis");
  });
  test('in a file name, and without what cannot be seen', () => {
    expect(fileNameOf('../../Käse <b>')).toBe('kase-b');
    expect(fileNameOf('***')).toBe('trial');
    expect(lineOf('a\u202eb\u0000c\ud800', 10)).toBe('abc');
  });
});
