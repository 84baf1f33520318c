/** What is measured at a bench: a coat and a smear on the scale, a strip that is pushed. */
import { pointing } from './hands';
import { all, leader, putAt, put, shape, strokes, way, word, type Mark } from './ink';
import { display, kitchenScale } from './paste';
import { bent, block, coat } from './sheets';
import { between, flat, levelFace, type P3 } from './space';

/** Two moments side by side, each with its words under it. */
const beside = (first: Mark, second: Mark, words: readonly [string, string]): Mark =>
  all(
    put(first, [0, 0]),
    put(second, [170, 0]),
    word([52, 52], words[0], 'middle'),
    word([222, 52], words[1], 'middle'),
  );

/** A board on the kitchen scale, bare or with its coat on it. */
const boardOnScale = (brushed: boolean): Mark =>
  all(
    kitchenScale(),
    block([4, 2, 19], 84, 58, 4, { top: 'board', sides: 'edge' }),
    brushed ? coat([4, 2, 23], 84, 58, 1) : all(),
    display(brushed ? '64 g' : '61 g'),
  );

/** The same board before it is brushed and after. */
export const weighCoat = (): Mark => beside(boardOnScale(false), boardOnScale(true), ['bare', 'just brushed']);

/** A piece of foil with a smear on it, on the scale: wet, and when the water has gone. */
export const weighSmear = (): Mark => beside(smearOnScale(true), smearOnScale(false), ['wet', 'the next day, dry']);

function smearOnScale(wet: boolean): Mark {
  const z = 19.6;
  // foil never lies flat: its edges stand up a little
  const foil = bent(
    [
      [8, 10, z + 7],
      [14, 10, z + 1],
      [30, 10, z],
      [62, 10, z],
      [78, 10, z + 1],
      [85, 10, z + 8],
    ],
    [0, 44, 0],
  );
  const foilCorner = flat([80, 50, z + 3]);
  const smear = between(0, 1.93 * Math.PI, 22).map((a, i): P3 => [
    46 + 23 * Math.cos(a) + 2 * Math.sin(i * 2.1),
    32 + 12 * Math.sin(a) + 1.5 * Math.sin(i * 1.3),
    z,
  ]);
  return all(
    kitchenScale(),
    foil,
    strokes([
      [
        [18, 46, z],
        [26, 51, z],
        [34, 47, z],
      ],
      [
        [68, 14, z],
        [74, 22, z],
        [72, 30, z],
      ],
      [
        [19, 14, z],
        [24, 20, z],
      ],
    ]),
    shape(smear, wet ? 'glue' : 'ground', 'thin'),
    wet
      ? strokes(
          [25, 30, 35, 39].map((y, i): P3[] => [
            [32 + 2 * i, y, z],
            [62 - 3 * i, y, z],
          ]),
          'shine',
        )
      : // dry, it has cracked and shines no more
        strokes([
          [
            [28, 33, z],
            [38, 30, z],
            [44, 34, z],
            [56, 29, z],
            [66, 32, z],
          ],
          [
            [44, 34, z],
            [47, 42, z],
          ],
          [
            [38, 30, z],
            [40, 23, z],
          ],
        ]),
    wet && leader(foilCorner, [foilCorner[0] + 6, foilCorner[1] - 14]),
    wet && word([foilCorner[0] + 8, foilCorner[1] - 17], 'foil'),
    display(wet ? '1.9 g' : '1.1 g'),
  );
}

/** A pasted strip on a board, pushed by its end: first it slides, then it stays where it is and rucks up. */
export const pushStrip = (): Mark =>
  all(
    put(stripOnBoard(true), [0, 0]),
    put(stripOnBoard(false), [162, 0]),
    word([60, 66], 'it still slides', 'middle'),
    word([222, 66], 'it holds: stop the clock', 'middle'),
  );

function stripOnBoard(slides: boolean): Mark {
  const [h, y, deep] = [8, 20, 26] as const;
  const [from, end] = slides ? [12, 84] : [12, 76];
  const ruck: P3[] = between(0, 1, 11).map((t): P3 => [46 + 30 * t, y, h + 0.6 + 15 * Math.sin(Math.PI * t) ** 2]);
  const strip: P3[] = slides
    ? [
        [from, y, h + 0.6],
        [end, y, h + 0.6],
      ]
    : [[from, y, h + 0.6], ...ruck];
  const was = levelFace([end, y, h], 26, deep);
  return all(
    block([0, 0, 0], 116, 66, h, { top: 'board', sides: 'edge' }),
    slides && shape(was, 'glue', 'bare'),
    slides && strokes([[...was]], 'hid'),
    bent(strip, [0, deep, 0], { top: 'printed', under: 'glued' }),
    putAt(put(pointing, [0, 0], -52), [end + 3, y + deep / 2, h + 1]),
    slides && way([66, 8, h], [20, 8, h]),
  );
}
