/** The search for a plan of few sheets: every rule, some mixtures of them, and for small jobs all there is. */
import { areaBound, heldBy, oneKindBound, patternBound, weighedBound } from './sheet-layout-bound';
import { fewestSheets } from './sheet-layout-exact';
import { fillSheet, RULES, type Steps } from './sheet-layout-fill';
import { treeText, type Pattern, type Tree } from './sheet-layout-tree';
import type { Kind, Room } from './sheet-layout-units';

/** Steps allowed, each about ten nanoseconds on a desk computer. "Calibrated": to keep common jobs well under 50 ms. */
const ALLOWED = { rules: 1_500_000, mixtures: 1_000_000, bound: 1_500_000, outright: 1_500_000 };

export interface Sheets {
  readonly tree: Tree;
  readonly times: number;
}

export interface Found {
  readonly plan: readonly Sheets[];
  readonly sheets: number;
  readonly areaBound: number;
  readonly bound: number;
}

type Choose = (left: readonly number[]) => Pattern;

/** Sheets until every piece is cut; each pattern as often as the pieces left allow. Undefined past `most` sheets. */
function cutAll(demand: readonly number[], choose: Choose, most: number): Sheets[] | undefined {
  let left = demand;
  let sheets = 0;
  const plan: Sheets[] = [];
  while (left.some((n) => n > 0)) {
    const { tree, counts } = choose(left);
    const times = Math.min(...counts.map((n, k) => (n > 0 ? Math.floor(left[k]! / n) : Infinity)));
    if (!Number.isFinite(times)) return undefined;
    plan.push({ tree, times });
    if ((sheets += times) > most) return undefined;
    left = left.map((n, k) => n - times * counts[k]!);
  }
  return plan;
}

const sheetsOf = (plan: readonly Sheets[]): number => plan.reduce((sum, { times }) => sum + times, 0);

/** Fewer sheets, then fewer different ones, then the bigger offcut to keep. */
class Best {
  plan: readonly Sheets[] = [];
  sheets = Infinity;
  private offcut = 0;

  constructor(private readonly room: Room) {}

  offer(plan: readonly Sheets[] | undefined): void {
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
  if (best.sheets > bound) tryMixtures(kinds, room, seen, best);
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

/** For each sheet the fullest of all rules' and of the patterns met before; `spare` passes over the fullest few. */
function tryMixtures(kinds: readonly Kind[], room: Room, seen: readonly Tree[], best: Best): void {
  const steps: Steps = { left: ALLOWED.mixtures };
  const known = seen.map((tree): Pattern => {
    const counts = heldBy(tree, kinds);
    return { tree, counts, area: counts.reduce((sum, n, k) => sum + n * kinds[k]!.area, 0) };
  });
  const fullest: Choose = (left) => {
    const filled = RULES.filter(() => steps.left > 0).map((rule) => fillSheet(kinds, left, room, rule, steps));
    const all = [...filled, ...known.filter(({ counts }) => counts.every((n, k) => n <= left[k]!))];
    if (all.length === 0) return fillSheet(kinds, left, room, RULES[0]!, { left: Infinity });
    return all.reduce((a, b) => (b.area > a.area ? b : a));
  };
  best.offer(
    cutAll(
      kinds.map(({ count }) => count),
      fullest,
      best.sheets,
    ),
  );
}

function grouped(patterns: readonly Pattern[]): Sheets[] {
  const times = new Map<string, Sheets>();
  for (const { tree } of patterns) {
    const text = treeText(tree);
    times.set(text, { tree, times: (times.get(text)?.times ?? 0) + 1 });
  }
  return [...times.values()];
}
