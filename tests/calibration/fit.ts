/**
 * Finds the model's constants from the bench outcomes. Penalised likelihood: each outcome asks its log
 * margin to lie on the right side of zero (logistic, width 0.15), and each constant is drawn gently to
 * the middle of its stated range. The search is seeded, so the same outcomes give the same constants.
 */
import { bondLine } from '../../src/core/bond-line';
import { liquidOf } from '../../src/core/liquid';
import { BOND_CONSTANTS, type BondConstants } from '../../src/core/model-constants';
import { seededUniform } from '../../src/core/random';
import type { Catalogue, WetAdhesive } from '../../src/core/records';
import { spreadMargin } from '../../src/core/spread';

export interface Outcome {
  readonly id: string;
  readonly paper: string;
  readonly grammage: number;
  readonly adhesive: string;
  readonly spreads: boolean;
  readonly lifts: boolean;
  readonly gives?: 'paper' | 'substrate';
}

export interface Outcomes {
  readonly setting: { readonly substrate: string; readonly technique: string; readonly seconds: number };
  readonly rows: readonly Outcome[];
}

/** Where each constant may lie: the model note's ranges; those it does not give are from memory. */
export const RANGES: Readonly<Record<keyof BondConstants, readonly [low: number, high: number] | 'fixed'>> = {
  mobilityAtOnePascalSecond: [0.1, 0.8],
  mobilityExponent: [0.2, 0.6],
  tearShare: [0.02, 0.4],
  freshPull: [5, 100],
  setPull: [50, 1500],
  setExponent: [1, 3],
  boardFace: [50, 700],
  soakedWater: [0.3, 1],
  holdingLayer: [60, 300],
  drainableShare: 'fixed',
  brushedGrammage: [5, 40],
};

export type Free = Exclude<keyof BondConstants, 'drainableShare'>;
export const FREE = (Object.keys(RANGES) as (keyof BondConstants)[]).filter((key): key is Free => RANGES[key] !== 'fixed');

export interface Margins {
  readonly spread: number;
  readonly lift: number;
  readonly gives: 'paper' | 'substrate' | 'neither';
  /** ln(wet strength / face strength): negative when the paper is the weaker side */
  readonly side: number;
}

/** A function of the constants alone, with everything the records give worked out once. */
export function marginsOf(outcome: Outcome, { setting }: Outcomes, catalogue: Catalogue): (constants: BondConstants) => Margins {
  const record = catalogue.papers.get(outcome.paper)!;
  const coat = catalogue.techniques.get(setting.technique)!.coat.middle;
  const substrate = catalogue.substrates.get(setting.substrate)!;
  const liquid = liquidOf(catalogue.adhesives.get(outcome.adhesive) as WetAdhesive, catalogue);
  const paper = {
    grammage: outcome.grammage,
    density: record.density.middle,
    sorptivity: record.sorptivity.middle,
    tensileIndex: record.tensileIndex.middle,
    wetRetention: record.wetRetention.middle,
    contact: record.contact.middle,
  };
  const face = { sorptivity: substrate.sorptivity.middle, faceStrength: substrate.faceStrength.middle };
  const adhesive = { ...liquid, coat };
  return (constants) => {
    const joint = bondLine({ paper, substrate: face, adhesive, seconds: setting.seconds, constants });
    return {
      spread: spreadMargin({ grammage: outcome.grammage, viscosity: liquid.viscosity, constants }),
      lift: joint.liftMargin,
      gives: joint.gives,
      side: Math.log(joint.wetStrength / joint.faceStrength),
    };
  };
}

/** Log margins with the sign of "as it should be": all positive means every outcome is met. */
export function agreement(outcome: Outcome, margins: Margins): number[] {
  const signed = (margin: number, yes: boolean) => (yes ? 1 : -1) * Math.log(margin);
  const sides = outcome.gives ? [outcome.gives === 'paper' ? -margins.side : margins.side] : [];
  return [signed(margins.spread, outcome.spreads), signed(margins.lift, outcome.lifts), ...sides];
}

const rangeOf = (key: Free) => RANGES[key] as readonly [low: number, high: number];

const WIDTH = 0.15;
const PULL_TO_MIDDLE = 0.1;

export function fit(outcomes: Outcomes, catalogue: Catalogue, starts = 8): { constants: BondConstants; loss: number } {
  const cases = outcomes.rows.map((row) => [row, marginsOf(row, outcomes, catalogue)] as const);
  const loss = (constants: BondConstants) => {
    let total = 0;
    for (const [row, margins] of cases) {
      for (const ease of agreement(row, margins(constants))) total += Math.log1p(Math.exp(-ease / WIDTH));
    }
    for (const key of FREE) {
      const [low, high] = rangeOf(key);
      const place = Math.log((constants[key] * constants[key]) / (low * high)) / Math.log(high / low);
      total += PULL_TO_MIDDLE * place * place;
    }
    return total;
  };
  const uniform = seededUniform(1925);
  // Several starts, because the valley has side valleys; each start narrows its steps as it goes.
  const found = Array.from({ length: starts }, () => descend(loss, uniform));
  return found.reduce((best, one) => (one.loss < best.loss ? one : best));
}

const SCATTER = 4_000;
const STEPS = 16_000;

function descend(loss: (constants: BondConstants) => number, uniform: () => number) {
  const change = (from: BondConstants, keys: readonly Free[], value: (key: Free) => number): BondConstants => ({
    ...from,
    ...Object.fromEntries(keys.map((key) => [key, value(key)])),
  });
  let best = { constants: BOND_CONSTANTS, loss: Infinity };
  const consider = (constants: BondConstants) => {
    const value = loss(constants);
    if (value < best.loss) best = { constants, loss: value };
  };
  for (let i = 0; i < SCATTER; i += 1) {
    consider(change(BOND_CONSTANTS, FREE, (key) => rangeOf(key)[0] * Math.pow(rangeOf(key)[1] / rangeOf(key)[0], uniform())));
  }
  for (let i = 0; i < STEPS; i += 1) {
    const reach = 0.5 * Math.pow(0.002, i / STEPS);
    const changed = FREE.filter(() => uniform() < 0.4);
    consider(
      change(best.constants, changed, (key) => {
        const [low, high] = rangeOf(key);
        return Math.min(high, Math.max(low, best.constants[key] * Math.exp(reach * (uniform() * 2 - 1))));
      }),
    );
  }
  return best;
}
