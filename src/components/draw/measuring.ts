/** What is measured at a bench: a coat and a smear on the scale, a strip that is pushed. */
import { pointing } from './hands';
import { all, putAt, put, shape, strokes, way, type Mark } from './ink';
import { display, kitchenScale } from './paste';
import { bent, block, coat } from './sheets';
import { between, type P3 } from './space';

/** A board on the kitchen scale, bare or with its coat on it. */
const boardOnScale = (brushed: boolean): Mark =>
  all(
    kitchenScale(),
    block([4, 2, 19], 84, 58, 4, { top: 'board', sides: 'edge' }),
    brushed ? coat([4, 2, 23], 84, 58, 1) : all(),
    display(),
  );

/** The same board before it is brushed and after. */
export const weighCoat = (): Mark => all(put(boardOnScale(false), [0, 0]), put(boardOnScale(true), [164, 0]));

/** A piece of foil with a ragged edge and a smear on it, on the scale. */
export const weighSmear = (): Mark => {
  const torn = (from: P3, to: P3): P3[] =>
    between(0, 1, 9).map((t, i): P3 => [
      from[0] + (to[0] - from[0]) * t + (i % 2 ? 1.6 : -1.2),
      from[1] + (to[1] - from[1]) * t + (i % 3 ? 1.4 : -1.6),
      from[2],
    ]);
  const z = 19.6;
  const foil = [
    ...torn([16, 13, z], [76, 13, z]),
    ...torn([77, 15, z], [75, 51, z]),
    ...torn([73, 52, z], [18, 51, z]),
    ...torn([16, 49, z], [15, 15, z]),
  ];
  const smear = between(0, 1.93 * Math.PI, 22).map((a, i): P3 => [
    46 + 21 * Math.cos(a) + 2 * Math.sin(i * 2.1),
    32 + 9 * Math.sin(a) + 1.5 * Math.sin(i * 1.3),
    z,
  ]);
  return all(
    kitchenScale(),
    shape(foil, 'paper'),
    strokes([
      [
        [20, 44, z],
        [28, 47, z],
        [34, 45, z],
      ],
      [
        [66, 18, z],
        [71, 24, z],
        [70, 30, z],
      ],
      [
        [21, 18, z],
        [25, 23, z],
      ],
    ]),
    shape(smear, 'glue'),
    strokes(
      [28, 33, 37].map((y, i): P3[] => [
        [34 + 2 * i, y, z],
        [58 - 3 * i, y, z],
      ]),
      'shine',
    ),
    display(),
  );
};

/** A pasted strip on a board, pushed along by a fingertip: behind it the wet track, and in broken lines where it lay. */
export const pushStrip = (): Mark =>
  all(
    block([0, 0, 0], 150, 70, 8, { top: 'board', sides: 'edge' }),
    shape(
      [
        [96, 24, 8],
        [122, 24, 8],
        [122, 48, 8],
        [96, 48, 8],
      ],
      'glue',
      'bare',
    ),
    strokes(
      [
        [
          [96, 24, 8],
          [122, 24, 8],
          [122, 48, 8],
          [96, 48, 8],
        ],
      ],
      'hid',
    ),
    bent(
      [
        [18, 22, 12],
        [24, 22, 9.4],
        [32, 22, 8.6],
        [100, 22, 8.6],
      ],
      [0, 28, 0],
      { top: 'printed', under: 'glued' },
    ),
    putAt(put(pointing, [0, 0], -44), [96, 33, 9]),
    way([84, 9, 8], [34, 9, 8]),
  );
