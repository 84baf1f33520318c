/**
 * How much of what to mix for a job: the chance of a mix against the share of each part, the widest run of shares that
 * works, and the nearest easy parts. What it is worked out with is the chooser's own judgement of one adhesive, so a
 * mix here and the same mix on the shelf answer alike.
 */
import type { Range } from '../base/quantity';
import { atOnce, type InTurns } from '../base/turns';
import type { Adhesive, Catalogue, WetAdhesive, YesNo } from '../records/records';
import type { Draws, Samples } from './draws';
import { settleJob, type Job } from './job';
import type { Method } from './method';
import { rank } from './ranking';
import { middleLiquid } from './sampling';

/** What can stand in a pot beside PVA, at the strengths that are tried. */
const DILUENTS = [
  ['methylcellulose-2-5', 'methylcellulose-1-5'],
  ['wheat-starch-paste-12', 'wheat-starch-paste-16'],
] as const;
/** Bottled glues that are stretched, the commonest first. */
const BASES = ['pva', 'eva', 'pva-thick'] as const;

export interface RatioPart {
  /** id of an adhesive of the shelf: "pva", "methylcellulose-2-5" */
  readonly of: string;
  /** parts by volume */
  readonly parts: number;
}

/** One mix that was tried. */
export interface Tried {
  /** share of the first part by volume, 0–1 */
  readonly share: number;
  readonly chance: number;
  readonly method: Method;
}

/** Chance against share for two that are mixed. */
export interface RatioCurve {
  /** ids of the shelf: what the share is of, and what the rest is, at the strength that does best */
  readonly of: string;
  readonly with: string;
  readonly points: readonly Tried[];
  readonly best: Tried;
  /** the widest run of shares, from low to high, that do nearly as well as the best; absent where nothing is likely */
  readonly works?: { readonly from: number; readonly to: number };
  /** parts with small whole numbers that lie in that run, nearest to its middle; the best share's nearest otherwise */
  readonly easy: readonly [of: number, rest: number];
}

export interface BestRatio {
  readonly parts: readonly RatioPart[];
  readonly chance: number;
  readonly method: Method;
  /** wet coat, g/m² */
  readonly coat?: Range;
  /** each pair that can be mixed from what is at hand, the best first */
  readonly curves: readonly RatioCurve[];
  /** all three in one pot, where they are at hand and do better than any two */
  readonly three?: { readonly parts: readonly RatioPart[]; readonly chance: number };
}

/** Shares tried: every twentieth, from all of the one to all of the other. */
const STEPS = 20;
/** A share counts as working while its chance is this near the best, and likely at all. Judgements of ours. */
const NEAR_BEST = 0.05;
const LIKELY = 0.55;
/** Parts that a hand measures without thinking, the simplest first. */
const EASY: readonly (readonly [number, number])[] = [
  ...([
    [1, 1],
    [2, 1],
    [1, 2],
    [3, 1],
    [1, 3],
    [3, 2],
    [2, 3],
    [4, 1],
    [1, 4],
    [1, 0],
    [0, 1],
  ] as const),
];
/** Fewer draws than an answer takes: curves are drawn, and their ends are asked anew as answers. */
const DRAWS = 32;
/** Id of a mix while it is tried; never a record's. */
const OWN = 'own-ratio';

/**
 * The best ratio for a job, of what is at hand: `have` holds ids of adhesives and ingredients, and everything is at
 * hand when it is empty. Undefined when nothing can be mixed of it. Never throws on a job; a job with unusable parts is
 * answered with those parts at their defaults. `learned`: the draws that swatches have made of the even ones.
 */
export const bestRatio = (
  job: Job,
  catalogue: Catalogue,
  have: readonly string[] = job.atHand,
  learned?: Draws,
): BestRatio | undefined => atOnce(bestRatioInTurns(job, catalogue, have, learned));

/** The same, stopping after each mix that is tried, so that a page can take it in small turns. */
export function* bestRatioInTurns(
  job: Job,
  catalogue: Catalogue,
  have: readonly string[] = job.atHand,
  learned?: Draws,
): InTurns<BestRatio | undefined> {
  const draws = learned ?? DRAWS;
  const isTool = (id: string) => catalogue.techniques.has(id);
  const things = have.filter((id) => !isTool(id));
  // what lies on the bench to mix from is asked here; what it is brushed with stays the job's
  const settled = settleJob({ ...job, atHand: job.atHand.filter(isTool) }, catalogue).job;
  const base = BASES.find((id) => isHad(id, things, catalogue));
  const diluents: string[] = [];
  for (const strengths of DILUENTS) {
    const had = strengths.filter((id) => isHad(id, things, catalogue));
    if (had.length > 0) diluents.push(yield* strongEnough(base, had, settled, catalogue, draws));
  }
  const pairs: (readonly [string, string])[] = [
    ...(base ? diluents.map((id) => [base, id] as const) : []),
    ...(diluents.length === 2 ? [[diluents[1]!, diluents[0]!] as const] : []),
  ];
  const curves: RatioCurve[] = [];
  for (const [of, rest] of pairs) curves.push(yield* curveOf(of, rest, settled, catalogue, draws));
  curves.sort((a, b) => b.best.chance - a.best.chance || (a.of < b.of ? -1 : 1));
  const first = curves[0];
  if (!first) return undefined;
  const three = base && diluents.length === 2 ? yield* ofThree(base, diluents, settled, catalogue, draws) : undefined;
  const [ofParts, withParts] = first.easy;
  const parts = [
    { of: first.of, parts: ofParts },
    { of: first.with, parts: withParts },
  ].filter((part) => part.parts > 0);
  const answer = tryMix(parts, settled, catalogue, learned);
  const better = three && three.chance > answer.chance + NEAR_BEST ? three : undefined;
  return {
    parts: better ? better.parts : parts,
    chance: better ? better.chance : answer.chance,
    method: better ? better.method : answer.method,
    ...((better ?? answer).method.coat && { coat: (better ?? answer).method.coat! }),
    curves,
    ...(three && { three: { parts: three.parts, chance: three.chance } }),
  };
}

/** Whether an adhesive is at hand, as itself or by what it is made of. */
function isHad(id: string, have: readonly string[], catalogue: Catalogue): boolean {
  const adhesive = catalogue.adhesives.get(id);
  if (adhesive?.form !== 'wet') return false;
  if (have.length === 0 || have.includes(id)) return true;
  const powders = adhesive.parts.map(({ of }) => of).filter((of) => of !== 'water');
  // A jelly or a paste of another strength is made of the same powder.
  const sameKind = have.some((one) => {
    const other = catalogue.adhesives.get(one);
    return (
      other?.form === 'wet' &&
      other.parts.length > 1 &&
      powders.every((of) => other.parts.some((part) => part.of === of))
    );
  });
  return sameKind || powders.every((of) => have.includes(of));
}

/** The strength that does best beside the base at half and half; the first where there is no base. */
function* strongEnough(
  base: string | undefined,
  strengths: readonly string[],
  job: Job,
  catalogue: Catalogue,
  draws: Samples,
): InTurns<string> {
  let best = { id: strengths[0]!, chance: -1 };
  if (base === undefined) return best.id;
  for (const id of strengths) {
    yield;
    const { chance } = tryMix(
      [base, id].map((of) => ({ of, parts: 1 })),
      job,
      catalogue,
      draws,
    );
    if (chance > best.chance) best = { id, chance };
  }
  return best.id;
}

function* curveOf(of: string, rest: string, job: Job, catalogue: Catalogue, draws: Samples): InTurns<RatioCurve> {
  const points: Tried[] = [];
  for (let step = 0; step <= STEPS; step += 1) {
    yield;
    const share = step / STEPS;
    const parts = [
      { of, parts: share },
      { of: rest, parts: 1 - share },
    ].filter((part) => part.parts > 0);
    points.push({ share, ...tryMix(parts, job, catalogue, draws) });
  }
  const best = points.reduce((top, point) => (point.chance > top.chance ? point : top));
  const works = widestRun(points, Math.max(LIKELY, best.chance - NEAR_BEST));
  return { of, with: rest, points, best, ...(works && { works }), easy: easyParts(best.share, works) };
}

/** The longest unbroken run of shares whose chance is at least this; undefined where there is none. */
export function widestRun(
  points: readonly Pick<Tried, 'share' | 'chance'>[],
  least: number,
): { from: number; to: number } | undefined {
  let widest: { from: number; to: number } | undefined;
  let from: number | undefined;
  for (const { share, chance } of points) {
    if (chance < least) {
      from = undefined;
      continue;
    }
    from ??= share;
    if (!widest || share - from > widest.to - widest.from) widest = { from, to: share };
  }
  return widest;
}

/** Small whole parts, first to second, within a run and near its middle; nearest to the best share where there is no run. */
export function easyParts(best: number, works: { from: number; to: number } | undefined): readonly [number, number] {
  const share = ([one, other]: readonly [number, number]) => one / (one + other);
  const inside = works
    ? EASY.filter((parts) => share(parts) >= works.from - 1e-9 && share(parts) <= works.to + 1e-9)
    : [];
  const middle = works ? (works.from + works.to) / 2 : best;
  // Simple parts are worth a little distance: each place down the list counts for a hundredth of a share.
  const far = (parts: readonly [number, number]) => Math.abs(share(parts) - middle) + EASY.indexOf(parts) / 100;
  return (inside.length > 0 ? inside : EASY).reduce((near, parts) => (far(parts) < far(near) ? parts : near));
}

/** All three, by quarters of the pot, each at least one. */
function* ofThree(
  base: string,
  diluents: readonly string[],
  job: Job,
  catalogue: Catalogue,
  draws: Samples,
): InTurns<{ parts: readonly RatioPart[]; chance: number; method: Method } | undefined> {
  let best: { parts: readonly RatioPart[]; chance: number; method: Method } | undefined;
  for (const amounts of QUARTERS) {
    yield;
    const parts = [base, ...diluents].map((of, i) => ({ of, parts: amounts[i]! }));
    const tried = { parts, ...tryMix(parts, job, catalogue, draws) };
    if (!best || tried.chance > best.chance) best = tried;
  }
  return best;
}
const QUARTERS = [
  [2, 1, 1],
  [1, 2, 1],
  [1, 1, 2],
] as const;

/** The chance of this mix for the job, by its best method. */
function tryMix(
  parts: readonly RatioPart[],
  job: Job,
  catalogue: Catalogue,
  draws?: Samples,
): { readonly chance: number; readonly method: Method } {
  const mixed = mixOf(parts, catalogue);
  const shelf = new Map<string, Adhesive>([...catalogue.adhesives, [mixed.id, mixed]]);
  // Only the mix is ranked; what it is made of is still looked up.
  shelf.values = () => [mixed].values() as ReturnType<typeof shelf.values>;
  const { chance, method } = rank(job, { ...catalogue, adhesives: shelf }, draws)[0]!;
  return { chance, method };
}

const WORST: Readonly<Record<YesNo, number>> = { yes: 2, partly: 1, no: 0 };
const worse = (a: YesNo, b: YesNo): YesNo => (WORST[a] <= WORST[b] ? a : b);

/**
 * The mix as an adhesive. Its liquid is computed from what goes in. Its traits are those of its parts: the worse of
 * them where one spoils the whole (ageing, children, heat), weighed by what each leaves when dry where they share the work (hold).
 */
export function mixOf(parts: readonly RatioPart[], catalogue: Catalogue): WetAdhesive {
  const known = parts.map(({ of, parts: share }) => {
    const adhesive = catalogue.adhesives.get(of);
    if (adhesive?.form !== 'wet') throw new RangeError(`no wet adhesive called ${of}`);
    return { adhesive, share };
  });
  const whole = known.reduce((sum, { share }) => sum + share, 0);
  const solids = known.map(({ adhesive, share }) => {
    const { density, solids: dry } = middleLiquid(adhesive, catalogue);
    return share * density * dry;
  });
  const dry = solids.reduce((sum, one) => sum + one, 0);
  if (!(whole > 0)) throw new RangeError('a mix has at least one part');
  const [first] = known as [(typeof known)[number]];
  if (known.length === 1) return { ...first.adhesive, id: OWN, name: OWN, short: OWN };
  const mean = (of: (adhesive: WetAdhesive) => number) =>
    known.reduce((sum, { adhesive }, i) => sum + of(adhesive) * solids[i]!, 0) / dry;
  const least = (of: (adhesive: WetAdhesive) => YesNo) => known.map(({ adhesive }) => of(adhesive)).reduce(worse);
  const most = known.reduce((top, one) => (one.share > top.share ? one : top)).adhesive;
  return {
    ...first.adhesive,
    id: OWN,
    name: OWN,
    short: OWN,
    by: 'volume',
    special: false,
    parts: parts.map(({ of, parts: amount }) => ({ of, parts: amount })),
    // Water undoes a mix as far as it undoes what most of it is, and never wholly while something in it stays.
    undoneWithWater: mixUndone(known.map(({ adhesive, share }) => [adhesive.undoneWithWater, share / whole])),
    longLived: least(({ longLived }) => longLived),
    flexes: most.flexes,
    bearsDamp: least(({ bearsDamp }) => bearsDamp),
    childSafe: least(({ childSafe }) => childSafe),
    needsHeat: known.some(({ adhesive }) => adhesive.needsHeat),
    hold: {
      porous: mean(({ hold }) => hold.porous),
      leather: mean(({ hold }) => hold.leather),
      nonPorous: mean(({ hold }) => hold.nonPorous),
    },
  };
}

/** Three quarters of what water undoes leave a mix that comes undone in part. Common practice, no source. */
const MOSTLY = 0.75;

function mixUndone(parts: readonly (readonly [YesNo, number])[]): YesNo {
  const yes = parts.reduce((sum, [undone, share]) => sum + (undone === 'yes' ? share : 0), 0);
  if (yes >= 1 - 1e-9) return 'yes';
  return yes >= MOSTLY ? 'partly' : parts.map(([undone]) => undone).reduce(worse);
}
