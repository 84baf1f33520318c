/**
 * Rows of pieces: as the reader types them, as core wants them, and as a link carries them. In a link a
 * row is width x height x count in mm, with its turn-ins top-right-bottom-left after a "t" where it has
 * any: "235x148x2t18-18-18-0_210x148x2".
 */
import type { Piece, Sides } from '../base/piece';
import { asTyped, parseLength, type LengthUnit } from '../base/length-text';
import { encodePieces, MOST_PIECES, SIDES, sidesOf } from './pieces-link';
import { parseNumber } from '../base/number-text';
import { fail, ok, type InputError, type Result } from '../base/result';

/** One row as typed. */
export interface PieceText {
  readonly wide: string;
  readonly high: string;
  readonly count: string;
  /** one length for every side, or four for top; right; bottom; left */
  readonly turnIn: string;
}

export const NO_PIECE: PieceText = { wide: '', high: '', count: '1', turnIn: '0' };

/** mm, and how many */
const SIDE = { low: 1, high: 5000 };
const TURN_IN = { low: 0, high: 200 };
const COUNT = { low: 1, high: 999 };

const row = (i: number, part: keyof PieceText): string => `piece-${i}-${part}`;

/** The pieces, or what is wrong in which field ("piece-0-wide"). */
export function piecesOf(
  rows: readonly PieceText[],
  unit: LengthUnit,
): { pieces: readonly Piece[]; problems: readonly InputError[] } {
  const problems: InputError[] = [];
  const length = (i: number, part: 'wide' | 'high' | 'turnIn', text: string, limits: typeof SIDE): number => {
    const words = { wide: 'The width', high: 'The height', turnIn: 'The turn-in' } as const;
    const found = parseLength(text, { unit, field: row(i, part), what: `${words[part]} of row ${i + 1}`, ...limits });
    if (found.ok) return found.value;
    if (!problems.some(({ field }) => field === row(i, part))) problems.push(...found.errors);
    return limits.low;
  };
  const pieces = rows.map(({ wide, high, count, turnIn }, i): Piece => {
    const number = parseNumber(count);
    if (number === undefined || !Number.isInteger(number) || number < COUNT.low || number > COUNT.high)
      problems.push({
        field: row(i, 'count'),
        code: 'not-a-number',
        message: `The count of row ${i + 1} must be a whole number from ${COUNT.low} to ${COUNT.high}.`,
        limits: { ...COUNT, unit: '' },
      });
    const given = turnIn.trim() === '' ? ['0'] : turnIn.split(';');
    const sides = given.map((text) => (text.trim() === '' ? 0 : length(i, 'turnIn', text, TURN_IN)));
    if (given.length !== 1 && given.length !== 4)
      problems.push({
        field: row(i, 'turnIn'),
        code: 'not-a-number',
        message: `The turn-in of row ${i + 1} is one length for all sides, or four with semicolons between them: top; right; bottom; left.`,
      });
    return {
      widthMm: length(i, 'wide', wide, SIDE),
      heightMm: length(i, 'high', high, SIDE),
      count: number ?? 1,
      turnInMm: asSides(sides),
    };
  });
  if (rows.length === 0) problems.push({ field: row(0, 'wide'), code: 'empty', message: 'Give at least one piece.' });
  return { pieces, problems };
}

const asSides = (sides: readonly number[]): number | Sides =>
  sides.length === 4 ? (Object.fromEntries(SIDES.map((side, i) => [side, sides[i]!])) as unknown as Sides) : sides[0]!;

/** Rows as a reader would have typed them in this unit, so that they are read back as the same pieces. */
export const textsOfPieces = (pieces: readonly Piece[], unit: LengthUnit): PieceText[] =>
  pieces.map((piece) => ({
    wide: asTyped(piece.widthMm, unit),
    high: asTyped(piece.heightMm, unit),
    count: String(piece.count),
    turnIn: sidesOf(piece)
      .map((side) => asTyped(side, unit))
      .join('; '),
  }));

const NUMBER = '\\d{1,4}(?:\\.\\d{1,3})?';
const ROW = new RegExp(`^(${NUMBER})x(${NUMBER})x(\\d{1,3})(?:t(${NUMBER}(?:-${NUMBER}){3}|${NUMBER}))?$`);

/** Pieces from a link's text, whatever their size; undefined when it is none. */
export function readPieces(text: string): readonly Piece[] | undefined {
  const pieces = text.split('_').map((part): Piece | undefined => {
    const found = ROW.exec(part);
    if (!found) return undefined;
    const [widthMm, heightMm, count] = [Number(found[1]), Number(found[2]), Number(found[3])];
    return { widthMm, heightMm, count, turnInMm: asSides((found[4] ?? '0').split('-').map(Number)) };
  });
  return pieces.length <= MOST_PIECES && pieces.every((piece) => piece !== undefined) ? pieces : undefined;
}

/** Whether there are pieces, and each has a size and a count that a row allows. */
export const piecesAreSound = (pieces: readonly Piece[]): boolean =>
  pieces.length > 0 &&
  pieces.every(
    (piece) =>
      [piece.widthMm, piece.heightMm].every((side) => side >= SIDE.low && side <= SIDE.high) &&
      piece.count >= COUNT.low &&
      sidesOf(piece).every((turnIn) => turnIn <= TURN_IN.high),
  );

const CELLS = ['wide', 'high', 'count', 'turnIn'] as const;

/** Rows as one text, so that a form holds them like any other field: cells apart by "|", rows by line. */
export const joinRows = (rows: readonly PieceText[]): string =>
  rows.map((one) => CELLS.map((cell) => one[cell].replace(/[|\n]/g, ' ')).join('|')).join('\n');

/** What was typed, as rows of fields. */
export const splitRows = (text: string): PieceText[] =>
  text === ''
    ? []
    : text.split('\n').map((line) => {
        const [wide = '', high = '', count = '', turnIn = ''] = line.split('|');
        return { wide, high, count, turnIn };
      });

/** Typed rows to the pieces that a plan keeps, as its link will give them back. */
export function parseRows(typed: string, unit: LengthUnit): Result<readonly Piece[]> {
  const { pieces, problems } = piecesOf(splitRows(typed), unit);
  if (problems.length > 0) return fail(problems);
  const kept = readPieces(encodePieces(pieces));
  return kept
    ? ok(kept)
    : fail([{ field: row(0, 'wide'), code: 'too-large', message: `Give at most ${MOST_PIECES} rows of pieces.` }]);
}

/** Pieces as their reader would have typed them in this unit. */
export const showRows = (kept: readonly Piece[], unit: LengthUnit): string => joinRows(textsOfPieces(kept, unit));
