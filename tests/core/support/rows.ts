/** Rows of a plan, written shortly, as a link spells them. */
import type { Piece } from '../../../src/core/base/piece';
import { piecesAreSound, readPieces } from '../../../src/core/cover/pieces-text';
import {
  cutPiecesAreSound,
  readCutPieces,
  readStocks,
  stocksAreSound,
  type CutPiece,
  type StockRow,
} from '../../../src/core/cut/codec';

const soundOnly =
  <T>(read: (text: string) => T | undefined, isSound: (rows: T) => boolean) =>
  (text: string): T | undefined => {
    const rows = read(text);
    return rows !== undefined && isSound(rows) ? rows : undefined;
  };

/** What a link's text gives, if a row allows it. */
export const decodePieces = soundOnly<readonly Piece[]>(readPieces, piecesAreSound);
export const decodeStocks = soundOnly<readonly StockRow[]>(readStocks, stocksAreSound);
export const decodeCutPieces = soundOnly<readonly CutPiece[]>(readCutPieces, cutPiecesAreSound);

const orThrow =
  <T>(decode: (text: string) => T | undefined) =>
  (text: string): T => {
    const rows = decode(text);
    if (rows === undefined) throw new Error(`no rows: ${text}`);
    return rows;
  };

export const piecesIn = orThrow(decodePieces);
export const stocksIn = orThrow(decodeStocks);
export const cutPiecesIn = orThrow(decodeCutPieces);
