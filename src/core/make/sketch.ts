/** Drawings of a project before they are laid out on a page: shapes and measures in mm, y downwards. */
import type { Sides } from '../base/piece';

export type SketchPoint = readonly [x: number, y: number];

export interface SketchShape {
  readonly look: 'cover' | 'board' | 'sheet' | 'fold';
  readonly points: readonly SketchPoint[];
  readonly label?: string;
}

/** A measure between two places along one side of the drawing; level 1 stands outside level 0. */
export interface Dimension {
  readonly side: 'top' | 'left';
  readonly from: number;
  readonly to: number;
  readonly level: 0 | 1;
}

export interface Sketch {
  readonly title: string;
  readonly shapes: readonly SketchShape[];
  readonly dimensions: readonly Dimension[];
  /** a length that lies aslant: a line with its own figure */
  readonly aslant?: { readonly from: SketchPoint; readonly to: SketchPoint; readonly mm: number };
}

/** A rectangle of a sketch, mm. */
export const rectangle = (
  look: SketchShape['look'],
  x: number,
  y: number,
  width: number,
  height: number,
  label?: string,
): SketchShape => ({
  look,
  points: [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ],
  ...(label !== undefined && { label }),
});

/** A line of a sketch along which something folds, mm. */
export const fold = (from: SketchPoint, to: SketchPoint): SketchShape => ({ look: 'fold', points: [from, to] });

/** Measures end to end along one side, from `at`; a length of 0 is passed over. */
export function chain(side: Dimension['side'], at: number, lengths: readonly number[], level: 0 | 1 = 0): Dimension[] {
  let from = at;
  return lengths.flatMap((mm) => {
    const to = from + mm;
    const one = { side, from, to, level };
    from = to;
    return mm > 0 ? [one] : [];
  });
}

/** A sheet round a flat of this size at (x, y): turn-ins on each side, mitred `corner` mm from the flat's corners. */
export function mitred(x: number, y: number, width: number, height: number, turn: Sides, corner: number): SketchShape {
  // Along an edge a cut at 45° runs √2 times as far as it stands off.
  const off = corner * Math.SQRT2;
  const at = (cx: number, cy: number, sx: 1 | -1, sy: 1 | -1): SketchPoint[] => {
    const [tx, ty] = [sx < 0 ? turn.left : turn.right, sy < 0 ? turn.top : turn.bottom];
    if (tx === 0 || ty === 0 || off >= tx + ty) return [[cx + sx * tx, cy + sy * ty]];
    const along: SketchPoint = [cx + sx * (off - ty), cy + sy * ty];
    const down: SketchPoint = [cx + sx * tx, cy + sy * (off - tx)];
    // Clockwise from the top left corner.
    return sx * sy > 0 ? [down, along] : [along, down];
  };
  return {
    look: 'cover',
    points: [
      ...at(x, y, -1, -1),
      ...at(x + width, y, 1, -1),
      ...at(x + width, y + height, 1, 1),
      ...at(x, y + height, -1, 1),
    ],
  };
}

/** One corner large: the board, the sheet and what is left between board and cut. */
export function cornerSketch(turnIn: number, corner: number): Sketch {
  const far = 2 * turnIn + corner;
  const sheet = mitred(0, 0, 2 * far, 2 * far, { top: turnIn, right: 0, bottom: 0, left: turnIn }, corner);
  const off = Math.min(corner, turnIn * Math.SQRT2) / Math.SQRT2;
  return {
    title: 'One corner, larger',
    shapes: [
      { look: 'cover', points: sheet.points.map(([px, py]) => [Math.min(px, far), Math.min(py, far)]) },
      rectangle('board', 0, 0, far, far, 'board'),
    ],
    dimensions: [...chain('top', -turnIn, [turnIn]), ...chain('left', -turnIn, [turnIn])],
    aslant: { from: [0, 0], to: [-off, -off], mm: corner },
  };
}
