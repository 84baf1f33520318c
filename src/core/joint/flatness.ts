/** Whether the work stays flat: the water a glue brings, the growth of the sheet, the bow of the board. */
import type { Bench } from './bench';
import { twoPlyCurvature, type Ply } from './laminate';
import { BOND_CONSTANTS } from './constants';
import { clamp } from '../base/quantity';
import { TASK_TRAITS } from '../records/task';

/** Stiffness of paper in MPa per (N·m/g · g/cm³) of its strength: a sheet that breaks at about 2 % strain. From memory. */
export const STIFFNESS_PER_STRENGTH = 105;
/** Share of the wet expansion still pulling after the cover has dried under weight. Estimate. */
export const LEFT_AFTER_PRESSING = 0.3;
/** Bow that is let pass, as a share of the span: anyone's eye, and when it must lie flat. Common practice, no source. */
export const BOW_ALLOWED = { usual: 0.02, flat: 0.008 };
/** Share of the bow that is left where the other side is lined too. Estimate: a lining never pulls quite alike. */
export const LEFT_WHEN_LINED = 0.35;
/** Growth that a limp face may show as cockling. Estimate. */
export const COCKLE_ALLOWED = { usual: 0.012, flat: 0.006 };

/** The sheet as a ply: mm, and MPa along the direction in which it moves most. */
export function sheetPly(paper: { grammage: number; density: number; tensileIndex: number }): Ply {
  return {
    thickness: paper.grammage / paper.density / 1000,
    modulus: STIFFNESS_PER_STRENGTH * paper.tensileIndex * paper.density,
  };
}

/** How far a sheet is soaked, 0–1, by a water load in g/m² that it shares with what it lies on by how fast each drinks. */
export function wettedShare(
  waterLoad: number,
  paper: { readonly grammage: number; readonly sorptivity: number },
  substrate: { readonly sorptivity: number },
): number {
  return clamp((waterLoad * wettingShare(paper, substrate)) / paper.grammage / BOND_CONSTANTS.soakedWater, 0, 1);
}

/** The sheet's share of the water, by how fast each side drinks; all of it where neither does. */
function wettingShare(paper: { readonly sorptivity: number }, substrate: { readonly sorptivity: number }): number {
  const drinks = paper.sorptivity + substrate.sorptivity;
  return drinks > 0 ? paper.sorptivity / drinks : 1;
}

/** What of flatness is the same for every glue on a bench, worked out once where many are tried on it. */
export interface Flatness {
  /** share of a water load that the sheet gets, by how fast it and its ground drink */
  readonly share: number;
  /** stiffness of the sheet, N/m */
  readonly stiffness: number;
  /** bow allowed ÷ bow that comes, for a sheet that draws in by the strain 1; on a limp face, growth allowed */
  readonly perStrain: number;
}

/** How readily the work on this bench bows or cockles, whatever glue is on it. */
export function flatnessOf({ paper, substrate, limp, spanMm, wants, lined, task }: Bench): Flatness {
  const sheet = sheetPly(paper);
  const stiffness = 1000 * sheet.modulus * sheet.thickness;
  const asked = wants.flat ? 'flat' : 'usual';
  const share = wettingShare(paper, substrate);
  if (limp) return { share, stiffness, perStrain: COCKLE_ALLOWED[asked] };
  const { thickness, modulus } = substrate;
  // the curvature grows as the strain does
  const curvature = twoPlyCurvature(sheet, { thickness, modulus }, 1);
  const bow = ((curvature * spanMm * spanMm) / 8) * (lined ? LEFT_WHEN_LINED : 1);
  return { share, stiffness, perStrain: (TASK_TRAITS[task].bow * BOW_ALLOWED[asked] * spanMm) / bow };
}

/**
 * What bow or cockling is allowed ÷ what this water load brings, after pressing. `pull`: N/m with which the film itself
 * draws in as it dries, which bends a board as the sheet's own shrinking does.
 */
export function flatMargin(waterLoad: number, bench: Bench, pull = 0, flatness = flatnessOf(bench)): number {
  if (waterLoad <= 0) return Infinity;
  const { paper, limp } = bench;
  const soaked = clamp((waterLoad * flatness.share) / paper.grammage / BOND_CONSTANTS.soakedWater, 0, 1);
  const growth = paper.wetExpansion * soaked * LEFT_AFTER_PRESSING;
  const drawsIn = limp ? growth : growth + pull / flatness.stiffness;
  return flatness.perStrain / Math.max(drawsIn, 1e-9);
}
