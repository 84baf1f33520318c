/** The other way: a mix that is too thin, made stronger with powder, with stronger stock, or by losing water. */
import { mustBePositive, mustBeWithin } from '../base/result';

export interface Strengthen {
  readonly haveMillilitres: number;
  readonly fromPercent: number;
  /** at least `fromPercent`, below 100; both w/v */
  readonly toPercent: number;
  /** g/ml of the powder's own substance; 1 when left out */
  readonly powderDensity?: number;
}

/**
 * Grams of powder to add to what there is. The powder takes up room of its own, so it is a little more
 * than the difference in strength: g = V·(c₂ − c₁)/(1 − c₂/ρ), with c in g/ml. Throws RangeError when
 * less strength is asked for.
 */
export function powderToAdd({ haveMillilitres, fromPercent, toPercent, powderDensity = 1 }: Strengthen): number {
  mustBePositive('haveMillilitres', haveMillilitres);
  mustBePositive('powderDensity', powderDensity);
  mustBeWithin('fromPercent', fromPercent, 0, 99);
  mustBeWithin('toPercent', toPercent, fromPercent, 99);
  return (haveMillilitres * (toPercent - fromPercent)) / 100 / (1 - toPercent / 100 / powderDensity);
}

export interface StrengthenWithStock {
  readonly haveMillilitres: number;
  readonly fromPercent: number;
  readonly toPercent: number;
  /** of the stronger jar; above `toPercent` */
  readonly stockPercent: number;
}

/** Millilitres of a stronger stock to add: V·(c₂ − c₁)/(c − c₂), the alligation rule. Throws RangeError unless the stock is stronger. */
export function stockToAdd({ haveMillilitres, fromPercent, toPercent, stockPercent }: StrengthenWithStock): number {
  mustBePositive('haveMillilitres', haveMillilitres);
  mustBeWithin('fromPercent', fromPercent, 0, 100);
  mustBeWithin('toPercent', toPercent, fromPercent, 100);
  if (!(stockPercent > toPercent))
    throw new RangeError(`the stock must be stronger than ${toPercent} %; got ${stockPercent} %`);
  return (haveMillilitres * (toPercent - fromPercent)) / (stockPercent - toPercent);
}

/** Millilitres of water that must leave (stand open, or cook longer) to bring what there is to `toPercent`. */
export function waterToLose(haveMillilitres: number, fromPercent: number, toPercent: number): number {
  mustBePositive('haveMillilitres', haveMillilitres);
  mustBeWithin('fromPercent', fromPercent, Number.MIN_VALUE, 100);
  mustBeWithin('toPercent', toPercent, fromPercent, 100);
  return haveMillilitres * (1 - fromPercent / toPercent);
}
