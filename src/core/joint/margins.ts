/**
 * One adhesive on one possible version of the job: how comfortably each of the four things holds.
 * A margin is what is there ÷ what is needed; 1 is the edge. Spread and lift come from the calibrated
 * model; bond and flat are plainer estimates of ours, and say so on the page.
 */
import type { Bench, Margins } from './bench';
import { bondLine, sheetStrength } from './bond-line';
import { coolingSeconds } from '../adhesive/cooling';
import { flatMargin } from './flatness';
import type { Liquid } from '../adhesive/liquid';
import { ALCOHOL, BOND_CONSTANTS, type BondConstants } from './constants';
import { clamp } from '../base/quantity';
import type { DryAdhesive, WetAdhesive, YesNo } from '../records/records';
import { spreadMarginUnderBrush } from './spread';

const WATER = { suction: 1, evaporation: 1, swelling: 1 };

/** A coat that is about to gel is this many times thicker, on the way, than it was in the pot. Estimate. */
export const COOLING_THICKENS = 8;

export function wetMargins(
  adhesive: WetAdhesive,
  liquid: Liquid,
  bench: Bench,
  constants: BondConstants = BOND_CONSTANTS,
): Margins {
  const { paper, substrate, tool } = bench;
  const carrier = liquid.carrier === 'alcohol' ? ALCOHOL : WATER;
  const gelsIn = coolingSeconds(adhesive.usedAt, liquid.gelsAt, bench.celsius);
  const joint = bondLine({
    paper,
    substrate,
    adhesive: {
      solids: liquid.solids,
      grabSolids: liquid.grabSolids,
      viscosity: liquid.viscosity * (gelsIn < Infinity ? COOLING_THICKENS : 1),
      coat: tool.coat,
      gelsIn,
      swelling: carrier.swelling,
      suction: carrier.suction,
    },
    seconds: bench.seconds,
    evaporation: bench.evaporation * carrier.evaporation,
    constants,
  });
  const cold = bench.celsius < (liquid.filmFormsAbove ?? -Infinity);
  const dryCoat = tool.coat * liquid.solids;
  return {
    spread: bounded(
      spreadMarginUnderBrush(paper.grammage, liquid.underBrush, tool.drag, constants) *
        Math.min(1, tool.thickest / liquid.viscosity),
    ),
    lift: bounded(joint.liftMargin),
    bond: bounded(
      ((dryCoat / liquid.leastDryCoat) * holdOn(adhesive, bench) * (cold ? NO_FILM : 1)) / demand(adhesive, bench),
    ),
    flat: bounded(flatMargin(tool.coat * (1 - liquid.solids) * carrier.swelling, bench)),
    slipSeconds: joint.slipSeconds,
    gives: joint.gives,
  };
}

/** One draw of a dry adhesive's own numbers. */
export interface DryPoint {
  readonly slip: number;
  readonly pull: number;
  readonly waterLoad: number;
  readonly drag: number;
  readonly strength: number;
}

/** Grammage that bears a drag of 1 in a dry adhesive's record, g/m². */
export const DRY_DRAG_GRAMMAGE = 45;

export function dryMargins(adhesive: DryAdhesive, point: DryPoint, bench: Bench): Margins {
  const { paper, substrate } = bench;
  const { wetStrength } = sheetStrength(paper, point.waterLoad);
  const faceStrength = BOND_CONSTANTS.boardFace * substrate.faceStrength;
  const lift = bounded(Math.min(wetStrength, faceStrength) / (paper.contact * point.pull));
  return {
    spread: bounded(paper.grammage / (DRY_DRAG_GRAMMAGE * Math.max(point.drag, 0.001))),
    lift,
    bond: bounded((point.strength * holdOn(adhesive, bench)) / demand(adhesive, bench)),
    flat: bounded(flatMargin(point.waterLoad, bench)),
    slipSeconds: point.slip,
    gives: lift >= 1 ? 'neither' : wetStrength < faceStrength ? 'paper' : 'substrate',
  };
}

/** What is left of a bond whose film could not form in the cold. Estimate. */
export const NO_FILM = 0.3;

function holdOn(adhesive: WetAdhesive | DryAdhesive, { face }: Bench): number {
  return adhesive.hold[face === 'non-porous' ? 'nonPorous' : face];
}

/** Estimate: how much more is asked of a joint that must bend, or get damp. */
export const FLEX_DEMAND: Readonly<Record<YesNo, number>> = { yes: 1, partly: 1.3, no: 2 };
export const DAMP_DEMAND: Readonly<Record<YesNo, number>> = { yes: 1, partly: 1.5, no: 2.5 };

/** What is asked of the joint, as a multiple of a 100 g/m² sheet on board: stiff sheets spring back harder. Estimate. */
function demand(adhesive: WetAdhesive | DryAdhesive, { paper, wants }: Bench): number {
  const springs = clamp(Math.sqrt(paper.grammage / 100), 0.7, 2);
  const bends = wants.flexes ? FLEX_DEMAND[adhesive.flexes] : 1;
  const damp = wants.damp ? DAMP_DEMAND[adhesive.bearsDamp] : 1;
  return springs * bends * damp;
}

const LOWEST = 0.01;
const HIGHEST = 100;

/** Margins past a hundredfold either way say nothing more. */
const bounded = (margin: number): number => clamp(margin, LOWEST, HIGHEST);
