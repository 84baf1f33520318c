/**
 * A sketch laid out in the units of an SVG of fixed width: shapes to scale, dimension lines with ticks, and
 * figures that make room for each other.
 */
import type { LengthUnit } from '../base/length-text';
import { marked } from './cut';
import type { Dimension, SketchPoint, SketchShape, Sketch } from './sketch';

export interface Words {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly turned: boolean;
}

export interface Picture {
  readonly title: string;
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly { readonly look: SketchShape['look']; readonly d: string }[];
  /** dimension lines, as one path */
  readonly lines: string;
  readonly figures: readonly Words[];
  readonly labels: readonly Words[];
  /** the same in words */
  readonly words: string;
}

const WIDTH = 360;
const EDGE = 8;
/** of one row of figures, and the width of one character, in the picture's units */
const ROW = 14;
const LETTER = 7;
const TALLEST = 300;

/** Figures of one side, in rows outwards from the shape so that none lies on another. */
interface Placed {
  readonly dimension: Dimension;
  readonly text: string;
  readonly middle: number;
  /** distances from the shape of its line and of its figure */
  readonly line: number;
  readonly figure: number;
}

function place(dimensions: readonly Dimension[], unit: LengthUnit, at: (mm: number) => number) {
  const placed: Placed[] = [];
  let out = 6;
  for (const level of [0, 1] as const) {
    const rows: number[] = [];
    const line = out;
    for (const dimension of dimensions.filter((one) => one.level === level)) {
      const text = marked(dimension.to - dimension.from, unit);
      const middle = (at(dimension.from) + at(dimension.to)) / 2;
      const half = (text.length * LETTER) / 2 + 1;
      let row = rows.findIndex((end) => end <= middle - half);
      if (row < 0) row = rows.length;
      rows[row] = middle + half;
      placed.push({ dimension, text, middle, line, figure: line + 4 + row * ROW });
    }
    if (rows.length > 0) out = line + 4 + rows.length * ROW + 4;
  }
  return { placed, deep: out };
}

/** A sketch as it is drawn: scaled, with its lengths written in this unit. */
export function pictureOf(sketch: Sketch, unit: LengthUnit): Picture {
  const points = sketch.shapes.flatMap((shape) => shape.points);
  const [x0, y0] = [Math.min(...points.map(([x]) => x)), Math.min(...points.map(([, y]) => y))];
  const [x1, y1] = [Math.max(...points.map(([x]) => x)), Math.max(...points.map(([, y]) => y))];
  const of = (side: Dimension['side']) => sketch.dimensions.filter((one) => one.side === side);
  // How deep the rows at the left are depends on the scale, and the scale on what they leave: the first guess is near.
  let scale = Math.min((WIDTH - 2 * EDGE - 40) / (x1 - x0), TALLEST / (y1 - y0));
  const left = () => place(of('left'), unit, (mm) => (mm - y0) * scale);
  scale = Math.min((WIDTH - 2 * EDGE - left().deep) / (x1 - x0), TALLEST / (y1 - y0));
  const [beside, above] = [left(), place(of('top'), unit, (mm) => (mm - x0) * scale)];
  const spare = (WIDTH - 2 * EDGE - beside.deep - (x1 - x0) * scale) / 2;
  const [ox, oy] = [EDGE + Math.max(0, spare) + beside.deep, EDGE + above.deep];
  const put = ([x, y]: SketchPoint): SketchPoint => [ox + (x - x0) * scale, oy + (y - y0) * scale];

  const labels = sketch.shapes.flatMap((shape) => labelOf(shape, put));
  const figures: Words[] = [
    ...above.placed.map(({ text, middle, figure }) => ({ x: ox + middle, y: oy - figure, text, turned: false })),
    ...beside.placed.map(({ text, middle, figure }) => ({
      x: ox - figure,
      y: oy + middle,
      text,
      turned: true,
    })),
  ];
  const lines = [
    ...above.placed.map((one) => across(one, (mm, out) => [ox + (mm - x0) * scale, oy - out])),
    ...beside.placed.map((one) => across(one, (mm, out) => [ox - out, oy + (mm - y0) * scale])),
  ];
  if (sketch.aslant) {
    const [from, to] = [put(sketch.aslant.from), put(sketch.aslant.to)];
    lines.push(`M${pair(from)}L${pair(to)}`);
    figures.push({ x: to[0] - 12, y: to[1] - 4, text: marked(sketch.aslant.mm, unit), turned: false });
  }
  return {
    title: sketch.title,
    width: WIDTH,
    height: Math.ceil(oy + (y1 - y0) * scale + EDGE),
    shapes: sketch.shapes.map(({ look, points: corners }) => ({
      look,
      d: `M${corners.map((one) => pair(put(one))).join('L')}${look === 'fold' ? '' : 'Z'}`,
    })),
    lines: lines.join(''),
    figures,
    labels,
    words: wordsOf(sketch, unit),
  };
}

const short = (value: number): string => String(Number(value.toFixed(1)));
const pair = ([x, y]: SketchPoint): string => `${short(x)} ${short(y)}`;

function wordsOf({ title, dimensions, aslant }: Sketch, unit: LengthUnit): string {
  const of = (side: Dimension['side'], level: 0 | 1) =>
    dimensions.filter((one) => one.side === side && one.level === level).map(({ from, to }) => marked(to - from, unit));
  const said = (['top', 'left'] as const).flatMap((side) => {
    const [parts, whole] = [of(side, 0), of(side, 1)];
    if (parts.length + whole.length === 0) return [];
    const way = side === 'top' ? 'From left to right' : 'From top to bottom';
    const all = whole.length > 0 ? `${parts.length > 0 ? '; outside that ' : ''}${whole.join(', ')}` : '';
    return [`${way}: ${parts.join(', ')}${all} ${unit}.`];
  });
  const slant = aslant ? ` Between board and cut: ${marked(aslant.mm, unit)} ${unit}.` : '';
  return `${title}, to scale. ${said.join(' ')}${slant}`;
}

/** A dimension line, a tick at each end, and a thread to a figure that had to move outwards. */
function across(
  { dimension: { from, to }, line, figure }: Placed,
  at: (mm: number, out: number) => SketchPoint,
): string {
  const tick = (mm: number) => `M${pair(at(mm, line - 4))}L${pair(at(mm, line + 4))}`;
  const middle = (from + to) / 2;
  const thread = figure > line + 4 ? `M${pair(at(middle, line))}L${pair(at(middle, figure - 1))}` : '';
  return `${tick(from)}${tick(to)}M${pair(at(from, line))}L${pair(at(to, line))}${thread}`;
}

/** A label in the middle of its shape, upright where it fits, turned where it fits so, else left to the table. */
function labelOf({ label, points }: SketchShape, put: (point: SketchPoint) => SketchPoint): Words[] {
  if (label === undefined) return [];
  const [[x0, y0], [x1, y1]] = [put(points[0]!), put(points[2]!)];
  const [wide, high, long] = [x1 - x0, y1 - y0, label.length * LETTER];
  const turned = wide < long;
  if (turned ? high < long || wide < 12 : high < 14) return [];
  // The middle of the letters, not their foot, on the middle of the shape.
  const [x, y] = [(x0 + x1) / 2, (y0 + y1) / 2];
  return [{ x: turned ? x + 4 : x, y: turned ? y : y + 4, text: label, turned }];
}
