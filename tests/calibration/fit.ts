/** What the model says of the bench outcomes, as a function of its constants, and where each constant may lie. */
import { bondLine, type Joint } from '../../src/core/joint/bond-line';
import { DEFAULT_JOB, type Job } from '../../src/core/choose/job';
import { liquidOf } from '../../src/core/adhesive/liquid';
import { wetMargins } from '../../src/core/joint/margins';
import { SEARCHED, type BondConstants } from '../../src/core/joint/constants';
import { SAMPLES } from '../../src/core/choose/ranking';
import type { Catalogue, WetAdhesive } from '../../src/core/records/records';
import { benchesOf, liquidsOf, middleBench } from '../../src/core/choose/sampling';
import { sheetOf } from '../../src/core/paper/sheet';
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
  const bench = middleBench(job, sheetOf(job, catalogue), catalogue);
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
    adhesive: { ...liquid, viscosity: liquid.drains, coat: catalogue.techniques.get(setting.technique)!.coat.middle },
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
      spread: wetMargins(adhesive, liquid, bench, constants).spread,
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
