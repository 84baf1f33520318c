/** From many draws to chances, middles and spans. */
import type { Margins } from '../joint/bench';
import type { Percentiles } from '../base/quantity';

/** One figure for each thing that must hold: a chance, or a margin. */
export interface Chances {
  readonly spread: number;
  readonly lift: number;
  readonly bond: number;
  readonly flat: number;
}

export interface Tally {
  /** chance of each margin holding, 0–1 */
  readonly chances: Chances;
  /** middle margin of each */
  readonly margins: Chances;
  readonly slipSeconds: Percentiles;
  readonly gives: 'paper' | 'substrate' | 'neither';
  /** mean of `combine` over the draws */
  readonly together: number;
}

/**
 * The chance that a margin is really above 1, allowing for the model's own doubt: m⁵ / (1 + m⁵), a
 * logistic of width 0.2 on the log margin. Estimate: about what the calibration leaves over.
 */
export function holds(margin: number): number {
  const fifth = margin * margin * margin * margin * margin;
  return fifth / (1 + fifth);
}

/** `marginsOf` gives the margins of draw 0 … count − 1; `combine` weighs one draw up as a whole. */
export function tally(
  marginsOf: (draw: number) => Margins,
  count: number,
  combine: (margins: Margins, held: Chances) => number,
): Tally {
  const columns = {
    spread: new Float64Array(count),
    lift: new Float64Array(count),
    bond: new Float64Array(count),
    flat: new Float64Array(count),
  };
  const slips = new Float64Array(count);
  const sum = { spread: 0, lift: 0, bond: 0, flat: 0, together: 0 };
  let paperGives = 0;
  let substrateGives = 0;
  for (let draw = 0; draw < count; draw += 1) {
    const margins = marginsOf(draw);
    const held = {
      spread: holds(margins.spread),
      lift: holds(margins.lift),
      bond: holds(margins.bond),
      flat: holds(margins.flat),
    };
    for (const key of THINGS) {
      columns[key][draw] = margins[key];
      sum[key] += held[key];
    }
    slips[draw] = margins.slipSeconds;
    sum.together += combine(margins, held);
    if (margins.gives === 'paper') paperGives += 1;
    else if (margins.gives === 'substrate') substrateGives += 1;
  }
  slips.sort();
  const each = (value: (key: keyof Chances) => number): Chances => ({
    spread: value('spread'),
    lift: value('lift'),
    bond: value('bond'),
    flat: value('flat'),
  });
  const fails = paperGives + substrateGives;
  return {
    chances: each((key) => sum[key] / count),
    margins: each((key) => quantile(columns[key].sort(), 0.5)),
    slipSeconds: { p10: quantile(slips, 0.1), p50: quantile(slips, 0.5), p90: quantile(slips, 0.9) },
    gives: fails * 2 < count ? 'neither' : paperGives >= substrateGives ? 'paper' : 'substrate',
    together: sum.together / count,
  };
}

const THINGS = ['spread', 'lift', 'bond', 'flat'] as const;

/** The value a share `q` of a sorted list lies below (linear between neighbours). */
function quantile(sorted: Float64Array, q: number): number {
  const place = q * (sorted.length - 1);
  const below = Math.floor(place);
  const low = sorted[below]!;
  const high = sorted[Math.min(below + 1, sorted.length - 1)]!;
  return low + (high - low) * (place - below);
}
