/**
 * Fewest sheets that any plan can do with. Each bound weighs the pieces so that no sheet can hold more than a known
 * weight; the best of them counts. Pieces that may turn weigh what they weigh in their lighter way.
 *
 * Weighing by length × length with a dual feasible function on each (Fekete & Schepers 2001; from memory): a function
 * u with Σ u(xᵢ) ≤ 1 whenever Σ xᵢ ≤ 1. "No two of these lie side by side" is the simplest of them.
 */
import type { InTurns } from '../base/turns';
import type { StepBudget } from './layout-fill';
import { bestPattern, tableOf } from './layout-pattern';
import type { Tree } from './layout-tree';
import type { PieceKind, Cuttable } from './layout-units';

/** No plan needs fewer sheets than the area of the pieces fills. */
export const areaBound = (kinds: readonly PieceKind[], room: Cuttable): number =>
  up(kinds.reduce((sum, { area, count }) => sum + area * count, 0) / (room.w * room.h));

/** Up to whole sheets; a hair above a whole number is rounding, not a piece. */
const up = (sheets: number): number => Math.ceil(sheets - 1e-9);

type Weigh = (length: number, whole: number) => number;

const plainly: Weigh = (length, whole) => length / whole;
/** nothing under `least` counts; what leaves less than `least` beside it counts as the whole */
const noneUnder =
  (least: number): Weigh =>
  (length, whole) =>
    length > whole - least ? 1 : length >= least ? length / whole : 0;
/** rounds down to k-ths, by (k + 1)-ths; with k = 1 what is longer than half counts as the whole, and nothing else */
const inParts =
  (k: number): Weigh =>
  (length, whole) => {
    const parts = ((k + 1) * length) / whole;
    return Math.abs(parts - Math.round(parts)) < 1e-9 ? length / whole : Math.floor(parts) / k;
  };

function weighs(kinds: readonly PieceKind[], whole: number, side: 'w' | 'h'): readonly Weigh[] {
  const lengths = new Set(kinds.flatMap(({ ways }) => ways.map((way) => way[side])));
  const least = [...lengths].filter((length) => length * 2 <= whole).sort((a, b) => a - b);
  return [plainly, ...[1, 2, 3, 4].map(inParts), ...least.slice(0, 12).map(noneUnder)];
}

/** No plan needs fewer sheets than this, by pieces too large to lie beside each other. */
export function weighedBound(kinds: readonly PieceKind[], room: Cuttable): number {
  const { w, h } = room;
  let best = 0;
  for (const across of weighs(kinds, w, 'w'))
    for (const down of weighs(kinds, h, 'h')) {
      let sum = 0;
      for (const { ways, count } of kinds)
        sum += count * Math.min(...ways.map((way) => across(way.w, w) * down(way.h, h)));
      best = Math.max(best, up(sum));
    }
  return best;
}

/** No more than so many of one kind fit on a sheet however it is cut. */
export function* oneKindBound(kinds: readonly PieceKind[], room: Cuttable, steps: StepBudget): InTurns<number> {
  let bound = 0;
  for (const kind of kinds) {
    const table = tableOf([kind], room);
    const best = table && bestPattern([kind], [1], room, table, steps);
    bound = Math.max(bound, best && best.worth > 0 ? Math.ceil(kind.count / best.worth) : 1);
    yield;
  }
  return bound;
}

const ROUNDS = 12;

/**
 * Pieces weighed so as to press where sheets are hard to fill: any weights bound, and each round makes those heavier
 * that the best pattern left out. `seen` gets the patterns met on the way.
 */
export function* patternBound(
  kinds: readonly PieceKind[],
  room: Cuttable,
  target: number,
  steps: StepBudget,
  seen: (tree: Tree) => void,
): InTurns<number> {
  const table = tableOf(kinds, room);
  if (!table) return 0;
  let worth = kinds.map(({ area }) => area);
  const shown = kinds.map(() => 0);
  let best = 0;
  for (let round = 0; round < ROUNDS && best < target; round += 1) {
    const found = bestPattern(kinds, worth, room, table, steps);
    yield;
    if (!found || found.worth <= 0) break;
    seen(found.tree);
    best = Math.max(best, up(worth.reduce((sum, one, k) => sum + one * kinds[k]!.count, 0) / found.worth));
    const held = piecesHeld(found.tree, kinds);
    const share = kinds.map(({ count }, k) => (shown[k]! += held[k]!) / ((round + 1) * count));
    const middle = share.reduce((sum, one) => sum + one, 0) / share.length;
    worth = worth.map((one, k) => one * Math.exp((0.5 * (middle - share[k]!)) / Math.max(middle, 1e-9) / (round + 2)));
  }
  return best;
}

/** How many of each kind a pattern holds. */
export function piecesHeld(tree: Tree, kinds: readonly PieceKind[]): number[] {
  const held = kinds.map(() => 0);
  const walk = (part: Tree): void => {
    if (part.kind === 'piece') held[kinds.findIndex(({ row }) => row === part.piece)]! += 1;
    if (part.kind === 'cut') [part.first, part.second].forEach(walk);
  };
  walk(tree);
  return held;
}
