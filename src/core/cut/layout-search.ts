/**
 * The search for a plan of few sheets: every rule; for large jobs mixtures of them, then the poorest sheets packed anew; and
 * for small jobs all there is.
 */
import type { InTurns } from '../base/turns';
import { Best, cutAll, grouped, type ChoosePattern, type SheetsTaken } from './layout-best';
import { areaBound, oneKindBound, patternBound, weighedBound } from './layout-bound';
import { fewestSheets } from './layout-exact';
import { fillSheet, RULES, type StepBudget } from './layout-fill';
import { tryMixtures } from './layout-mix';
import type { Tree } from './layout-tree';
import { pairsOf } from './layout-shapes';
import { MOST_REPACKED, repack } from './layout-repack';
import type { PieceKind, Cuttable } from './layout-units';

/** Steps allowed, some 40 to 150 ns each on a desk computer: some 300 ms in all where nothing proves that it may stop sooner. */
const ALLOWED = {
  rules: 300_000,
  bound: 500_000,
  mixtures: 500_000,
  outright: 120_000,
  repack: 6_000_000,
  repackSmall: 1_000_000,
};

/** Of the second repacking, so that it does not try what the first has tried. */
const ANOTHER_SEED = 1001;

export interface Found {
  readonly plan: readonly SheetsTaken[];
  readonly sheets: number;
  readonly areaBound: number;
  readonly bound: number;
}

/** `kits` is the number of equal sets that the kinds' counts make up. Every kind must have a way to lie. */
export function* search(kinds: readonly PieceKind[], room: Cuttable, kits: number): InTurns<Found> {
  const least = areaBound(kinds, room);
  let bound = Math.max(least, weighedBound(kinds, room));
  yield;
  bound = Math.max(bound, yield* oneKindBound(kinds, room, { left: ALLOWED.bound / 3 }));
  const best = new Best(room);
  yield* tryRules(kinds, room, kits, best);
  const seen: Tree[] = [];
  if (best.sheets > bound) {
    const steps = { left: ALLOWED.bound };
    bound = Math.max(bound, yield* patternBound(kinds, room, best.sheets, steps, (tree) => seen.push(tree)));
  }
  const inAll = kinds.reduce((sum, { count }) => sum + count, 0);
  if (inAll > MOST_REPACKED) yield* tryMixtures(kinds, room, seen, bound, best, { left: ALLOWED.mixtures });
  const small = pairsOf(kinds) <= ALLOWED.outright;
  yield* repack(kinds, room, bound, best, { left: small ? ALLOWED.repack / 6 : ALLOWED.repack });
  if (small && best.sheets > bound) {
    const outright = yield* fewestSheets(kinds, room, { left: ALLOWED.outright });
    if (outright) {
      if (outright.length < best.sheets) best.offer(grouped(outright));
      bound = outright.length;
    }
    yield* repack(kinds, room, bound, best, { left: ALLOWED.repack }, ANOTHER_SEED);
  }
  return { plan: best.plan, sheets: best.sheets, areaBound: least, bound };
}

/** Every rule for the whole job, and for a part of the kits whose sheets are then cut several times over. */
function* tryRules(kinds: readonly PieceKind[], room: Cuttable, kits: number, best: Best): InTurns<undefined> {
  const steps: StepBudget = { left: ALLOWED.rules };
  for (let part = kits; part >= 1; part -= 1) {
    if (kits % part > 0) continue;
    const demand = kinds.map(({ count }) => (count / kits) * part);
    for (const rule of RULES) {
      // The first rule always ends, whatever it takes: there must be a plan.
      const own: StepBudget = best.sheets === Infinity ? { left: Infinity } : steps;
      if (own.left <= 0) return undefined;
      const fill: ChoosePattern = function* (left) {
        yield;
        return fillSheet(kinds, left, room, rule, own);
      };
      const plan = yield* cutAll(demand, fill, (best.sheets * part) / kits);
      best.offer(plan?.map(({ tree, times }) => ({ tree, times: (times * kits) / part })));
    }
  }
  return undefined;
}
