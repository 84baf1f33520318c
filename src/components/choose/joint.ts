/** A joint at the middle of every range, for the lesson: what the core says of it from second to second. */
import type { Bench } from '../../core/joint/bench';
import { bondLine, mobility, type BondLine } from '../../core/joint/bond-line';
import type { Liquid } from '../../core/adhesive/liquid';
import { BOND_CONSTANTS, GRAB_LEVEL, LONGEST_SLIP_SECONDS } from '../../core/joint/constants';
import { poreVolume } from '../../core/paper/paper';
import { middleBench, middleLiquid } from '../../core/choose/sampling';
import { sheetOf } from '../../core/paper/sheet';
import { timeToLose } from '../../core/joint/water-loss';
import { catalogue } from '../../data/catalogue';
import { jobWith, wetAdhesiveOf } from '../records';

export interface Setting {
  readonly paper: string;
  readonly adhesive: string;
  readonly substrate?: string;
}

function at(setting: Setting): { bench: Bench; liquid: Liquid } {
  const { paper, adhesive, substrate = 'binders-board' } = setting;
  const job = jobWith(paper, { substrate });
  return {
    bench: middleBench(job, sheetOf(job, catalogue), catalogue),
    liquid: middleLiquid(wetAdhesiveOf(adhesive), catalogue),
  };
}

/** The joint `seconds` after the sheet was laid. */
export function jointAt(setting: Setting, seconds: number): BondLine & { coatLeft: number; coat: number } {
  const { bench, liquid } = at(setting);
  const { paper, substrate, tool, evaporation } = bench;
  const adhesive = { ...liquid, coat: tool.coat };
  const line = bondLine({ paper, substrate, adhesive, seconds, evaporation });
  return { ...line, coat: tool.coat, coatLeft: tool.coat - line.uptake.paper - line.uptake.substrate };
}

/** What the joint is made of, for the drawing. */
export function makeUp(setting: Setting): { paper: Bench['paper']; liquid: Liquid; coat: number } {
  const { bench, liquid } = at(setting);
  return { paper: bench.paper, liquid, coat: bench.tool.coat };
}

/**
 * Seconds that a coat on the back of the sheet can lie open before it has lost as much water as would make
 * it grab: the sheet drinks from below, the room from above, and the board not at all.
 */
export function openSeconds(setting: Setting): number {
  const { bench, liquid } = at(setting);
  const { paper, tool, evaporation } = bench;
  const flow = {
    paper: paper.sorptivity * mobility(liquid.viscosity),
    substrate: 0,
    air: evaporation,
    capacity: poreVolume(paper.grammage, paper.grammage / paper.density),
    drainable: BOND_CONSTANTS.drainableShare * tool.coat * (1 - liquid.solids),
  };
  const toLose = tool.coat * Math.max(0, 1 - liquid.solids / liquid.grabSolids);
  return Math.min(LONGEST_SLIP_SECONDS, timeToLose(flow, toLose * GRAB_LEVEL));
}
