/**
 * Marks on a plate: paths with a material, put together from points. One line weight for what has an edge and a thinner one
 * for what lies on it; materials are classes, so that a plate is right in light, dark and print.
 */
import { flat, type P2, type P3 } from './space';

/**
 * paper, plain back of paper and hands, board, its cut edge, wet glue, a thin coat of it that lets through what it lies on,
 * glass or film, water, ink; `none` leaves it open.
 * What each looks like stands in styles/draw.css.
 */
export type Fill =
  | 'paper'
  | 'skin'
  | 'board'
  | 'edge'
  | 'glue'
  | 'thin-glue'
  | 'glass'
  | 'water'
  | 'ink'
  | 'green'
  | 'ground'
  | 'none';
/** edge, thin line, no line, way that something moves, dots of a printed face, dashed (what is out of sight), light on what is wet, tick or cross */
export type Line = 'line' | 'thin' | 'bare' | 'way' | 'dots' | 'hid' | 'shine' | 'sign';

export interface Mark {
  readonly svg: string;
  /** points that have to be in view */
  readonly reach: readonly P2[];
}

const FILLS: Readonly<Record<Fill, string>> = {
  paper: 'p',
  skin: 'h',
  board: 'b',
  edge: 'e',
  glue: 'w',
  'thin-glue': 'y',
  glass: 'g',
  water: 'u',
  ink: 'k',
  green: 'a',
  ground: 'o',
  none: '',
};
const LINES: Readonly<Record<Line, string>> = {
  line: 'l',
  thin: 't',
  bare: '',
  way: 'm',
  dots: 'd',
  hid: 'i',
  shine: 's',
  sign: 'x',
};

const short = (value: number) => String(Math.round(value * 10) / 10);
export const pair = ([x, y]: P2): string => `${short(x)} ${short(y)}`;
const kind = (line: Line, fill: Fill) => `${LINES[line]} ${FILLS[fill]}`.trim();

/** Points as the inside of a `d`, each as a step from the last, which is shorter. */
export function trace(points: readonly P2[], closed: boolean): string {
  const round = (value: number) => Math.round(value * 10) / 10;
  let [x, y] = [0, 0];
  const steps = points.map(([px, py], i) => {
    const [dx, dy] = [round(px - x), round(py - y)];
    [x, y] = [x + dx, y + dy];
    return `${i === 0 ? 'M' : i === 1 ? 'l' : ''}${i > 1 && dx >= 0 ? ' ' : ''}${short(dx)}${dy < 0 ? '' : ' '}${short(dy)}`;
  });
  return steps.join('') + (closed ? 'z' : '');
}

export const shape2 = (points: readonly P2[], fill: Fill, line: Line = 'line'): Mark => ({
  svg: `<path class="${kind(line, fill)}" d="${trace(points, true)}"/>`,
  reach: points,
});
export const line2 = (points: readonly P2[], line: Line = 'line'): Mark => ({
  svg: `<path class="${kind(line, 'none')}" d="${trace(points, false)}"/>`,
  reach: points,
});
/** Several strokes as one path. */
export const strokes2 = (all: readonly (readonly P2[])[], line: Line = 'thin'): Mark => ({
  svg:
    all.length === 0 ? '' : `<path class="${kind(line, 'none')}" d="${all.map((one) => trace(one, false)).join('')}"/>`,
  reach: all.flat(),
});
export const shape = (points: readonly P3[], fill: Fill, line: Line = 'line'): Mark =>
  shape2(points.map(flat), fill, line);
export const line = (points: readonly P3[], kindOf: Line = 'line'): Mark => line2(points.map(flat), kindOf);
export const strokes = (all: readonly (readonly P3[])[], kindOf: Line = 'thin'): Mark =>
  strokes2(
    all.map((one) => one.map(flat)),
    kindOf,
  );
/** A path written out, with points that bound it; two are opposite corners of its box. */
export const path = (d: string, fill: Fill, kindOf: Line, reach: readonly P2[]): Mark => {
  const [a, b] = reach;
  return {
    svg: `<path class="${kind(kindOf, fill)}" d="${d}"/>`,
    reach: a && b && reach.length === 2 ? [a, b, [a[0], b[1]], [b[0], a[1]]] : reach,
  };
};

/** Round dots, all in one path. */
export const dots = (points: readonly P2[]): Mark => ({
  svg: points.length === 0 ? '' : `<path class="d" d="${points.map((p) => `M${pair(p)}h0`).join('')}"/>`,
  reach: points,
});

/** A word on a plate, in the text's own face. */
export const word = ([x, y]: P2, text: string, anchor: 'start' | 'middle' | 'end' = 'start'): Mark => {
  const wide = text.length * 6.2;
  const from = anchor === 'start' ? x : anchor === 'end' ? x - wide : x - wide / 2;
  return {
    svg: `<text x="${short(x)}" y="${short(y)}"${anchor === 'start' ? '' : ` text-anchor="${anchor}"`}>${text.replaceAll('&', '&amp;').replaceAll('<', '&lt;')}</text>`,
    reach: [
      [from, y - 10],
      [from + wide, y + 3],
    ],
  };
};

/** What is light in the dark, and has its lines dark there: a hand, a piece of iron. */
export const standsOff = ({ svg, reach }: Mark): Mark => ({ svg: `<g class="q">${svg}</g>`, reach });

/** A thin line from a point of a thing, which it marks, to the word for it. */
export const leader = ([x, y]: P2, end: P2): Mark => ({
  svg: `<g class="n"><path class="k" d="M${short(x - 2)} ${short(y)}a2 2 0 0 1 4 0 2 2 0 0 1-4 0z"/>${line2([[x, y], end], 'thin').svg}</g>`,
  reach: [[x - 2, y], end],
});

export const all = (...marks: readonly (Mark | undefined | false)[]): Mark => {
  const kept = marks.filter((one): one is Mark => Boolean(one));
  return { svg: kept.map(({ svg }) => svg).join(''), reach: kept.flatMap(({ reach }) => reach) };
};

/** Turned by degrees about its own origin, made larger, then put at a place. `mirrored`: left for right, before all else. */
export function put(mark: Mark, [x, y]: P2, degrees = 0, { mirrored = false, scale = 1 } = {}): Mark {
  const [c, s] = [Math.cos((degrees * Math.PI) / 180) * scale, Math.sin((degrees * Math.PI) / 180) * scale];
  const side = mirrored ? -1 : 1;
  const turn = degrees === 0 ? '' : `rotate(${short(degrees)})`;
  const size = mirrored || scale !== 1 ? `scale(${side * scale} ${scale})` : '';
  return {
    svg: `<g transform="translate(${short(x)} ${short(y)})${turn}${size}">${mark.svg}</g>`,
    reach: mark.reach.map(([px, py]) => [x + side * px * c - py * s, y + side * px * s + py * c]),
  };
}
export const putAt = (mark: Mark, place: P3, degrees = 0, more: { mirrored?: boolean; scale?: number } = {}): Mark =>
  put(mark, flat(place), degrees, more);

/** The way that something moves: a stroke with a head. Straight, or bent by so much to its left. */
export function way2(from: P2, to: P2, bend = 0): Mark {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const long = Math.hypot(dx, dy);
  const control: P2 = [(from[0] + to[0]) / 2 + (dy / long) * bend, (from[1] + to[1]) / 2 - (dx / long) * bend];
  const angle = Math.atan2(to[1] - control[1], to[0] - control[0]);
  const barb = (turn: number): P2 => [to[0] - 6 * Math.cos(angle + turn), to[1] - 6 * Math.sin(angle + turn)];
  return path(
    `M${pair(from)}Q${pair(control)} ${pair(to)}M${pair(barb(0.5))}L${pair(to)}L${pair(barb(-0.5))}`,
    'none',
    'way',
    [from, to, control],
  );
}
export const way = (from: P3, to: P3, bend = 0): Mark => way2(flat(from), flat(to), bend);

/** Whether what is seen is as it should be: a tick or a cross in a ring, told apart by their shape. */
export const sign = (at: P2, says: 'good' | 'fault'): Mark =>
  put(
    all(
      path('M-9 0A9 9 0 1 1 9 0A9 9 0 1 1-9 0Z', 'paper', 'line', [
        [-9, -9],
        [9, 9],
      ]),
      path(says === 'good' ? 'M-4.500 0.500L-1 4L5-4' : 'M-4-4L4 4M4-4L-4 4', 'none', 'sign', []),
    ),
    at,
  );

/** A finished drawing: what stands in the box, and how large the box is. */
export interface Drawing {
  readonly wide: number;
  readonly high: number;
  readonly body: string;
}

/** A drawing that is a little too large for its box is made smaller; by more than this its line would look thin beside others. */
const SMALLEST = 0.8;

/** In the middle of a box of its own; all frames of a movement in one box, so that what rests stays where it is. */
export function framed(frames: readonly Mark[], wide: number, high: number, margin = 4): Drawing[] {
  const reach = frames.flatMap((mark) => mark.reach);
  const [xs, ys] = [reach.map(([x]) => x), reach.map(([, y]) => y)];
  const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const scale = Math.min(1, (wide - 2 * margin) / (x1 - x0), (high - 2 * margin) / (y1 - y0));
  if (scale < SMALLEST)
    throw new Error(`a drawing of ${short(x1 - x0)} × ${short(y1 - y0)} is too large for its box of ${wide} × ${high}`);
  const shift: P2 = [(wide - (x1 + x0) * scale) / 2, (high - (y1 + y0) * scale) / 2];
  return frames.map((mark) => ({
    wide,
    high,
    body: put(mark, shift, 0, { scale: Math.round(scale * 1000) / 1000 }).svg,
  }));
}
