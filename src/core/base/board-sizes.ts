/**
 * The sums behind books and boxes, each said once: the cover calculator and the projects both ask here.
 * All lengths in mm.
 */

/**
 * The trade's usual measures, to be changed at will: squares 1/8 to 3/16 in, turn-ins 3/4 in, mitres left
 * one board's thickness (Vaughn, published); joints 1/8 to 1/4 in (Roberts & Etherington, published) and
 * 7 mm by common practice, no source.
 */
export const TURN_IN = 18;
export const SQUARE = 3;
export const JOINT = 7;
export const USUAL_BOARD = 2.5;

/** A case: boards that stand out by the square and stop short of the spine by the joint. */
export interface CaseSizes {
  readonly board: { readonly width: number; readonly height: number };
  readonly spine: number;
  /** laid open, without turn-ins */
  readonly open: number;
}

/**
 * `width` and `height` of the leaves, `spine` of the strip between the joints.
 * With a joint as wide as the square the boards are as wide as the book (Vaughn).
 */
export function caseSizes(
  { width, height }: { readonly width: number; readonly height: number },
  { square, joint, spine }: { readonly square: number; readonly joint: number; readonly spine: number },
): CaseSizes {
  const board = { width: width + square - joint, height: height + 2 * square };
  return { board, spine, open: 2 * board.width + 2 * joint + spine };
}

/** The strip that reaches over the block and both boards. Common practice, no source; Vaughn leaves the boards out. */
export const usualSpine = (thickness: number, board: number): number => thickness + 2 * board;

/** Narrow for thin boards, and never so narrow that a thick board cannot turn in it. Common practice, no source. */
export const usualJoint = (board: number): number => Math.max(JOINT, 2 * board);

export interface Space {
  readonly width: number;
  readonly height: number;
  readonly thickness: number;
}

/** mm that a slip case or box is larger inside than what goes in. */
export const withSlack = (contents: Space, slack: Space): Space => ({
  width: contents.width + slack.width,
  height: contents.height + slack.height,
  thickness: contents.thickness + slack.thickness,
});

/** None in depth, 2 mm in height and thickness (published: brighton-slip-case). */
export const SLIP_CASE_SLACK: Space = { width: 0, height: 2, thickness: 2 };

/** Common practice, no source. */
export const BOX_SLACK: Space = { width: 2, height: 2, thickness: 2 };

/** The outside of a slip case of this board round this inside: back, top and bottom stand between the sides. */
export const slipCaseOutside = (inside: Space, board: number): Space => ({
  width: inside.width + board,
  height: inside.height + 2 * board,
  thickness: inside.thickness + 2 * board,
});

/** Share of the inside's depth that the lid's walls reach down. Common practice, no source. */
const LID_SHARE = 1 / 3;
/**
 * How far a lid's walls usually reach down, mm, from the depth of the inside, mm: a third. Common practice, no
 * source.
 */
export const usualLidDepth = (insideThickness: number): number => insideThickness * LID_SHARE;

/** Air between covered tray and lined lid, both sides together. Common practice, no source. */
export const LID_ROOM = 1;
/** A covering of paper or cloth with its glue, mm. Common practice, no source. */
export const COVERING = 0.25;

/** A tray or lid: walls round a base, `thickness` the height of the walls inside. */
export interface Tray {
  readonly inside: Space;
  readonly outside: Space;
}

/** A tray of this board, mm, round this inside: walls stand on the edges of the base. */
export const trayRound = (inside: Space, board: number): Tray => ({
  inside,
  outside: {
    width: inside.width + 2 * board,
    height: inside.height + 2 * board,
    thickness: inside.thickness + board,
  },
});

/** The inside of a lid that goes over this tray: a covering outside the tray and one inside the lid, on two sides. */
export const lidInside = (tray: Tray, depth: number, room = LID_ROOM, covering = COVERING): Space => ({
  width: tray.outside.width + 4 * covering + room,
  height: tray.outside.height + 4 * covering + room,
  thickness: depth,
});

/** Two hard covers, larger than the panel by the square on every side. */
export const panelBoard = (width: number, height: number, square: number) => ({
  width: width + 2 * square,
  height: height + 2 * square,
});
