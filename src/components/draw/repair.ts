/** What the hands do to a leaf, a spine or a print: pasting down, lining, mending, hinging. */
import { TOOL_IN_HAND } from './apply';
import { pinch, pointing } from './hands';
import { all, leader, put, putAt, shape, strokes, way, way2, word, type Mark } from './ink';
import { bent, block, bookBlock, coat, curledStrip, pane, sheet } from './sheets';
import { between, flat, levelFace, plus, type P3 } from './space';

/** Words in one column, each with a line to what it names; the column stands to the right of it, or (-1) to its left. */
const named = (at: P3, text: string, column: number, y: number, side: 1 | -1 = 1): Mark =>
  all(leader(flat(at), [column + (side === 1 ? -4 : text.length * 6.2 + 4), y]), word([column, y + 4], text));
/** A hand from the right that holds an edge here: what goes behind the sheet, and before it. */
const heldFromRight = (at: P3, degrees: number) => ({
  behind: putAt(pinch.behind, at, degrees, { mirrored: true }),
  front: putAt(pinch.front, at, degrees, { mirrored: true }),
});

const [LEAF, TALL, THICK] = [78, 88, 22] as const;
/** A book lying open at its front: its cover flat to the left, the cloth of its joint, its leaves to the right. */
const openBook = (): Mark =>
  all(
    block([-98, -3, 0], 82, TALL + 6, 4),
    // the covering is turned in round three sides of the cover
    strokes([
      [
        [-16, 7, 4],
        [-88, 7, 4],
        [-88, TALL - 7, 4],
        [-16, TALL - 7, 4],
      ],
    ]),
    bent(
      [
        [-20, -3, 4.4],
        [-14, -3, 4.4],
        [-8, -3, 1],
        [2, -3, 6],
      ],
      [0, TALL + 6, 0],
      { top: 'cloth' },
    ),
  );

/** The endpaper pasted on the book; newsprint lies between it and the leaves, and stands out at its three free sides. */
export const endpaperOut = (): Mark =>
  all(
    openBook(),
    bookBlock([2, 0, 0], LEAF, TALL, THICK),
    sheet([6, -7, THICK + 0.5], LEAF + 14, TALL + 18, 'news'),
    sheet([2, 0, THICK + 1], LEAF, TALL, 'plain'),
    coat([2, 0, THICK + 1], LEAF, TALL, 0.8),
    ...(
      [
        [0, LEAF / 2 + 12],
        [Math.PI, LEAF / 2 - 4],
        [Math.PI / 2, TALL / 2 + 12],
        [-Math.PI / 2, TALL / 2 + 12],
      ] as const
    ).map(([a, far]) =>
      way(
        [2 + LEAF / 2 + Math.cos(a) * 10, TALL / 2 + Math.sin(a) * 10, THICK + 1],
        [2 + LEAF / 2 + Math.cos(a) * far, TALL / 2 + Math.sin(a) * far, THICK + 1],
      ),
    ),
    putAt(TOOL_IN_HAND['brush-full'], [66, 70, THICK + 1]),
  );

/** The cover brought over on the pasted endpaper. */
export const coverDown = (): Mark => {
  const hinge: P3 = [-2, -3, THICK];
  const edge: P3 = [-46, -3, THICK + 66];
  const far: P3 = [0, TALL + 6, 0];
  const hand = heldFromRight(plus(edge, [4, 34, -4]), -40);
  return all(
    bookBlock([2, 0, 0], LEAF, TALL, THICK),
    sheet([2, 0, THICK + 1], LEAF, TALL, 'glued'),
    shape([hinge, edge, plus(edge, far), plus(hinge, far)], 'board'),
    shape([edge, plus(edge, [-4, 0, -2]), plus(hinge, [-4, 0, -2]), hinge], 'edge'),
    hand.front,
    way2(flat(plus(edge, [18, TALL + 6, 2])), flat([62, TALL * 0.6, THICK + 16]), 22),
  );
};

/** A strip of tissue laid on the pasted spine of a book that stands between boards: its near end lies, its far end is let down after it. */
export const spineStrip = (): Mark => {
  const curve: P3[] = [
    [11, 0, 54.6],
    [11, 56, 54.6],
    [11, 68, 57],
    [11, 80, 64],
    [11, 92, 74],
    [11, 102, 86],
  ];
  const sweep: P3 = [12, 0, 0];
  const hand = heldFromRight(plus(curve.at(-1)!, [9, 0, 2]), -70);
  return all(
    block([-8, 0, 0], 14, 92, 46, { top: 'board', sides: 'edge' }),
    block([6, 0, 0], 22, 92, 54, { top: 'glue', sides: 'paper' }),
    strokes(
      [10, 14, 18, 22].map((x): P3[] => [
        [x, 0, 0],
        [x, 0, 54],
      ]),
    ),
    block([28, 0, 0], 14, 92, 46, { top: 'board', sides: 'edge' }),
    hand.behind,
    bent(curve, sweep, { top: 'plain', under: 'plain' }),
    fibresOn(curve, sweep),
    hand.front,
    way2([...flat([-2, 98, 92])], [...flat([-2, 98, 62])]),
    putAt(put(pointing, [0, 0], -40), [18, 34, 55]),
    named([8.5, 10, 54], 'wet glue', flat([-8, 0, 46])[0] - 76, flat([-8, 0, 46])[1] + 2, -1),
  );
};
/** A few long fibres along a strip of tissue. */
const fibresOn = (curve: readonly P3[], sweep: P3): Mark =>
  strokes(
    [0.25, 0.5, 0.75].map((share, i): P3[] =>
      curve
        .slice(i % 2, curve.length - (i % 2 ? 0 : 1))
        .map((p, k) => plus(p, [sweep[0] * (share + (k % 2 ? 0.05 : -0.05)), sweep[1] * share, 0])),
    ),
  );

/** Fibres that stand out from an edge of a sheet, on the side of `out`. */
const feathers = (from: P3, to: P3, out: readonly [number, number], count = 34): Mark =>
  strokes(
    between(0.01, 0.99, count).map((t, i): P3[] => {
      const [x, y, z] = [0, 1, 2].map((axis) => from[axis]! + (to[axis]! - from[axis]!) * t) as unknown as P3;
      const long = 4 + (i % 3) * 2.5;
      return [
        [x, y, z],
        [x + out[0] * long + ((i * 3) % 5) - 2, y + out[1] * long, z],
      ];
    }),
    'line',
  );

/** A strip torn from tissue along a ruler, at a line of water: it comes away from the right, and hangs on at the left. */
export const stripTorn = (): Mark => {
  const z = 4.6;
  const hand = heldFromRight([124, 4, 8], -84);
  const [inner, outer]: [P3, P3] = [
    [12, 34, z],
    [122, 14, z],
  ];
  const strip: P3[] = [[0, 37, z], inner, outer, [116, -12, z], [0, 12, z]];
  const wet = (a: P3, b: P3, deep: number): Mark =>
    shape([a, b, [b[0], b[1] + deep, z], [a[0], a[1] + deep, z]], 'water', 'bare');
  return all(
    pane([-12, -22, 0], 146, 116),
    sheet([0, 36, z], 120, 50, 'plain'),
    wet([0, 36, z], [120, 36, z], 8),
    feathers([12, 36, z], [120, 36, z], [0, -1]),
    shape(strip, 'paper'),
    wet(plus(inner, [0, -7, 0]), plus(outer, [0, -7, 0]), 7),
    feathers(inner, outer, [0.1, 1]),
    block([-22, 43, z], 166, 15, 3, { top: 'board', sides: 'edge' }),
    strokes(
      between(-16, 140, 27).map((x, i): P3[] => [
        [x, 43, z + 3],
        [x, i % 5 === 0 ? 51 : 47, z + 3],
      ]),
    ),
    hand.behind,
    hand.front,
    way([52, -2, z], [58, -34, z]),
  );
};

/**
 * The strip laid over the tear: over its inner half it lies already, and the tear shows through it; the rest stands up, to be let
 * down, and leaves the outer half in view.
 */
export const stripLaid = (): Mark => {
  const [w, d] = [140, 84];
  const [from, y, deep] = [20, 24, 32] as const;
  const curve = curledStrip([from, y, 0.8], 52, 112, 138);
  const lip = (
    [
      [32, 42],
      [44, 45],
      [52, 39],
      [66, 46],
      [82, 39],
      [100, 46],
      [118, 40],
      [w, 44],
    ] as const
  ).map(([x, at]): P3 => [x, at, 0]);
  // it gapes more towards the edge of the leaf
  const other = lip.map(([x, at], i): P3 => [x, at - i * 2.6, 0]);
  const seen = curve[1]![0] + 8;
  const under = (side: readonly P3[]): P3[] => side.filter(([x]) => x < seen).map(([x, at]): P3 => [x, at, 0.8]);
  const held = plus(curve.at(-1)!, [0, 14, 0]);
  const [hand, handAt] = [heldFromRight(held, -100), flat(held)];
  return all(
    sheet([0, 0, 0], w, d, 'page'),
    shape([...lip, ...[...other].reverse()], 'ground'),
    hand.behind,
    bent(curve, [0, deep, 0], { top: 'film', under: 'wet' }),
    // through the tissue
    strokes([under(lip), under(other)], 'line'),
    hand.front,
    // beside the arm, on which it would be lost
    way2([handAt[0] + 97, handAt[1] + 6], [handAt[0] + 97, handAt[1] + 44], -4),
    named([110, 36, 0], 'tear', flat([w, 30, 0])[0] - 6, flat([w, 0, 0])[1] + 12),
    named([32, 33, 0.8], 'pasted tissue', flat([0, 0, 0])[0] - 34, flat([0, 0, 0])[1] + 24, -1),
  );
};

/** A print hung on its mount by two T-hinges, seen from the front before the window goes over it. */
export const tHinge = (): Mark => {
  const [w, d] = [92, 46] as const;
  const white = (x: number, y: number, wide: number, deep: number): Mark =>
    all(
      shape(levelFace([x, y, 8], wide, deep), 'paper'),
      strokes(
        between(0.2, 0.8, 3).map((t, i): P3[] => [
          [x + wide * (i % 2 ? 0.15 : 0.3), y + deep * t, 8],
          [x + wide * (i % 2 ? 0.6 : 0.85), y + deep * (t + (i % 2 ? 0.12 : -0.1)), 8],
        ]),
      ),
    );
  const column = flat([w + 22, d + 28, 7])[0] + 18;
  const hinge = (x: number): Mark => all(white(x, d - 2, 13, 34), white(x - 11, d + 17, 35, 14));
  return all(
    block([-16, -12, 0], w + 32, d + 56, 7),
    hinge(12),
    hinge(w - 25),
    sheet([0, 0, 8], w, d, 'printed'),
    // the part of each tab that is pasted to the back of the print, out of sight
    strokes(
      [12, w - 25].map((x): P3[] => [
        [x, d, 8],
        [x, d - 11, 8],
        [x + 13, d - 11, 8],
        [x + 13, d, 8],
      ]),
      'hid',
    ),
    named([w - 4, d + 24, 8], 'cross-piece', column, flat([w, d + 34, 8])[1] - 8),
    named([w - 16, d + 8, 8], 'tab', column, flat([w, d + 8, 8])[1]),
    named([w - 4, d - 20, 8], 'print', column, flat([w, d - 22, 8])[1] + 2),
    named([w + 12, 6, 7], 'mount', column, flat([w, 6, 7])[1] + 12),
  );
};
