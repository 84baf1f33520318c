/** Putting the glue on: which face gets it, laid out on what, and with which tool. */
import { all, leader, line, path, put, putAt, shape, standsOff, strokes, strokes2, way, word, type Mark } from './ink';
import { block, coat, pane, sheet, waste } from './sheets';
import { flatHand, grip, pinch, pointing } from './hands';
import { brush, roller, smallBrush } from './tools';
import { between, flat, levelFace, type P3 } from './space';

export type Tool = 'brush-full' | 'brush-small' | 'brush-thin' | 'card' | 'fingertip' | 'roller' | 'screen';

/** How far across the work a card's edge reaches: half of it. */
const CARD_EDGE = 32;
/** A small card on its lower edge, which runs away from the reader; pulled to the right, held by its upper edge. */
const heldCard: Mark = (() => {
  const [half, high, lean] = [CARD_EDGE / 2, 38, -4];
  const at = (y: number, share: number): P3 => [lean * share, y, high * share];
  return all(
    putAt(pinch.behind, at(6, 0.95), -138, { mirrored: true, scale: 0.8 }),
    shape([at(-half, 0), at(half, 0), at(half, 1), at(-half, 1)], 'paper'),
    shape([at(-half, 0), at(half, 0), at(half, 0.2), at(-half, 0.2)], 'glue', 'thin'),
    putAt(pinch.front, at(6, 0.95), -138, { mirrored: true, scale: 0.8 }),
  );
})();

/** How long the rubber of a squeegee is. */
const BLADE = 74;
/** A squeegee on its rubber, which runs away from the reader: a strip of rubber, and over it the wooden grip. */
const squeegee: Mark = all(
  standsOff(block([-2, -BLADE / 2, 0], 4, BLADE, 11, { top: 'ink', sides: 'ink' })),
  block([-6, -BLADE / 2 - 2, 11], 12, BLADE + 4, 13, { top: 'board', sides: 'board' }),
);

/** A hand from above round a bar that lies across, the middle of the bar at the origin. */
export const roundBar: Mark = put(grip, [0, 0], -78);

/** A wet sponge under a hand: soft and round at its corners, full of holes. Its near lower left corner at the origin. */
export const wetSponge: Mark = all(
  path('M-2-2C-6-12-2-20 6-20L14-27C18-30 44-25 48-21C52-17 50-8 46-4L36 5C30 9 2 5-2-2Z', 'board', 'line', [
    [-6, -30],
    [52, 9],
  ]),
  strokes2([
    [
      [-3, -17],
      [6, -13],
      [34, -8],
      [46, -17],
    ],
  ]),
  path(
    'M6-4a2 1.600 0 1 0 4 0 2 1.600 0 1 0-4 0zM17-7a1.500 1.200 0 1 0 3 0 1.500 1.200 0 1 0-3 0zM22 0a2.500 1.800 0 1 0 5 0 2.500 1.800 0 1 0-5 0zM12 2a1.200 1 0 1 0 2.400 0 1.200 1 0 1 0-2.400 0zM31-3a1.500 1.200 0 1 0 3 0 1.500 1.200 0 1 0-3 0zM2-9a1.200 1 0 1 0 2.400 0 1.200 1 0 1 0-2.400 0z',
    'paper',
    'thin',
    [],
  ),
  put(put(flatHand, [0, 0], -48, { scale: 0.62 }), [14, -20]),
);

/** A tool in the hand, what touches the work at the origin. */
export const TOOL_IN_HAND: Readonly<Record<Tool, Mark>> = {
  'brush-full': all(put(brush(32, 'loaded'), [0, 0], 14), put(grip, [15, -62], 6)),
  'brush-thin': all(put(brush(22, 'tip'), [0, 0], 14), put(grip, [15, -62], 6)),
  'brush-small': all(put(smallBrush, [0, 0], 14), put(grip, [13, -56], 6)),
  card: heldCard,
  fingertip: put(pointing, [0, -2], -30),
  roller: all(roller, put(grip, [0, -74], 4)),
  screen: all(squeegee, putAt(put(grip, [0, 0], -58), [0, 2, 24])),
};

const W = 102;
const D = 66;
/** how far newsprint stands out round the sheet */
const OUT = 26;

export type Glued = 'sheet' | 'support' | 'board' | 'spine' | 'strip' | 'tear' | 'edge';
type Broad = 'sheet' | 'support' | 'board';

/** The work lying ready, before any glue; newsprint or glass stands out round it by `out`. */
function work(glued: Broad, out = OUT): { under: Mark; top: P3 } {
  if (glued === 'board') return { under: block([0, 0, 0], W, D, 7), top: [0, 0, 7] };
  if (glued === 'support') {
    const glass = pane([6 - out, 10 - out, 0], W + 2 * out - 12, D + 2 * out - 20);
    return { under: all(glass, sheet([0, 0, 4], W, D, 'plain')), top: [0, 0, 4] };
  }
  return { under: all(waste([0, 0, 0], W, D, out), sheet([0, 0, 0], W, D, 'plain')), top: [0, 0, 0] };
}

/** Where round the middle a tool is held so that the hand leaves the work in view; 0 is to the right, a quarter turn away. */
const AT_REST: Readonly<Record<Exclude<Tool, 'card' | 'screen'>, number>> = {
  'brush-full': 0.85,
  'brush-thin': 0.85,
  'brush-small': 0.85,
  fingertip: -0.7,
  roller: 0.85,
};
/** How far an arrow goes out over the edge of the work. */
const BEYOND = 11;

/** Glue going on, the way its tool goes over a face (`stroke` in its record). */
export function putOn(glued: Broad, tool: Tool): Mark {
  const { under, top } = work(glued, tool === 'screen' ? OUT + MARGIN : OUT);
  if (tool === 'screen') {
    const below: P3 = [W * 0.7, -NEAR - 16 - (glued === 'board' ? 0 : OUT), 0];
    const named = glued === 'board' ? 'the board' : 'the sheet';
    return all(under, screenPulled(top[2]), called([W * 0.9, D * 0.16, top[2]], named, below));
  }
  if (tool === 'card') return all(under, pulledSideBySide(top[2]));
  return fromTheMiddle(glued, tool);
}

/** From the middle out over all four edges; `reached` from 0 to 1, `turn` where round the middle the tool is. */
export function fromTheMiddle(
  glued: Broad,
  tool: Exclude<Tool, 'card' | 'screen'>,
  reached = 0.72,
  turn = AT_REST[tool],
): Mark {
  const { under, top } = work(glued);
  const z = top[2];
  const [cx, cy] = [W / 2, D / 2];
  const out = 0.62 * reached;
  const place: P3 = [cx + Math.cos(turn) * W * out, cy + Math.sin(turn) * D * out, z];
  return all(
    under,
    coat(top, W, D, reached, tool === 'brush-thin' ? 'thin' : 'full'),
    way([W * 0.38, D * 0.5, z], [-BEYOND, D * 0.5, z]),
    way([W * 0.42, D * 0.62, z], [W * 0.42, D + BEYOND, z]),
    // beside the tool, which would hide it
    way([W * 0.62, D * (turn > 0 ? 0.36 : 0.64), z], [W + BEYOND, D * (turn > 0 ? 0.36 : 0.64), z]),
    tool === 'brush-thin' && called([W * 0.28, D * 0.3, z], 'thin coat', [W * 0.06, -OUT - 10, 0]),
    way([W * 0.46, D * 0.38, z], [W * 0.46, -BEYOND - 3, z]),
    putAt(TOOL_IN_HAND[tool], place),
  );
}

/** A word below the drawing, a line to it from what it names. */
const called = (at: P3, text: string, below: P3): Mark => {
  const [x, y] = flat(below);
  return all(leader(flat(at), [x, y]), word([x, y + 12], text, 'middle'));
};

/** A card in straight pulls: the far one done, the near one on its way. */
function pulledSideBySide(z: number): Mark {
  const band = D / 2;
  const at = W * 0.46;
  return all(
    tracked([0, band, z], W, band),
    tracked([0, 0, z], at, band),
    bead([at, 2, z], band - 4),
    way([W * 0.72, band * 1.5, z], [W + BEYOND + 4, band * 1.5, z]),
    way([W * 0.66, band * 0.4, z], [W + BEYOND + 4, band * 0.4, z]),
    putAt(heldCard, [at, band / 2, z]),
  );
}

/** A card on its edge, and the track behind it. */
export const cardOnBoard = (): Mark =>
  all(
    block([0, -4, 0], 92, CARD_EDGE + 22, 5),
    tracked([0, 8, 5], 50, CARD_EDGE),
    bead([50, 10, 5], CARD_EDGE - 4),
    way([62, 14, 5], [86, 14, 5]),
    putAt(heldCard, [50, 8 + CARD_EDGE / 2, 5]),
  );

/** A squeegee in one pull over a screen, from its left side to its right: behind it the mesh is wet, before it still dry. */
const screenPulled = (z: number): Mark =>
  all(
    screen(z),
    tracked([-6, -4, z + 1], PULLED + 6, BLADE),
    bead([PULLED + 3, -2, z + 1], BLADE - 4),
    nearBar(z),
    way([PULLED + 18, D * 0.34, z + 1], [PULLED + 44, D * 0.34, z + 1]),
    putAt(TOOL_IN_HAND.screen, [PULLED, BLADE / 2 - 4, z + 1]),
  );
/** How far the pull has come. */
const PULLED = W * 0.42;

/** A squeegee on a screen, nobody at it. */
export const squeegeeOnScreen = (): Mark =>
  all(
    screen(0),
    tracked([-6, -4, 1], W * 0.5 + 6, BLADE),
    bead([W * 0.5 + 3, -2, 1], BLADE - 4),
    nearBar(0),
    putAt(squeegee, [W * 0.5, BLADE / 2 - 4, 1]),
    way([W * 0.64, D * 0.3, 1], [W * 0.9, D * 0.3, 1]),
  );

/** The glue that is pushed along before an edge. */
const bead = ([x, y, z]: P3, deep: number): Mark =>
  shape(
    [
      [x, y, z],
      [x + 6, y + 2, z],
      [x + 7, y + deep * 0.5, z],
      [x + 5, y + deep - 2, z],
      [x, y + deep, z],
    ],
    'glue',
    'thin',
  );

/** The even track behind an edge that is pulled to the right: `long` to where the edge is, as `deep` as the edge. */
const tracked = ([x, y, z]: P3, long: number, deep: number): Mark =>
  all(
    shape(levelFace([x, y, z], long, deep), 'glue', 'thin'),
    strokes(
      between(0.15, 0.85, deep > 40 ? 6 : 4).map((v, i): P3[] => [
        [x + (i % 2 ? 10 : 4), y + deep * v, z],
        [x + long - 6, y + deep * v, z],
      ]),
      'shine',
    ),
  );

/** How far the mesh reaches beyond the work at its sides: through it the end of the sheet is seen, and what it lies on. */
const MARGIN = 15;
/** how far beyond its far and its near edge */
const [FAR, NEAR] = [9, 12];
const bar = ([x, y, z]: P3, w: number, d: number): Mark => block([x, y, z], w, d, 4, { top: 'board', sides: 'edge' });
/** A frame with a wide mesh, over the whole sheet; its near bar comes last, over the glue. */
const screen = (z: number): Mark => {
  const [left, right, near, far] = [-MARGIN, W + MARGIN, -NEAR, D + FAR];
  const mesh = [
    ...between(left, right, 18).map((x): P3[] => [
      [x, near, z + 1],
      [x, far, z + 1],
    ]),
    ...between(near, far, 11).map((y): P3[] => [
      [left, y, z + 1],
      [right, y, z + 1],
    ]),
  ];
  return all(
    bar([left - 8, far, z], right - left + 16, 8),
    bar([left - 8, near, z], 8, far - near),
    strokes(mesh),
    bar([right, near, z], 8, far - near),
  );
};
const nearBar = (z: number): Mark => bar([-MARGIN - 8, -NEAR - 8, z], W + 2 * MARGIN + 16, 8);

/** A narrow coat, where a whole one would be wrong: along the spine, the edge of a leaf, a tear, the edge of a board. */
export function putOnNarrow(glued: Exclude<Glued, Broad>, tool: Tool): Mark {
  const held = TOOL_IN_HAND[tool];
  switch (glued) {
    case 'spine':
      return all(
        block([-8, 0, 0], 14, 92, 46, { top: 'board', sides: 'edge' }),
        block([6, 0, 0], 22, 92, 54, { top: 'glue', sides: 'paper' }),
        line(
          [
            [10, 0, 0],
            [10, 0, 54],
          ],
          'thin',
        ),
        line(
          [
            [14, 0, 0],
            [14, 0, 54],
          ],
          'thin',
        ),
        line(
          [
            [18, 0, 0],
            [18, 0, 54],
          ],
          'thin',
        ),
        line(
          [
            [22, 0, 0],
            [22, 0, 54],
          ],
          'thin',
        ),
        block([28, 0, 0], 14, 92, 46, { top: 'board', sides: 'edge' }),
        way([17, 34, 54], [17, 4, 54]),
        way([17, 62, 54], [17, 90, 54]),
        putAt(held, [20, 50, 54]),
      );
    case 'strip':
      return all(
        // the leaf lies on newsprint; another sheet of it covers the leaf, all but a strip along its edge
        sheet([-6, -22, 0], W + 34, D + 44, 'news'),
        sheet([0, -8, 0.5], W, D + 16, 'plain'),
        shape(levelFace([W - 13, -8, 0.5], 13, D * 0.62 + 8), 'glue', 'thin'),
        sheet([-22, 0, 2], W + 9, D, 'news'),
        way([W + 9, D * 0.2, 0], [W + 9, D * 0.62, 0]),
        putAt(held, [W - 6, D * 0.62, 0]),
      );
    case 'tear': {
      // a tear from the near edge to the middle, its two lips a little apart, the left one pasted
      const lip = (
        [
          [44, 0],
          [49, 12],
          [46, 24],
          [53, 36],
          [57, 50],
        ] as const
      ).map(([x, y]): P3 => [x, y, 0]);
      const other = lip.map(([x, y], i): P3 => [x + [17, 12, 11, 6, 0][i]!, y, 0]);
      const pasted = lip.map(([x, y], i): P3 => [x - [8, 8, 8, 7, 3][i]!, y + (i === 4 ? 4 : 0), 0]);
      return all(
        sheet([0, 0, 0], W + 14, D + 8, 'plain'),
        shape([...lip, ...[...other].reverse()], 'ground'),
        shape([...pasted, ...[...lip].reverse()], 'glue', 'thin'),
        putAt(held, [49, 36, 0]),
        way([38, 30, 0], [32, 4, 0]),
      );
    }
    case 'edge':
      return all(
        block([0, 0, 0], 96, 80, 7),
        putAt(pinch.behind, [-44, 16, 24], 74),
        block([-46, 16, 0], 7, 62, 46, { sides: 'board', top: 'glue' }),
        way([-42, 44, 46], [-42, 20, 46]),
        putAt(pinch.front, [-44, 16, 24], 74),
        putAt(held, [-42, 58, 46]),
      );
  }
}
