/** What can be made, each finished and taken apart. Proportions are usual ones; sizes come from the calculator. */
import type { ProjectId } from '../../core/make/projects';
import { all, dots, leader, line, path, putAt, shape, strokes, way, word, type Mark } from './ink';
import { bent, block, bookBlock, sheet, type DrawnFace } from './sheets';
import { between, flat, nearness, plus, type P2, type P3 } from './space';

/** A thing as it stands when it is done, and its parts as they come together. */
export interface ProjectPlate {
  readonly finished: Mark;
  readonly apart: Mark;
}
/** A board with its covering. */
const covered = (at: P3, w: number, d: number, h: number, face: DrawnFace = 'printed'): Mark =>
  block(at, w, d, h, { top: 'paper', sides: 'paper', face });
/** Words to the right of a part, with a line to it; words of one drawing begin in one column. */
const named = (at: P3, text: string, column: number): Mark => {
  const [x, y] = flat(at);
  return all(leader([x - 6, y], [column - 4, y]), word([column, y + 4], text));
};
/** Broken lines up and down through the corners of parts that come together. */
const risers = (corners: readonly (readonly [number, number])[], low: number, high: number): Mark =>
  strokes(
    corners.map(([x, y]): P3[] => [
      [x, y, low],
      [x, y, high],
    ]),
    'hid',
  );

function notebook(): ProjectPlate {
  const [w, d] = [78, 108] as const;
  const spine = (z: number, h: number): Mark =>
    block([-6, -4, z], 18, d + 8, h, { top: 'green', sides: 'green', face: 'cloth' });
  const finished = all(
    covered([-4, -4, 0], w + 8, d + 8, 4),
    bookBlock([0, 0, 4], w, d, 22),
    block([-6, -4, 0], 5, d + 8, 30, { top: 'green', sides: 'green' }),
    covered([-4, -4, 26], w + 8, d + 8, 4),
    spine(26.2, 4),
  );
  const at = { low: 0, leaf: 20, block: 34, top: 74, board: 92, cover: 118 };
  const apart = all(
    risers(
      [
        [0, 0],
        [w, 0],
        [w, d],
      ],
      0,
      at.cover,
    ),
    block([-4, -4, at.low], w + 8, d + 8, 4),
    sheet([0, 0, at.leaf], w, d, 'plain'),
    bookBlock([0, 0, at.block], w, d, 22),
    sheet([0, 0, at.top], w, d, 'plain'),
    block([-4, -4, at.board], w + 8, d + 8, 4),
    sheet([6, -10, at.cover], w + 8, d + 20, 'printed'),
    bent(
      [
        [-30, -10, at.cover - 4],
        [-8, -10, at.cover - 4],
      ],
      [0, d + 20, 0],
      { top: 'cloth' },
    ),
    word([flat([-19, d + 10, at.cover])[0] - 8, flat([-19, d + 10, at.cover])[1] - 6], 'spine cloth', 'middle'),
    ...(
      [
        [at.cover, 'covering', w + 14],
        [at.board + 2, 'board', w + 4],
        [at.top, 'endpaper', w],
        [at.block + 11, 'text block', w],
        [at.leaf, 'endpaper', w],
        [at.low + 2, 'board', w + 4],
      ] as const
    ).map(([z, text, x]) => named([x, d * 0.62, z], text, flat([w + 16, d + 10, 0])[0])),
  );
  return { finished, apart };
}

/** Standing leaves in zigzag. */
function zigzag([x, y, z]: P3, count: number, step: number, deep: number, high: number): Mark {
  const points = Array.from({ length: count + 1 }, (_, i): P3 => [x + i * step, y + (i % 2 ? deep : 0), z]);
  const leaves = points.slice(1).map((end, i) => ({ start: points[i]!, end }));
  return all(
    ...leaves
      .sort((a, b) => nearness(a.start) + nearness(a.end) - nearness(b.start) - nearness(b.end))
      .map(({ start, end }) => shape([start, end, plus(end, [0, 0, high]), plus(start, [0, 0, high])], 'paper')),
  );
}
/** A board on its edge, its printed cover towards the reader. */
const upright = (x: number, y: number, w: number, high: number, lean: number, face: boolean): Mark => {
  const on = (u: number, v: number): P3 => [x + w * lean * u, y + w * u, high * v];
  const corners = [on(0, 0), on(1, 0), on(1, 1), on(0, 1)];
  const spots = between(0.12, 0.88, 5).flatMap((u, i) =>
    between(i % 2 ? 0.08 : 0.14, i % 2 ? 0.86 : 0.92, 6).map((v) => flat(on(u, v))),
  );
  return all(
    shape(
      corners.map((p) => plus(p, [4, 0, 0])),
      'edge',
    ),
    shape(corners, face ? 'paper' : 'board'),
    face && dots(spots),
  );
};
function accordion(): ProjectPlate {
  const high = 74;
  const finished = all(
    upright(0, -4, 60, high + 6, 0.22, true),
    zigzag([8, 0, 3], 6, 17, 50, high),
    upright(106, -4, 60, high + 6, 0.22, true),
  );
  const apart = all(
    upright(-70, -4, 60, high + 6, 0.22, false),
    zigzag([-18, 0, 3], 6, 17, 50, high),
    upright(120, -4, 60, high + 6, 0.22, false),
    way([-44, -6, 40], [-20, -6, 40]),
    way([116, -6, 40], [92, -6, 40]),
    word(flat([-60, -12, -16]), 'board', 'middle'),
    word(flat([30, -12, -16]), 'folded strip', 'middle'),
    word(flat([122, -12, -16]), 'board', 'middle'),
  );
  return { finished, apart };
}

function slipCase(): ProjectPlate {
  const [w, d, h] = [70, 100, 28] as const;
  // open to the right
  const finished = all(
    block([0, 0, 0], w, d, h, { top: 'paper', sides: 'paper', face: 'printed' }),
    shape(
      [
        [w, 3, 3],
        [w, d - 3, 3],
        [w, d - 3, h - 3],
        [w, 3, h - 3],
      ],
      'edge',
    ),
    bookOut(w, d, h),
    way([w + 66, 20, h], [w + 40, 20, h]),
  );
  const lift = 34;
  const apart = all(
    block([0, 0, 0], w, d, 4),
    risers(
      [
        [0, 0],
        [w, 0],
        [w, d],
      ],
      4,
      lift + 44,
    ),
    block([-22, 0, 16], 4, d, h, { sides: 'board' }),
    block([0, d + 14, 16], w, 4, h, { sides: 'board' }),
    block([0, -24, 16], w, 4, h, { sides: 'board' }),
    block([0, 0, lift + 44], w, d, 4),
    all(leader(flat([26, 0, 2]), [flat([26, 0, 2])[0] - 6, 20]), word([flat([26, 0, 2])[0] - 6, 32], 'side', 'middle')),
    named([w, d * 0.5, lift + 46], 'side', flat([w, d + 14, 0])[0] + 14),
    named([w, d + 16, 30], 'top', flat([w, d + 14, 0])[0] + 14),
    word([flat([w / 2, -24, 25])[0], flat([w / 2, -24, 25])[1] + 2], 'bottom', 'middle'),
    word([flat([-22, 0, 16])[0] - 4, flat([-22, 0, 16])[1] + 14], 'back', 'end'),
    // what makes it a case: the end that stays open
    bookBlock([w + 34, 12, 20], 40, d - 24, 20),
    way([w + 32, 40, 34], [w + 6, 40, 34]),
    word([flat([w + 60, 0, 4])[0], flat([w + 60, 0, 4])[1] + 8], 'book', 'middle'),
  );
  return { finished, apart };
}
/** A board of a book bound in cloth, to be told from a case that is covered in paper. */
const bound = (at: P3, w: number, d: number, h: number): Mark =>
  block(at, w, d, h, { top: 'green', sides: 'green', face: 'cloth' });
const bookOut = (w: number, d: number, h: number): Mark =>
  all(
    bound([w - 2, 4, 3], 34, d - 8, 3),
    bookBlock([w - 2, 7, 6], 31, d - 14, h - 12),
    bound([w - 2, 4, h - 6], 34, d - 8, 3),
    // its spine, outwards
    bound([w + 30, 4, 3], 2.5, d - 8, h - 6),
  );

/** Four walls on a base, open at the top. */
function tray([x, y, z]: P3, w: number, d: number, h: number, fill: 'board' | 'paper', t = 4): Mark {
  const side = { top: fill, sides: fill === 'board' ? 'board' : 'paper' } as const;
  return all(
    block([x, y, z], w, d, t, side),
    block([x, y + d - t, z + t], w, t, h - t, side),
    block([x, y + t, z + t], t, d - 2 * t, h - t, side),
    block([x + w - t, y + t, z + t], t, d - 2 * t, h - t, side),
    block([x, y, z + t], w, t, h - t, side),
  );
}
function lidded(): ProjectPlate {
  const [w, d, h] = [96, 74, 40] as const;
  const finished = all(
    tray([0, 0, 0], w, d, h, 'paper'),
    speckleFront([0, 0, 0], w, d),
    risers(
      [
        [0, 0],
        [w, 0],
        [w, d],
      ],
      h,
      h + 34,
    ),
    block([-5, -5, h + 34], w + 10, d + 10, 24, { top: 'paper', sides: 'paper', face: 'printed' }),
    lidSides([-5, -5, h + 34], w + 10, d + 10),
    way([w + 48, 10, h + 40], [w + 48, 10, h + 8]),
  );
  const out = 20;
  const apart = all(
    block([0, d + out, 6], w, 4, h - 4, { sides: 'board' }),
    block([-out - 4, 4, 6], 4, d - 8, h - 4, { sides: 'board' }),
    block([0, 0, 0], w, d, 4),
    block([w + out, 4, 6], 4, d - 8, h - 4, { sides: 'board' }),
    block([0, -out - 6, -4], w, 4, h - 4, { sides: 'board' }),
    word(flat([w / 2 + 10, d / 2 + 10, 4]), 'base', 'middle'),
    word(flat([w / 2 + 4, d + out, 22]), 'wall', 'middle'),
    word([flat([w + out + 4, d / 2, 6])[0] + 20, flat([w + out + 4, d / 2, 6])[1] + 8], 'wall'),
    word([flat([-out - 4, 4, 6])[0] - 6, flat([-out - 4, 4, 6])[1] + 2], 'wall', 'end'),
    word(flat([w / 2, -out - 8, 10]), 'wall', 'middle'),
  );
  return { finished, apart };
}
/** The printed covering of a lid's walls, one row of dots and another between them. */
const lidSides = ([x, y, z]: P3, w: number, d: number): Mark =>
  dots([
    ...between(7, w - 7, 11).map((u, i) => flat([x + u, y, z + (i % 2 ? 7 : 16)])),
    ...between(7, d - 7, 8).map((v, i) => flat([x + w, y + v, z + (i % 2 ? 7 : 16)])),
  ]);
const speckleFront = ([x, y, z]: P3, w: number, d: number): Mark => {
  const spots: P2[] = [
    ...between(8, w - 8, 8).flatMap((u, i): P2[] => [
      flat([x + u, y, z + (i % 2 ? 12 : 22)]),
      flat([x + u, y, z + (i % 2 ? 30 : 36)]),
    ]),
    ...between(8, d - 8, 6).flatMap((v, i): P2[] => [
      flat([x + w, y + v, z + (i % 2 ? 12 : 22)]),
      flat([x + w, y + v, z + (i % 2 ? 30 : 36)]),
    ]),
  ];
  return {
    svg: `<path class="d" d="${spots.map(([px, py]) => `M${px.toFixed(1)} ${py.toFixed(1)}h0`).join('')}"/>`,
    reach: [],
  };
};

function portfolio(): ProjectPlate {
  const [w, d] = [76, 100] as const;
  // a bow over the fore-edge, and a loose tie that hangs from an edge
  const bow = (at: P3): Mark =>
    putAt(
      all(
        path('M0 0L-2-9M0 0L-5 13M0 0L7 12', 'none', 'way', []),
        path('M0 0C-7-10-19-8-17-1C-15 5-5 4 0 0C7-10 19-8 17-1C15 5 5 4 0 0Z', 'green', 'way', [
          [-18, -9],
          [18, 13],
        ]),
      ),
      at,
    );
  const tie = (at: P3, side: 1 | -1): Mark =>
    putAt(
      path(`M0 0C${side * 9}-3 ${side * 12} 5 ${side * 20} 4S${side * 26} 12 ${side * 34} 10`, 'none', 'way', [
        [0, -3],
        [side * 34, 12],
      ]),
      at,
    );
  const finished = all(
    covered([0, 0, 0], w, d, 4),
    block([0, 0, 0], 4, d, 14, { top: 'green', sides: 'green' }),
    shape(
      [
        [4, 0, 4],
        [w, 0, 4],
        [w, 0, 10],
        [4, 0, 10],
      ],
      'edge',
    ),
    shape(
      [
        [w, 0, 4],
        [w, d, 4],
        [w, d, 10],
        [w, 0, 10],
      ],
      'edge',
    ),
    covered([0, 0, 10], w, d, 4),
    bent(
      [
        [0, 0, 14.3],
        [14, 0, 14.3],
      ],
      [0, d, 0],
      { top: 'cloth' },
    ),
    // the ribbon comes through a slit in the board and over its edge
    line(
      [
        [w - 16, d / 2, 14.2],
        [w, d / 2, 14.2],
        [w, d / 2, 9],
      ],
      'way',
    ),
    bow([w, d / 2, 9]),
  );
  const open = all(
    // the cover laid open to the left
    block([-w - 16, 0, 0], w, d, 4, { top: 'paper' }),
    bent(
      [
        [-16, 0, 0.5],
        [0, 0, 0.5],
      ],
      [0, d, 0],
      { top: 'cloth' },
    ),
    block([0, 0, 0], w, d, 4, { top: 'paper' }),
    // flaps at head, tail and fore-edge, standing open
    bent(
      [
        [6, d, 4],
        [6, d + 10, 20],
        [6, d + 16, 38],
      ]
        .map((p) => p as unknown as P3)
        .reverse(),
      [w - 12, 0, 0],
      { top: 'plain', under: 'plain' },
    ),
    bent(
      [
        [w, 6, 4],
        [w + 16, 6, 16],
        [w + 30, 6, 26],
      ],
      [0, d - 12, 0],
      { top: 'plain', under: 'plain' },
    ),
    sheet([8, 8, 5], w - 16, d - 16, 'plain'),
    strokes(
      between(0.2, 0.8, 6).map((v): P3[] => [
        [16, 8 + (d - 16) * v, 5],
        [w - 18, 8 + (d - 16) * v, 5],
      ]),
    ),
    bent(
      [
        [6, 0, 4],
        [6, -12, 18],
        [6, -18, 34],
      ].map((p) => p as unknown as P3),
      [w - 12, 0, 0],
      { top: 'plain', under: 'plain' },
    ),
    tie([-w - 16, d / 2, 3], -1),
    tie([w, d / 2, 3], 1),
    word(flat([-w / 2 - 16, -14, -8]), 'cover', 'middle'),
    word(flat([w / 2 + 4, -22, -16]), 'flaps', 'middle'),
    line(
      [
        [w / 2 - 6, -18, 0],
        [w / 2 - 6, -14, 8],
      ],
      'thin',
    ),
  );
  return { finished, apart: open };
}

export const PROJECT_PLATES: Readonly<Record<ProjectId, () => ProjectPlate>> = {
  notebook,
  accordion,
  'slip-case': slipCase,
  'lidded-box': lidded,
  portfolio,
};
