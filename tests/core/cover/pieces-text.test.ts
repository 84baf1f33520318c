/** Rows of pieces: typed, kept in a link, and read back. */
import { decodePieces, piecesIn } from '../support/rows';
import { describe, expect, it } from 'vitest';
import {
  joinRows,
  parseRows,
  piecesOf,
  showRows,
  splitRows,
  textsOfPieces,
  type PieceText,
} from '../../../src/core/cover/pieces-text';
import { encodePieces } from '../../../src/core/cover/pieces-link';

const typed = (given: Partial<PieceText>): PieceText => ({
  wide: '210',
  high: '148',
  count: '1',
  turnIn: '0',
  ...given,
});
const problemsOf = (given: Partial<PieceText>) =>
  piecesOf([typed(given)], 'mm').problems.map(({ field, message }) => ({ field, message }));

describe('what is typed', () => {
  it('becomes pieces in millimetres', () => {
    // 10 in is 254 mm and 1/2 in 12.7 mm by definition
    const { pieces, problems } = piecesOf([typed({ wide: '10', high: '5', count: '3', turnIn: '1/2' })], 'in');
    expect(problems).toEqual([]);
    expect(pieces[0]).toMatchObject({ widthMm: 254, heightMm: 127, count: 3 });
    expect(pieces[0]!.turnInMm).toBeCloseTo(12.7, 9);
  });
  it('takes an empty turn-in for none, for all sides or for one', () => {
    expect(piecesOf([typed({ turnIn: ' ' })], 'mm').pieces[0]!.turnInMm).toBe(0);
    expect(piecesOf([typed({ turnIn: '18; 18; ; 5' })], 'mm').pieces[0]!.turnInMm).toEqual({
      top: 18,
      right: 18,
      bottom: 0,
      left: 5,
    });
  });
  it.each(['', '0', '1000', '1.5', 'two'])('refuses a count of “%s”', (count) => {
    expect(problemsOf({ count })).toEqual([
      { field: 'piece-0-count', message: 'The count of row 1 must be a whole number from 1 to 999.' },
    ]);
  });
  it.each(['1', '999'])('takes a count of %s', (count) => expect(problemsOf({ count })).toEqual([]));
  it('refuses two turn-ins, or five', () => {
    for (const turnIn of ['18; 18', '1; 2; 3; 4; 5']) {
      const [problem, ...more] = problemsOf({ turnIn });
      expect(more).toEqual([]);
      expect(problem!.field).toBe('piece-0-turnIn');
      expect(problem!.message).toMatch(/^The turn-in of row 1 is one length for all sides, or four/);
    }
  });
  it.each([
    ['wide', '0.9', 'piece-0-wide', 'The width of row 1'],
    ['high', '5001', 'piece-0-high', 'The height of row 1'],
    ['turnIn', '201', 'piece-0-turnIn', 'The turn-in of row 1'],
  ])('says which %s is out of its limits', (part, text, field, what) => {
    const [problem, ...more] = problemsOf({ [part]: text });
    expect(more).toEqual([]);
    expect(problem!.field).toBe(field);
    expect(problem!.message).toContain(what);
  });
  it('says a slip in the turn-ins once, however many sides have it', () =>
    expect(problemsOf({ turnIn: 'a; b; c; d' })).toHaveLength(1));
  it('asks for a piece when there is none', () =>
    expect(piecesOf([], 'mm').problems).toMatchObject([{ field: 'piece-0-wide', code: 'empty' }]));
});

describe('what a link carries', () => {
  it('reads the row that the module’s head gives', () => {
    expect(decodePieces('235x148x2t18-18-18-0_210x148x2')).toEqual([
      { widthMm: 235, heightMm: 148, count: 2, turnInMm: { top: 18, right: 18, bottom: 18, left: 0 } },
      { widthMm: 210, heightMm: 148, count: 2, turnInMm: 0 },
    ]);
  });
  it('comes back as it went', () => {
    const text = '235x148x2t18-18-18-0_210.5x148x2_1x5000x999t200';
    expect(encodePieces(decodePieces(text)!)).toBe(text);
  });
  it.each(['', '210x148', '0x148x1', '210x0x1', '210x148x0', '5001x10x1', '10x5001x1', '10x10x1t201', '10x10x1t1-2'])(
    'refuses “%s”',
    (text) => expect(decodePieces(text)).toBeUndefined(),
  );
  it.each(['1x1x1', '5000x5000x999t200'])('takes “%s”, at its limits', (text) =>
    expect(decodePieces(text)).toHaveLength(1),
  );
  it('holds at most twenty', () => {
    expect(decodePieces(Array(20).fill('9x9x1').join('_'))).toHaveLength(20);
    expect(decodePieces(Array(21).fill('9x9x1').join('_'))).toBeUndefined();
  });
});

describe('a form’s one text', () => {
  it('splits into the rows it was joined from; marks of its own become spaces', () => {
    const rows = [typed({ turnIn: '1; 2; 3; 4' }), typed({ wide: '' })];
    expect(splitRows(joinRows(rows))).toEqual(rows);
    expect(splitRows(joinRows([typed({ wide: '1|2\n3' })]))[0]!.wide).toBe('1 2 3');
  });
  it('is no rows when empty, and fills up a row that lacks cells', () => {
    expect(splitRows('')).toEqual([]);
    expect(splitRows('210')).toEqual([{ wide: '210', high: '', count: '', turnIn: '' }]);
    expect(splitRows('|')).toEqual([{ wide: '', high: '', count: '', turnIn: '' }]);
  });
  it('is kept as a link has it, and shown as it was typed', () => {
    const form = '210|148|2|18; 18; 18; 0';
    expect(parseRows(form, 'mm')).toEqual({ ok: true, value: piecesIn('210x148x2t18-18-18-0') });
    expect(showRows(piecesIn('210x148x2t18-18-18-0'), 'mm')).toBe(form);
    expect(parseRows('', 'mm').ok).toBe(false);
    expect(showRows([], 'mm')).toBe('');
  });
  it('shows pieces in the unit that is asked for', () =>
    expect(textsOfPieces([{ widthMm: 254, heightMm: 127, count: 1, turnInMm: 25.4 }], 'in')).toEqual([
      { wide: '10', high: '5', count: '1', turnIn: '1' },
    ]));
});
