/** What each way to fail looks like, on the same sheet and board. */
import { TOOL_IN_HAND } from './apply';
import { pinch } from './hands';
import { all, dots, line, putAt, shape, strokes, way, type Mark } from './ink';
import { bent, block, curledStrip, sheet, waste } from './sheets';
import { between, flat, plus, type P3 } from './space';

const [W, D, H] = [104, 68, 7] as const;
const board = (): Mark => block([0, 0, 0], W, D, H);
/** A number between -1 and 1 for each i, the same each time. */
const chance = (i: number, salt = 1): number => {
  const mixed =
    Math.imul(Math.imul(Math.round(i) + 11, 0x9e3779b1) ^ Math.imul(salt + 7, 0x85ebca6b), 0xc2b2ae35) >>> 8;
  return (2 * mixed) / 0xffffff - 1;
};

/** The wet sheet drags under the brush: it has rucked up before the bristles and stretched behind them. */
export const dragged = (): Mark => {
  const ruck: P3[] = [
    [-4, 0, 0],
    [6, 0, 0],
    ...between(0, 1, 17).map((t): P3 => [8 + 50 * t, 0, Math.abs(Math.sin(t * 3 * Math.PI)) * (10 + 6 * t)]),
    [112, 0, 0],
  ];
  return all(
    waste([0, 0, 0], 112, 74, 24),
    bent(ruck, [0, 74, 0], { top: 'glued', under: 'plain' }),
    putAt(TOOL_IN_HAND['brush-full'], [72, 44, 2]),
    way([92, -14, 0], [44, -14, 0]),
  );
};

/** Lifted wet, it tore: part stays down. */
export const torn = (): Mark => {
  const z = H + 0.5;
  const rip = (
    [
      [66, -9],
      [60, 2],
      [70, 14],
      [62, 24],
      [72, 36],
      [65, 48],
      [74, 60],
      [68, 75],
    ] as const
  ).map(([x, y]): P3 => [x, y, z]);
  const flap = curlLeft2([58, -9, z + 3]);
  const hand = plus(flap[0]!, [0, 34, 0]);
  return all(
    board(),
    shape([...rip, [112, 75, z], [112, -9, z]], 'paper'),
    speck([74, -4, z], 34, 74, 4),
    putAt(pinch.behind, hand, 62),
    bent(flap, [0, 84, 0], { top: 'printed', under: 'glued' }),
    strokes(
      rip.map((p, i): P3[] => [plus(p, [-1, 0, 0]), plus(p, [-5 - (i % 3), 2, 0])]),
      'line',
    ),
    putAt(pinch.front, hand, 62),
  );
};
const curlLeft2 = ([x, y, z]: P3): P3[] =>
  curledStrip([0, y, z], 4, 84, 58)
    .map(([px, py, pz]): P3 => [x - px, py, pz])
    .reverse();
const speck = ([x, y, z]: P3, w: number, d: number, across: number): Mark =>
  dots(
    between(0.1, 0.9, across).flatMap((u, i) =>
      between(i % 2 ? 0.04 : 0.1, i % 2 ? 0.86 : 0.95, 6).map((v) => flat([x + w * u, y + d * v, z])),
    ),
  );

/** Peeled off, it leaves a fuzz of its own fibres on the board. */
export const fibresLeft = (): Mark => {
  const z = H + 0.5;
  const flap = curlLeft2([40, -6, z]).map((p) => p);
  const hand = plus(flap[0]!, [0, 34, 0]);
  const hairs = between(0, 69, 70).map((i): P3[] => {
    const [x, y] = [56 + 26 + 24 * chance(i), D / 2 + 30 * chance(i, 2)];
    return [
      [x, y, z],
      [x + 3 * chance(i, 3), y + 3, z + 3 + 3 * Math.abs(chance(i, 4))],
    ];
  });
  return all(
    board(),
    strokes(
      hairs.map((h) => h.map((p) => [p[0] - 2, p[1], p[2] + 0.4] as P3)),
      'line',
    ),
    strokes(hairs, 'shine'),
    putAt(pinch.behind, hand, 62),
    bent(flap, [0, 80, 0], { top: 'plain', under: 'glued' }),
    putAt(pinch.front, hand, 62),
  );
};

/** The face of the board has come away on the sheet: a pit in the board, its grey on the paper. */
export const faceAway = (): Mark => {
  const z = H + 0.3;
  const blot = (cx: number, cy: number, rx: number, ry: number, salt: number): P3[] =>
    between(0, 2 * Math.PI * 0.95, 16).map((a, i): P3 => [
      cx + rx * Math.cos(a) * (1 + 0.22 * chance(i, salt)),
      cy + ry * Math.sin(a) * (1 + 0.22 * chance(i, salt + 3)),
      z,
    ]);
  const pit = blot(70, 34, 24, 24, 1);
  // the sheet, turned over beside the board: its wet side up, with what it took
  const over: P3[] = blot(0, 0, 24, 24, 1).map(([x, y]): P3 => [-66 - (x - 0), y + 34, 0.5]);
  return all(
    sheet([-126, -4, 0], 112, 76, 'glued'),
    shape(over, 'board'),
    strokes(
      between(0, 11, 12).map((i): P3[] => [
        [-66 + 16 * chance(i), 34 + 16 * chance(i, 2), 0.6],
        [-63 + 16 * chance(i), 36 + 16 * chance(i, 2), 0.6],
      ]),
    ),
    board(),
    shape(pit, 'edge'),
    strokes(
      between(0, 15, 16).map((i): P3[] => [
        [70 + 17 * chance(i), 34 + 17 * chance(i, 2), z],
        [73 + 17 * chance(i), 35 + 17 * chance(i, 2), z],
      ]),
    ),
    way([40, -22, 0], [-40, -22, 0], 18),
  );
};

/** Glue has come through to the good side in dark, shiny spots. */
export const strikeThrough = (): Mark => {
  const z = H + 0.5;
  const spots = (
    [
      [14, 14, 11],
      [46, 40, 15],
      [82, 18, 9],
      [76, 56, 11],
      [22, 54, 7],
      [52, 10, 6],
    ] as const
  ).map(([x, y, r], k) =>
    all(
      shape(
        between(0, 2 * Math.PI * 0.94, 14).map((a, i): P3 => [
          x + r * Math.cos(a) * (1 + 0.2 * chance(i, k)),
          y + r * Math.sin(a) * (1 + 0.2 * chance(i, k + 2)),
          z,
        ]),
        'glue',
        'thin',
      ),
      strokes(
        [
          [
            [x - r * 0.4, y + r * 0.2, z],
            [x + r * 0.3, y + r * 0.2, z],
          ],
        ],
        'shine',
      ),
    ),
  );
  return all(board(), sheet([-10, -8, z], W + 20, D + 16, 'printed'), ...spots);
};

/** It has dried in waves that stand off the board. */
export const cockle = (): Mark => {
  const waves = between(0, 1, 37).map((t): P3 => [-10 + (W + 20) * t, -8, H + 1 + 5 * (1 - Math.cos(t * 8 * Math.PI))]);
  return all(board(), bent(waves, [0, D + 16, 0], { top: 'printed', under: 'plain' }));
};

/** The covered board has bent: its ends stand off the bench. */
export const bow = (): Mark => {
  const arc = (lift: number, out: number): P3[] =>
    between(-1, 1, 21).map((t): P3 => [60 + (62 + out) * t, 0, lift + 20 * t * t]);
  const lower = arc(0, 0);
  const upper = arc(7, 0);
  return all(
    sheet([-20, -16, 0], 160, 104, 'plain'),
    bent(lower, [0, 72, 0], { top: 'plain' }),
    shape([...lower, ...[...upper].reverse()], 'edge'),
    bent(upper, [0, 72, 0], { top: 'printed' }),
    shape([lower.at(-1)!, plus(lower.at(-1)!, [0, 72, 0]), plus(upper.at(-1)!, [0, 72, 0]), upper.at(-1)!], 'edge'),
    line(
      [
        [0, -10, 0],
        [0, -10, 17],
      ],
      'way',
    ),
    line(
      [
        [122, -10, 0],
        [122, -10, 17],
      ],
      'way',
    ),
  );
};

/** The edge got no glue: it stands open along its whole length. */
export const starvedEdge = (): Mark => {
  const z = H + 0.5;
  const flap = curledStrip([0, 0, z], 52, 84, 62).map(([along, , high]): P3 => [-10, D + 8 - along, high]);
  const ragged = between(-6, W + 6, 12).map((x, i): P3 => [x, 24 + (i % 2 ? 3 : 0), z]);
  return all(
    board(),
    shape([...ragged.filter(([x]) => x >= 0 && x <= W), [W, D, z], [0, D, z]], 'glue', 'thin'),
    bent(flap, [W + 20, 0, 0], { top: 'printed', under: 'plain' }),
    strokes(
      between(6, W - 2, 9).map((x): P3[] => [
        [x, 3, z],
        [x + 3, 8, z],
      ]),
    ),
    way([30, -58, 0], [38, -8, 0]),
    way([74, -58, 0], [82, -8, 0]),
  );
};
