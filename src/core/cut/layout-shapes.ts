/** Selections of the pieces, and the smallest rectangles that straight-through cuts can part each from. */
import type { InTurns } from '../base/turns';
import type { StepBudget } from './layout-fill';
import { fits, type PieceKind, type Cuttable, type PieceWay } from './layout-units';

/** A rectangle, and the piece or the two halves that make it. */
export interface Block {
  readonly w: number;
  readonly h: number;
  readonly of:
    | { readonly k: number; readonly way: PieceWay }
    | { readonly axis: 'x' | 'y'; readonly first: Block; readonly second: Block };
}

/** Selections as numbers in mixed radix: how many of each kind. */
export interface Selections {
  readonly size: number;
  readonly step: readonly number[];
  readonly counts: (code: number) => number[];
}

/** Selections looked at in one turn. */
export const TURN = 16;

const MOST_SELECTIONS = 20_000;

/** Undefined when there are too many. */
export function selectionsOf(kinds: readonly PieceKind[]): Selections | undefined {
  const step: number[] = [];
  let size = 1;
  for (const { count } of kinds) {
    step.push(size);
    size *= count + 1;
    if (size > MOST_SELECTIONS) return undefined;
  }
  return { size, step, counts: (code) => kinds.map(({ count }, k) => Math.floor(code / step[k]!) % (count + 1)) };
}

/** Calls `see` with every part of a selection that is not empty, all of it last. */
export function eachPart(counts: readonly number[], step: readonly number[], see: (part: number) => void): void {
  const taken = counts.map(() => 0);
  let code = 0;
  for (;;) {
    let k = 0;
    while (k < counts.length && taken[k] === counts[k]) {
      code -= taken[k]! * step[k]!;
      taken[k] = 0;
      k += 1;
    }
    if (k === counts.length) return;
    taken[k]! += 1;
    code += step[k]!;
    see(code);
  }
}

/** Ways to part all selections in two: what it costs to look at each. */
export const pairsOf = (kinds: readonly PieceKind[]): number =>
  kinds.reduce((product, { count }) => (product * (count + 1) * (count + 2)) / 2, 0.5);

/** Every selection's smallest rectangles within the room; empty where it does not fit. Undefined when the steps run out. */
export function* shapesOf(
  kinds: readonly PieceKind[],
  room: Cuttable,
  all: Selections,
  steps: StepBudget,
): InTurns<Block[][] | undefined> {
  if (pairsOf(kinds) > steps.left) return undefined;
  const shapes: Block[][] = [[]];
  for (let code = 1; code < all.size; code += 1) {
    const counts = all.counts(code);
    const found: Block[] = [];
    shapes.push(found);
    const area = counts.reduce((sum, n, k) => sum + n * kinds[k]!.area, 0);
    steps.left -= 1;
    if (!fits({ w: area / room.h, h: 1 }, room)) continue;
    const alone = counts.findIndex((_, k) => all.step[k] === code);
    if (alone >= 0) for (const way of kinds[alone]!.ways) keep(found, { ...way, of: { k: alone, way } });
    eachPart(counts, all.step, (part) => {
      const rest = code - part;
      steps.left -= 1;
      if (part > rest) return;
      for (const a of shapes[part]!)
        for (const b of shapes[rest]!) {
          steps.left -= 2;
          const [besideW, belowH] = [a.w + b.w, a.h + b.h];
          const [besideH, belowW] = [Math.max(a.h, b.h), Math.max(a.w, b.w)];
          if (fits({ w: besideW, h: besideH }, room))
            keep(found, { w: besideW, h: besideH, of: { axis: 'x', first: a, second: b } });
          if (fits({ w: belowW, h: belowH }, room))
            keep(found, { w: belowW, h: belowH, of: { axis: 'y', first: a, second: b } });
        }
    });
    if (steps.left < 0) return undefined;
    if (code % TURN === 0) yield;
  }
  return shapes;
}

/** Adds a shape unless another is as small both ways, and drops those that it makes needless. */
function keep(found: Block[], shape: Block): void {
  if (found.some(({ w, h }) => w <= shape.w && h <= shape.h)) return;
  for (let i = found.length - 1; i >= 0; i -= 1)
    if (found[i]!.w >= shape.w && found[i]!.h >= shape.h) found.splice(i, 1);
  found.push(shape);
}
