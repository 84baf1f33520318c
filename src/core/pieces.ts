/**
 * The pieces that things are covered with. Measures are the trade's usual ones and can be changed: squares
 * about 3 mm, turn-ins 15–20 mm, joints about 6 mm (Vaughn; Roberts & Etherington give inches near these).
 */
import type { Piece } from './area';
import { mustBePositive, mustBeWithin } from './result';

export const TURN_IN = 18;
export const SQUARE = 3;
export const JOINT = 7;
export const BOARD = 2.5;

export interface NamedPiece extends Piece {
  readonly name: string;
  readonly turnInMm: number;
}

export interface Body {
  /** of the block or of what goes in the box, mm */
  readonly widthMm: number;
  readonly heightMm: number;
  readonly thicknessMm: number;
  readonly turnInMm?: number;
  readonly boardMm?: number;
}

export const PRESETS = {
  notebook: { name: 'Case for a notebook', pieces: notebookCase },
  'slip-case': { name: 'Slip case', pieces: slipCase },
  'lidded-box': { name: 'Lidded box', pieces: liddedBox },
  accordion: { name: 'Covers of an accordion book', pieces: accordionCovers },
  lining: { name: 'Lining sheet', pieces: liningSheet },
} as const;
export type PresetId = keyof typeof PRESETS;

function checked({ widthMm, heightMm, thicknessMm, turnInMm = TURN_IN, boardMm = BOARD }: Body): Required<Body> {
  mustBePositive('widthMm', widthMm);
  mustBePositive('heightMm', heightMm);
  mustBePositive('thicknessMm', thicknessMm);
  mustBeWithin('turnInMm', turnInMm, 0, 100);
  mustBeWithin('boardMm', boardMm, 0, 10);
  return { widthMm, heightMm, thicknessMm, turnInMm, boardMm };
}

/** One cover over two boards and the spine strip, and the two leaves that are pasted down inside. */
export function notebookCase(body: Body): NamedPiece[] {
  const { widthMm, heightMm, thicknessMm, turnInMm, boardMm } = checked(body);
  const height = heightMm + 2 * SQUARE;
  // Each board stops short of the spine by the joint and stands out by the square at the fore-edge.
  const board = widthMm + SQUARE - JOINT;
  const spine = thicknessMm + 2 * boardMm;
  return [
    { name: 'cover', widthMm: 2 * board + 2 * JOINT + spine, heightMm: height, count: 1, turnInMm },
    { name: 'paste-down', widthMm, heightMm, count: 2, turnInMm: 0 },
  ];
}

/** A strip round the back and both sides, a top and a bottom: the outside of an open-fronted case. */
export function slipCase(body: Body): NamedPiece[] {
  const { widthMm, heightMm, thicknessMm, turnInMm, boardMm } = checked(body);
  const [width, height, thickness] = [widthMm + boardMm, heightMm + 2 * boardMm, thicknessMm + 2 * boardMm];
  return [
    { name: 'sides and back', widthMm: 2 * width + thickness, heightMm: height, count: 1, turnInMm },
    { name: 'top and bottom', widthMm: width, heightMm: thickness, count: 2, turnInMm: 0 },
  ];
}

/** Depth of the lid's walls as a share of the box's. Common practice, no source. */
const LID_SHARE = 1 / 3;

/** Tray and lid, each covered with a strip round its walls and a sheet over its flat. */
export function liddedBox(body: Body): NamedPiece[] {
  const { widthMm, heightMm, thicknessMm, turnInMm, boardMm } = checked(body);
  const [width, height, depth] = [widthMm + 2 * boardMm, heightMm + 2 * boardMm, thicknessMm + boardMm];
  const [lidWidth, lidHeight, lidDepth] = [
    width + 2 * boardMm + 1,
    height + 2 * boardMm + 1,
    thicknessMm * LID_SHARE + boardMm,
  ];
  return [
    { name: 'walls of the box', widthMm: 2 * (width + height), heightMm: depth, count: 1, turnInMm },
    { name: 'base of the box', widthMm: width, heightMm: height, count: 1, turnInMm: 0 },
    { name: 'walls of the lid', widthMm: 2 * (lidWidth + lidHeight), heightMm: lidDepth, count: 1, turnInMm },
    { name: 'top of the lid', widthMm: lidWidth, heightMm: lidHeight, count: 1, turnInMm: 0 },
  ];
}

/** Two boards, covered one by one, and the first and last leaf pasted down on them. */
export function accordionCovers(body: Body): NamedPiece[] {
  const { widthMm, heightMm, turnInMm } = checked(body);
  return [
    { name: 'covers', widthMm: widthMm + 2 * SQUARE, heightMm: heightMm + 2 * SQUARE, count: 2, turnInMm },
    { name: 'paste-down', widthMm, heightMm, count: 2, turnInMm: 0 },
  ];
}

/** One sheet glued all over, cut a little large and trimmed afterwards. */
export function liningSheet(body: Body): NamedPiece[] {
  const { widthMm, heightMm, turnInMm } = checked({ turnInMm: 0, ...body });
  return [{ name: 'lining', widthMm, heightMm, count: 1, turnInMm }];
}
