/**
 * Fills one sheet by a rule: pieces in some order, each into the rectangle that suits it best, and what is left of
 * that rectangle cut in two one way or the other. No rule is good for every job, so all are tried.
 */
import { OFFCUT, type Pattern, type Tree } from './layout-tree';
import { SLACK, type PieceKind, type Cuttable, type PieceWay } from './layout-units';

export interface Rule {
  readonly order: 'area' | 'long' | 'short' | 'wide' | 'high' | 'any';
  readonly suits: 'area' | 'side';
  readonly split: 'short' | 'long' | 'small' | 'large' | 'x' | 'y';
}

const ORDERS = ['area', 'long', 'short', 'wide', 'high', 'any'] as const;
const SPLITS = ['long', 'short', 'large', 'small', 'x', 'y'] as const;
export const RULES: readonly Rule[] = ORDERS.flatMap((order) =>
  (['area', 'side'] as const).flatMap((suits) => SPLITS.map((split) => ({ order, suits, split }))),
);

/** Steps allowed and steps taken: counted in work, never in time, so that every machine gives one answer. */
export interface StepBudget {
  left: number;
}

/** An open rectangle, or what has become of it. */
interface Node {
  readonly w: number;
  readonly h: number;
  piece?: { readonly k: number; readonly way: PieceWay };
  cut?: { readonly axis: 'x' | 'y'; readonly at: number; readonly first: Node; readonly second: Node };
}

/** Fills one sheet piece by piece by one rule, with straight cuts from edge to edge. */
export function fillSheet(
  kinds: readonly PieceKind[],
  left: readonly number[],
  room: Cuttable,
  rule: Rule,
  steps: StepBudget,
  press?: readonly number[],
): Pattern {
  const root: Node = { w: room.w, h: room.h };
  const open: Node[] = [root];
  const counts = kinds.map(() => 0);
  const order = sorted(kinds, rule.order, press);
  let area = 0;
  const put = (group: readonly number[]): boolean => {
    let [best, bestNode, bestK] = [Infinity, -1, -1];
    let bestWay: PieceWay | undefined;
    for (const k of group) {
      if (counts[k]! >= left[k]!) continue;
      for (const way of kinds[k]!.ways) {
        steps.left -= open.length;
        for (let i = 0; i < open.length; i += 1) {
          const { w, h } = open[i]!;
          if (way.w > w || way.h > h) continue;
          const score = rule.suits === 'area' ? w * h - way.w * way.h : Math.min(w - way.w, h - way.h);
          if (score < best) [best, bestNode, bestK, bestWay] = [score, i, k, way];
        }
      }
    }
    if (!bestWay) return false;
    const node = open[bestNode]!;
    open.splice(bestNode, 1);
    place(node, bestK, bestWay, rule, open);
    counts[bestK]! += 1;
    area += kinds[bestK]!.area;
    return true;
  };
  const groups = rule.order === 'any' ? [order] : order.map((k) => [k]);
  for (const group of groups) while (steps.left > 0 && put(group));
  return { tree: treeOf(root, kinds), counts, area };
}

const KEYS: Readonly<Record<Exclude<Rule['order'], 'any'>, (way: PieceWay) => number>> = {
  area: ({ w, h }) => w * h,
  long: ({ w, h }) => Math.max(w, h),
  short: ({ w, h }) => Math.min(w, h),
  wide: ({ w }) => w,
  high: ({ h }) => h,
};

function sorted(kinds: readonly PieceKind[], order: Rule['order'], press?: readonly number[]): number[] {
  const all = kinds.map((_, k) => k);
  if (order === 'any') return all;
  const keys = kinds.map(({ ways: [way], area }, k) => [way ? KEYS[order](way) * (press?.[k] ?? 1) : 0, area] as const);
  return all.sort((a, b) => keys[b]![0] - keys[a]![0] || keys[b]![1] - keys[a]![1] || a - b);
}

/** Puts the piece into the node's top left corner and opens what is left beside and below it. */
function place(node: Node, k: number, way: PieceWay, { split }: Rule, open: Node[]): void {
  const xFirst = firstCutIsX(split, node.w - way.w, node.h - way.h, way);
  let near = node;
  for (const axis of xFirst ? (['x', 'y'] as const) : (['y', 'x'] as const)) {
    const { w, h } = near;
    const at = axis === 'x' ? way.w : way.h;
    if ((axis === 'x' ? w : h) - at <= SLACK) continue;
    const first: Node = axis === 'x' ? { w: at, h } : { w, h: at };
    const second: Node = axis === 'x' ? { w: w - at, h } : { w, h: h - at };
    near.cut = { axis, at, first, second };
    open.push(second);
    near = first;
  }
  near.piece = { k, way };
}

function firstCutIsX(split: Rule['split'], beside: number, below: number, { w, h }: PieceWay): boolean {
  if (split === 'x' || split === 'y') return split === 'x';
  // A cut along x first leaves the whole height beside the piece; along y first, the whole width below it.
  if (split === 'short') return beside < below;
  if (split === 'long') return beside >= below;
  const [xLargest, yLargest] = [beside * (h + below), below * (w + beside)];
  return split === 'large' ? xLargest >= yLargest : xLargest < yLargest;
}

function treeOf(node: Node, kinds: readonly PieceKind[]): Tree {
  if (node.piece) return { kind: 'piece', piece: kinds[node.piece.k]!.row, way: node.piece.way };
  if (!node.cut) return OFFCUT;
  const { axis, at, first, second } = node.cut;
  return { kind: 'cut', axis, at, first: treeOf(first, kinds), second: treeOf(second, kinds) };
}
