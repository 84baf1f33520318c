/**
 * From a recipe to a liquid. A mix is never typed in as one more material: its solids, density and
 * viscosity follow from what went into the pot.
 */
import { draggingViscosity, type Flowing } from './flow';
import { gramsOf, mix, type Part } from './mixture';
import type { Range } from '../base/quantity';
import type { Catalogue, FilmKind, Ingredient, WetAdhesive } from '../records/records';
import { dispersionViscosity, RANDOM_PACKING, solutionViscosity, thickeningPower } from './viscosity';

/** Which of the uncertain things a number belongs to, so that one draw moves them together. */
export type Uncertain = 'solids' | 'viscosity' | 'grab' | 'film';
export type DrawLiquid = (range: Range, of: Uncertain) => number;

/** Draws the middle of every range. */
export const middle: DrawLiquid = (range) => range.middle;

export interface Liquid {
  /** share of the mass that stays when dry, 0–1 */
  readonly solids: number;
  /** share of the volume that stays when dry, 0–1 */
  readonly volumeSolids: number;
  /** g/ml */
  readonly density: number;
  /** mPa·s at rest, 20 °C */
  readonly viscosity: number;
  /** mPa·s of the liquid between the particles, as water drains from it: what the label owes to particles left out */
  readonly drains: number;
  /** mPa·s under a brush, before it has lost any water */
  readonly underBrush: number;
  /** what its flow under a brush follows from */
  readonly flow: Flowing;
  /** how much its film shows where it comes through, 0–1 */
  readonly shows: number;
  /** N/m with which each g/m² of dry film draws in, once it has dried under weight */
  readonly pulls: number;
  /** share of the dry film that was particles, too large for the pores of a close sheet, 0–1 */
  readonly particleSolids: number;
  /** solids share at which the joint grabs */
  readonly grabSolids: number;
  /** dry g/m² that a sound joint needs */
  readonly leastDryCoat: number;
  readonly carrier: 'water' | 'alcohol';
  /** °C; absent when no film needs to form */
  readonly filmFormsAbove?: number;
  /** °C; absent when it does not gel */
  readonly gelsAt?: number;
}

/** How much a film shows where it has come through, 0–1: PVA stains and shines, starch hardly, ethers least. Estimate. */
export const SHOWING = { yes: 1, partly: 0.35, no: 0.12 } as const;

/**
 * What a film draws in with, N/m per g/m² dry: a stress over a density. Published of gelatine coatings dried at room
 * temperature: 10 to 40 MPa (gelatin-coatings-1996), here 25 at 1.3 g/cm³. Estimates: 15 MPa at 1.5 for starch, 8 at
 * 1.3 for ethers; a vinyl made flexible gives way.
 */
export const PULLS: Readonly<Record<FilmKind, number>> = { vinyl: 0.2, starch: 10, ether: 6, protein: 19 };

/**
 * The liquid between the particles of a dispersion, as water drains through it, mPa·s. What makes one dispersion
 * thicker than another sits on its particles and does not hold water back. Estimate.
 */
export const SERUM_DRAINS = 10_000;
const SERUM_THICKENS = thickeningPower(SERUM_DRAINS, 100);

interface Measured {
  readonly ingredient: Ingredient;
  readonly part: Part & { readonly grams: number };
}

/** Every ingredient in the pot with its grams, mixes within mixes opened up. Throws RangeError on an unknown id. */
export function ingredientGrams(adhesive: WetAdhesive, catalogue: Catalogue, draw: DrawLiquid = middle): Measured[] {
  const inPot: Measured[] = [];
  for (const { of, parts } of adhesive.parts) {
    const ingredient = catalogue.ingredients.get(of);
    if (ingredient) {
      const density = draw(ingredient.density, 'solids');
      const solids = draw(ingredient.solids, 'solids');
      const grams = gramsOf(
        adhesive.by === 'mass' ? { grams: parts, density, solids } : { millilitres: parts, density, solids },
      );
      inPot.push({ ingredient, part: { grams, density, solids } });
      continue;
    }
    const inner = catalogue.adhesives.get(of);
    if (inner?.form !== 'wet') throw new RangeError(`${adhesive.id}: no ingredient or wet adhesive called ${of}`);
    const opened = ingredientGrams(inner, catalogue, draw);
    const whole = mixOf(opened);
    const wanted = adhesive.by === 'mass' ? parts / whole.mass : parts / whole.volume;
    for (const { ingredient: one, part } of opened)
      inPot.push({ ingredient: one, part: { grams: part.grams * wanted, density: part.density, solids: part.solids } });
  }
  return inPot;
}

const mixOf = (inPot: readonly Measured[]) => mix(inPot.map(({ part }) => part));

/**
 * The liquid that this recipe makes. Thickeners add by the eighth-root law in the liquid between the
 * particles; particles thicken that by Krieger–Dougherty. What a dispersion's own label viscosity does
 * not owe to its particles is counted as a thickener, and is thinned with the rest.
 */
export function liquidOf(adhesive: WetAdhesive, catalogue: Catalogue, draw: DrawLiquid = middle): Liquid {
  // A chooser asks this some two thousand times for its first answer, before a browser has made it quick: each part of
  // the pot is gone through once, in plain loops.
  const inPot = ingredientGrams(adhesive, catalogue, draw);
  const whole = mixOf(inPot);
  let [solidVolume, particleGrams, particleVolume] = [0, 0, 0];
  let [shows, shown, pulls, pulled, grabs, grabbed, least, leastOf] = [0, 0, 0, 0, 0, 0, 0, 0];
  let carrier: Liquid['carrier'] = 'water';
  let filmFormsAbove: number | undefined;
  let gelsAt: number | undefined;
  for (const { ingredient, part } of inPot) {
    const solids = part.grams * part.solids;
    const volume = solids / ingredient.solidDensity;
    solidVolume += volume;
    if (ingredient.thickening.law === 'dispersion') {
      particleGrams += solids;
      particleVolume += volume;
    }
    if (ingredient.liquid === 'alcohol') carrier = 'alcohol';
    // These are means by the solids of the ingredients that have them.
    if (ingredient.shows) {
      shown += solids;
      shows += solids * SHOWING[ingredient.shows];
    }
    if (ingredient.kind) {
      pulled += solids;
      pulls += solids * PULLS[ingredient.kind];
    }
    if (ingredient.grabSolids) {
      grabbed += solids;
      grabs += solids * draw(ingredient.grabSolids, 'grab');
    }
    if (ingredient.leastDryCoat) {
      leastOf += solids;
      least += solids * draw(ingredient.leastDryCoat, 'film');
    }
    // A trait of one ingredient counts for the mix when that ingredient is at least half of the solids.
    if (solids >= whole.solids / 2) {
      if (ingredient.filmFormsAbove) filmFormsAbove ??= draw(ingredient.filmFormsAbove, 'film');
      if (ingredient.gelsAt) gelsAt ??= draw(ingredient.gelsAt, 'film');
    }
  }
  // Percentages are of the liquid between the particles: the whole less the particles.
  const between = whole.mass - particleGrams;
  let [strength, draining, pasted, indexed] = [0, 0, 0, 0];
  for (const item of inPot) {
    const { thickening } = item.ingredient;
    const given = strengthGiven(item, draw);
    strength += (given * 100) / between;
    draining += (drainingGiven(item, draw, given) * 100) / between;
    if (thickening.law === 'solution' && thickening.flowIndex) {
      pasted += given;
      indexed += given * draw(thickening.flowIndex, 'viscosity');
    }
  }
  const carrierVolume = whole.water / (carrier === 'alcohol' ? 0.79 : 1);
  const particleShare = particleVolume / (particleVolume + solidVolume - particleVolume + carrierVolume);
  const viscosity = dispersionViscosity({
    volumeFraction: Math.min(particleShare, RANDOM_PACKING * 0.98),
    continuousMilliPascalSeconds: solutionViscosity(Math.min(strength, 15)),
  });
  const flow: Flowing = {
    particles: particleVolume / whole.mass,
    between: (solidVolume - particleVolume + carrierVolume) / whole.mass,
    strength: Math.min(strength, 15),
    pasteShare: strength > 0 ? (pasted * 100) / between / strength : 0,
    flowIndex: pasted > 0 ? indexed / pasted : 1,
  };
  return {
    solids: whole.solidsFraction,
    volumeSolids: solidVolume / (solidVolume + carrierVolume),
    density: whole.density,
    viscosity,
    drains: solutionViscosity(Math.min(draining, 15)),
    underBrush: draggingViscosity(flow, 0),
    flow,
    shows: shown > 0 ? shows / shown : 0,
    pulls: pulled > 0 ? pulls / pulled : 0,
    particleSolids: whole.solids > 0 ? particleGrams / whole.solids : 0,
    grabSolids: grabbed > 0 ? grabs / grabbed : 1,
    leastDryCoat: leastOf > 0 ? least / leastOf : 1,
    carrier,
    ...(filmFormsAbove !== undefined && { filmFormsAbove }),
    ...(gelsAt !== undefined && { gelsAt }),
  };
}

/** Thickening strength this item brings, as (α·C/100)·grams of liquid: divide by the grams between the particles. */
function strengthGiven({ ingredient, part }: Measured, draw: DrawLiquid): number {
  const { thickening } = ingredient;
  switch (thickening.law) {
    case 'none':
      return 0;
    case 'cellulose-ether':
      return thickeningPower(draw(thickening.grade, 'viscosity'), 2) * part.grams;
    case 'solution':
      return thickeningPower(draw(thickening.viscosity, 'viscosity'), thickening.percent) * part.grams * part.solids;
    case 'dispersion': {
      const volume = part.solids / ingredient.solidDensity;
      const share = Math.min(volume / (volume + 1 - part.solids), RANDOM_PACKING * 0.98);
      const serum = Math.max(
        1,
        draw(thickening.viscosity, 'viscosity') / dispersionViscosity({ volumeFraction: share }),
      );
      return thickeningPower(serum, 100) * part.grams * (1 - part.solids);
    }
  }
}

/** Below this flow index a paste is a soft gel, and holds its water as if it were this many times thicker. Estimate. */
const GEL_INDEX = 0.6;
const GEL_HOLDS = 30;

/** The same as water drains: a dispersion counts with an ordinary serum, however thick its label says it is. */
function drainingGiven(item: Measured, draw: DrawLiquid, strength: number): number {
  const { thickening } = item.ingredient;
  if (thickening.law === 'solution' && thickening.flowIndex && thickening.flowIndex.middle < GEL_INDEX) {
    const held = draw(thickening.viscosity, 'viscosity') * GEL_HOLDS;
    return thickeningPower(held, thickening.percent) * item.part.grams * item.part.solids;
  }
  if (thickening.law !== 'dispersion') return strength;
  return SERUM_THICKENS * item.part.grams * (1 - item.part.solids);
}
