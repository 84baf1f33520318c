/** A covered board's edges and corners, from inside. */
import { grip } from './hands';
import { all, dots, line, put, putAt, shape, sign, way, type Mark } from './ink';
import { bent, block, type DrawnFace } from './sheets';
import { folder, knife } from './tools';
import { between, flat, type P3 } from './space';

const [W, D, H] = [104, 68, 7] as const;
/** how far the cover stands out round the board */
const T = 17;
/** the cut leaves so much beyond the point of the board: one and a half times its thickness */
const LEFT = H * 1.5;

/** The cover with its good side down, wet side up, and the board on it; corners cut or not. */
function cover(cut: boolean, flaps: { head?: boolean; tail?: boolean; fore?: boolean } = {}): Mark {
  const c = T - LEFT / Math.SQRT2;
  const [x0, x1, y0, y1] = [-T, W + T, -T, D + T];
  const corners: P3[] = cut
    ? [
        [x0 + c, y0, 0],
        [x1 - c, y0, 0],
        [x1, y0 + c, 0],
        [x1, y1 - c, 0],
        [x1 - c, y1, 0],
        [x0 + c, y1, 0],
        [x0, y1 - c, 0],
        [x0, y0 + c, 0],
      ]
    : [
        [x0, y0, 0],
        [x1, y0, 0],
        [x1, y1, 0],
        [x0, y1, 0],
      ];
  const gone = corners.map(([x, y, z]): P3 => [
    flaps.fore ? Math.min(x, W) : x,
    flaps.tail ? Math.max(y, 0) : flaps.head ? Math.min(y, D) : y,
    z,
  ]);
  return all(shape(gone, 'glue'), block([0, 0, 0], W, D, H));
}

/** A strip of cover that has been turned over on to the board: its good side is up. */
function turned(side: 'head' | 'tail' | 'fore', out = 4): Mark {
  const c = 8;
  const z = H + 0.6;
  const points: P3[] =
    side === 'tail'
      ? [
          [-out, 0, z],
          [W + out, 0, z],
          [W - c, T - 5, z],
          [c, T - 5, z],
        ]
      : side === 'head'
        ? [
            [-out, D, z],
            [W + out, D, z],
            [W - c, D - T + 5, z],
            [c, D - T + 5, z],
          ]
        : [
            [W, 0, z],
            [W, D, z],
            [W - T + 5, D - T + 5, z],
            [W - T + 5, T - 5, z],
          ];
  return all(shape(points, 'paper'), speckle(points));
}
const speckle = (points: readonly P3[]): Mark => {
  const [a, b, c, d] = points as [P3, P3, P3, P3];
  const mix = (p: P3, q: P3, t: number): P3 => [
    p[0] + (q[0] - p[0]) * t,
    p[1] + (q[1] - p[1]) * t,
    p[2] + (q[2] - p[2]) * t,
  ];
  return all(
    dotsAt(
      between(0.06, 0.94, Math.round(Math.hypot(b[0] - a[0], b[1] - a[1]) / 9)).map((t, i) =>
        mix(mix(a, b, t), mix(d, c, t), i % 2 ? 0.68 : 0.3),
      ),
    ),
  );
};
const dotsAt = (points: readonly P3[]): Mark => dots(points.map(flat));

/** A flap half way over: it goes up the edge of the board and bends in above it. */
function standing(side: 'tail' | 'fore', face: DrawnFace = 'glued'): Mark {
  const over = [
    [1, 0],
    [1, H + 1],
    [-1, H + 6],
    [-5, H + 9],
    [-10, H + 10],
    [-14, H + 9],
  ] as const;
  return side === 'tail'
    ? bent(over.map(([out, high]): P3 => [6, -out, high]).reverse(), [W - 12, 0, 0], { top: 'printed', under: face })
    : bent(over.map(([out, high]): P3 => [W + out, 6, high]).reverse(), [0, D - 12, 0], {
        top: 'printed',
        under: face,
      });
}

const held = (tool: Mark): Mark => all(put(tool, [0, 0], 30), put(grip, [28, -48], 22));

/**
 * The corner is cut off aslant, one and a half boards from the point. Drawn from near by: only the corner, the cut half made,
 * and the blade in it.
 */
export const mitre = (): Mark => {
  const [w, d, h, out] = [104, 78, 12, 36];
  const left = -16;
  // a line at 45 degrees whose distance from the point of the board is one and a half of its thickness
  const c = out - h * 1.5 * Math.SQRT2;
  const [from, to]: [P3, P3] = [
    [w + out - c - out, -out, 0],
    [w + out, c, 0],
  ];
  const on = (t: number): P3 => [from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t, 0];
  const cutTo = on(0.74);
  const fallen = (q: P3): P3 => [q[0] + 7, q[1] - 12, 0];
  return all(
    shape([[left, -out, 0], from, cutTo, to, [w + out, d, 0], [left, d, 0]], 'glue'),
    // what is being cut off: it hangs on beyond the blade, and has turned away before it
    shape([cutTo, to, [w + out, -out * 0.4, 0], [w + out * 0.75, -out * 0.55, 0]], 'glue'),
    shape(
      [from, cutTo, [w + out * 0.75, -out * 0.55, 0], [w + out, -out, 0]].map((q) => fallen(q as P3)),
      'glue',
    ),
    line([cutTo, to], 'hid'),
    block([left, 0, 0], w - left, d, h),
    putAt(all(put(knife, [0, 0], 24), put(grip, [34, -74], 8)), cutTo),
  );
};

/** Head and tail first: the flap is drawn over the edge and on to the board. */
export const turnHead = (): Mark =>
  all(
    cover(true, { head: true }),
    turned('head'),
    cover2Tail(),
    putAt(held(folder), [50, 6, H + 10]),
    way([14, -26, 0], [14, 8, H + 8], 12),
  );
const cover2Tail = (): Mark => standing('tail');

/**
 * The little ear at the corner is pressed down and in with a folder, so that no raw edge shows. Drawn from near by: only the
 * corner, the near edge of the cover turned over the board already, the right one not yet.
 */
export const nipCorner = (): Mark => {
  const [w, d, h] = [96, 76, 15];
  const [left, deep, fore] = [-20, 30, 34];
  return all(
    shape(
      [
        [w, 13, 0],
        [w + fore, 30, 0],
        [w + fore, d, 0],
        [w, d, 0],
      ],
      'glue',
    ),
    block([left, 0, 0], w - left, d, h),
    // the near side is covered, and on the board lies what has been turned over
    shape(
      [
        [left, 0, 0],
        [w, 0, 0],
        [w, 0, h],
        [left, 0, h],
      ],
      'paper',
    ),
    dotsAt(between(left + 8, w - 6, 11).map((x, i): P3 => [x, 0, i % 2 ? 10 : 5])),
    shape(
      [
        [left, 0, h],
        [w, 0, h],
        [w, deep - 8, h],
        [w - 10, deep, h],
        [left, deep, h],
      ],
      'paper',
    ),
    dotsAt(
      between(left + 6, w - 8, 12).flatMap((x, i): P3[] => [
        [x, i % 2 ? 6 : 11, h],
        [x - 2, i % 2 ? 18 : 24, h],
      ]),
    ),
    // the ear: paper that stands out beyond the board's corner
    shape(
      [
        [w, 0, h],
        [w + 17, 2, h - 4],
        [w + 15, 12, h - 3],
        [w, deep - 8, h],
      ],
      'paper',
    ),
    shape(
      [
        [w, 0, h],
        [w, 0, 1],
        [w + 14, 2, 3],
        [w + 17, 2, h - 4],
      ],
      'paper',
    ),
    dotsAt([
      [w + 6, 5, h - 1],
      [w + 5, 13, h - 1],
      [w + 6, 1, 8],
    ]),
    way([w + 48, -34, 2], [w + 20, -6, 4], 8),
    putAt(all(put(folder, [0, 0], 24), put(grip, [26, -56], 16)), [w + 14, 5, h - 2]),
  );
};

/** Then the other two sides. */
export const turnFore = (): Mark =>
  all(
    cover(true, { head: true, tail: true, fore: true }),
    turned('head'),
    turned('tail'),
    standing('fore'),
    putAt(held(folder), [W - 4, 26, H + 16]),
    way([W + 34, 14, 0], [W + 4, 14, H + 26], -12),
  );

/** A finished corner: turned edges that meet in a clean slant. */
export const cornerDone = (): Mark =>
  all(
    block([0, 0, 0], W, D, H, { sides: 'paper' }),
    turned('head', 0),
    turned('tail', 0),
    turned('fore'),
    shape(
      [
        [0, 0, H + 0.6],
        [0, D, H + 0.6],
        [T - 5, D - T + 5, H + 0.6],
        [T - 5, T - 5, H + 0.6],
      ],
      'paper',
    ),
    speckle([
      [0, 0, H + 0.6],
      [0, D, H + 0.6],
      [T - 5, D - T + 5, H + 0.6],
      [T - 5, T - 5, H + 0.6],
    ]),
    sides(),
    sign([8, -44], 'good'),
  );
/** The printed face round the edges of the board. */
const sides = (): Mark =>
  dotsAt([...between(4, W - 4, 11).map((x): P3 => [x, 0, 3]), ...between(5, D - 5, 7).map((y): P3 => [W, y, 3])]);
