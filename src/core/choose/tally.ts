/** From many draws to chances, middles and spans. */
import type { Margins, Thing } from '../joint/bench';
import type { Percentiles } from '../base/quantity';

/** One figure for each thing that must hold: a chance, or a margin. */
export type Chances = Readonly<Record<Thing, number>>;

export interface Tally {
  /** chance of each thing holding, 0–1 */
  readonly chances: Chances;
  /** middle margin of each */
  readonly margins: Chances;
  readonly slipSeconds: Percentiles;
  readonly openSeconds: Percentiles;
  readonly gives: 'paper' | 'substrate' | 'neither';
}

/**
 * The chance that a margin is really above 1, allowing for what differs from one stroke of the brush to the next:
 * m⁵ / (1 + m⁵), a logistic of width 0.2 on the log margin. Estimate.
 */
export function holds(margin: number): number {
  const fifth = margin * margin * margin * margin * margin;
  return fifth / (1 + fifth);
}

/**
 * The chance of placing it in time, from slip time ÷ the time needed: a practised hand sets most sheets down where they
 * belong, so a fifth of the time is as often enough as not, and far below that it fails. Estimate.
 */
export function placed(margin: number): number {
  const square = (margin / ENOUGH_OF_THE_TIME) ** 2;
  return square / (1 + square);
}
const ENOUGH_OF_THE_TIME = 0.2;

/** What each thing's margin comes to as a chance. */
export function heldBy(margins: Margins): Chances {
  const m = margins.strike * margins.strike;
  return {
    spread: holds(margins.spread),
    reach: holds(margins.reach),
    place: placed(margins.place),
    lift: holds(margins.lift),
    grab: holds(margins.grab),
    strike: 1 - margins.shows / (1 + m),
    bond: holds(margins.bond),
    flat: holds(margins.flat),
  };
}

/** Mean chance of each thing over draws that gave these; added up in one go, for an answer asks it of each adhesive. */
export function meanHeld(draws: readonly { readonly held: Chances }[]): Chances {
  let [spread, reach, place, lift, grab, strike, bond, flat] = [0, 0, 0, 0, 0, 0, 0, 0];
  for (const { held } of draws) {
    spread += held.spread;
    reach += held.reach;
    place += held.place;
    lift += held.lift;
    grab += held.grab;
    strike += held.strike;
    bond += held.bond;
    flat += held.flat;
  }
  const count = draws.length;
  return {
    spread: spread / count,
    reach: reach / count,
    place: place / count,
    lift: lift / count,
    grab: grab / count,
    strike: strike / count,
    bond: bond / count,
    flat: flat / count,
  };
}

/** From the margins of some draws, and the chances that each of them gives; at least one draw. */
export function tallyOf(draws: readonly { readonly margins: Margins; readonly held: Chances }[]): Tally {
  const count = draws.length;
  const column = new Float64Array(count);
  const sorted = (value: (draw: Margins) => number): Float64Array => {
    for (let draw = 0; draw < count; draw += 1) column[draw] = value(draws[draw]!.margins);
    return column.sort();
  };
  let [paperGives, substrateGives] = [0, 0];
  for (const { margins } of draws) {
    if (margins.gives === 'paper') paperGives += 1;
    else if (margins.gives === 'substrate') substrateGives += 1;
  }
  return {
    chances: meanHeld(draws),
    margins: each((thing) =>
      quantile(
        sorted((draw) => draw[thing]),
        0.5,
      ),
    ),
    slipSeconds: percentiles(sorted(({ slipSeconds }) => slipSeconds)),
    openSeconds: percentiles(sorted(({ openSeconds }) => openSeconds)),
    gives: (paperGives + substrateGives) * 2 < count ? 'neither' : paperGives >= substrateGives ? 'paper' : 'substrate',
  };
}

/** `marginsOf` gives the margins of draw 0 … count − 1. */
export const tally = (marginsOf: (draw: number) => Margins, count: number): Tally =>
  tallyOf(
    Array.from({ length: count }, (_, draw) => {
      const margins = marginsOf(draw);
      return { margins, held: heldBy(margins) };
    }),
  );

const each = (value: (thing: Thing) => number): Record<Thing, number> => ({
  spread: value('spread'),
  reach: value('reach'),
  place: value('place'),
  lift: value('lift'),
  grab: value('grab'),
  strike: value('strike'),
  bond: value('bond'),
  flat: value('flat'),
});

const percentiles = (sorted: Float64Array): Percentiles => ({
  p10: quantile(sorted, 0.1),
  p50: quantile(sorted, 0.5),
  p90: quantile(sorted, 0.9),
});

/** The value a share `q` of a sorted list lies below (linear between neighbours). */
function quantile(sorted: Float64Array, q: number): number {
  const place = q * (sorted.length - 1);
  const below = Math.floor(place);
  const low = sorted[below]!;
  const high = sorted[Math.min(below + 1, sorted.length - 1)]!;
  return low + (high - low) * (place - below);
}
