/**
 * Finds the model's constants from the bench outcomes by penalised likelihood: the chances that the model
 * gives to what is known to happen are made as large as they can be, each constant being drawn gently to
 * the middle of its stated range. The search is seeded, so the same outcomes give the same constants.
 */
import { bondLine, type Joint } from '../../src/core/joint/bond-line';
import { DEFAULT_JOB, type Job } from '../../src/core/choose/job';
import { liquidOf } from '../../src/core/adhesive/liquid';
import { wetMargins } from '../../src/core/joint/margins';
import { BOND_CONSTANTS, SEARCHED, type BondConstants } from '../../src/core/joint/constants';
import { seededUniform } from '../../src/core/base/random';
import { SAMPLES } from '../../src/core/choose/ranking';
import type { Catalogue, WetAdhesive } from '../../src/core/records/records';
import { benchesOf, liquidsOf } from '../../src/core/choose/sampling';
import { sheetOf } from '../../src/core/paper/sheet';
import { spreadMargin } from '../../src/core/joint/spread';
import { holds } from '../../src/core/choose/tally';

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

export const RANGES = SEARCHED;

export type Free = Exclude<keyof BondConstants, 'drainableShare'>;
export const FREE = (Object.keys(RANGES) as (keyof BondConstants)[]).filter(
  (key): key is Free => RANGES[key] !== 'fixed',
);

/** What the model says of one outcome: at the middle of every range, and as the chances a page would show. */
export interface Answer {
  readonly spread: number;
  readonly lift: number;
  /** ln(wet strength / face strength) at the middle: negative when the paper is the weaker side */
  readonly side: number;
  readonly gives: 'paper' | 'substrate' | 'neither';
  readonly spreadChance: number;
  readonly liftChance: number;
}

/** A function of the constants alone, with everything the records give worked out once. */
export function answerer(
  outcome: Outcome,
  { setting }: Outcomes,
  catalogue: Catalogue,
  draws = SAMPLES,
): (constants: BondConstants) => Answer {
  const job: Job = {
    ...DEFAULT_JOB,
    paper: { family: outcome.paper, grammage: outcome.grammage },
    substrate: setting.substrate,
    tool: setting.technique,
    placeSeconds: setting.seconds,
  };
  const record = catalogue.papers.get(outcome.paper)!;
  const substrate = catalogue.substrates.get(setting.substrate)!;
  const adhesive = catalogue.adhesives.get(outcome.adhesive) as WetAdhesive;
  const benches = benchesOf(job, sheetOf(job, catalogue), catalogue, draws);
  const liquids = liquidsOf(adhesive, catalogue, draws);
  const liquid = liquidOf(adhesive, catalogue);
  const middle: Joint = {
    paper: {
      grammage: outcome.grammage,
      density: record.density.middle,
      sorptivity: record.sorptivity.middle,
      tensileIndex: record.tensileIndex.middle,
      wetRetention: record.wetRetention.middle,
      contact: record.contact.middle,
    },
    substrate: { sorptivity: substrate.sorptivity.middle, faceStrength: substrate.faceStrength.middle },
    adhesive: { ...liquid, coat: catalogue.techniques.get(setting.technique)!.coat.middle },
    seconds: setting.seconds,
    evaporation: benches[0]!.evaporation,
  };
  return (constants) => {
    const joint = bondLine({ ...middle, constants });
    let spreads = 0;
    let lifts = 0;
    for (let draw = 0; draw < draws; draw += 1) {
      const margins = wetMargins(adhesive, liquids[draw]!, benches[draw]!, constants);
      spreads += holds(margins.spread);
      lifts += holds(margins.lift);
    }
    return {
      spread: spreadMargin({ grammage: outcome.grammage, viscosity: liquid.viscosity, constants }),
      lift: joint.liftMargin,
      side: Math.log(joint.wetStrength / joint.faceStrength),
      gives: joint.gives,
      spreadChance: spreads / draws,
      liftChance: lifts / draws,
    };
  };
}

/** Chances that the model gives to what is known to happen: all above one half means every outcome is met. */
export function agreement(outcome: Outcome, answer: Answer): number[] {
  const told = (chance: number, yes: boolean) => (yes ? chance : 1 - chance);
  const sides = outcome.gives ? [holds(Math.exp(outcome.gives === 'paper' ? -answer.side : answer.side))] : [];
  return [
    told(answer.spreadChance, outcome.spreads),
    told(answer.liftChance, outcome.lifts),
    told(holds(answer.spread), outcome.spreads),
    told(holds(answer.lift), outcome.lifts),
    ...sides,
  ];
}

/** Whether the chances fall on the right side of one half. */
export function isRight(outcome: Outcome, answer: Answer): { spread: boolean; lift: boolean } {
  return { spread: answer.spreadChance >= 0.5 === outcome.spreads, lift: answer.liftChance >= 0.5 === outcome.lifts };
}

/** Three significant digits: more would claim what twelve yes-or-no outcomes cannot tell. */
export function rounded(constants: BondConstants): BondConstants {
  const digits = (key: keyof BondConstants) => Number(constants[key].toPrecision(3));
  return { ...constants, ...Object.fromEntries(FREE.map((key) => [key, digits(key)])) };
}

/** How gently a constant is drawn to the middle of its range. */
const PULL_TO_MIDDLE = 0.1;
/** A chance below this is not clear enough: the search insists, because all outcomes must hold at once. */
const CLEAR = 0.53;
const INSIST = 40;
const rangeOf = (key: Free) => RANGES[key] as readonly [low: number, high: number];

/** What the search makes as small as it can: how far the outcomes are from clear, and the constants from their middles. */
export function lossOf(outcomes: Outcomes, catalogue: Catalogue): (constants: BondConstants) => number {
  const cases = outcomes.rows.map((row) => [row, answerer(row, outcomes, catalogue)] as const);
  return (constants) => {
    let total = 0;
    for (const [row, answer] of cases) {
      for (const chance of agreement(row, answer(constants)))
        total += Math.max(0, CLEAR - chance) * INSIST - Math.log(chance);
    }
    for (const key of FREE) {
      const [low, high] = rangeOf(key);
      const place = Math.log((constants[key] * constants[key]) / (low * high)) / Math.log(high / low);
      total += PULL_TO_MIDDLE * place * place;
    }
    return total;
  };
}

export function fit(outcomes: Outcomes, catalogue: Catalogue, starts = 3): { constants: BondConstants; loss: number } {
  const loss = lossOf(outcomes, catalogue);
  const uniform = seededUniform(1925);
  // Several starts, because the valley has side valleys; each start narrows its steps as it goes.
  const found = Array.from({ length: starts }, () => descend(loss, uniform));
  return found.reduce((best, one) => (one.loss < best.loss ? one : best));
}

const SCATTER = 1_500;
const STEPS = 7_000;

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
    consider(
      change(BOND_CONSTANTS, FREE, (key) => rangeOf(key)[0] * Math.pow(rangeOf(key)[1] / rangeOf(key)[0], uniform())),
    );
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
