/**
 * Strength and dilution: what is dissolved stays, only the liquid around it changes (C₁·V₁ = C₂·V₂).
 * Everything goes through `mix`, so mass in is mass out. Left at their defaults the densities are 1 g/ml
 * and this is the plain school sum; give the real ones and the volumes come out right as well.
 */
import { mix, type Mix } from './mixture';
import { mustBePositive, mustBeWithin } from '../base/result';

/** w/v: grams in 100 ml of the finished liquid. w/w: grams in 100 g of it. Close together below 10 %. */
export type StrengthBasis = 'w/v' | 'w/w';

/** Density of water, g/ml, as these sums take it. At 20 °C it is 0.998. */
const WATER_DENSITY = 1;

export interface Dissolved {
  /** as supplied: share of its mass that stays when dry, above 0 to 1; a powder is 1 */
  readonly solids: number;
  /** g/ml as supplied; of a powder, its own substance without the air in it */
  readonly density: number;
}

/**
 * g/ml of a liquid of this strength: what is dissolved and water side by side, their volumes adding up. By volume the
 * per cent are grams in 100 ml, so the water is what is left of the 100 ml; by mass it is what is left of 100 g. No
 * stronger than as supplied.
 */
export function solutionDensity(percent: number, basis: StrengthBasis, { solids, density }: Dissolved): number {
  mustBeWithin('percent', percent, 0, 100);
  mustBeWithin('solids', solids, Number.MIN_VALUE, 1);
  mustBePositive('density', density);
  // of what was supplied: g in each ml, or in each g, of the liquid
  const supplied = percent / 100 / solids;
  return basis === 'w/v'
    ? Math.min(supplied, density) + Math.max(0, 1 - supplied / density) * WATER_DENSITY
    : 1 / (Math.min(supplied, 1) / density + Math.max(0, 1 - supplied) / WATER_DENSITY);
}

export interface Dilution {
  readonly stockMillilitres: number;
  readonly stockGrams: number;
  readonly waterMillilitres: number;
  readonly waterGrams: number;
  readonly batchMillilitres: number;
  readonly batchGrams: number;
  /** g of what stays when dry */
  readonly solidsGrams: number;
  /** of the batch, in the basis that was asked for */
  readonly percent: number;
}

export interface DiluteTo {
  /** strength of what is in the jar, above 0 to 100 */
  readonly stockPercent: number;
  /** strength that is wanted, above 0 to `stockPercent` */
  readonly targetPercent: number;
  readonly batchMillilitres: number;
  /** w/v when left out */
  readonly basis?: StrengthBasis;
  /** g/ml of what is in the jar; 1 when left out */
  readonly stockDensity?: number;
}

/** How much stock and how much water make `batchMillilitres` at `targetPercent`. Throws RangeError when it cannot be made by adding water. */
export function diluteTo(wanted: DiluteTo): Dilution {
  const { stockPercent, targetPercent, batchMillilitres, basis = 'w/v', stockDensity = 1 } = wanted;
  mustBeStrengths(stockPercent, targetPercent);
  mustBePositive('batchMillilitres', batchMillilitres);
  mustBePositive('stockDensity', stockDensity);
  const ratio = stockPercent / targetPercent;
  // By volume the stock is V₂·C₂/C₁; by mass its grams weigh 1/ratio of the batch, whose volume is given.
  const stockGrams =
    basis === 'w/v'
      ? (batchMillilitres / ratio) * stockDensity
      : batchMillilitres / (1 / stockDensity + (ratio - 1) / WATER_DENSITY);
  const waterGrams = (batchMillilitres - stockGrams / stockDensity) * WATER_DENSITY;
  return asDilution(stockGrams, stockDensity, Math.max(0, waterGrams), stockPercent, basis);
}

export interface Stretch {
  readonly haveMillilitres: number;
  readonly fromPercent: number;
  readonly toPercent: number;
  readonly basis?: StrengthBasis;
  readonly stockDensity?: number;
}

/** How far what you have goes: water to add to all of it, and what that makes; defaults as above. Throws RangeError when water cannot bring it there. */
export function stretch(wanted: Stretch): Dilution {
  const { haveMillilitres, fromPercent, toPercent, basis = 'w/v', stockDensity = 1 } = wanted;
  mustBeStrengths(fromPercent, toPercent);
  mustBePositive('haveMillilitres', haveMillilitres);
  mustBePositive('stockDensity', stockDensity);
  const grams = haveMillilitres * stockDensity;
  const more = fromPercent / toPercent - 1;
  const waterGrams = basis === 'w/v' ? haveMillilitres * more * WATER_DENSITY : grams * more;
  return asDilution(grams, stockDensity, waterGrams, fromPercent, basis);
}

export interface FromPowder {
  /** above 0, below 100 */
  readonly targetPercent: number;
  readonly batchMillilitres: number;
  readonly basis: StrengthBasis;
  /** g/ml of the powder's own substance, without the air in it; 1 when left out */
  readonly powderDensity?: number;
}

export interface PowderSolution {
  readonly powderGrams: number;
  readonly waterMillilitres: number;
  readonly waterGrams: number;
  readonly batchMillilitres: number;
  readonly batchGrams: number;
  readonly percent: number;
}

/** Powder and water for `batchMillilitres` at `targetPercent`. Throws RangeError outside 0–100 %, or with no batch. */
export function solutionFromPowder(wanted: FromPowder): PowderSolution {
  const { targetPercent, batchMillilitres, basis, powderDensity = 1 } = wanted;
  mustBeWithin('targetPercent', targetPercent, Number.MIN_VALUE, 99.99);
  mustBePositive('batchMillilitres', batchMillilitres);
  mustBePositive('powderDensity', powderDensity);
  const powderGrams =
    basis === 'w/v'
      ? (targetPercent * batchMillilitres) / 100
      : batchMillilitres / (1 / powderDensity + (100 / targetPercent - 1) / WATER_DENSITY);
  const waterGrams = (batchMillilitres - powderGrams / powderDensity) * WATER_DENSITY;
  const whole = mix([
    { grams: powderGrams, density: powderDensity, solids: 1 },
    { grams: waterGrams, density: WATER_DENSITY, solids: 0 },
  ]);
  return {
    powderGrams,
    waterMillilitres: waterGrams / WATER_DENSITY,
    waterGrams,
    batchMillilitres: whole.volume,
    batchGrams: whole.mass,
    percent: percentOf(whole, basis),
  };
}

/** Strength of a mix in per cent: grams of solids in 100 ml (w/v) or in 100 g (w/w) of it. */
export function percentOf(whole: Mix, basis: StrengthBasis): number {
  return (100 * whole.solids) / (basis === 'w/v' ? whole.volume : whole.mass);
}

function asDilution(
  stockGrams: number,
  stockDensity: number,
  waterGrams: number,
  percent: number,
  basis: StrengthBasis,
): Dilution {
  const solids = percent / 100 / (basis === 'w/v' ? stockDensity : 1);
  const stock = { grams: stockGrams, density: stockDensity, solids };
  const whole = mix([stock, { grams: waterGrams, density: WATER_DENSITY, solids: 0 }]);
  return {
    stockMillilitres: stockGrams / stockDensity,
    stockGrams,
    waterMillilitres: waterGrams / WATER_DENSITY,
    waterGrams,
    batchMillilitres: whole.volume,
    batchGrams: whole.mass,
    solidsGrams: whole.solids,
    percent: percentOf(whole, basis),
  };
}

function mustBeStrengths(stock: number, target: number): void {
  mustBeWithin('the strength there is', stock, Number.MIN_VALUE, 100);
  mustBePositive('the strength wanted', target);
  if (target > stock) throw new RangeError(`water only weakens: ${target} % cannot be made from ${stock} %`);
}
