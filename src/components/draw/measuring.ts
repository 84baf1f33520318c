/** What is measured at a bench: a coat and a smear on the scale, a strip that is pushed. */
import { pointing } from './hands';
import { all, putAt, put, way, type Mark } from './ink';
import { display, kitchenScale } from './paste';
import { block, coat, sheet } from './sheets';

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

/** A piece of foil with a smear, on the scale. */
export const weighSmear = (): Mark =>
  all(kitchenScale(), sheet([14, 12, 19.5], 64, 40, 'film'), coat([14, 12, 20], 64, 40, 0.72), display());

/** A pasted strip on a board, pushed along by a fingertip. */
export const pushStrip = (): Mark =>
  all(
    block([0, 0, 0], 140, 70, 8, { top: 'board', sides: 'edge' }),
    sheet([14, 24, 8.4], 104, 22, 'printed'),
    putAt(put(pointing, [0, 0], -14), [112, 34, 9]),
    way([120, 12, 8], [92, 12, 8]),
  );
