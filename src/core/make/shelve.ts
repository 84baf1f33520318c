/** Pieces set out on shelves for a drawing, all to one scale; one drawing stands for all of a row. */
import type { Piece, Sides } from '../base/piece';

export interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly turn: Sides;
  /** which row it stands for, and how many of it there are */
  readonly row: number;
  readonly times: number;
}

const GAP = 10;
/** The widest piece takes at most this share of the drawing, so that small things are not blown up. */
const TALLEST = 150;

/** Pieces laid in rows under each other, to be drawn; places in mm. */
export function shelve(pieces: readonly Piece[], width: number): { places: readonly Place[]; height: number } {
  const whole = pieces.map((piece) => {
    const turn = sidesOf(piece);
    return { piece, turn, wide: piece.widthMm + turn.left + turn.right, high: piece.heightMm + turn.top + turn.bottom };
  });
  const widest = Math.max(1, ...whole.map(({ wide }) => wide));
  const tallest = Math.max(1, ...whole.map(({ high }) => high));
  const scale = Math.min(width / widest, TALLEST / tallest);
  let [x, y, shelf] = [0, 0, 0];
  const places = whole.map(({ piece, turn, wide, high }, row): Place => {
    if (x > 0 && x + wide * scale > width) [x, y, shelf] = [0, y + shelf + GAP, 0];
    const place = {
      x,
      y,
      width: piece.widthMm * scale,
      height: piece.heightMm * scale,
      turn: { top: turn.top * scale, right: turn.right * scale, bottom: turn.bottom * scale, left: turn.left * scale },
      row,
      times: piece.count,
    };
    x += wide * scale + GAP;
    shelf = Math.max(shelf, high * scale);
    return place;
  });
  return { places, height: y + shelf };
}

function sidesOf({ turnInMm = 0 }: Piece): Sides {
  return typeof turnInMm === 'number' ? { top: turnInMm, right: turnInMm, bottom: turnInMm, left: turnInMm } : turnInMm;
}
