/** `npm run bench`: what a cutting plan costs. The aim is well under 50 ms for a kit of twelve kinds, so that typing is not held up. */
import { cutPiecesIn, stocksIn } from '../core/support/rows';
import { bench, describe } from 'vitest';
import { cutAnswer } from '../../src/core/cut/answer';
import { DEFAULT_CUT } from '../../src/core/cut/plan';

/** Twelve kinds of piece out of one board: invented, of the sizes that cases and boxes ask for. */
const TWELVE = [
  ...['150x216x2~height', '15x216x1~height', '148x210x2~height', '180x250x1~height', '60x200x2~height'],
  ...['90x120x3~width', '300x216x1~either', '40x333x2~height', '77x123x1~either', '205x148x2~either'],
  ...['110x110x1~either', '50x90x4~either'],
].map((piece, i) => `1~piece ${i + 1}~${piece}`);

let turn = 0;
const typed = (kits: number, rows: readonly string[]) => ({
  ...DEFAULT_CUT,
  stocks: stocksIn(`board~700x${1000 + (turn++ % 10)}~long~5`),
  pieces: cutPiecesIn(rows.join('_')),
  kits,
  kerf: 1,
});

describe('a cutting plan', () => {
  for (const kits of [1, 3, 7, 10])
    bench(`twelve kinds, ${kits} kits`, () => {
      cutAnswer(typed(kits, TWELVE));
    });
  bench('four kinds, 30 kits', () => {
    cutAnswer(typed(30, TWELVE.slice(0, 4)));
  });
  bench('as the page opens', () => {
    cutAnswer(DEFAULT_CUT);
  });
});
