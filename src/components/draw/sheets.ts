/** Sheets, boards and blocks: what is flat, bent or square. */
import { all, dots, shape, shape2, strokes, strokes2, standsOff, type Fill, type Mark } from './ink';
import { between, common, flat, hull, levelFace, nearness, plus, ring, turning, type P2, type P3 } from './space';

/** What a face of a sheet shows: nothing, its printed side, wet glue with or without its shine, clear film, old newsprint, a page of a book. */
export type DrawnFace =
  | 'plain'
  | 'printed'
  | 'glued'
  | 'wet'
  | 'film'
  | 'news'
  | 'page'
  | 'cloth'
  | 'tissue'
  | 'blotter';
const FILL: Readonly<Record<DrawnFace, Fill>> = {
  plain: 'paper',
  printed: 'paper',
  glued: 'glue',
  wet: 'glue',
  film: 'glass',
  news: 'ground',
  page: 'paper',
  cloth: 'green',
  tissue: 'glass',
  blotter: 'edge',
};

interface Looks {
  /** the side seen where the sheet lies flat, and the other */
  readonly top?: DrawnFace;
  readonly under?: DrawnFace;
}

/**
 * A sheet: a curve, moved along a straight line. It is cut where it turns its other side to the reader, and the parts are
 * put down from the farthest to the nearest, so that what lies behind is hidden.
 */
export function bent(curve: readonly P3[], sweep: P3, { top = 'plain', under = 'plain' }: Looks = {}): Mark {
  const sides = curve.slice(1).map((end, i) => {
    const start = curve[i]!;
    return turning([start, end, plus(end, sweep), plus(start, sweep)].map(flat)) < 0;
  });
  const runs: { from: number; to: number; above: boolean }[] = [];
  sides.forEach((above, i) => {
    const last = runs.at(-1);
    if (last?.above === above) last.to = i + 1;
    else runs.push({ from: i, to: i + 1, above });
  });
  const lengths = curve.slice(1).map((end, i) => Math.hypot(...end.map((value, axis) => value - curve[i]![axis]!)));
  const near = (run: { from: number; to: number }) => {
    const points = curve
      .slice(run.from, run.to + 1)
      .map((p) => nearness(plus(p, [sweep[0] / 2, sweep[1] / 2, sweep[2] / 2])));
    return points.reduce((sum, value) => sum + value, 0) / points.length;
  };
  return all(
    ...runs
      .sort((a, b) => near(a) - near(b))
      .map((run) => {
        const edge = curve.slice(run.from, run.to + 1);
        const face = run.above ? top : under;
        const before = lengths.slice(0, run.from).reduce((sum, one) => sum + one, 0);
        return all(
          shape([...edge, ...edge.map((p) => plus(p, sweep)).reverse()], FILL[face]),
          lying(face, edge, lengths.slice(run.from, run.to), sweep, before),
        );
      }),
  );
}

/** What lies on a face, in rows along the sheet. */
function lying(face: DrawnFace, edge: readonly P3[], lengths: readonly number[], sweep: P3, before: number): Mark {
  if (face === 'plain' || face === 'film' || face === 'wet') return all();
  const long = lengths.reduce((sum, one) => sum + one, 0);
  const deep = Math.hypot(...sweep);
  const on = (u: number, v: number): P3 => {
    let left = u;
    let i = 0;
    while (i < lengths.length - 1 && left > lengths[i]!) left -= lengths[i++]!;
    const [a, b] = [edge[i]!, edge[i + 1]!];
    const t = Math.min(1, left / lengths[i]!);
    return [0, 1, 2].map((axis) => a[axis]! + (b[axis]! - a[axis]!) * t + sweep[axis]! * v) as unknown as P3;
  };
  const grid = (across: number, along: number) => {
    const found: { u: number; v: number; odd: boolean }[] = [];
    const rows = Math.max(1, Math.round(deep / along));
    const first = Math.ceil((before + across / 4) / across) * across;
    for (let column = first; column < before + long - across / 5; column += across)
      for (let row = 0; row < rows; row += 1) {
        const odd = Math.round(column / across) % 2 === 1;
        const v = (row + (odd ? 0.72 : 0.28)) / rows;
        if (v > 0.04 && v < 0.96) found.push({ u: column - before, v, odd });
      }
    return found;
  };
  if (face === 'printed') return dots(grid(9, 13).map(({ u, v }) => flat(on(u, v))));
  if (face === 'glued')
    return strokes(
      grid(15, 17).map(({ u, v, odd }) => [on(Math.max(0, u - (odd ? 5 : 3)), v), on(Math.min(long, u + 4), v)]),
      'shine',
    );
  if (face === 'cloth' || face === 'blotter')
    return strokes(
      grid(6, 11).map(({ u, v, odd }) =>
        odd ? [on(u - 1.5, v), on(Math.min(long, u + 1.5), v)] : [on(u, v - 0.02), on(u, v + 0.02)],
      ),
      'thin',
    );
  // long fibres, each its own way
  if (face === 'tissue')
    return strokes(
      grid(12, 12).map(({ u, v }, i) => {
        const turn = i * 2.4;
        const [across, along] = [6 * Math.cos(turn), (6 * Math.sin(turn)) / deep];
        const within = (value: number, most: number) => Math.min(most, Math.max(0, value));
        return [on(within(u - across, long), within(v - along, 1)), on(within(u + across, long), within(v + along, 1))];
      }),
      'thin',
    );
  const lines = face === 'news' ? newsprint(long, deep) : bookPage(deep);
  return strokes(
    lines.map(({ from, to, v }) => [on(from * long, v), on(to * long, v)]),
    'thin',
  );
}

/** Lines of print on a face: where each begins and ends along it, and how far across it lies, as shares. */
interface PrintLine {
  readonly from: number;
  readonly to: number;
  readonly v: number;
}
const bookPage = (deep: number): PrintLine[] =>
  between(0.1, 0.9, Math.floor(deep / 7)).flatMap((v) =>
    [0.06, 0.38, 0.7].map((u, i) => ({ from: u, to: u + (i === 1 ? 0.24 : 0.22), v })),
  );
/** Narrow columns, the last line of a piece short, and at the head a line of large type as two strokes. */
function newsprint(long: number, deep: number): PrintLine[] {
  const columns = Math.max(3, Math.round(long / 27));
  const wide = (1 - 10 / long) / columns;
  const rows = Math.floor((deep - 14) / 5);
  return [
    ...[deep - 5, deep - 8].map((y) => ({ from: 5 / long, to: 0.62, v: y / deep })),
    ...Array.from({ length: columns }, (_, column) => {
      const from = 5 / long + column * wide;
      return between(5, deep - 13, rows).map((y, row) => ({
        from,
        to: from + (wide - 5 / long) * ((row + 2 * column) % 6 === 0 ? 0.55 : 1),
        v: y / deep,
      }));
    }).flat(),
  ];
}

/** A flat sheet of w by d, its near left corner here. */
export const sheet = ([x, y, z]: P3, w: number, d: number, top: DrawnFace = 'plain'): Mark =>
  bent(
    [
      [x, y, z],
      [x + w, y, z],
    ],
    [0, d, 0],
    { top },
  );

/** Newsprint under a work of w by d whose near left corner is here, standing out by `out` all round; under the work no line is drawn. */
export function waste([x, y, z]: P3, w: number, d: number, out: number): Mark {
  const [long, deep] = [w + 2 * out, d + 2 * out];
  const lines = newsprint(long, deep).flatMap(({ from, to, v }): P3[][] => {
    const [a, b, row] = [x - out + from * long, x - out + to * long, y - out + v * deep];
    const seen: (readonly [number, number])[] =
      row < y || row > y + d
        ? [[a, b]]
        : [
            [a, Math.min(b, x)],
            [Math.max(a, x + w), b],
          ];
    return seen
      .filter(([start, end]) => end - start > 1)
      .map(([start, end]): P3[] => [
        [start, row, z],
        [end, row, z],
      ]);
  });
  const corners = levelFace([x - out, y - out, z], long, deep);
  return all(shape(corners, FILL.news), strokes(lines));
}

/**
 * A stretch of sheet that lies level for a while and then bends up (or down): its heading turns evenly until it has turned by
 * `degrees`. Runs to the right from here.
 */
export function curledStrip([x, y, z]: P3, level: number, long: number, degrees: number, count = 14): P3[] {
  const points: P3[] = [[x, y, z]];
  if (level > 0) points.push([x + level, y, z]);
  const piece = (long - level) / count;
  let [px, pz] = [x + level, z];
  for (let i = 0; i < count; i += 1) {
    const angle = ((degrees * (i + 0.5)) / count) * (Math.PI / 180);
    [px, pz] = [px + piece * Math.cos(angle), pz + piece * Math.sin(angle)];
    points.push([px, y, pz]);
  }
  return points;
}

/** The same to the left: runs to the left from here, and is given from its far end, so that its top stays its top. */
export const curlLeft = ([x, y, z]: P3, level: number, long: number, degrees: number, count = 14): P3[] =>
  curledStrip([0, y, z], level, long, degrees, count)
    .map(([px, py, pz]): P3 => [x - px, py, pz])
    .reverse();

/** A pane of glass, with the light on it; at its edges, where one looks into it, it is green. */
export const pane = ([x, y, z]: P3, w: number, d: number): Mark =>
  all(
    block([x, y, z], w, d, 4, { top: 'glass', sides: 'green' }),
    strokes([
      [
        [x + 5, y + 14, z + 4],
        [x + 12, y + d - 10, z + 4],
      ],
      [
        [x + w - 15, y + 8, z + 4],
        [x + w - 6, y + d - 18, z + 4],
      ],
      [
        [x + w - 10, y + 8, z + 4],
        [x + w - 6, y + d - 40, z + 4],
      ],
    ]),
  );

/**
 * A coat on a level face, clipped to the face. `reached`: 0 at the middle, 1 over the edges. A full one lies in a pool with a few
 * lights on it; a thin one lets through what it lies on, has no lights, and ends where the bristles ran dry.
 */
export function coat([x, y, z]: P3, w: number, d: number, reached: number, how: 'full' | 'thin' = 'full'): Mark {
  const face = levelFace([x, y, z], w, d).map(flat);
  if (reached >= 1)
    return all(
      shape2(face, 'glue'),
      lying(
        'glued',
        [
          [x, y, z],
          [x + w, y, z],
        ],
        [w],
        [0, d, 0],
        0,
      ),
    );
  const [cx, cy] = [x + w / 2, y + d / 2];
  const rim = ring([0, 0, 0], 1, 'level', 28).map(([px, py], i): P3 => {
    const rough = 1 + 0.05 * Math.sin(i * 2.4);
    return [cx + px * w * 0.68 * reached * rough, cy + py * d * 0.68 * reached * rough, z];
  });
  if (how === 'thin') return shape(combed([cx, cy, z], w * 0.66 * reached, d * 0.66 * reached), 'thin-glue', 'thin');
  const pool = common(rim.map(flat), face);
  const half = w * 0.3 * reached;
  const marks = between(-0.5, 0.5, 4).map((v): P3[] => [
    [cx - half, cy + v * d * reached * 1.1, z],
    [cx + half, cy + v * d * reached * 1.1, z],
  ]);
  return all(shape2(pool, 'glue', 'thin'), strokes(reached > 0.2 ? marks : [], 'shine'));
}

/** A round patch whose left and right ends are combed: row by row a bristle reached a little farther, or less far. */
function combed([cx, cy, z]: P3, half: number, deep: number): P3[] {
  const rows = between(-1, 1, 15);
  const end = (v: number, i: number, side: 1 | -1): P3[] => {
    const far = half * (Math.sqrt(1 - 0.86 * v * v) + 0.07 * ((i * 5 + (side === 1 ? 2 : 0)) % 4) - 0.16);
    return [-1, 1].map((edge): P3 => [cx + side * far, cy + deep * (v + edge * 0.05), z]);
  };
  return [...rows.flatMap((v, i) => end(v, i, 1)), ...rows.flatMap((v, i) => end(v, i, -1)).reverse()];
}

/** A square solid. Its top may show what a sheet shows. */
export function block(
  [x, y, z]: P3,
  w: number,
  d: number,
  h: number,
  { top = 'board', sides = 'edge', face }: { top?: Fill; sides?: Fill; face?: DrawnFace } = {},
): Mark {
  const lid = levelFace([x, y, z + h], w, d);
  return all(
    shape(
      [
        [x, y, z],
        [x + w, y, z],
        [x + w, y, z + h],
        [x, y, z + h],
      ],
      sides,
    ),
    shape(
      [
        [x + w, y, z],
        [x + w, y + d, z],
        [x + w, y + d, z + h],
        [x + w, y, z + h],
      ],
      sides,
    ),
    shape(lid, top),
    face && lying(face, [lid[0]!, lid[1]!], [w], [0, d, 0], 0),
  );
}

/** A book block lying on its side, spine to the left: its leaves show at the front and at the fore-edge. */
export function bookBlock([x, y, z]: P3, w: number, d: number, h: number): Mark {
  const leaves = between(0.2, 0.8, Math.max(2, Math.round(h / 4)));
  return all(
    block([x, y, z], w, d, h, { top: 'paper', sides: 'paper' }),
    strokes(
      leaves.map((v) => [
        [x, y, z + h * v],
        [x + w, y, z + h * v],
        [x + w, y + d, z + h * v],
      ]),
    ),
  );
}

/** A round pot with some liquid in it; `full` from 0 to 1. */
export function pot(
  [x, y, z]: P3,
  radius: number,
  h: number,
  { liquid = 'glue', full = 0.7, wall = 'paper' }: { liquid?: Fill; full?: number; wall?: Fill } = {},
): Mark {
  const [foot, rim] = [ring([x, y, z], radius * 0.94).map(flat), ring([x, y, z + h], radius).map(flat)];
  const pool = common(ring([x, y, z + h * full], radius * 0.97).map(flat), rim);
  return all(
    shape2(hull([...foot, ...rim]), wall),
    shape2(rim, 'ground'),
    full > 0 && shape2(pool, liquid, 'thin'),
    line2Ring(rim),
  );
}
const line2Ring = (rim: readonly P2[]) => strokes2([[...rim, rim[0]!]], 'line');

/** A weight: an iron block with a knob. */
export const weight = ([x, y, z]: P3, w = 46, d = 30, h = 20): Mark =>
  standsOff(
    all(
      block([x, y, z], w, d, h, { top: 'ink', sides: 'ink' }),
      strokes(
        [
          [
            [x, y, z + h],
            [x + w, y, z + h],
            [x + w, y + d, z + h],
          ],
          [
            [x + w, y, z + h],
            [x + w, y, z],
          ],
        ],
        'shine',
      ),
      shape2(
        hull([...ring([x + w / 2, y + d / 2, z + h], 4), ...ring([x + w / 2, y + d / 2, z + h + 7], 7)].map(flat)),
        'ink',
        'shine',
      ),
      shape(ring([x + w / 2, y + d / 2, z + h + 7], 7), 'ink', 'shine'),
    ),
  );
