/** What the hands do to a leaf, a spine or a print: pasting down, lining, mending, hinging. */
import { TOOL_IN_HAND } from './apply';
import { pinch } from './hands';
import { all, line2, putAt, shape, strokes, way, way2, word, type Mark } from './ink';
import { bent, block, bookBlock, coat, pane, sheet } from './sheets';
import { between, flat, plus, type P3 } from './space';

/** Words to the right, in one column, each with a line to what it names. */
const named = (at: P3, text: string, column: number, y: number): Mark =>
  all(line2([[...flat(at)], [column - 4, y]], 'thin'), word([column, y + 4], text));
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
    sheet([0, -6, THICK + 0.5], LEAF + 14, TALL + 12, 'news'),
    sheet([2, 0, THICK + 1], LEAF, TALL, 'plain'),
    coat([2, 0, THICK + 1], LEAF, TALL, 0.8),
    ...[Math.PI, 4.4, 2.2].map((a) =>
      way(
        [2 + LEAF / 2 + Math.cos(a) * 8, TALL / 2 + Math.sin(a) * 8, THICK + 1],
        [2 + LEAF / 2 + Math.cos(a) * 30, TALL / 2 + Math.sin(a) * 32, THICK + 1],
      ),
    ),
    putAt(TOOL_IN_HAND['brush-full'], [62, 50, THICK + 1]),
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
    way2([...flat(plus(edge, [26, 0, 10]))], [...flat([66, -3, THICK + 34])], -22),
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

/** Fibres that stand out along an edge. */
const feathers = (x: number, z: number, out: number): Mark =>
  strokes(
    between(1, 67, 22).map((y, i): P3[] => [
      [x, y, z],
      [x + out * (4 + (i % 3) * 2), y + ((i % 5) - 2) * 0.7, z],
    ]),
  );

/** A strip torn from tissue along a ruler, at a line of water. */
export const stripTorn = (): Mark => {
  const hand = heldFromRight([122, 36, 6], -96);
  return all(
    pane([-10, -12, 0], 128, 92),
    sheet([2, 0, 4.4], 74, 68, 'tissue'),
    shape(
      [
        [70, 0, 4.6],
        [77, 0, 4.6],
        [77, 68, 4.6],
        [70, 68, 4.6],
      ],
      'water',
      'bare',
    ),
    feathers(76, 4.6, 1),
    block([50, -14, 5], 18, 96, 3, { top: 'edge', sides: 'edge' }),
    sheet([94, 0, 5], 16, 68, 'tissue'),
    feathers(94, 5, -1),
    hand.behind,
    hand.front,
    way([84, -20, 5], [112, -20, 5]),
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
    sheet([0, 0, 0], 120, 78, 'news'),
    shape(tear, 'ground'),
    hand.behind,
    bent(curve, [22, 0, 0], { top: 'tissue', under: 'glued' }),
    hand.front,
    way2([...flat([44, 14, 30])], [...flat([44, 2, 0])], 10),
  );
};

/** A print hung on its mount by two T-hinges, seen from the front before the window goes over it. */
export const tHinge = (): Mark => {
  const [w, d] = [92, 48] as const;
  const tab = (x: number): Mark => sheet([x, d - 4, 7.4], 14, 38, 'tissue');
  const across = (x: number): Mark =>
    all(sheet([x - 10, d + 15, 8], 34, 13, 'tissue'), shapeOutline(x - 10, d + 15, 34, 13));
  const column = flat([w + 22, d + 28, 7])[0] + 10;
  return all(
    block([-14, -12, 0], w + 28, d + 44, 7),
    tab(12),
    tab(w - 26),
    sheet([0, 0, 7.6], w, d, 'printed'),
    across(12),
    across(w - 26),
    named([w - 6, d + 22, 8], 'cross-piece', column, flat([w, d + 30, 8])[1] - 8),
    named([w - 16, d + 8, 8], 'tab', column, flat([w, d + 8, 8])[1]),
    named([w - 4, d - 20, 8], 'print', column, flat([w, d - 22, 8])[1] + 2),
    named([w + 10, 6, 7], 'mount', column, flat([w, 6, 7])[1] + 12),
  );
};
const shapeOutline = (x: number, y: number, w: number, d: number): Mark =>
  strokes(
    [
      [
        [x, y, 8],
        [x + w, y, 8],
        [x + w, y + d, 8],
        [x, y + d, 8],
        [x, y, 8],
      ],
    ],
    'line',
  );
