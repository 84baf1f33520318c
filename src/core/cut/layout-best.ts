/** Plans in the making: sheets until every piece is cut, and the best of all that were offered. */
import type { InTurns } from '../base/turns';
import { treeText, type Pattern, type Tree } from './layout-tree';
import type { Cuttable } from './layout-units';

export interface SheetsTaken {
  readonly tree: Tree;
  readonly times: number;
}

export type ChoosePattern = (left: readonly number[]) => InTurns<Pattern>;

/** Sheets until every piece is cut; each pattern as often as the pieces left allow. Undefined past `most` sheets. */
export function* cutAll(
  demand: readonly number[],
  choose: ChoosePattern,
  most: number,
): InTurns<SheetsTaken[] | undefined> {
  let left = demand;
  let sheets = 0;
  const plan: SheetsTaken[] = [];
  while (left.some((n) => n > 0)) {
    const { tree, counts } = yield* choose(left);
    const times = Math.min(...counts.map((n, k) => (n > 0 ? Math.floor(left[k]! / n) : Infinity)));
    if (!Number.isFinite(times)) return undefined;
    plan.push({ tree, times });
    if ((sheets += times) > most) return undefined;
    left = left.map((n, k) => n - times * counts[k]!);
  }
  return plan;
}

/** Equal sheets as one, cut so many times. */
export function grouped(patterns: readonly Pattern[]): SheetsTaken[] {
  const times = new Map<string, SheetsTaken>();
  for (const { tree } of patterns) {
    const text = treeText(tree);
    times.set(text, { tree, times: (times.get(text)?.times ?? 0) + 1 });
  }
  return [...times.values()];
}

const sheetsOf = (plan: readonly SheetsTaken[]): number => plan.reduce((sum, { times }) => sum + times, 0);

/** Fewer sheets, then fewer different ones, then the bigger offcut to keep. */
export class Best {
  plan: readonly SheetsTaken[] = [];
  sheets = Infinity;
  private offcut = 0;

  constructor(private readonly room: Cuttable) {}

  offer(plan: readonly SheetsTaken[] | undefined): void {
    if (!plan) return;
    const sheets = sheetsOf(plan);
    if (sheets > this.sheets || (sheets === this.sheets && plan.length > this.plan.length)) return;
    const offcut = Math.max(...plan.map(({ tree }) => biggestOffcut(tree, this.room.w, this.room.h)));
    if (sheets === this.sheets && plan.length === this.plan.length && offcut <= this.offcut) return;
    [this.plan, this.sheets, this.offcut] = [plan, sheets, offcut];
  }
}

function biggestOffcut(tree: Tree, w: number, h: number): number {
  if (tree.kind === 'piece') return 0;
  if (tree.kind === 'offcut') return w * h;
  const { axis, at, first, second } = tree;
  return axis === 'x'
    ? Math.max(biggestOffcut(first, at, h), biggestOffcut(second, w - at, h))
    : Math.max(biggestOffcut(first, w, at), biggestOffcut(second, w, h - at));
}
