/** How much of the 1:1 mix a class needs, from its work and the recipe's own records. */
import { gramsOf, mix } from '../../core/adhesive/mixture';
import { middleLiquid } from '../../core/choose/sampling';
import { catalogue } from '../../data/catalogue';
import { techniqueOf, wetAdhesiveOf } from '../records';

export interface Class {
  readonly people: number;
  /** cm² to be glued by each */
  readonly squareCentimetres: number;
  /** share made over what ends up on the work, for pots, brushes and second tries */
  readonly spare: number;
  readonly technique?: string;
}

export interface Amounts {
  readonly coat: number;
  /** g on the work, and g to make */
  readonly onWork: number;
  readonly toMake: number;
  readonly millilitres: number;
  /** ml of PVA; as much of the jelly */
  readonly pva: number;
  readonly jellyGrams: number;
  readonly powder: number;
  readonly water: number;
}

export function amountsFor({ people, squareCentimetres, spare, technique = 'brush-full' }: Class): Amounts {
  const coat = techniqueOf(technique).coat.middle;
  const onWork = people * (squareCentimetres / 10_000) * coat;
  const toMake = onWork * (1 + spare);
  const millilitres = toMake / middleLiquid(wetAdhesiveOf('pva-mc-1-1'), catalogue).density;
  const half = millilitres / 2;
  const jelly = wetAdhesiveOf('methylcellulose-1-5');
  const jellyGrams = gramsOf({ millilitres: half, density: middleLiquid(jelly, catalogue).density, solids: 0 });
  const powderShare = mix(
    jelly.parts.map(({ of, parts }) => ({ grams: parts, density: 1, solids: of === 'water' ? 0 : 1 })),
  ).solidsFraction;
  const powder = jellyGrams * powderShare;
  return { coat, onWork, toMake, millilitres, pva: half, jellyGrams, powder, water: jellyGrams - powder };
}
