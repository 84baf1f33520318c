/** How a stretched mix is made, what film it leaves, how much it covers, and how far stretching can go. */
import { figure, span, withUnit, lowerFirst, formatAmount } from '../base/format';
import { liquidOf } from '../adhesive/liquid';
import type { Fact } from '../base/fact';
import type { MixPlan } from './plan';
import type { Catalogue, Technique } from '../records/records';
import { alone, partsForSolids, type Blended } from '../adhesive/blend';
import type { Step } from '../safety/hazards';

/** What a coat of the mix leaves, and how far the mix goes. */
export function mixedFilmFacts(mixed: Blended, { coat, name }: Technique, millilitres: number): Fact[] {
  const square = (grams: number) => (millilitres * mixed.density) / grams;
  return [
    {
      label: 'Dry film',
      value: span(coat.low * mixed.solids, coat.high * mixed.solids, 'g/m²'),
      note: `from a coat of ${span(coat.low, coat.high, 'g/m²')} wet: ${lowerFirst(name)}`,
    },
    {
      label: 'Covers',
      value: span(square(coat.high), square(coat.low), 'm²'),
      note: 'all of the mix, before what stays in the pot',
    },
  ];
}

/** The most extender that still leaves the least dry coat a sound joint needs, with a middling coat. */
export function reach(plan: MixPlan, { coat }: Technique, catalogue: Catalogue): Fact[] {
  const base = liquidOf(alone(plan.base, catalogue), catalogue);
  const solids = (base.leastDryCoat / coat.middle) * 100;
  const least = liquidOf(alone(plan.extender, catalogue), catalogue).solids * 100;
  if (solids >= base.solids * 100 || solids <= least) return [];
  const most = partsForSolids(plan.base, plan.extender, solids, catalogue);
  const grams =
    plan.from === 'have'
      ? `: ${withUnit(plan.haveGrams * most, 'g', 2)} to your ${`${formatAmount(plan.haveGrams)}\u00a0g`}`
      : '';
  return [
    {
      label: 'As far as it goes',
      value: `1:${figure(most, 2)} by mass${grams}`,
      note: `at ${figure(solids, 2)} % solids a middling coat leaves about ${figure(base.leastDryCoat, 2)} g/m² dry, which a sound joint needs; an estimate`,
    },
  ];
}

/** How long the mix keeps. Frost spoils every dispersion: Roberts & Etherington 1982, "freezing point". */
export const keeps = (extender: string): Fact => ({
  label: 'Keeps',
  value: extender.includes('paste')
    ? 'two or three days, covered and cold'
    : extender === 'water'
      ? 'a week or two, covered'
      : 'a few weeks, covered and cool',
  note: 'common practice, no source. Never let it freeze; throw it out when it smells, grows spots, parts into layers or will not stir smooth',
});

/** In what order: powder never goes into PVA dry, and nothing is beaten. Common practice. */
export const stretchSteps = ({ extender }: MixPlan, base: string, added: string): Step[] => [
  {
    text: `Look at the ${base} first: smooth, white and even to the bottom. If it is lumpy, stringy or watery it has been frozen or is too old, and it will not hold. Throw it away.`,
    does: ['keep'],
  },
  ...(extender.startsWith('methylcellulose')
    ? [
        {
          text: 'Have the methylcellulose dissolved and clear beforehand. Dry powder stirred into PVA makes lumps that never part.',
        },
      ]
    : []),
  ...(extender.includes('paste')
    ? [{ text: 'Sieve the paste first, and have it cold. Thin it before it goes in, not afterwards.' }]
    : []),
  {
    text: `Put ${base} in the pot. Add ${added} a little at a time and fold it in: the thick takes up the thin. Beating makes foam.`,
  },
  {
    text: 'Let it stand for a quarter of an hour, then try it on an offcut of the paper and the board that you will use.',
  },
  { text: 'Write what is in it, the parts and the date on the pot. Cover it, and keep it from frost.', does: ['keep'] },
];
