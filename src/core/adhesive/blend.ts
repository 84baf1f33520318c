/**
 * PVA made to go further: with methylcellulose, with paste, with water. What the mix is made of decides
 * its solids, its thickness and the film it leaves. A mix made here and one on the shelf answer alike.
 */
import { ingredientGrams, liquidOf, type Liquid } from './liquid';
import { mix } from './mixture';
import type { Catalogue, WetAdhesive } from '../records/records';
import { mustBePositive, mustBeWithin } from '../base/result';

/** Id of the mix while it is being reckoned; never a record's. */
const OWN_MIX = 'own-mix';

export interface Blend {
  /** adhesive or ingredient id of what is stretched: 'pva' */
  readonly base: string;
  /** what it is stretched with: 'water', 'methylcellulose-2-5', 'wheat-starch-paste-thick' */
  readonly extender: string;
  /** both in the unit of `by` */
  readonly baseParts: number;
  readonly extenderParts: number;
  readonly by: 'mass' | 'volume';
}

export interface Blended extends Liquid {
  /** per cent by mass that stays when dry, and the rest */
  readonly solidsPercent: number;
  readonly waterPercent: number;
  /** grams and millilitres of the whole, per unit of what was put in */
  readonly grams: number;
  readonly millilitres: number;
  /** viscosity at rest of the base ÷ that of the mix: 6 is "about a sixth as thick" */
  readonly thinner: number;
  /** share of the solids that is the base's own polymer, 0–1 */
  readonly baseShare: number;
}

/** The mix these parts make. Throws RangeError on no parts or on an unknown id. */
export function blend(parts: Blend, catalogue: Catalogue): Blended {
  const adhesive = asAdhesive(parts, catalogue);
  const liquid = liquidOf(adhesive, catalogue);
  const whole = mix(ingredientGrams(adhesive, catalogue).map(({ part }) => part));
  const base = liquidOf(alone(parts.base, catalogue), catalogue);
  const inBase = mix(
    ingredientGrams({ ...adhesive, parts: [{ of: parts.base, parts: parts.baseParts }] }, catalogue).map(
      ({ part }) => part,
    ),
  );
  return {
    ...liquid,
    solidsPercent: whole.solidsFraction * 100,
    waterPercent: 100 - whole.solidsFraction * 100,
    grams: whole.mass,
    millilitres: whole.volume,
    thinner: base.viscosity / liquid.viscosity,
    baseShare: whole.solids > 0 ? inBase.solids / whole.solids : 0,
  };
}

/**
 * Parts of the extender, by mass, to one part of the base that bring the mix to `solidsPercent`:
 * (s_base − s)/(s − s_extender). Throws RangeError unless s lies between the two.
 */
export function partsForSolids(base: string, extender: string, solidsPercent: number, catalogue: Catalogue): number {
  const from = liquidOf(alone(base, catalogue), catalogue).solids * 100;
  const to = liquidOf(alone(extender, catalogue), catalogue).solids * 100;
  mustBePositive('solidsPercent', solidsPercent);
  if (!(solidsPercent <= from && solidsPercent > to)) {
    throw new RangeError(
      `the mix can have from ${to.toFixed(1)} % to ${from.toFixed(1)} % solids; got ${solidsPercent} %`,
    );
  }
  return (from - solidsPercent) / (solidsPercent - to);
}

/** An adhesive of the shelf as it stands, or an ingredient poured straight from its jar. */
export function alone(id: string, catalogue: Catalogue): WetAdhesive {
  const known = catalogue.adhesives.get(id);
  if (known?.form === 'wet') return known;
  if (!catalogue.ingredients.has(id)) throw new RangeError(`no ingredient or wet adhesive called ${id}`);
  return { ...traitsFrom(catalogue), id, by: 'mass', parts: [{ of: id, parts: 1 }] };
}

/** The mix as a wet adhesive, which is all that the model asks for. */
export function asAdhesive({ base, extender, baseParts, extenderParts, by }: Blend, catalogue: Catalogue): WetAdhesive {
  mustBePositive('baseParts', baseParts);
  mustBeWithin('extenderParts', extenderParts, 0, 1e6);
  const likeBase = alone(base, catalogue);
  const parts = [
    { of: base, parts: baseParts },
    ...(extenderParts > 0 ? [{ of: extender, parts: extenderParts }] : []),
  ];
  return { ...likeBase, id: OWN_MIX, name: OWN_MIX, short: OWN_MIX, by, parts };
}

/** Traits are not reckoned with here (only liquids and slip are), but the shape asks for them. */
function traitsFrom(catalogue: Catalogue): WetAdhesive {
  const wet = [...catalogue.adhesives.values()].find((adhesive) => adhesive.form === 'wet');
  if (!wet) throw new RangeError('the catalogue holds no wet adhesive');
  return wet;
}
