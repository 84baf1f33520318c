/** The best ratio as a page shows it: for each pair a curve, a sentence that can be acted on, and the parts. */
import { chanceInTen } from '../base/format';
import type { Range } from '../base/quantity';
import type { Catalogue } from '../records/records';
import type { BestRatio, RatioPart, RatioCurve } from './best-ratio';
import type { Job } from './job';
import { kindOf } from './kind';
import type { Method } from './method';
import { methodInWords } from './method-words';

export interface RatioTold {
  /** of two, what the share is of and what the rest is, as a sentence calls them */
  readonly of: string;
  readonly with: string;
  /** chance at even steps of the share, from none of `of` to nothing else, 0–1 */
  readonly chances: readonly number[];
  /** the widest run of shares that works, 0–1; absent where nothing is likely */
  readonly works?: { readonly from: number; readonly to: number };
  /** what to mix, by volume; one part alone where nothing is gained by mixing */
  readonly parts: readonly RatioPart[];
  /** share of `of` in those parts, 0–1, and the chance there */
  readonly share: number;
  readonly chance: number;
  /** "2 : 1", or "alone" */
  readonly brief: string;
  /** the advice: "Mix 2 parts of PVA with 1 part of …" */
  readonly advice: string;
  /** how far one may stray from it */
  readonly leeway: string;
  /** how it is brought: "the back of the paper: bristle brush, full coat, 40 to 110 g/m² wet; laid at once" */
  readonly way: string;
  /** wet, g/m² */
  readonly coat?: Range;
}

export interface ThreeTold {
  readonly parts: readonly RatioPart[];
  readonly sentence: string;
}

export interface RatiosTold {
  /** the pair that goes best with the answer first */
  readonly pairs: readonly RatioTold[];
  readonly three?: ThreeTold;
}

const short = (id: string, catalogue: Catalogue): string => catalogue.adhesives.get(id)!.short;
const partsOf = (count: number, name: string): string => `${count} ${count === 1 ? 'part' : 'parts'} of ${name}`;

/** Parts by volume in words: "2 parts of PVA, 1 part of methylcellulose at 2.5 %". */
export const partsInWords = (parts: readonly RatioPart[], catalogue: Catalogue): string =>
  parts.map(({ of, parts: count }) => partsOf(count, short(of, catalogue))).join(', ');

/** What is used alone is used at whatever strength the answer names. */
const withoutStrength = (name: string): string => name.replace(/ at [\d.]+ %$/, '');

/** A share as parts in ten: "3½ parts". */
function tenths(share: number): string {
  const halves = Math.round(share * 20);
  const whole = Math.floor(halves / 2);
  const text = halves % 2 === 0 ? String(whole) : `${whole === 0 ? '' : whole}½`;
  return `${text} ${halves <= 2 ? 'part' : 'parts'}`;
}

/** The chance at any share, between the points that were tried. */
export function chanceAt(points: RatioCurve['points'], share: number): number {
  const place = share * (points.length - 1);
  const below = Math.min(points.length - 2, Math.floor(place + 1e-9));
  const [one, other] = [points[below]!.chance, points[below + 1]!.chance];
  return one + (other - one) * (place - below);
}

/** The way at the point that was tried nearest to this share. */
const methodAt = (points: RatioCurve['points'], share: number): Method =>
  points[Math.round(share * (points.length - 1))]!.method;

/** One pair as it is shown. */
export function ratioTold(curve: RatioCurve, job: Job, catalogue: Catalogue): RatioTold {
  const { points, works, easy } = curve;
  const [one, other] = [short(curve.of, catalogue), short(curve.with, catalogue)];
  const share = easy[0] / (easy[0] + easy[1]);
  const chance = chanceAt(points, share);
  const parts = [
    { of: curve.of, parts: easy[0] },
    { of: curve.with, parts: easy[1] },
  ].filter((part) => part.parts > 0);
  const method = methodAt(points, share);
  const alone = parts.length === 1;
  const [used, left] = (easy[0] > 0 ? [one, other] : [other, one]).map(withoutStrength);
  const odds = `The chance that it works is ${chanceInTen(chance)}`;
  const advice = !works
    ? `No mix of ${one} and ${other} is likely to work here. The least bad is ${alone ? `${used} alone` : partsInWords(parts, catalogue)}: ${chanceInTen(chance)}.`
    : alone
      ? `Nothing is gained by mixing ${left} into ${used} here: use it alone. ${odds}.`
      : `Mix ${partsOf(easy[0], one)} with ${partsOf(easy[1], other)}, by volume. ${odds}.`;
  return {
    of: one,
    with: other,
    chances: points.map((point) => Number(point.chance.toFixed(3))),
    ...(works && { works }),
    parts,
    share,
    chance,
    brief: alone ? 'alone' : `${easy[0]} : ${easy[1]}`,
    advice,
    leeway: works && !alone ? leewayOf(works, one) : '',
    way: methodInWords(method, job, catalogue),
    ...(method.coat && { coat: method.coat }),
  };
}

function leewayOf({ from, to }: { from: number; to: number }, one: string): string {
  if (to - from < 0.075) return 'Measure it with care: a little more of either does clearly worse.';
  const least = from <= 1e-9 ? 'none at all' : tenths(from);
  const most = to >= 1 - 1e-9 ? 'nothing else' : tenths(to).replace(/ parts?$/, '');
  const span = to >= 1 - 1e-9 ? `${least} of ${one} in 10 up to ${most}` : `${least} to ${most} of ${one} in 10`;
  return `You need not be exact: anything from ${span} does nearly as well.`;
}

/** How many of a pair's two stand in the answer too: 0, 1 or 2. `kind`: what sort of film the answer leaves. */
function sharedWith({ of, with: rest }: RatioCurve, kind: string, catalogue: Catalogue): number {
  const kinds = kind.split('+');
  return [of, rest].filter((id) => kinds.includes(kindOf(catalogue.adhesives.get(id)!, catalogue))).length;
}

/** Every pair, that which has most in common with the answer first (`kind`: its film, "ether+vinyl"); then by chance. */
export function ratiosTold(found: BestRatio, kind: string, job: Job, catalogue: Catalogue): RatiosTold {
  const curves = [...found.curves].sort(
    (a, b) => sharedWith(b, kind, catalogue) - sharedWith(a, kind, catalogue) || b.best.chance - a.best.chance,
  );
  const { three } = found;
  return {
    pairs: curves.map((curve) => ratioTold(curve, job, catalogue)),
    ...(three && {
      three: {
        parts: three.parts,
        sentence: `All three in one pot, the best of those tried: ${partsInWords(three.parts, catalogue)}, by volume. The chance that it works is ${chanceInTen(three.chance)}.`,
      },
    }),
  };
}
