/** What each way to fail looks like, on the same sheet and board. */
import { TOOL_IN_HAND } from './apply';
import { pinch } from './hands';
import { all, dots, leader, line, put, putAt, shape, sign, strokes, way, way2, word, type Mark } from './ink';
import { bent, block, curledStrip, sheet, waste } from './sheets';
import { between, flat, levelFace, plus, type P3 } from './space';

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
    sign([-6, -64], 'fault'),
  );
};

/** Lifted wet, it tore: one part is in the hand, the other stays down; both ragged ends are all fibres, and glue lies bare between. */
export const torn = (): Mark => {
  const z = H + 0.5;
  // how far the tear runs to the right or the left on its way from the near edge to the far one
  const ragged = between(0, 1, 11).map(
    (t, i) => [7 * Math.sin(4.4 * t) + [0, 5, -3, 4, -4][i % 5]!, -9 + 84 * t] as const,
  );
  const [down, up] = [74, 50];
  const stays = ragged.map(([x, y]): P3 => [down + x, y, z]);
  const [ends, rises] = [ragged.map(([x, y]): P3 => [up + x, y, z + 9]), 54];
  const lifted = between(1, 0, 9).map((t): P3 => [up - 84 * t, 0, z + 9 + rises * t * t]);
  const along = (y: number): P3[] => lifted.slice(0, -1).map(([x, , high]): P3 => [x, y, high]);
  const hand = plus(lifted[0]!, [0, 30, 0]);
  const fibres = (edge: readonly P3[], out: 1 | -1): Mark =>
    strokes(
      between(0.03, 0.97, 30).map((t, i): P3[] => {
        const k = Math.min(edge.length - 2, Math.floor(t * (edge.length - 1)));
        const [a, b, part] = [edge[k]!, edge[k + 1]!, t * (edge.length - 1) - k];
        const root: P3 = [a[0] + (b[0] - a[0]) * part, a[1] + (b[1] - a[1]) * part, a[2]];
        return [root, plus(root, [out * (4 + (i % 3) * 2), chance(i, 9) * 3, 0])];
      }),
      'line',
    );
  return all(
    board(),
    shape(levelFace([8, 4, H], 62, D - 8), 'glue', 'thin'),
    shape([...stays, [114, 75, z], [114, -9, z]], 'paper'),
    speck([88, -7, z], 24, 80, 3),
    fibres(stays, -1),
    putAt(pinch.behind, hand, 62),
    shape([...along(-9), ...ends, ...along(75).reverse()], 'paper'),
    dots(
      lifted
        .slice(0, -2)
        .flatMap(([x, , high], i) => between(i % 2 ? 0 : 7, i % 2 ? 59 : 66, 5).map((y) => flat([x + 5, y, high - 4]))),
    ),
    fibres(ends, 1),
    putAt(pinch.front, hand, 62),
    sign([150, -46], 'fault'),
  );
};
const speck = ([x, y, z]: P3, w: number, d: number, across: number): Mark =>
  dots(
    between(0.1, 0.9, across).flatMap((u, i) =>
      between(i % 2 ? 0.04 : 0.1, i % 2 ? 0.86 : 0.95, 6).map((v) => flat([x + w * u, y + d * v, z])),
    ),
  );

/** A sheet turned up from the right and over to the left, so that its under side faces the reader. */
const TURNED_UP = { from: -10, level: 10, long: 130, degrees: 112 } as const;
const turnedUp = (): P3[] =>
  curledStrip([TURNED_UP.from, -6, H + 0.5], TURNED_UP.level, TURNED_UP.long, TURNED_UP.degrees);
/** Where a point of the board's face lies on the sheet that has been turned up from it. */
const onTurnedUp = (curve: readonly P3[], x: number, y: number): P3 => {
  let left = x - TURNED_UP.from;
  let i = 0;
  const piece = (k: number) => Math.hypot(curve[k + 1]![0] - curve[k]![0], curve[k + 1]![2] - curve[k]![2]);
  while (i < curve.length - 2 && left > piece(i)) left -= piece(i++);
  const [a, b, t] = [curve[i]!, curve[i + 1]!, left / piece(i)];
  return [a[0] + (b[0] - a[0]) * t, y, a[2] + (b[2] - a[2]) * t];
};
/** The hand that turns it up, and the way it goes. */
const turningHand = (curve: readonly P3[]) => {
  const at = plus(curve.at(-1)!, [0, 58, 0]);
  return {
    behind: putAt(pinch.behind, at, 96),
    front: putAt(pinch.front, at, 96),
    way: way2(flat([W + 6, D, 22]), flat(plus(curve.at(-1)!, [30, D, 0])), -16),
  };
};
/** A ragged round patch of the board's face. */
const patch = (
  cx: number,
  cy: number,
  rx: number,
  ry: number,
  salt: number,
  count = 18,
): (readonly [number, number])[] =>
  between(0, 2 * Math.PI * (1 - 1 / count), count).map(
    (a, i) =>
      [
        cx + rx * Math.cos(a) * (1 + 0.2 * chance(i, salt)),
        cy + ry * Math.sin(a) * (1 + 0.2 * chance(i, salt + 3)),
      ] as const,
  );

/** Peeled off, it leaves a skin of its own fibres on the board, and its own back is rough in the same place. */
export const fibresLeft = (): Mark => {
  const z = H + 0.5;
  const curve = turnedUp();
  const hand = turningHand(curve);
  const outline = patch(87, D / 2, 13, 21, 4, 26);
  const fuzz = [
    ...outline,
    ...between(0, 33, 34).map((i) => [87 + 10 * chance(i), D / 2 + 17 * chance(i, 2)] as const),
  ];
  const hairs = (on: (x: number, y: number) => P3, out: P3): P3[][] =>
    fuzz.map(([x, y], i) => {
      const root = on(x, y);
      return [root, plus(root, [out[0] + 1.6 * chance(i, 3), 2 * chance(i, 5), out[2]])];
    });
  return all(
    board(),
    shape(
      outline.map(([x, y]): P3 => [x, y, z]),
      'paper',
      'thin',
    ),
    strokes(hairs((x, y) => [x, y, z], [0.5, 0, 3.6])),
    hand.behind,
    bent(curve, [0, D + 12, 0], { top: 'printed', under: 'plain' }),
    strokes(hairs((x, y) => onTurnedUp(curve, x, y), [3.6, 0, 0.5])),
    hand.front,
    hand.way,
    sign([160, -14], 'fault'),
  );
};

/** The face of the board has come away on the sheet: a pit in the board, its grey on the back of the sheet that is turned up. */
export const faceAway = (): Mark => {
  const z = H + 0.3;
  const curve = turnedUp();
  const hand = turningHand(curve);
  const pit = patch(88, D / 2, 11, 18, 1);
  const flake = pit.map(([x, y]) => onTurnedUp(curve, x, y));
  const stuck = flat(onTurnedUp(curve, 88, D / 2));
  return all(
    board(),
    shape(
      pit.map(([x, y]): P3 => [x, y, z]),
      'edge',
    ),
    // the far wall of the pit is seen, the near one is not
    strokes([
      pit.flatMap(([x, y]): P3[] => (y > D / 2 - 4 ? [[x * 0.94 + 5, y - 5, z]] : [])),
      ...between(0, 9, 10).map((i): P3[] => [
        [86 + 7 * chance(i), D / 2 - 4 + 10 * chance(i, 2), z],
        [89 + 7 * chance(i), D / 2 - 3 + 10 * chance(i, 2), z],
      ]),
    ]),
    hand.behind,
    bent(curve, [0, D + 12, 0], { top: 'printed', under: 'glued' }),
    shape(
      flake.map((p) => plus(p, [1.5, 0, -3])),
      'edge',
    ),
    shape(flake, 'board'),
    leader(flat(onTurnedUp(curve, 90, D / 2 - 4)), [stuck[0] - 34, stuck[1] + 6]),
    word([stuck[0] - 38, stuck[1] + 10], 'piece of board', 'end'),
    hand.front,
    hand.way,
    sign([160, -14], 'fault'),
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
  return all(board(), sheet([-10, -8, z], W + 20, D + 16, 'printed'), ...spots, sign([0, -44], 'fault'));
};

/** It has dried in waves that stand off the board. */
export const cockle = (): Mark => {
  const waves = between(0, 1, 37).map((t): P3 => [-10 + (W + 20) * t, -8, H + 1 + 5 * (1 - Math.cos(t * 8 * Math.PI))]);
  return all(board(), bent(waves, [0, D + 16, 0], { top: 'printed', under: 'plain' }), sign([0, -44], 'fault'));
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
    sign([4, -58], 'fault'),
  );
};

/** Two sheets turned up after a while: the one was glued out over its edge, the other had no glue along it and stands open there. */
export const starvedEdge = (): Mark =>
  all(
    put(turnedUpFrom(W, 'good'), [0, 0]),
    put(turnedUpFrom(W - 26, 'fault'), [178, 0]),
    word([70, 66], 'glue to the very edge', 'middle'),
    word([248, 66], 'dry along the edge', 'middle'),
  );
/** A sheet as wide as its board, turned up from its right edge; there is glue on both as far as here. */
function turnedUpFrom(glueTo: number, says: 'good' | 'fault'): Mark {
  const z = H + 0.5;
  const curve = curledStrip([0, 0, z], 26, W, 104);
  const out: P3[] = between(0, D, 9).map((y, i): P3 => [glueTo + (glueTo < W ? (i % 2 ? 1.5 : -1.5) : 0), y, H]);
  // the part of the sheet's back that has no glue on it: as far from its end as the board's bare strip is wide
  const dry = Math.max(0, Math.round(((W - glueTo) / (W - 26)) * 14));
  const split = curve.length - 1 - dry;
  return all(
    board(),
    shape([[10, 0, H], ...out, [10, D, H]], 'glue', 'thin'),
    strokes(
      between(0.16, 0.84, 5).map((v, i): P3[] => [
        [glueTo - (i % 2 ? 34 : 28), D * v, H],
        [glueTo - 8, D * v, H],
      ]),
      'shine',
    ),
    bent(curve.slice(0, split + 1), [0, D, 0], { top: 'printed', under: 'glued' }),
    dry > 0 && bent(curve.slice(split), [0, D, 0], { top: 'printed', under: 'plain' }),
    sign([8, -56], says),
  );
}
