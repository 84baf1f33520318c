/** The margins that a swatch can show, where very many versions of a bench are asked: fewer than an answer needs. */
import type { Bench, Margins } from '../joint/bench';
import { drainedAt, intoPaper, type Flow } from '../joint/water-loss';
import { coolingSeconds } from '../adhesive/cooling';
import type { Liquid } from '../adhesive/liquid';
import { pullOf, setting, wetStrength } from '../joint/bond-line';
import { ALCOHOL, SHEET_BREATHES, type BondConstants } from '../joint/constants';
import { flatMargin } from '../joint/flatness';
import { strengthAsked, bounded, demandsOf, dragOf, holding, type Ease } from '../joint/margins';
import type { WetAdhesive } from '../records/records';

/** What a swatch shows of a sheet that was laid at once and lifted. */
export type LaidMargins = Pick<Margins, 'spread' | 'lift' | 'sheetToFace' | 'flat' | 'bond'>;

/** Which of them are asked for; the others are left out (NaN). */
export interface LaidAsks {
  readonly spread: boolean;
  /** lifting, and which side is harmed by it */
  readonly lift: boolean;
  /** lying flat, and holding */
  readonly dry: boolean;
}

/** A coat as it waits for a sheet: what does not hang on which sheet it is, worked out once for all draws of it. */
export interface Coated {
  readonly adhesive: WetAdhesive;
  readonly liquid: Liquid;
  readonly constants: BondConstants;
  readonly swelling: number;
  /** g/m² per second from an open wet face */
  readonly evaporation: number;
  readonly gelsIn: number;
  /** how much thicker it is on the way than in the pot */
  readonly thickened: number;
  readonly follows: number;
  /** g/m² in the coat; of that what suction can draw, and what goes before it has set */
  readonly water: number;
  readonly drainable: number;
  readonly toLose: number;
  /** g/m² per √s into the ground */
  readonly intoGround: number;
  /** N/m that the face below bears */
  readonly faceBears: number;
  /** √s until it is lifted */
  readonly liftRoot: number;
  /** share of what this tool spreads well, 1 at most */
  readonly spreadable: number;
}

/** A coat on this bench, just brushed on, under these constants. */
export function coated(
  adhesive: WetAdhesive,
  liquid: Liquid,
  bench: Bench,
  constants: BondConstants,
  ease: Ease,
): Coated {
  const { substrate, tool } = bench;
  const alcohol = liquid.carrier === 'alcohol';
  const follows = ease.follows * (alcohol ? ALCOHOL.suction : 1);
  const water = tool.coat * (1 - liquid.solids);
  return {
    adhesive,
    liquid,
    constants,
    swelling: alcohol ? ALCOHOL.swelling : 1,
    evaporation: alcohol ? bench.alcoholEvaporation : bench.evaporation,
    gelsIn: coolingSeconds(adhesive.usedAt, liquid.gelsAt, bench.celsius),
    thickened: ease.thickened,
    follows,
    water,
    drainable: constants.drainableShare * water,
    toLose: tool.coat * Math.max(0, 1 - liquid.solids / liquid.grabSolids),
    intoGround: substrate.sorptivity * follows,
    faceBears: constants.boardFace * substrate.faceStrength,
    liftRoot: Math.sqrt(bench.seconds),
    spreadable: Math.min(1, tool.thickest / liquid.viscosity),
  };
}

/**
 * Some of the same margins for a sheet that is glued itself, laid at once and lifted, where very many are asked:
 * `wetMargins` gives the same. `capacity`: water that the sheet can hold, g/m²; `bears`: drag that it bears under a full
 * brush. They are written into `into`, which is given back.
 */
export function laidMargins(
  coat: Coated,
  bench: Bench,
  capacity: number,
  bears: number,
  asks: LaidAsks,
  into: { -readonly [K in keyof LaidMargins]: number } = {
    spread: NaN,
    lift: NaN,
    sheetToFace: NaN,
    flat: NaN,
    bond: NaN,
  },
): LaidMargins {
  const { paper, tool, seconds } = bench;
  const { liquid, constants, evaporation, gelsIn, follows, water, swelling, faceBears } = coat;
  const thirst = paper.sorptivity * follows;
  if (asks.spread) {
    const drag = dragOf(liquid, water, coat.drainable, thirst, evaporation, coat.thickened);
    into.spread = bounded((bears / tool.drag / (drag / 1000)) * coat.spreadable);
  }
  if (asks.lift) {
    const both: Flow = {
      paper: thirst,
      substrate: coat.intoGround,
      air: paper.sorptivity > 0 && !bench.closed ? evaporation * SHEET_BREATHES : 0,
      capacity,
      drainable: coat.drainable,
    };
    const root = Math.min(coat.liftRoot, drainedAt(both));
    const soaked = intoPaper(both, root);
    const progress = setting(soaked + both.substrate * root + both.air * seconds, coat.toLose, seconds, gelsIn);
    const touching = paper.contact + (1 - paper.contact) * follows;
    const sheetBears = wetStrength(paper, soaked * swelling, constants);
    into.lift = bounded(Math.min(sheetBears, faceBears) / pullOf(touching, liquid.solids, progress, constants));
    into.sheetToFace = bounded(sheetBears / faceBears);
  }
  if (asks.dry) {
    const { adhesive } = coat;
    into.flat = bounded(flatMargin(water * swelling, bench, tool.coat * liquid.solids * liquid.pulls));
    into.bond = bounded(holding(adhesive, liquid, bench) / (strengthAsked(bench) * demandsOf(adhesive, bench)));
  }
  return into;
}
