/**
 * The pieces that things are covered with, from the sums of base/board-sizes.ts and the trade's usual measures.
 */
import type { Piece } from '../base/piece';
import {
  USUAL_BOARD,
  BOX_SLACK,
  caseSizes,
  lidInside,
  panelBoard,
  SLIP_CASE_SLACK,
  slipCaseOutside,
  SQUARE,
  trayRound,
  TURN_IN,
  usualJoint,
  usualLidDepth,
  usualSpine,
  withSlack,
} from '../base/board-sizes';
import { mustBePositive, mustBeWithin } from '../base/result';

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

function checked({ widthMm, heightMm, thicknessMm, turnInMm = TURN_IN, boardMm = USUAL_BOARD }: Body): Required<Body> {
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
  const measures = { square: SQUARE, joint: usualJoint(boardMm), spine: usualSpine(thicknessMm, boardMm) };
  const { open, board } = caseSizes({ width: widthMm, height: heightMm }, measures);
  return [
    { name: 'cover', widthMm: open, heightMm: board.height, count: 1, turnInMm },
    { name: 'paste-down', widthMm, heightMm, count: 2, turnInMm: 0 },
  ];
}

const roomOf = ({ widthMm, heightMm, thicknessMm }: Required<Body>) => ({
  width: widthMm,
  height: heightMm,
  thickness: thicknessMm,
});

/** A strip round the back and both sides, a top and a bottom: the outside of an open-fronted case. */
export function slipCase(body: Body): NamedPiece[] {
  const whole = checked(body);
  const { width, height, thickness } = slipCaseOutside(withSlack(roomOf(whole), SLIP_CASE_SLACK), whole.boardMm);
  return [
    {
      name: 'sides and back',
      widthMm: 2 * width + thickness,
      heightMm: height,
      count: 1,
      turnInMm: whole.turnInMm,
    },
    { name: 'top and bottom', widthMm: width, heightMm: thickness, count: 2, turnInMm: 0 },
  ];
}

/** Tray and lid, each covered with a strip round its walls and a sheet over its flat. */
export function liddedBox(body: Body): NamedPiece[] {
  const whole = checked(body);
  const inside = withSlack(roomOf(whole), BOX_SLACK);
  const tray = trayRound(inside, whole.boardMm);
  const lid = trayRound(lidInside(tray, usualLidDepth(inside.thickness)), whole.boardMm);
  const covering = ({ outside: { width, height, thickness } }: typeof tray, walls: string, flat: string) => [
    { name: walls, widthMm: 2 * (width + height), heightMm: thickness, count: 1, turnInMm: whole.turnInMm },
    { name: flat, widthMm: width, heightMm: height, count: 1, turnInMm: 0 },
  ];
  return [
    ...covering(tray, 'walls of the box', 'base of the box'),
    ...covering(lid, 'walls of the lid', 'top of the lid'),
  ];
}

/** Two boards, covered one by one, and the first and last leaf pasted down on them. */
export function accordionCovers(body: Body): NamedPiece[] {
  const { widthMm, heightMm, turnInMm } = checked(body);
  const { width, height } = panelBoard(widthMm, heightMm, SQUARE);
  return [
    { name: 'covers', widthMm: width, heightMm: height, count: 2, turnInMm },
    { name: 'paste-down', widthMm, heightMm, count: 2, turnInMm: 0 },
  ];
}

/** One sheet glued all over, cut a little large and trimmed afterwards. */
export function liningSheet(body: Body): NamedPiece[] {
  const { widthMm, heightMm, turnInMm } = checked({ turnInMm: 0, ...body });
  return [{ name: 'lining', widthMm, heightMm, count: 1, turnInMm }];
}
