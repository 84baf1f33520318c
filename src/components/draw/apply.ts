/** Putting the glue on: which face gets it, laid out on what, and with which tool. */
import { all, line, put, putAt, shape, strokes, way, type Mark } from './ink';
import { block, coat, pane, sheet, waste } from './sheets';
import { grip, pinch, pointing } from './hands';
import { brush, roller, smallBrush, squeegee } from './tools';
import { between, type P3 } from './space';

export type Tool = 'brush-full' | 'brush-small' | 'brush-thin' | 'card' | 'fingertip' | 'roller' | 'screen';

/** A card on its lower edge in the glue, leaning towards the reader, held by its upper edge. */
const heldCard: Mark = (() => {
  const [half, high, lean] = [25, 48, -15];
  const at = (x: number, share: number): P3 => [x, lean * share, high * share];
  return all(
    putAt(pinch.behind, at(14, 0.97), -112, { mirrored: true, scale: 0.86 }),
    shape([at(-half, 0), at(half, 0), at(half, 1), at(-half, 1)], 'paper'),
    shape([at(-half, 0), at(half, 0), at(half, 0.12), at(-half, 0.12)], 'glue', 'thin'),
    putAt(pinch.front, at(14, 0.97), -112, { mirrored: true, scale: 0.86 }),
  );
})();

/** A hand from above round a bar that lies across, the middle of the bar at the origin. */
export const roundBar: Mark = put(grip, [0, 0], -78);

/** A tool in the hand, what touches the work at the origin. */
export const TOOL_IN_HAND: Readonly<Record<Tool, Mark>> = {
  'brush-full': all(put(brush(30), [0, 0], 14), put(grip, [15, -62], 6)),
  'brush-thin': all(put(brush(22), [0, 0], 14), put(grip, [15, -62], 6)),
  'brush-small': all(put(smallBrush, [0, 0], 14), put(grip, [13, -56], 6)),
  card: heldCard,
  fingertip: put(pointing, [0, -2], -30),
  roller: all(roller, put(grip, [0, -74], 4)),
  screen: all(put(squeegee, [0, 0], 8), put(roundBar, [10, -24])),
};

const W = 102;
const D = 66;
/** how far newsprint stands out round the sheet */
const OUT = 26;

export type Glued = 'sheet' | 'support' | 'board' | 'spine' | 'strip' | 'tear' | 'edge';
type Broad = 'sheet' | 'support' | 'board';

/** The work lying ready, before any glue. */
function work(glued: Broad): { under: Mark; top: P3 } {
  if (glued === 'board') return { under: block([0, 0, 0], W, D, 7), top: [0, 0, 7] };
  if (glued === 'support')
    return { under: all(pane([-20, -16, 0], W + 40, D + 32), sheet([0, 0, 4], W, D, 'plain')), top: [0, 0, 4] };
  return { under: all(waste([0, 0, 0], W, D, OUT), sheet([0, 0, 0], W, D, 'plain')), top: [0, 0, 0] };
}

/** Where round the middle a tool is held so that the hand leaves the work in view; 0 is to the right, a quarter turn away. */
const AT_REST: Readonly<Record<Tool, number>> = {
  'brush-full': 0.85,
  'brush-thin': 0.85,
  'brush-small': 0.85,
  card: -0.85,
  fingertip: -0.7,
  roller: 0.85,
  screen: 0,
};
/** How far an arrow goes out over the edge of the work. */
const BEYOND = 11;

/** Glue going on with a tool, from the middle out over all four edges; `reached` from 0 to 1, `turn` where round the middle the tool is. */
export function putOn(glued: Broad, tool: Tool, reached = 0.72, turn = AT_REST[tool]): Mark {
  const { under, top } = work(glued);
  const z = top[2];
  const [cx, cy] = [W / 2, D / 2];
  const out = 0.62 * reached;
  const place: P3 =
    tool === 'screen' ? [cx - 4, D * 0.54, z] : [cx + Math.cos(turn) * W * out, cy + Math.sin(turn) * D * out, z];
  const held = putAt(TOOL_IN_HAND[tool], place);
  if (tool === 'screen')
    return all(
      under,
      screen(z),
      drawnAlong([place[0] - 34, place[1], z], 68, D - 2 - place[1]),
      held,
      ...[-22, 0, 22].map((x) => way([place[0] + x, place[1] - 4, z], [place[0] + x, 3, z])),
    );
  const card = tool === 'card';
  const [farX, rightY, nearX] = card ? [W * 0.14, D * 0.72, place[0] - 6] : [W * 0.42, D * 0.5, W * 0.46];
  return all(
    under,
    coat(top, W, D, reached),
    card && drawnAlong([place[0] - 25, place[1], z], 50, 26),
    way([W * 0.38, D * 0.5, z], [-BEYOND, D * 0.5, z]),
    way([farX, D * 0.62, z], [farX, D + BEYOND, z]),
    way([W * 0.62, rightY, z], [W + BEYOND, rightY, z]),
    way([nearX, card ? place[1] - 2 : D * 0.38, z], [nearX, -BEYOND - 3, z]),
    held,
  );
}

/** A squeegee on a screen, nobody at it: behind it the glue it has drawn over the mesh. */
export const squeegeeOnScreen = (): Mark =>
  all(
    screen(0),
    drawnAlong([W / 2 - 36, D * 0.5, 0], 68, D * 0.5 - 4),
    putAt(put(squeegee, [0, 0], 8, { scale: 1.05 }), [W / 2 - 2, D * 0.5, 0]),
    ...[-22, 20].map((x) => way([W / 2 + x, D * 0.5 - 5, 0], [W / 2 + x, 4, 0])),
  );

/** The even track behind an edge that is drawn towards the reader: as wide as the edge, `long` from it backwards. */
const drawnAlong = ([x, y, z]: P3, wide: number, long: number): Mark =>
  all(
    shape(
      [
        [x, y, z],
        [x + wide, y, z],
        [x + wide, y + long, z],
        [x, y + long, z],
      ],
      'glue',
      'bare',
    ),
    strokes(
      between(0.1, 0.9, 6).map((u, i): P3[] => [
        [x + wide * u, y + 3, z],
        [x + wide * u, y + long * (i % 2 ? 0.82 : 0.96), z],
      ]),
      'shine',
    ),
    strokes(
      [x, x + wide].map((side): P3[] => [
        [side, y, z],
        [side, y + long, z],
      ]),
    ),
  );

/** A frame with a mesh, over the whole sheet. */
const screen = (z: number): Mark => {
  const bar = (x: number, y: number, w: number, d: number) =>
    block([x, y, z], w, d, 6, { top: 'board', sides: 'edge' });
  const mesh = [
    ...between(0, W, 15).map((x): P3[] => [
      [x, -4, z + 3],
      [x, D + 4, z + 3],
    ]),
    ...between(0, D, 10).map((y): P3[] => [
      [-4, y, z + 3],
      [W + 4, y, z + 3],
    ]),
  ];
  return all(
    bar(-14, D + 4, W + 28, 8),
    bar(-14, -4, 8, D + 8),
    strokes(mesh),
    bar(W + 6, -4, 8, D + 8),
    bar(-14, -12, W + 28, 8),
  );
};

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
        way([17, 40, 54], [17, 10, 54]),
        putAt(held, [17, 50, 54]),
      );
    case 'strip':
      return all(
        sheet([-16, -14, 0], W + 38, D + 28, 'news'),
        sheet([0, 0, 0], W, D, 'plain'),
        shape(
          [
            [W - 10, 0, 0],
            [W, 0, 0],
            [W, D, 0],
            [W - 10, D, 0],
          ],
          'glue',
        ),
        sheet([-24, -8, 1], W + 14, D + 16, 'news'),
        way([W + 8, 10, 0], [W + 8, 36, 0]),
        putAt(held, [W - 5, 52, 0]),
      );
    case 'tear':
      return all(
        sheet([0, 0, 0], W, D, 'plain'),
        shape(
          [
            [48, 0, 0],
            [52, 14, 0],
            [49, 26, 0],
            [55, 40, 0],
            [58, 50, 0],
            [61, 50, 0],
            [59, 38, 0],
            [54, 26, 0],
            [57, 13, 0],
            [55, 0, 0],
          ],
          'ground',
        ),
        shape(
          [
            [43, 0, 0],
            [47, 14, 0],
            [44, 27, 0],
            [50, 41, 0],
            [56, 56, 0],
            [58, 50, 0],
            [55, 40, 0],
            [49, 26, 0],
            [52, 14, 0],
            [48, 0, 0],
          ],
          'glue',
          'thin',
        ),
        putAt(held, [47, 28, 0]),
      );
    case 'edge':
      return all(
        block([0, 0, 0], 96, 80, 7),
        block([-46, 16, 0], 0.1, 62, 46, { sides: 'board' }),
        block([-46, 16, 0], 7, 62, 46, { sides: 'board', top: 'glue' }),
        way([-42, 44, 46], [-42, 20, 46]),
        putAt(put(pointing, [0, 0], 64, { mirrored: true }), [-46, 34, 20]),
        putAt(held, [-42, 58, 46]),
      );
  }
}
