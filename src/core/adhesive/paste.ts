/**
 * Starch paste: from the parts of a recipe to what is in the pan when it has cooked, and from there to
 * a paste thin enough for the work. Some of the water boils off; how much depends on the pan and the
 * lid, so it is a figure that the cook may change.
 */
import { mix } from './mixture';
import { mustBePositive, mustBeWithin } from '../base/result';

/** g/ml of the grains themselves, and of dry starch spooned loosely into a measure. From memory. */
export const STARCH_DENSITY = 1.5;
export const STARCH_LOOSE_DENSITY = 0.55;
/** Share of the water that leaves an open pan in about 20 min of gentle cooking. From memory: 5 to 20 %. */
export const BOILED_OFF = { low: 0.05, middle: 0.1, high: 0.2 };

export interface PasteRecipe {
  /** parts of water to one of starch, 2–20 */
  readonly waterParts: number;
  readonly by: 'mass' | 'volume';
  /** g of dry starch */
  readonly starchGrams: number;
  /** share of the water lost in cooking, 0–0.6; `BOILED_OFF.middle` when left out */
  readonly boiledOff?: number;
}

export interface Paste {
  readonly starchGrams: number;
  /** ml measured into the pan */
  readonly waterMillilitres: number;
  /** ml that leave as steam */
  readonly lostMillilitres: number;
  /** g and ml of cooked paste */
  readonly grams: number;
  readonly millilitres: number;
  /** per cent starch by mass, before and after cooking */
  readonly percentRaw: number;
  readonly percent: number;
}

/** The paste that these parts make. Starch is weighed as it comes, with the moisture of the air in it. Throws RangeError outside the limits. */
export function cookPaste({ waterParts, by, starchGrams, boiledOff = BOILED_OFF.middle }: PasteRecipe): Paste {
  mustBeWithin('waterParts', waterParts, 2, 20);
  mustBePositive('starchGrams', starchGrams);
  mustBeWithin('boiledOff', boiledOff, 0, 0.6);
  // By volume a part of starch is a spoonful with air in it, which weighs about half as much as water.
  const waterMillilitres = by === 'mass' ? waterParts * starchGrams : waterParts * (starchGrams / STARCH_LOOSE_DENSITY);
  const lostMillilitres = waterMillilitres * boiledOff;
  const starch = { grams: starchGrams, density: STARCH_DENSITY, solids: 1 };
  const raw = mix([starch, { millilitres: waterMillilitres, density: 1, solids: 0 }]);
  const cooked = mix([starch, { millilitres: waterMillilitres - lostMillilitres, density: 1, solids: 0 }]);
  return {
    starchGrams,
    waterMillilitres,
    lostMillilitres,
    grams: cooked.mass,
    millilitres: cooked.volume,
    percentRaw: raw.solidsFraction * 100,
    percent: cooked.solidsFraction * 100,
  };
}

/** Dry starch, g, for a recipe that must leave `pasteGrams` of cooked paste. */
export function starchFor(pasteGrams: number, recipe: Omit<PasteRecipe, 'starchGrams'>): number {
  mustBePositive('pasteGrams', pasteGrams);
  // Everything in the pan is in proportion to the starch.
  return pasteGrams / cookPaste({ ...recipe, starchGrams: 1 }).grams;
}

/** Per cent starch by mass to thin a paste to, by what it is for. From memory: binders go by feel, from soft butter to single cream. */
export const PASTE_USES = {
  covering: { percent: 16, like: 'soft butter' },
  hinging: { percent: 12, like: 'thick cream' },
  lining: { percent: 8, like: 'single cream' },
} as const;

/** Water, ml, to work into `grams` of paste at `percent` to bring it to `targetPercent`. Throws RangeError when it is thinner already. */
export function thinPaste(grams: number, percent: number, targetPercent: number): number {
  mustBePositive('grams', grams);
  mustBeWithin('percent', percent, Number.MIN_VALUE, 60);
  mustBeWithin('targetPercent', targetPercent, Number.MIN_VALUE, percent);
  return grams * (percent / targetPercent - 1);
}
