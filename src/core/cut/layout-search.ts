/** The search for a plan of few sheets: every rule, some mixtures of them, and for small jobs all there is. */
import { Best, cutAll, type Sheets } from './layout-best';
import { areaBound, oneKindBound, patternBound, weighedBound } from './layout-bound';
import { fewestSheets } from './layout-exact';
import { fillSheet, RULES, type Steps } from './layout-fill';
import { tryMixtures } from './layout-mix';
import { treeText, type Pattern, type Tree } from './layout-tree';
import type { Kind, Room } from './layout-units';

/** Steps allowed, some 40 to 150 ns each on a desk computer: chosen so that common jobs stay well under 50 ms. */
const ALLOWED = { rules: 300_000, mixtures: 500_000, bound: 500_000, outright: 120_000 };

export interface Found {
  readonly plan: readonly Sheets[];
  readonly sheets: number;
  readonly areaBound: number;
  readonly bound: number;
}

/** `kits` is the number of equal sets that the kinds' counts make up. Every kind must have a way to lie. */
export function search(kinds: readonly Kind[], room: Room, kits: number): Found {
  const least = areaBound(kinds, room);
  let bound = Math.max(least, weighedBound(kinds, room), oneKindBound(kinds, room, { left: ALLOWED.bound / 3 }));
  const best = new Best(room);
  tryRules(kinds, room, kits, best);
  const seen: Tree[] = [];
  if (best.sheets > bound)
    bound = Math.max(
      bound,
      patternBound(kinds, room, best.sheets, { left: ALLOWED.bound }, (tree) => seen.push(tree)),
    );
  if (best.sheets > bound) tryMixtures(kinds, room, seen, bound, best, { left: ALLOWED.mixtures });
  if (best.sheets > bound) {
    const outright = fewestSheets(kinds, room, { left: ALLOWED.outright });
    if (outright) {
      if (outright.length < best.sheets) best.offer(grouped(outright));
      bound = outright.length;
    }
  }
  return { plan: best.plan, sheets: best.sheets, areaBound: least, bound };
}

/** Every rule for the whole job, and for a part of the kits whose sheets are then cut several times over. */
function tryRules(kinds: readonly Kind[], room: Room, kits: number, best: Best): void {
  const steps: Steps = { left: ALLOWED.rules };
  for (let part = kits; part >= 1; part -= 1) {
    if (kits % part > 0) continue;
    const demand = kinds.map(({ count }) => (count / kits) * part);
    for (const rule of RULES) {
      // The first rule always ends, whatever it takes: there must be a plan.
      const own: Steps = best.sheets === Infinity ? { left: Infinity } : steps;
      if (own.left <= 0) return;
      const plan = cutAll(demand, (left) => fillSheet(kinds, left, room, rule, own), (best.sheets * part) / kits);
      best.offer(plan?.map(({ tree, times }) => ({ tree, times: (times * kits) / part })));
    }
  }
}

function grouped(patterns: readonly Pattern[]): Sheets[] {
  const times = new Map<string, Sheets>();
  for (const { tree } of patterns) {
    const text = treeText(tree);
    times.set(text, { tree, times: (times.get(text)?.times ?? 0) + 1 });
  }
  return [...times.values()];
}
