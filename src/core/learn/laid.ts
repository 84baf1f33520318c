/** The margins that a swatch can show, where very many versions of a bench are asked: fewer than an answer needs. */
import type { Bench, Margins } from '../joint/bench';
import { drainedAt, intoPaper, type Flow } from '../joint/water-loss';
import { coolingSeconds } from '../adhesive/cooling';
import type { Liquid } from '../adhesive/liquid';
import { pullOf, setting, wetStrength } from '../joint/bond-line';
import { ALCOHOL, SHEET_BREATHES, type BondConstants } from '../joint/constants';
import { flatMargin } from '../joint/flatness';
import { strengthAsked, bounded, demandsOf, holding, spreading, type Ease } from '../joint/margins';
import { poreVolume } from '../paper/paper';
import type { WetAdhesive } from '../records/records';
import { spreadMarginUnderBrush } from '../joint/spread';

/** What a swatch shows of a sheet that was laid at once and lifted. */
export type LaidMargins = Pick<Margins, 'spread' | 'lift' | 'sheetToFace' | 'flat' | 'bond'>;

/**
 * Some of the same margins for a sheet that is glued itself, laid at once and lifted, where very many are asked:
 * `wetMargins` gives the same. Unless the `whole` is asked, lying flat and holding are left out (NaN). They are written
 * into `into`, which is given back.
 */
export function laidMargins(
  adhesive: WetAdhesive,
  liquid: Liquid,
  bench: Bench,
  constants: BondConstants,
  ease: Ease,
  whole = true,
  into: { -readonly [K in keyof LaidMargins]: number } = { spread: 0, lift: 0, sheetToFace: 0, flat: 0, bond: 0 },
): LaidMargins {
  const { paper, substrate, tool, seconds } = bench;
  const alcohol = liquid.carrier === 'alcohol';
  const swelling = alcohol ? ALCOHOL.swelling : 1;
  const evaporation = alcohol ? bench.alcoholEvaporation : bench.evaporation;
  const gelsIn = coolingSeconds(adhesive.usedAt, liquid.gelsAt, bench.celsius);
  const follows = ease.follows * (alcohol ? ALCOHOL.suction : 1);
  const water = tool.coat * (1 - liquid.solids);
  const both: Flow = {
    paper: paper.sorptivity * follows,
    substrate: substrate.sorptivity * follows,
    air: paper.sorptivity > 0 && !bench.closed ? evaporation * SHEET_BREATHES : 0,
    capacity: poreVolume(paper.grammage, paper.grammage / paper.density),
    drainable: constants.drainableShare * water,
  };
  const root = Math.min(Math.sqrt(seconds), drainedAt(both));
  const soaked = intoPaper(both, root);
  const toLose = tool.coat * Math.max(0, 1 - liquid.solids / liquid.grabSolids);
  const progress = setting(soaked + both.substrate * root + both.air * seconds, toLose, seconds, gelsIn);
  const touching = paper.contact + (1 - paper.contact) * follows;
  const sheetBears = wetStrength(paper, soaked * swelling, constants);
  const faceBears = constants.boardFace * substrate.faceStrength;
  const pull = pullOf(touching, liquid.solids, progress, constants);
  const bearsDrag = spreadMarginUnderBrush(paper.grammage, 1000, tool.drag, constants);
  const spread = spreading(liquid, bench, follows, evaporation, ease.thickened, constants, bearsDrag);
  into.spread = bounded(spread * Math.min(1, tool.thickest / liquid.viscosity));
  into.lift = bounded(Math.min(sheetBears, faceBears) / pull);
  into.sheetToFace = bounded(sheetBears / faceBears);
  into.flat = whole ? bounded(flatMargin(water * swelling, bench, tool.coat * liquid.solids * liquid.pulls)) : NaN;
  into.bond = whole
    ? bounded(holding(adhesive, liquid, bench) / (strengthAsked(bench) * demandsOf(adhesive, bench)))
    : NaN;
  return into;
}
