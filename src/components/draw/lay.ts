/** After the glue: lifting, waiting, laying, rubbing down, pressing. */
import { finger, flatHand, grip, pinch, pointing } from './hands';
import { roundBar, TOOL_IN_HAND, wetSponge } from './apply';
import { hob } from './paste';
import {
  all,
  dots,
  leader,
  put,
  putAt,
  path,
  shape,
  standsOff,
  strokes,
  strokes2,
  way,
  way2,
  word,
  type Mark,
} from './ink';
import { bent, block, coat, curledStrip, curlLeft, pane, pot, sheet, waste, weight } from './sheets';
import { clock, folder, iron, night, softBrush } from './tools';
import { between, flat, levelFace, plus, type P2, type P3 } from './space';

const BOARD: P3 = [0, 0, 0];
const [BW, BD, BH] = [100, 66, 7];
const board = (face: Parameters<typeof block>[4] = {}) => block(BOARD, BW, BD, BH, face);
/** A held folder, its rounded end at the origin. */
const heldFolder = all(put(folder, [0, 0], 34), put(grip, [32, -46], 26));

/** Glue or a jar kept warm in a bath of water. */
export const keepWarm = (): Mark =>
  all(
    put(hob(), flat([2, -2, 10])),
    pot([32, 8, 10], 44, 34, { liquid: 'water', full: 0.78, wall: 'edge' }),
    pot([32, 8, 30], 24, 30, { liquid: 'glue', full: 0.6 }),
    putAt(
      all(
        path('M-4 0V-66Q0-70 4-66V0Q0 4-4 0Z', 'paper', 'line', [
          [-4, -70],
          [4, 4],
        ]),
        path('M-1.300 0V-34H1.300V0Z', 'ink', 'bare', []),
        strokes2(
          between(-58, -14, 9).map((y, i): P2[] => [
            [i % 2 ? 1.5 : 0, y],
            [4, y],
          ]),
          'line',
        ),
      ),
      [6, 8, 46],
      8,
    ),
    steam([20, 8, 66]),
    steam([40, 8, 66]),
  );
const steam = (at: P3): Mark =>
  putAt(
    path('M0 0C-5-6 5-10 0-16S5-26 0-32', 'none', 'thin', [
      [-4, 0],
      [4, -32],
    ]),
    at,
  );

/** A hand from the right that holds an edge here: what goes behind the sheet, and before it. */
const fromRight = (at: P3, degrees = -58) => ({
  behind: putAt(pinch.behind, at, degrees, { mirrored: true }),
  front: putAt(pinch.front, at, degrees, { mirrored: true }),
});
const fromLeft = (at: P3, degrees = 58) => ({
  behind: putAt(pinch.behind, at, degrees),
  front: putAt(pinch.front, at, degrees),
});

/** A sheet going down on glass with its face under it. */
export const faceDownOnGlass = (): Mark => {
  const curve = curledStrip([6, 0, 4], 34, 112, 112);
  const hand = fromRight(plus(curve.at(-1)!, [0, 40, 0]), -82);
  return all(
    pane([-12, -12, 0], 134, 92),
    strokes([levelFace([46, 0, 4], 72, 68)], 'hid'),
    hand.behind,
    bent(curve, [0, 68, 0], { top: 'plain', under: 'printed' }),
    hand.front,
    way2(flat([100, -6, 56]), flat([116, -6, 12]), 10),
    named2(plus(curve[10]!, [0, 6, 0]), 'good side', [4, -44]),
    named2([118, 8, 2], 'glass', [flat([118, 8, 0])[0] + 26, flat([118, 8, 0])[1] + 8]),
  );
};
/** A word that stands where there is room for it, a thin line from it to what it names; above it where the word is to its left. */
const named2 = (at: P3, text: string, [x, y]: P2): Mark => {
  const [px, py] = flat(at);
  return px > x
    ? all(leader([px, py], [x + text.length * 6.2 + 2, y - 4]), word([x, y], text))
    : all(leader([px, py], [x - 4, y - 4]), word([x, y], text));
};

/** A word beside the drawing, with a thin line to what it names. */
const called = (at: P3, text: string, x: number, dy = 0): Mark => {
  const [px, py] = flat(at);
  return all(leader([px, py], [x - 4, py + dy]), word([x, py + dy + 4], text));
};

/** The pasted sheet carried by the film it lies on. */
export const liftByFilm = (): Mark => {
  const film = curlLeft([134, 0, 4], 22, 136, 62);
  const wet = curlLeft([124, 8, 5], 12, 104, 46);
  const hand = fromLeft(plus(film[0]!, [0, 20, 0]), 66);
  return all(
    pane([0, -14, 0], 148, 98),
    hand.behind,
    bent(film, [0, 72, 0], { top: 'film', under: 'film' }),
    bent(wet, [0, 56, 0], { top: 'glued', under: 'plain' }),
    hand.front,
    way(plus(film[0]!, [-6, 54, 4]), plus(film[0]!, [-6, 54, 36])),
    called(plus(wet[6]!, [0, 44, 0]), 'wet sheet', flat([104, 72, 64])[0], -30),
    called(plus(film[11]!, [0, 69, 0]), 'film', flat([122, 72, 44])[0], -8),
  );
};

/** The pasted sheet resting, with a clock; `share` of the hour is shown. */
export const relax = (share = 4 / 60): Mark =>
  all(
    waste([0, 0, 0], 110, 74, 24),
    bent(
      Array.from({ length: 18 }, (_, i): P3 => [(i / 17) * 110, 0, 2.2 + 2.2 * Math.sin(i * 1.15)]),
      [0, 74, 0],
      { top: 'glued', under: 'plain' },
    ),
    putAt(clock(share, 'a few minutes'), [112, 74, 56]),
  );

/** One edge down, the rest let down after it. `down` is the share that lies already. */
export const letDown = (down = 0.3, withHand = true): Mark => {
  const long = 124;
  const curve = curledStrip([-12, -10, BH + 0.5], 8 + down * 88, long, 150 * (1 - down) + 6, 8);
  const hand = fromRight(plus(curve.at(-1)!, [0, 46, 0]), -82);
  return all(
    board(),
    // before the hand, on which the arrow would be lost
    way2(flat([112, -10, 52]), flat([122, -10, 12]), 10),
    withHand && hand.behind,
    bent(curve, [0, 86, 0], { top: 'printed', under: 'wet' }),
    withHand && hand.front,
  );
};

/**
 * The sheet held over its place, not touching yet: its left edge low, to go down first, its right edge high. Broken lines fall
 * from its corners to where each will lie.
 */
export const holdOver = (): Mark => {
  const [x, y, w, d] = [-9, -8, 106, 70];
  const [low, high] = [40, 66];
  const hang = between(0, 1, 12).map((t): P3 => [x + w * t, y, low + (high - low) * t - 24 * t * (1 - t)]);
  const place = levelFace([x, y, 0], w, d);
  const falls = (corners: readonly P3[]): Mark =>
    strokes(
      corners.map(([cx, cy]): P3[] => [
        [cx, cy, cx === x ? low : high],
        [cx, cy, 0],
      ]),
      'hid',
    );
  const held = { scale: 0.8 };
  const [left, right] = [plus(hang[0]!, [0, d * 0.6, 0]), plus(hang.at(-1)!, [0, d * 0.45, 0])];
  return all(
    falls([place[2]!, place[3]!]),
    strokes([[...place, place[0]!]], 'hid'),
    block([0, 0, 0], w - 18, d - 16, BH),
    putAt(pinch.behind, left, 84, held),
    putAt(pinch.behind, right, -70, { ...held, mirrored: true }),
    bent(hang, [0, d, 0], { top: 'printed', under: 'glued' }),
    putAt(pinch.front, left, 84, held),
    putAt(pinch.front, right, -70, { ...held, mirrored: true }),
    falls([place[0]!, place[1]!]),
    way([x - 10, y, low - 18], [x - 10, y, 0]),
  );
};

/** Laid, and moved while it still slides, to the corners drawn on the board: behind it the wet track of where it lay. */
export const slideAlong = (): Mark => {
  const [w, d, h, z] = [150, 88, 7, 7.4];
  const [x, y, long, deep, by] = [16, 14, 96, 58, 26];
  const corner = (cx: number, cy: number, sx: number, sy: number): P3[] => [
    [cx + 20 * sx, cy, h],
    [cx, cy, h],
    [cx, cy + 20 * sy, h],
  ];
  const [x1, y1] = [x + by + long, y + deep];
  return all(
    block(BOARD, w, d, h),
    shape(levelFace([x, y, h], long, deep), 'glue', 'thin'),
    strokes([corner(x1 + 3, y - 3, -1, 1), corner(x1 + 3, y1 + 3, -1, -1), corner(x + by - 3, y1 + 3, 1, -1)], 'line'),
    sheet([x + by - 9, y, z], long, deep, 'printed'),
    putAt(put(flatHand, [0, 0], 18), [x + by + 26, y + 34, z]),
    way([x + long + 10, y + deep * 0.3, z], [x1 + 16, y + deep * 0.3, z]),
  );
};

/** A clean sheet that lets the work show through; its left edge is turned up, so that it is seen to be another sheet. */
const cleanSheet = (): Mark =>
  bent(curlLeft([124, -16, BH + 1], 104, 142, 74), [0, 98, 0], { top: 'film', under: 'plain' });

/** The four strokes of rubbing down in their order: to the right, away, to the left, near; and where each goes over the edge. */
const STROKES = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
] as const;
/** Air left under the sheet, in the way of each stroke: how far out and how far to its side, as shares of the sheet. */
const AIR = [
  [0.52, 0.34],
  [0.66, -0.34],
] as const;

/**
 * Rubbed down through a clean sheet, from the middle out over each edge in turn; the blisters of air that stood in a stroke's way
 * are gone after it. `done`: how many of the four strokes, with the part of the one under way.
 */
export const rub = (done = 1): Mark => {
  const [cx, cy, half, deep] = [BW / 2, BD / 2, 54, 36];
  const at = ([u, v]: readonly [number, number], out: number, aside = 0): P3 => [
    cx + half * (u * out + v * aside),
    cy + deep * (v * out + u * aside),
    BH + 1,
  ];
  const under = Math.min(3, Math.max(0, Math.ceil(done) - 1));
  const far = done === 0 ? 0 : (done - under) * 1.04;
  const air = STROKES.flatMap((stroke, i) =>
    AIR.filter(([out]) => i > under || (i === under && out > far)).map(([out, aside]) => at(stroke, out, aside)),
  );
  return all(
    board(),
    sheet([-12, -9, BH + 0.4], 124, 84, 'printed'),
    cleanSheet(),
    ...air.map((place) => putAt(blister, place)),
    ...STROKES.map((stroke) => way(at(stroke, 0.3), at(stroke, stroke[0] ? 1.1 : 1.2))),
    putAt(heldFolder, at(STROKES[under]!, far)),
  );
};
/** Air under a sheet: a low dome, through which its print is still seen. */
const blister: Mark = all(
  path('M-13 2C-8-6 8-6 13 2C6 5-6 5-13 2Z', 'glass', 'thin', [
    [-13, -5],
    [13, 5],
  ]),
  path('M-13 2C-8-6 8-6 13 2', 'none', 'line', []),
);

/** Pressed down with a soft brush, which leaves a raised pattern standing. */
export const pat = (): Mark =>
  all(
    board(),
    sheet([-12, -9, BH + 0.4], 124, 84, 'printed'),
    way([36, 30, BH], [2, 30, BH]),
    way([50, 46, BH], [50, 68, BH]),
    way([44, 20, BH], [44, -4, BH]),
    putAt(all(softBrush, put(grip, [4, -44], 24)), [66, 30, BH]),
  );

/** Under a board and a weight. With blotters they are seen above and below the work. */
export const press = (share = 0.5): Mark =>
  all(
    block([0, 0, 0], 112, 74, 9),
    covered(9),
    block([0, 0, 18], 112, 74, 9),
    weight([32, 22, 27], 50, 32, 22),
    putAt(clock(share, 'half an hour'), [164, 60, 66]),
  );
/** The work that is pressed: a board with its printed covering, seen from its sides. */
const covered = (z: number): Mark =>
  all(
    block([8, 6, z], 94, 60, 9, { top: 'paper', sides: 'paper' }),
    dots([
      ...between(13, 97, 10).map((x, i) => flat([x, 6, z + (i % 2 ? 6 : 3)])),
      ...between(11, 61, 6).map((y, i) => flat([102, y, z + (i % 2 ? 6 : 3)])),
    ]),
  );

/** Between blotters, which stand out all round, and boards; left until the next day. */
export const pressBlotters = (): Mark => {
  const column = flat([112, 74, 0])[0] + 22;
  const soft = (z: number) =>
    all(
      block([-6, -5, z], 122, 84, 6, { top: 'paper', sides: 'ground' }),
      strokes(
        between(-2, 112, 24).map((x, i): P3[] => [
          [x, -5, z + (i % 2 ? 1.5 : 3.5)],
          [x + 2, -5, z + (i % 3 ? 3 : 4.5)],
        ]),
      ),
    );
  return all(
    block([0, 0, 0], 112, 74, 9),
    soft(9),
    covered(15),
    soft(24),
    block([0, 0, 30], 112, 74, 9),
    weight([32, 22, 39], 50, 32, 22),
    putAt(night, [166, 74, 98]),
    called([115, 60, 27], 'blotter', column, -12),
    called([101, 20, 20], 'the work', column, -8),
    called([115, 40, 12], 'blotter', column, 10),
  );
};

/** A wall of a box held square until it has set. */
export const clampSquare = (): Mark =>
  all(
    block([0, 0, 0], 118, 80, 7),
    block([0, 10, 7], 7, 70, 40, { top: 'board', sides: 'board' }),
    block([0, 73, 7], 96, 7, 40, { top: 'board', sides: 'board' }),
    // a square set of steel, one leg along the base and one up the wall
    standsOff(
      all(
        shape(
          [
            [7.5, 40, 7],
            [62, 40, 7],
            [62, 40, 16],
            [17, 40, 16],
            [17, 40, 46],
            [7.5, 40, 46],
          ],
          'ink',
        ),
        strokes(
          [
            ...between(22, 58, 7).map((x): P3[] => [
              [x, 40, 16],
              [x, 40, 12.5],
            ]),
            ...between(20, 42, 5).map((z): P3[] => [
              [17, 40, z],
              [13.5, 40, z],
            ]),
          ],
          'shine',
        ),
      ),
    ),
    putAt(put(pointing, [0, 0], 44, { mirrored: true }), [0, 24, 30]),
    way([-46, 24, 32], [-12, 24, 32]),
  );

/** A film or tissue cut to the sheet, its backing drawn off. */
export const film = (): Mark => {
  const back = curledStrip([20, 0, 1.4], 40, 112, 150);
  const end = back.at(-1)!;
  return all(
    sheet([0, 0, 0], 116, 74, 'plain'),
    bent(
      [
        [6, 5, 0.8],
        [110, 5, 0.8],
      ],
      [0, 64, 0],
      { top: 'glued' },
    ),
    bent(
      [...back].map((p) => plus(p, [-14, 5, 0])),
      [0, 64, 0],
      { top: 'film', under: 'film' },
    ),
    putAt(pinch.front, plus(end, [-14, 20, 0]), 78),
    way([78, -14, 0], [16, -14, 0]),
    called([100, 24, 1], 'sticky film', flat([116, 24, 0])[0] + 10, 18),
    named2(plus(back[11]!, [-14, 60, 0]), 'backing', [
      flat(back[9]!)[0] - 66,
      flat(plus(back[9]!, [0, 60, 0]))[1] - 24,
    ]),
  );
};

/** A dry tissue as large as the sheet lies on its back, and is touched with the tip of an iron through a scrap of paper. */
export const tacked = (): Mark =>
  all(
    sheet([0, 0, 0], 124, 78, 'plain'),
    bent(curlLeft([122, 3, 1.5], 92, 122, 46), [0, 72, 0], { top: 'tissue', under: 'tissue' }),
    sheet([42, 20, 3], 48, 34, 'plain'),
    putAt(all(put(iron, [0, 0], 8, { mirrored: true, scale: 0.9 }), put(roundBar, [-17, -46], 0)), [78, 36, 3]),
    named2([16, 30, 9], 'dry tissue', [-62, 26]),
    named2([54, 24, 3], 'clean paper', [8, 40]),
  );

/** Coated tissue, its dry coat up: a wet sponge makes it sticky as it goes over. */
export const remoistened = (): Mark => {
  const [w, d] = [124, 56] as const;
  const wet = 66;
  return all(
    waste([0, 0, 0], w, d, 18),
    sheet([0, 0, 0], w, d, 'tissue'),
    shape(
      [
        [wet, 0, 0],
        [w, 0, 0],
        [w, d, 0],
        [wet, d, 0],
        [wet - 4, d * 0.6, 0],
        [wet + 2, d * 0.3, 0],
      ],
      'glue',
      'thin',
    ),
    strokes(
      between(0.2, 0.8, 4).map((v): P3[] => [
        [w - 34, d * v, 0],
        [w - 6, d * v, 0],
      ]),
      'shine',
    ),
    way([wet - 10, d * 0.36, 0], [14, d * 0.36, 0]),
    putAt(wetSponge, [wet - 4, 12, 0]),
    named2([20, 6, 0], 'dry coat', [-34, 34]),
    named2([w - 10, d - 8, 0], 'wet again', [flat([w, d, 0])[0] - 8, flat([w, d, 0])[1] - 28]),
  );
};

/** Glue that sticks only to itself: a coat on the back of the sheet, done, and one on the board, under way. */
export const bothFaces = (): Mark => {
  const [w, d] = [84, 60] as const;
  return all(
    waste([0, 0, 0], w, d, 12),
    coat([0, 0, 0], w, d, 1),
    put(all(block([0, 0, 0], w, d, 8), coat([0, 0, 8], w, d, 0.62), putAt(TOOL_IN_HAND.card, [54, 22, 8])), [126, 6]),
    word([40, 46], 'the sheet', 'middle'),
    word([168, 46], 'and the board', 'middle'),
  );
};

/** A stick of glue, rubbed from the middle over the edges. */
export const stick = (): Mark =>
  all(
    waste([0, 0, 0], 112, 74, 22),
    sheet([0, 0, 0], 112, 74, 'plain'),
    ...(
      [
        [44, 84, 52],
        [30, 96, 42],
        [24, 88, 32],
        [36, 88, 22],
      ] as const
    ).map(([from, to, y]) =>
      shape(
        [
          [from, y, 0],
          [to, y + 1, 0],
          [to + 2, y + 8, 0],
          [from - 2, y + 9, 0],
        ],
        'glue',
        'thin',
      ),
    ),
    way([40, 36, 0], [-10, 36, 0]),
    way([56, 58, 0], [56, 86, 0]),
    way([56, 18, 0], [56, -14, 0]),
    putAt(
      all(
        put(
          all(
            path('M-7 0V-14H7V0Q0 3-7 0Z', 'glue', 'line', [
              [-7, 2],
              [7, -14],
            ]),
            path('M-10-12V-82Q0-86 10-82V-12Q0-9-10-12Z', 'paper', 'line', [
              [-10, -84],
              [10, -10],
            ]),
            path('M-10-20Q0-17 10-20M-10-24Q0-21 10-24', 'none', 'thin', []),
          ),
          [0, 0],
          18,
        ),
        put(grip, [18, -58], 12),
      ),
      [92, 37, 0],
    ),
  );

/** Sprayed from a can that is held off and moved across in bands, which begin and end beyond the edges. */
export const spray = (): Mark => {
  const nozzle: P3 = [142, 30, 104];
  const bands = [58, 38, 18].map((y, i): Mark => {
    const ends: [P3, P3] = [
      [-14, y, 0],
      [124, y, 0],
    ];
    return i % 2 ? way(ends[1], ends[0]) : way(...ends);
  });
  return all(
    waste([0, 0, 0], 112, 74, 18),
    sheet([0, 0, 0], 112, 74, 'plain'),
    shape(levelFace([0, 30, 0], 112, 44), 'glue', 'bare'),
    ...bands,
    mist(nozzle),
    putAt(
      put(
        all(
          path('M-2-9H9V7H-2Z', 'ink', 'line', [
            [-2, -9],
            [9, 7],
          ]),
          path('M-9 14C-9 8-4 6 3.500 6C11 6 16 8 16 14Z', 'edge', 'line', []),
          path('M-9 14H16V74Q3.500 79-9 74Z', 'paper', 'line', [
            [-9, 14],
            [16, 78],
          ]),
          path('M-9 24H16M-9 60H16', 'none', 'thin', []),
          // the forefinger goes over the head from behind
          standsOff(
            finger(
              [
                [23, 42],
                [26, 26],
                [25, 10],
                [20, -2],
                [13, -8],
                [5, -10],
              ],
              8.4,
            ),
          ),
          put(grip, [3, 46], -4),
        ),
        [0, 0],
        12,
      ),
      nozzle,
    ),
  );
};
const mist = (from: P3): Mark => {
  const [nx, ny] = flat(plus(from, [-3, 0, 1]));
  const edges: [P3, P3] = [
    [30, 14, 0],
    [74, 44, 0],
  ];
  // spread evenly over the cone: rows farther from the can hold more
  const spots = between(0.16, 1, 9).flatMap((t, row): P2[] =>
    Array.from({ length: 2 + row }, (_, i): P2 => {
      const across = (i + (row % 2 ? 0.3 : 0.7)) / (2 + row);
      const [ex, ey] = flat([30 + 44 * across, 14 + 30 * across, 0]);
      return [nx + (ex - nx) * t, ny + (ey - ny) * t];
    }),
  );
  return all(strokes2(edges.map((edge): P2[] => [[nx, ny], [...flat(edge)]])), dots(spots));
};

/** Set with an iron through a clean sheet. */
export const ironed = (): Mark =>
  all(
    board(),
    sheet([-12, -9, BH + 0.4], 124, 84, 'printed'),
    cleanSheet(),
    putAt(all(put(iron, [0, 0], 8, { scale: 1.2 }), put(roundBar, [22, -60])), [66, 40, BH]),
    way([84, -2, BH], [30, -2, BH]),
  );

/** The three things that every question here is about: a sheet, a coat of glue, a board. */
export const joint = (): Mark => {
  const [w, d, h] = [150, 84, 12];
  const curve = curledStrip([0, 0, h + 3], 62, 156, 108);
  const label = (at: P3, text: string): Mark => {
    const [x, y] = flat(at);
    return all(leader([x, y], [228, y]), word([232, y + 4], text));
  };
  return all(
    block([0, 0, 0], w, d, h),
    bent(
      [
        [0, 0, h + 1.6],
        [w, 0, h + 1.6],
      ],
      [0, d, 0],
      { top: 'glued' },
    ),
    bent(curve, [0, d, 0], { top: 'printed', under: 'plain' }),
    label([curve[12]![0], d * 0.8, curve[12]![2]], 'the sheet'),
    label([w - 8, d * 0.74, h + 2], 'wet glue'),
    label([w, d * 0.16, h / 2], 'the board'),
  );
};
