/** What the hands do to a leaf, a spine or a print: pasting down, lining, mending, hinging. */
import { TOOL_IN_HAND } from './apply';
import { pinch } from './hands';
import { all, leader, putAt, shape, strokes, way, way2, word, type Mark } from './ink';
import { bent, block, bookBlock, coat, pane, sheet, waste } from './sheets';
import { between, flat, levelFace, plus, type P3 } from './space';

/** Words to the right, in one column, each with a line to what it names. */
const named = (at: P3, text: string, column: number, y: number): Mark =>
  all(leader(flat(at), [column - 4, y]), word([column, y + 4], text));
/** A hand from the right that holds an edge here: what goes behind the sheet, and before it. */
const heldFromRight = (at: P3, degrees: number) => ({
  behind: putAt(pinch.behind, at, degrees, { mirrored: true }),
  front: putAt(pinch.front, at, degrees, { mirrored: true }),
});

const [LEAF, TALL, THICK] = [78, 88, 18] as const;
/** A book lying open at its front: its cover flat to the left, its leaves to the right. */
const openBook = (): Mark =>
  all(block([-86, -3, 0], 80, TALL + 6, 4), block([-6, -3, 0], 8, TALL + 6, 2, { top: 'green', sides: 'green' }));

/** The endpaper pasted on the book, waste under it and a film under the waste. */
export const endpaperOut = (): Mark =>
  all(
    openBook(),
    bookBlock([2, 0, 0], LEAF, TALL, THICK),
    waste([2, 0, THICK + 0.5], LEAF, TALL, 18),
    sheet([2, 0, THICK + 1], LEAF, TALL, 'plain'),
    coat([2, 0, THICK + 1], LEAF, TALL, 0.8),
    ...[
      [0, LEAF / 2 + 12],
      [Math.PI / 2, TALL / 2 + 12],
      [-Math.PI / 2, TALL / 2 + 12],
    ].map(([a = 0, far = 0]) =>
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

/** A strip of tissue laid on the pasted spine of a book that stands between boards. */
export const spineStrip = (): Mark => {
  const curve: P3[] = [
    [8, 0, 54.6],
    [8, 46, 54.6],
    [8, 60, 57],
    [8, 72, 64],
    [8, 82, 75],
    [8, 88, 88],
  ];
  const hand = heldFromRight(plus(curve.at(-1)!, [12, 0, 2]), -70);
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
    bent(curve, [18, 0, 0], { top: 'tissue', under: 'tissue' }),
    hand.front,
    way2([...flat([44, 40, 92])], [...flat([40, 22, 66])], -8),
  );
};

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

/** The strip laid over the tear, from its inner end to the edge. */
export const stripLaid = (): Mark => {
  const curve: P3[] = [
    [52, 62, 0.8],
    [52, 40, 0.8],
    [52, 31, 4],
    [52, 25, 13],
    [52, 22, 27],
    [52, 22, 44],
  ];
  const tear: P3[] = [
    [58, 0, 0],
    [62, 12, 0],
    [58, 22, 0],
    [63, 34, 0],
    [60, 52, 0],
    [64, 34, 0],
    [62, 22, 0],
    [68, 12, 0],
    [65, 0, 0],
  ];
  const hand = heldFromRight(plus(curve.at(-1)!, [16, 0, 2]), -76);
  return all(
    sheet([0, 0, 0], 120, 78, 'page'),
    shape(tear, 'ground'),
    hand.behind,
    bent(curve, [22, 0, 0], { top: 'tissue', under: 'glued' }),
    hand.front,
    way2([...flat([44, 14, 30])], [...flat([44, 2, 0])], 10),
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
