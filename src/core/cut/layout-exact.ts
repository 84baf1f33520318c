/**
 * Small jobs solved outright. A selection of the pieces that has a smallest rectangle within the sheet fits it; the
 * fewest sheets follow from the ways to part the whole job into such selections.
 */
import { atOnce, type InTurns } from '../base/turns';
import type { StepBudget } from './layout-fill';
import { TURN, eachPart, selectionsOf, shapesOf, type Block } from './layout-shapes';
import { within, type Pattern, type Tree } from './layout-tree';
import type { PieceKind, Cuttable } from './layout-units';

function treeOf({ of, w, h }: Block, outerW: number, outerH: number, kinds: readonly PieceKind[]): Tree {
  if ('k' in of) return within({ kind: 'piece', piece: kinds[of.k]!.row, way: of.way }, w, h, outerW, outerH);
  const { axis, first, second } = of;
  const along = axis === 'x';
  const inner: Tree = along
    ? {
        kind: 'cut',
        axis,
        at: first.w,
        first: treeOf(first, first.w, h, kinds),
        second: treeOf(second, second.w, h, kinds),
      }
    : {
        kind: 'cut',
        axis,
        at: first.h,
        first: treeOf(first, w, first.h, kinds),
        second: treeOf(second, w, second.h, kinds),
      };
  return within(inner, w, h, outerW, outerH);
}

/** The fewest sheets, one pattern for each; undefined when the job is too big for the steps allowed. */
export function* fewestSheets(
  kinds: readonly PieceKind[],
  room: Cuttable,
  steps: StepBudget,
): InTurns<readonly Pattern[] | undefined> {
  const all = selectionsOf(kinds);
  const shapes = all && (yield* shapesOf(kinds, room, all, steps));
  if (!shapes) return undefined;
  const sheets = new Int32Array(all.size).fill(all.size);
  const last = new Int32Array(all.size);
  sheets[0] = 0;
  for (let code = 1; code < all.size; code += 1) {
    if (shapes[code]!.length > 0) {
      [sheets[code], last[code]] = [1, code];
      continue;
    }
    eachPart(all.counts(code), all.step, (part) => {
      steps.left -= 1;
      if (shapes[part]!.length === 0 || sheets[code - part]! + 1 >= sheets[code]!) return;
      [sheets[code], last[code]] = [sheets[code - part]! + 1, part];
    });
    if (steps.left < 0) return undefined;
    if (code % TURN === 0) yield;
  }
  const patterns: Pattern[] = [];
  for (let code = all.size - 1; code > 0; code -= last[code]!) {
    const counts = all.counts(last[code]!);
    const area = counts.reduce((sum, n, k) => sum + n * kinds[k]!.area, 0);
    patterns.push({ tree: treeOf(shapes[last[code]!]![0]!, room.w, room.h, kinds), counts, area });
  }
  return patterns;
}

/** The most worth that can be cut out of one sheet with no more of each kind than `count`; undefined as above. */
export function mostWorth(
  kinds: readonly PieceKind[],
  worth: readonly number[],
  room: Cuttable,
  steps: StepBudget,
): number | undefined {
  const all = selectionsOf(kinds);
  const shapes = all && atOnce(shapesOf(kinds, room, all, steps));
  if (!shapes) return undefined;
  const worths = shapes.map((found, code) =>
    found.length === 0 ? 0 : all.counts(code).reduce((sum, n, k) => sum + n * worth[k]!, 0),
  );
  return Math.max(...worths);
}
