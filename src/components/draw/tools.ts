/** Tools, each with what touches the work at the origin and its handle up the page. */
import { all, line2, path, shape2, standsOff, strokes2, way2, word, type Mark } from './ink';
import { between, type P2 } from './space';

/** A flat paste brush; `wide` at its bristles, which are dry, wet at their tips, or loaded so that they drip. */
export function brush(wide: number, carries: 'nothing' | 'tip' | 'loaded' = 'loaded'): Mark {
  const half = wide / 2;
  const hairs = between(-0.8, 0.8, Math.max(3, Math.round(wide / 5)));
  return all(
    path(`M-3.500-34C-6-50-3-66-3.500-96Q0-101 3.500-96C3-66 6-50 3.500-34Z`, 'board', 'line', [
      [-6, -34],
      [6, -100],
    ]),
    path(`M${-half} -25V-38H${half}V-25Z`, 'edge', 'line', [
      [-half, -38],
      [half, -25],
    ]),
    shape2(
      [
        [-half, -25],
        [-half - 2, -3],
        [-half + 1, 0],
        [half - 1, 0.5],
        [half + 2, -3],
        [half, -25],
      ],
      'paper',
    ),
    carries !== 'nothing' && wetBristles(half, carries === 'tip' ? 4 : 16),
    strokes2(
      hairs.map((t): P2[] => [
        [half * t * 0.9, -24],
        [half * t * 1.05, -9],
      ]),
    ),
    line2(
      [
        [-half, -31],
        [half, -31],
      ],
      'thin',
    ),
  );
}

/** Glue on the lower end of the bristles, so high up. */
const wetBristles = (half: number, high: number): Mark => {
  const out = half + (2 * (25 - high)) / 22;
  return shape2(
    [
      [-out, -high],
      [-half - 2, -3],
      [-half + 1, 0],
      [half - 1, 0.5],
      [half + 2, -3],
      [out, -high],
      [out - half, -high - (high > 8 ? 3 : 0)],
    ],
    'glue',
  );
};
/** A round brush for a fine line. */
export const smallBrush: Mark = all(
  path('M-2.500-26C-5-44-2-60-1-94Q0-97 1-94C2-60 5-44 2.500-26Z', 'board', 'line', [
    [-4, -26],
    [4, -96],
  ]),
  path('M-3.500-15L-3-27H3L3.500-15Z', 'edge', 'line', [
    [-4, -27],
    [4, -15],
  ]),
  path('M-3.500-15C-5-8-3-3 0 0C3-3 5-8 3.500-15Z', 'paper', 'line', [
    [-5, -15],
    [5, 0],
  ]),
  path('M-3.800-7C-3-3-1-1 0 0C1-1 3-3 3.800-7Z', 'glue', 'line', []),
);

/** A hand roller, seen so that its barrel lies across. */
export const roller: Mark = all(
  path('M-28 0H-35V-24Q-35-28-31-28H-2V-44', 'none', 'line', [
    [-35, -44],
    [30, 6],
  ]),
  path('M-6-44C-8-60-5-80-5-98Q0-103 5-98C5-80 8-60 6-44Z', 'board', 'line', [
    [-7, -102],
    [7, -44],
  ]),
  path('M-26-9H26C31-9 31 9 26 9H-26C-31 9-31-9-26-9Z', 'paper', 'line', [
    [-30, -9],
    [30, 9],
  ]),
  path('M-26 1H29C28.500 6 28 9 26 9H-26C-28 9-29 6-29.200 1Z', 'glue', 'thin', []),
  path('M26-9C21-9 21 9 26 9', 'none', 'line', []),
  strokes2([
    [
      [-22, -4],
      [-10, -4],
    ],
    [
      [-2, -5],
      [12, -5],
    ],
  ]),
);

/** A bone folder: flat, rounded at one end, pointed at the other. */
export const folder: Mark = all(
  path('M0 0C-6-6-7-14-6.500-24L-5-78C-4-86 4-86 5-78L6.500-24C7-14 6-6 0 0Z', 'paper', 'line', [
    [-7, -84],
    [7, 0],
  ]),
  line2(
    [
      [-2.5, -14],
      [-1.5, -74],
    ],
    'thin',
  ),
);

/** A knife: a flat blade, cut off aslant to a point, in a handle with a collar. */
export const knife: Mark = all(
  path('M0 0L-11-15V-38H0Z', 'paper', 'line', [
    [-11, -38],
    [0, 0],
  ]),
  // the ground edge, and where a dull length is broken off
  strokes2([
    [
      [-2, -6],
      [-10, -17],
    ],
    [
      [-11, -24],
      [0, -14],
    ],
    [
      [-11, -33],
      [0, -23],
    ],
  ]),
  path('M-13-38H2L3-46H-14Z', 'edge', 'line', [
    [-14, -46],
    [3, -38],
  ]),
  path('M-14-46C-16-62-15-78-13-92Q-6-98 2-92C4-78 5-62 3-46Z', 'board', 'line', [
    [-16, -96],
    [5, -46],
  ]),
  path('M-9-56H-2V-72H-9Z', 'edge', 'thin', []),
  strokes2([
    [
      [-8, -60],
      [-3, -60],
    ],
    [
      [-8, -64],
      [-3, -64],
    ],
    [
      [-8, -68],
      [-3, -68],
    ],
  ]),
);

/** A soft, wide brush that smooths without crushing. */
export const softBrush: Mark = all(
  path('M-30-30H30V-44Q30-48 26-48H-26Q-30-48-30-44Z', 'board', 'line', [
    [-30, -48],
    [30, -30],
  ]),
  path('M-30-30L-33-4Q-20 2 0 1Q20 2 33-4L30-30Z', 'paper', 'line', [
    [-33, -30],
    [33, 2],
  ]),
  strokes2(
    between(-0.9, 0.9, 13).map((t): P2[] => [
      [29 * t, -29],
      [32 * t, -5],
    ]),
  ),
);

/** A domestic iron, from the side, its sole level at the origin, its handle open for a hand. */
export const iron: Mark = all(
  path('M-20-26C-20-52-8-58 4-58H28C40-58 42-46 40-26H31C32-42 31-48 25-48H6C-5-48-10-42-10-26Z', 'board', 'line', [
    [-20, -58],
    [42, -26],
  ]),
  path('M-54 0C-46-18-24-28-4-28H32C40-28 42-18 43 0Z', 'edge', 'line', [
    [-54, -28],
    [43, 0],
  ]),
  standsOff(path('M-54 0H43V-6H-50Z', 'ink', 'line', [])),
);

/** What stands out of a liquid: the handle of a spoon, or a whisk, with a ring where it goes in. */
export const spoonIn: Mark = all(
  path('M-3-6L-2.500-92Q0-96 2.500-92L3-6', 'board', 'line', [
    [-8, -95],
    [8, 0],
  ]),
  path('M-9-4C-9-9 9-9 9-4C9 1-9 1-9-4Z', 'glue', 'bare', []),
  path('M-9-4C-9 1 9 1 9-4', 'none', 'shine', []),
);
export const whiskIn: Mark = all(
  path('M-3.500-44L-3-96Q0-99 3-96L3.500-44Z', 'edge', 'line', [
    [-4, -98],
    [4, -44],
  ]),
  path(
    'M-3-44C-9-36-12-24-12-12M3-44C9-36 12-24 12-12M-1.500-44C-5-34-6-22-5-12M1.500-44C5-34 6-22 5-12',
    'none',
    'line',
    [
      [-13, -44],
      [13, 0],
    ],
  ),
  path('M-15-11C-15-5 15-5 15-11', 'none', 'shine', []),
);

/** A clock face, its hand having gone round by `share`, and under it how long that is in words. */
export function clock(share: number, words: string): Mark {
  const angle = 2 * Math.PI * share;
  const at = (r: number, turn: number): P2 => [
    Math.round(100 * r * Math.sin(turn)) / 100,
    Math.round(-100 * r * Math.cos(turn)) / 100,
  ];
  const end = at(13, angle);
  return all(
    path('M-16 0A16 16 0 1 1 16 0A16 16 0 1 1-16 0Z', 'paper', 'line', [
      [-16, -20],
      [16, 16],
    ]),
    path(`M0 0V-13A13 13 0 ${share > 0.5 ? 1 : 0} 1 ${end[0]} ${end[1]}Z`, 'green', 'bare', []),
    strokes2([0, 1, 2, 3].map((quarter) => [at(13, (quarter * Math.PI) / 2), at(16, (quarter * Math.PI) / 2)])),
    line2([[0, 0], end]),
    line2([
      [0, 0],
      [0, -10],
    ]),
    word([0, 32], words, 'middle'),
  );
}

/** A clock whose hand goes round, for a time that the words beside it tell. */
export function timeGoesBy(words: string): Mark {
  const tick = (turn: number): P2[] => [
    [12 * Math.sin(turn), -12 * Math.cos(turn)],
    [15 * Math.sin(turn), -15 * Math.cos(turn)],
  ];
  return all(
    path('M-16 0A16 16 0 1 1 16 0A16 16 0 1 1-16 0Z', 'paper', 'line', [
      [-24, -26],
      [24, 16],
    ]),
    strokes2(between(0, 11, 12).map((hour) => tick((hour * Math.PI) / 6))),
    line2([
      [0, -11],
      [0, 0],
      [6, 4],
    ]),
    way2([-15, -17], [20, -11], 12),
    word([0, 32], words, 'middle'),
  );
}

/** A moon, for what is left until the next day. */
export const night: Mark = all(
  path('M4-14.500A15 15 0 1 0 4 14.500A18 18 0 0 1 4-14.500Z', 'paper', 'line', [
    [-15, -15],
    [4, 15],
  ]),
  word([-2, 32], 'until the next day', 'middle'),
);

/** A drop about to fall, its point up. */
export const drop: Mark = path('M0-11C4-4 6-1 6 3A6 6 0 0 1-6 3C-6-1-4-4 0-11Z', 'water', 'line', [
  [-6, -11],
  [6, 9],
]);
