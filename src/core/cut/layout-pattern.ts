/**
 * The most worth that one sheet can be cut into when every kind may be cut as often as one likes, by dynamic
 * programming over the distances at which a cut can be of use (Gilmore & Gomory 1966; from memory).
 */
import type { StepBudget } from './layout-fill';
import { OFFCUT, within, type Tree } from './layout-tree';
import type { PieceKind, Cuttable } from './layout-units';

/** More distances than this on one side, and the table is too big to be worth it. */
const MOST_DISTANCES = 600;

export interface Distances {
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  /** index of the longest distance that is at most xs[i] − xs[j] */
  readonly restX: readonly Int16Array[];
  readonly restY: readonly Int16Array[];
  readonly cost: number;
}

/** The distances, or nothing when there are too many. They depend on the pieces, not on what they are worth. */
export function tableOf(kinds: readonly PieceKind[], room: Cuttable): Distances | undefined {
  const xs = distances(kinds, room.w, 'w');
  const ys = xs && distances(kinds, room.h, 'h');
  if (!ys) return undefined;
  return { xs, ys, restX: rests(xs), restY: rests(ys), cost: (xs.length * ys.length * (xs.length + ys.length)) / 4 };
}

/** All sums of the pieces' lengths along one side that fit in it, each kind as often as it is asked for. */
function distances(kinds: readonly PieceKind[], whole: number, side: 'w' | 'h'): readonly number[] | undefined {
  let sums = new Set([0]);
  for (const { ways, count } of kinds) {
    const lengths = [...new Set(ways.map((way) => way[side]))];
    const next = new Set(sums);
    for (const length of lengths) {
      for (const sum of [...next])
        for (let n = 1; n <= count && sum + n * length <= whole; n += 1) {
          next.add(sum + n * length);
          if (next.size > MOST_DISTANCES) return undefined;
        }
    }
    sums = next;
  }
  return [...sums].sort((a, b) => a - b);
}

const rests = (all: readonly number[]): Int16Array[] =>
  all.map((whole, i) => {
    const rest = new Int16Array(i + 1);
    for (let j = 0, at = i; j <= i; j += 1) {
      while (all[at]! > whole - all[j]!) at -= 1;
      rest[j] = at;
    }
    return rest;
  });

/** The best pattern and its worth; `worth[k]` is one piece of kind k, never negative. Undefined when the steps run out. */
export function bestPattern(
  kinds: readonly PieceKind[],
  worth: readonly number[],
  room: Cuttable,
  { xs, ys, restX, restY, cost }: Distances,
  steps: StepBudget,
): { readonly worth: number; readonly tree: Tree } | undefined {
  if ((steps.left -= cost) < 0) return undefined;
  const rows = ys.length;
  const value = new Float64Array(xs.length * rows);
  /** kind and way as (k·2 + way)·4, a cut along x at j as j·4 + 1, along y as j·4 + 2, nothing as 3 */
  const choice = new Int32Array(xs.length * rows).fill(3);
  for (let i = 0; i < xs.length; i += 1)
    for (let j = 0; j < rows; j += 1) {
      const here = i * rows + j;
      let [best, how] = [0, 3];
      kinds.forEach(({ ways }, k) =>
        ways.forEach(({ w, h }, n) => {
          if (worth[k]! > best && w <= xs[i]! && h <= ys[j]!) [best, how] = [worth[k]!, (k * 2 + n) * 4];
        }),
      );
      for (let a = 1; a < i && xs[a]! * 2 <= xs[i]!; a += 1) {
        const sum = value[a * rows + j]! + value[restX[i]![a]! * rows + j]!;
        if (sum > best) [best, how] = [sum, a * 4 + 1];
      }
      for (let b = 1; b < j && ys[b]! * 2 <= ys[j]!; b += 1) {
        const sum = value[i * rows + b]! + value[i * rows + restY[j]![b]!]!;
        if (sum > best) [best, how] = [sum, b * 4 + 2];
      }
      value[here] = best;
      choice[here] = how;
    }
  const build = (i: number, j: number, w: number, h: number): Tree => {
    const how = choice[i * rows + j]!;
    if (how === 3) return OFFCUT;
    const n = how >> 2;
    if ((how & 3) === 0) {
      const { row, ways } = kinds[n >> 1]!;
      const way = ways[n & 1]!;
      return within({ kind: 'piece', piece: row, way }, way.w, way.h, w, h);
    }
    const along = (how & 3) === 1;
    const at = along ? xs[n]! : ys[n]!;
    const first = along ? build(n, j, at, h) : build(i, n, w, at);
    const second = along ? build(restX[i]![n]!, j, w - at, h) : build(i, restY[j]![n]!, w, h - at);
    return { kind: 'cut', axis: along ? 'x' : 'y', at, first, second };
  };
  const last = [xs.length - 1, rows - 1] as const;
  return { worth: value[last[0] * rows + last[1]]!, tree: build(...last, room.w, room.h) };
}
