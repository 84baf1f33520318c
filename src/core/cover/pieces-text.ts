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

const row = (i: number, part: keyof PieceText): string => `piece-${i}-${part}`;

/** The pieces, or what is wrong in which field ("piece-0-wide"). */
export function piecesOf(
  rows: readonly PieceText[],
  unit: LengthUnit,
): { pieces: readonly Piece[]; problems: readonly InputError[] } {
  const problems: InputError[] = [];
  const length = (i: number, part: 'wide' | 'high' | 'turnIn', text: string, low: number, high: number): number => {
    const words = { wide: 'The width', high: 'The height', turnIn: 'The turn-in' } as const;
    const found = parseLength(text, { unit, field: row(i, part), what: `${words[part]} of row ${i + 1}`, low, high });
    if (found.ok) return found.value;
    if (!problems.some(({ field }) => field === row(i, part))) problems.push(...found.errors);
    return low;
  };
  const pieces = rows.map(({ wide, high, count, turnIn }, i): Piece => {
    const number = parseNumber(count);
    if (number === undefined || !Number.isInteger(number) || number < 1 || number > 999)
      problems.push({
        field: row(i, 'count'),
        code: 'not-a-number',
        message: `The count of row ${i + 1} must be a whole number from 1 to 999.`,
        limits: { low: 1, high: 999, unit: '' },
      });
    const given = turnIn.trim() === '' ? ['0'] : turnIn.split(';');
    const sides = given.map((text) => (text.trim() === '' ? 0 : length(i, 'turnIn', text, 0, 200)));
    if (given.length !== 1 && given.length !== 4)
      problems.push({
        field: row(i, 'turnIn'),
        code: 'not-a-number',
        message: `The turn-in of row ${i + 1} is one length for all sides, or four with semicolons between them: top; right; bottom; left.`,
      });
    return {
      widthMm: length(i, 'wide', wide, 1, 5000),
      heightMm: length(i, 'high', high, 1, 5000),
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
export const PIECES_PATTERN = new RegExp(
  `^${ROW.source.slice(1, -1)}(?:_${ROW.source.slice(1, -1)}){0,${MOST_PIECES - 1}}$`,
);

/** Pieces from a link's text; undefined when it is none, or when a piece has no size or no count. */
export function decodePieces(text: string): readonly Piece[] | undefined {
  const pieces = text.split('_').map((part): Piece | undefined => {
    const found = ROW.exec(part);
    if (!found) return undefined;
    const [widthMm, heightMm, count] = [Number(found[1]), Number(found[2]), Number(found[3])];
    const sides = (found[4] ?? '0').split('-').map(Number);
    if (
      widthMm < 1 ||
      heightMm < 1 ||
      widthMm > 5000 ||
      heightMm > 5000 ||
      count < 1 ||
      sides.some((side) => side > 200)
    )
      return undefined;
    return { widthMm, heightMm, count, turnInMm: asSides(sides) };
  });
  return pieces.length <= MOST_PIECES && pieces.every((piece) => piece !== undefined) ? pieces : undefined;
}

const CELLS = ['wide', 'high', 'count', 'turnIn'] as const;

/** Rows as one text, so that a form holds them like any other field: cells apart by "|", rows by line. */
export const joinRows = (rows: readonly PieceText[]): string =>
  rows.map((one) => CELLS.map((cell) => one[cell].replace(/[|\n]/g, ' ')).join('|')).join('\n');

export const splitRows = (text: string): PieceText[] =>
  text === ''
    ? []
    : text.split('\n').map((line) => {
        const [wide = '', high = '', count = '', turnIn = ''] = line.split('|');
        return { wide, high, count, turnIn };
      });

/** Typed rows to what a plan keeps, and back. */
export function parseRows(typed: string, unit: LengthUnit): Result<string> {
  const { pieces, problems } = piecesOf(splitRows(typed), unit);
  return problems.length > 0 ? fail(problems) : ok(encodePieces(pieces));
}

export const showRows = (kept: string, unit: LengthUnit): string =>
  joinRows(textsOfPieces(decodePieces(kept) ?? [], unit));
