/**
 * Plans in which each sheet is cut by whichever rule fills it best. What "best" counts is corrected from plan to plan:
 * a piece that ended on poorly filled sheets is worth more in the next, so it is placed while sheets are still open to
 * it (sequential value correction, after Mukhacheva; from memory).
 */
import type { InTurns } from '../base/turns';
import { cutAll, type Best, type ChoosePattern } from './layout-best';
import { piecesHeld } from './layout-bound';
import { fillSheet, RULES, type StepBudget } from './layout-fill';
import type { Pattern, Tree } from './layout-tree';
import type { PieceKind, Cuttable } from './layout-units';

const MOST_PASSES = 12;

/** Offers plans to `best` until one reaches `bound` or the steps run out. `seen` are patterns met before. */
export function* tryMixtures(
  kinds: readonly PieceKind[],
  room: Cuttable,
  seen: readonly Tree[],
  bound: number,
  best: Best,
  steps: StepBudget,
): InTurns<undefined> {
  const areaOf = (counts: readonly number[]): number => counts.reduce((sum, n, k) => sum + n * kinds[k]!.area, 0);
  const known = seen.map((tree): Pattern => {
    const counts = piecesHeld(tree, kinds);
    return { tree, counts, area: areaOf(counts) };
  });
  const demand = kinds.map(({ count }) => count);
  let worth = kinds.map(({ area }) => area);
  for (let pass = 0; pass < MOST_PASSES && steps.left > 0 && best.sheets > bound; pass += 1) {
    const used: Pattern[] = [];
    const press = worth.map((one, k) => one / kinds[k]!.area);
    const worthOf = ({ counts }: Pattern): number => counts.reduce((sum, n, k) => sum + n * worth[k]!, 0);
    const rules = pass === 0 ? RULES : RULES.filter((_, i) => i % 3 === pass % 3);
    const choose: ChoosePattern = function* (left) {
      const filled: Pattern[] = [];
      for (const rule of rules) {
        if (steps.left <= 0) break;
        filled.push(fillSheet(kinds, left, room, rule, steps, press));
        yield;
      }
      const all = [...filled, ...known.filter(({ counts }) => counts.every((n, k) => n <= left[k]!))];
      const chosen =
        all.length === 0
          ? fillSheet(kinds, left, room, RULES[0]!, { left: Infinity })
          : all.reduce((a, b) => (worthOf(b) > worthOf(a) ? b : a));
      used.push(chosen);
      return chosen;
    };
    best.offer(yield* cutAll(demand, choose, best.sheets));
    const whole = room.w * room.h;
    worth = worth.map((one, k) => {
      const held = used.reduce((sum, { counts }) => sum + counts[k]!, 0);
      if (held === 0) return one;
      const poor = used.reduce((sum, { counts, area }) => sum + (counts[k]! * whole) / area, 0) / held;
      return one * 0.5 + 0.5 * kinds[k]!.area ** 1.02 * poor;
    });
  }
  return undefined;
}
