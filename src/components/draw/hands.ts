/**
 * Hands, as simple outlines. Each finger is a stroke with a round end, drawn twice: in ink and, a little narrower, in the
 * colour of the plate. A hand stands at the origin with its fingers up and is turned to where it is needed.
 */
import { all, line2, path, standsOff, strokes2, type Mark } from './ink';
import type { P2 } from './space';

export function finger(points: readonly P2[], wide: number, nail = false): Mark {
  const d = points.map(([x, y], i) => `${i ? 'L' : 'M'}${x} ${y}`).join('');
  const [tip, before] = [points.at(-1)!, points.at(-2)!];
  const long = Math.hypot(tip[0] - before[0], tip[1] - before[1]);
  const [ux, uy] = [(tip[0] - before[0]) / long, (tip[1] - before[1]) / long];
  const r = wide * 0.27;
  const at = (along: number, across: number): P2 => [
    tip[0] + ux * along - uy * across,
    tip[1] + uy * along + ux * across,
  ];
  return all(
    {
      svg: `<path class="fo" stroke-width="${wide + 2.6}" d="${d}"/><path class="fi" stroke-width="${wide}" d="${d}"/>`,
      reach: points,
    },
    nail && line2([at(-3, r), at(0.5, r), at(2, 0), at(0.5, -r), at(-3, -r)], 'thin'),
  );
}

const cuff = (y: number, half: number): Mark =>
  all(
    path(`M${-half - 3} ${y}h${2 * half + 6}v13h${-2 * half - 6}z`, 'skin', 'line', [
      [-half - 3, y],
      [half + 3, y + 13],
    ]),
    line2(
      [
        [-half - 3, y + 4],
        [half + 3, y + 4],
      ],
      'thin',
    ),
  );

/** A right hand laid flat, palm down, fingers up the page; the tip of the middle finger at the origin. */
export const flatHand: Mark = (() => {
  const fingers: readonly (readonly P2[])[] = [
    [
      [12.5, 33],
      [15, 14],
      [16, 8],
    ],
    [
      [4.5, 30],
      [5.5, 8],
      [6, 1],
    ],
    [
      [-4, 30],
      [-4.5, 8],
      [-4.5, 0],
    ],
    [
      [-12, 33],
      [-14, 14],
      [-15, 6],
    ],
  ];
  return standsOff(
    all(
      cuff(84, 11),
      finger(
        [
          [-12, 50],
          [-22, 38],
          [-27, 29],
        ],
        9.5,
        true,
      ),
      path('M-17 33C-19 48-14 60-11 68L-11 86H11L11 68C15 58 18 46 17 32', 'skin', 'line', [
        [-17, 33],
        [17, 86],
      ]),
      ...fingers.map((one) => finger(one, 8.4, true)),
      path('M-15.5 34.5C-9 30 9 30 16 34.5L14 46H-14Z', 'skin', 'bare', []),
      path('M-13.4 48C-16 50-17 51-18 52', 'skin', 'bare', []),
      strokes2(
        [
          [
            [-8, 33],
            [-8.2, 29],
          ],
          [
            [0.3, 31],
            [0.4, 27],
          ],
          [
            [8.6, 32],
            [9, 28],
          ],
        ],
        'line',
      ),
    ),
  );
})();

/** A hand that holds something long, which runs up and down through the origin; thumb to the left, arm to the lower right. */
export const grip: Mark = standsOff(
  all(
    put2(cuff(0, 10), 51, 47, -36),
    path('M4-16C18-18 28-8 33 4L60 42 44 54 22 26C14 27 6 24 2 18Z', 'skin', 'line', [
      [2, -18],
      [62, 56],
    ]),
    finger(
      [
        [16, 14],
        [6, 16],
        [-4, 15],
      ],
      7.6,
    ),
    finger(
      [
        [18, 6],
        [6, 8],
        [-5, 7],
      ],
      8.2,
    ),
    finger(
      [
        [18, -3],
        [6, -1],
        [-5, -2],
      ],
      8.4,
    ),
    finger(
      [
        [16, -11],
        [6, -10],
        [-4, -11],
      ],
      8.2,
    ),
    path('M11-14C20-12 24-4 25 6L20 16 11 17.500Z', 'skin', 'bare', []),
    finger(
      [
        [20, 18],
        [9, 25],
        [1, 29],
      ],
      8.8,
      true,
    ),
    path('M14 12L26 8 30 22 19 20Z', 'skin', 'bare', []),
  ),
);
function put2(mark: Mark, x: number, y: number, degrees: number): Mark {
  const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  return {
    svg: `<g transform="translate(${x} ${y})rotate(${degrees})">${mark.svg}</g>`,
    reach: mark.reach.map(([px, py]) => [x + px * c - py * s, y + px * s + py * c]),
  };
}

/** A hand that takes an edge between thumb and fingers, from below; the edge at the origin. What goes behind the sheet, and before it. */
export const pinch: { readonly behind: Mark; readonly front: Mark } = {
  behind: standsOff(
    all(
      finger(
        [
          [18, 26],
          [13, 8],
          [10, -4],
        ],
        8,
      ),
      finger(
        [
          [12, 24],
          [7, 4],
          [4, -8],
        ],
        8.4,
      ),
    ),
  ),
  front: standsOff(
    all(
      put2(cuff(0, 10), 24, 69, -11),
      path('M2 20C-2 32 4 44 10 52L14 72 34 68 30 44C30 32 26 22 20 18Z', 'skin', 'line', [
        [-2, 18],
        [36, 84],
      ]),
      finger(
        [
          [20, 30],
          [20, 20],
          [17, 10],
        ],
        7.6,
      ),
      path('M14 24H26L25 36H14Z', 'skin', 'bare', []),
      finger(
        [
          [4, 36],
          [-3, 18],
          [-2, 2],
        ],
        9.4,
        true,
      ),
      path('M-1 34L12 22 14 40 8 46Z', 'skin', 'bare', []),
    ),
  ),
};

/** One finger held out, its tip at the origin, the others folded. */
export const pointing: Mark = standsOff(
  all(
    put2(cuff(0, 10), 19, 71, -11),
    path('M-5 30C-9 42 0 56 6 62L9 74 29 70 27 52C31 44 30 34 26 28Z', 'skin', 'line', [
      [-8, 28],
      [32, 88],
    ]),
    finger(
      [
        [22, 36],
        [21, 28],
      ],
      8,
    ),
    finger(
      [
        [14, 35],
        [13, 26],
      ],
      8.4,
    ),
    path('M8 34H27V46H6Z', 'skin', 'bare', []),
    finger(
      [
        [3, 40],
        [1, 22],
        [0, 5],
      ],
      8.8,
      true,
    ),
    path('M-3 38L8 34 9 48H0Z', 'skin', 'bare', []),
    finger(
      [
        [0, 50],
        [6, 43],
        [12, 39],
      ],
      8,
    ),
    path('M-1 50L8 49 10 58H4Z', 'skin', 'bare', []),
  ),
);
