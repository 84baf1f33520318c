/** The area that gets a coat: pieces with their turn-ins, and the coat found by weighing. */
import { mustBePositive, mustBeWithin } from './result';

export interface Sides {
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly left: number;
}

export interface Piece {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly count: number;
  /** added on every side, or on each; mm; none when left out */
  readonly turnInMm?: number | Sides;
}

/** m² of one row of pieces, turn-ins included. */
export function areaOf({ widthMm, heightMm, count, turnInMm = 0 }: Piece): number {
  mustBePositive('widthMm', widthMm);
  mustBePositive('heightMm', heightMm);
  mustBeWithin('count', count, 0, 1e6);
  const sides =
    typeof turnInMm === 'number' ? { top: turnInMm, right: turnInMm, bottom: turnInMm, left: turnInMm } : turnInMm;
  for (const [side, mm] of Object.entries(sides)) mustBeWithin(`turn-in ${side}`, mm, 0, 1000);
  return ((widthMm + sides.left + sides.right) * (heightMm + sides.top + sides.bottom) * count) / 1e6;
}

/** Wet coat from weighing the board before and after, g/m². */
export function coatFromWeighing(gramsBefore: number, gramsAfter: number, squareMetres: number): number {
  mustBePositive('squareMetres', squareMetres);
  mustBeWithin('gramsAfter', gramsAfter, gramsBefore, 1e6);
  return (gramsAfter - gramsBefore) / squareMetres;
}
