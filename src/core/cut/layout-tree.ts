/** A cutting pattern as a tree of straight-through cuts, and the ways to make one. */
import { SLACK, type PieceWay } from './layout-units';

/** A rectangle is one piece exactly, an offcut, or cut in two at `at` (kerf included) from its left or top edge. */
export type Tree =
  | { readonly kind: 'piece'; readonly piece: number; readonly way: PieceWay }
  | { readonly kind: 'offcut' }
  | {
      readonly kind: 'cut';
      readonly axis: 'x' | 'y';
      readonly at: number;
      readonly first: Tree;
      readonly second: Tree;
    };

export const OFFCUT: Tree = { kind: 'offcut' };

/** One sheet's pattern and how many of each kind it holds. */
export interface Pattern {
  readonly tree: Tree;
  readonly counts: readonly number[];
  readonly area: number;
}

/** `inner`, of size w × h, cut out of the top left corner of a rectangle; what is less than `SLACK` is no offcut. */
export function within(inner: Tree, w: number, h: number, outerW: number, outerH: number): Tree {
  const narrow: Tree = outerW - w > SLACK ? { kind: 'cut', axis: 'x', at: w, first: inner, second: OFFCUT } : inner;
  return outerH - h > SLACK ? { kind: 'cut', axis: 'y', at: h, first: narrow, second: OFFCUT } : narrow;
}

/** A text that equal patterns share. */
export function treeText(tree: Tree): string {
  if (tree.kind === 'offcut') return '-';
  if (tree.kind === 'piece') return `${tree.piece}${tree.way.turned ? 't' : ''}`;
  return `${tree.axis}${tree.at}(${treeText(tree.first)},${treeText(tree.second)})`;
}
