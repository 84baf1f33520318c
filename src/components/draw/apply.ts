/** Putting the glue on: which face gets it, laid out on what, and with which tool. */
import { all, line, put, putAt, shape, strokes, way, type Mark } from './ink';
import { block, coat, pane, sheet } from './sheets';
import { flatHand, grip, pointing } from './hands';
import { brush, card, roller, smallBrush, squeegee } from './tools';
import { between, type P3 } from './space';

export type Tool = 'brush-full' | 'brush-small' | 'brush-thin' | 'card' | 'fingertip' | 'roller' | 'screen';

/** A tool in the hand, what touches the work at the origin. */
export const TOOL_IN_HAND: Readonly<Record<Tool, Mark>> = {
  'brush-full': all(put(brush(30), [0, 0], 14), put(grip, [15, -62], 6)),
  'brush-thin': all(put(brush(22), [0, 0], 14), put(grip, [15, -62], 6)),
  'brush-small': all(put(smallBrush, [0, 0], 14), put(grip, [13, -56], 6)),
  card: all(card, put(flatHand, [8, -40], 30, { scale: 0.9 })),
  fingertip: put(pointing, [0, -2], -18),
  roller: all(roller, put(grip, [0, -74], 4)),
  screen: all(squeegee, put(grip, [0, -22], 10)),
};

const W = 112;
const D = 74;

export type Glued = 'sheet' | 'support' | 'board' | 'spine' | 'strip' | 'tear' | 'edge';
type Broad = 'sheet' | 'support' | 'board';

/** The work lying ready, before any glue. */
function work(glued: Broad): { under: Mark; top: P3 } {
  if (glued === 'board') return { under: block([0, 0, 0], W, D, 7), top: [0, 0, 7] };
  if (glued === 'support')
    return { under: all(pane([-18, -13, 0], W + 36, D + 26), sheet([0, 0, 4], W, D, 'plain')), top: [0, 0, 4] };
  return { under: all(sheet([-14, -11, 0], W + 28, D + 22, 'news'), sheet([0, 0, 0], W, D, 'plain')), top: [0, 0, 0] };
}

/** Glue going on with a tool, from the middle out; `reached` from 0 to 1, `turn` where round the middle the tool is. */
export function putOn(glued: Broad, tool: Tool, reached = 0.72, turn = 0.4): Mark {
  const { under, top } = work(glued);
  const [cx, cy] = [W / 2, D / 2];
  const out = 0.62 * reached;
  const place: P3 = [cx + Math.cos(turn) * W * out, cy + Math.sin(turn) * D * out, top[2]];
  const arrow = (a: number): Mark =>
    way(
      [cx + Math.cos(a) * W * 0.12, cy + Math.sin(a) * D * 0.12, top[2]],
      [cx + Math.cos(a) * W * 0.44, cy + Math.sin(a) * D * 0.44, top[2]],
    );
  return all(
    under,
    tool === 'screen' && screen(top[2]),
    coat(top, W, D, reached),
    ...[Math.PI, 4.3, 2.3].map(arrow),
    putAt(TOOL_IN_HAND[tool], place),
  );
}

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
        sheet([-12, -10, 0], W + 24, D + 20, 'news'),
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
        sheet([-6, -6, 1], W - 4, D + 12, 'news'),
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
        way([-42, 44, 46], [-42, 22, 46]),
        putAt(held, [-42, 56, 46]),
      );
  }
}
