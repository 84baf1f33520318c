/** Starch paste: what goes in the pan, how it is cooked, and how it is thinned for the work. */
import { figure, span, withUnit, lowerFirst, formatAmount } from '../base/format';
import type { MixAnswer } from './answer';
import type { Fact } from '../base/fact';
import type { MixPlan } from './plan';
import { batchFor, inJug, onScale } from './words';
import { BOILED_OFF, cookPaste, PASTE_USES, starchFor, STARCH_LOOSE_DENSITY, thinPaste } from '../adhesive/paste';
import type { Catalogue } from '../records/records';
import { fail, ok, type Result } from '../base/result';
import { inTeaspoons } from '../base/rounding';

/** ml to a gram of paste, near enough to size a batch: starch weighs 1.5 and water 1. */
const PASTE_DENSITY = 1.05;

export function mixPaste(plan: MixPlan, catalogue: Catalogue): Result<MixAnswer> {
  const { waterParts, by, use } = plan;
  const boiledOff = plan.boiledOff / 100;
  const perGram = cookPaste({ waterParts, by, starchGrams: 1, boiledOff });
  const target = use === 'as-cooked' ? perGram.percent : PASTE_USES[use].percent;
  if (target > perGram.percent) {
    const thickest = figure(perGram.percent, 2);
    return fail([
      {
        field: 'waterParts',
        code: 'contradiction',
        message: `Cooked so, the paste has ${thickest} % starch, already thinner than the ${target} % for ${use}. Give fewer parts of water, or choose "as cooked".`,
      },
    ]);
  }
  const finished = batchFor(plan.need, plan.loss) * PASTE_DENSITY;
  const cookedGrams = (finished * target) / perGram.percent;
  const paste = cookPaste({
    waterParts,
    by,
    boiledOff,
    starchGrams: starchFor(cookedGrams, { waterParts, by, boiledOff }),
  });
  // The same strength reckoned twice may differ in its last digit.
  const thinner = thinPaste(paste.grams, paste.percent, Math.min(target, paste.percent));
  const step = Number(plan.scale);
  const starch = onScale(paste.starchGrams, step);
  const water = inJug(paste.waterMillilitres);
  const name = lowerFirst(catalogue.ingredients.get(plan.starch)!.name.replace(/ powder$/, ''));
  const spoons = inTeaspoons(paste.starchGrams, 'starch');
  const thinned = thinner >= 0.5;
  return ok({
    sentence: `Cook ${starch} of ${name} in ${water} of water${thinned ? `, then work in about ${inJug(thinner)} more when it is cold` : ''}.`,
    brief: ['Paste', `${starch} in ${water}`],
    portions: [
      {
        name: name,
        amount: starch,
        or: `${inJug(paste.starchGrams / STARCH_LOOSE_DENSITY)} spooned loosely, from memory`,
      },
      { name: 'water into the pan', amount: water },
      ...(thinned ? [{ name: 'water to thin it, cold', amount: inJug(thinner) }] : []),
    ],
    steps: steps(plan, starch, water, thinner),
    facts: [
      {
        label: 'Cooked paste',
        value: withUnit(paste.percent, '% starch by mass', 2),
        note: `${formatAmount(paste.percentRaw)} % before cooking; ${inJug(paste.lostMillilitres)} of water leaves as steam`,
      },
      {
        label: 'For the work',
        value: withUnit(target, '% starch by mass', 2),
        note:
          use === 'as-cooked' ? 'as it comes from the pan' : `like ${PASTE_USES[use].like}; from memory, go by feel`,
      },
      ...steam(plan),
      {
        label: 'In level teaspoons',
        value: `about ${formatAmount(spoons.teaspoons)}, which is ${span(spoons.low, spoons.high, 'g')}`,
        note: 'from memory; weigh if you can',
      },
      {
        label: 'Keeps',
        value: 'up to a week, covered and cold',
        note: 'Metropolitan Museum; sealed under boiled water and refrigerated, 20 days (Morse 1995)',
      },
    ],
    warnings:
      by === 'volume'
        ? [
            'A part by volume is a spoonful with air in it. How tightly it is packed changes the strength by a quarter: mass is surer.',
          ]
        : [],
    cautions: ['hot-liquid', 'flour-allergen', 'powder-dust', 'spoilage', 'preservatives'],
    figures: [paste.starchGrams, paste.waterMillilitres, thinner],
  });
}

function steam({ waterParts, by, boiledOff }: MixPlan): Fact[] {
  const at = (share: number) => cookPaste({ waterParts, by, starchGrams: 1, boiledOff: share }).percent;
  return [
    {
      label: 'If less or more boils off',
      value: span(at(BOILED_OFF.low), at(BOILED_OFF.high), '% starch'),
      note: `you gave ${figure(boiledOff, 2)} %; an open pan loses 5 to 20 % in about 20 min, from memory. Weigh the pan before and after to know yours`,
    },
  ];
}

function steps({ use }: MixPlan, starch: string, water: string, thinner: number): string[] {
  return [
    `Weigh ${starch} of starch into the pan and stir in ${water} of cold water until no lump is left. Let it stand for half an hour.`,
    'Heat it gently and stir all the time. It turns from milk to a thick, clear-grey paste; keep it moving for 15 to 25 min.',
    'Pour it into a clean bowl, press film on its face so that no skin forms, and let it cool.',
    'Rub it through a fine sieve or a stocking, twice for fine work.',
    thinner >= 0.5
      ? `Work in the ${inJug(thinner)} of cold water a spoonful at a time with a stiff brush. Stop sooner if it already feels right${use === 'as-cooked' ? '' : ` for ${use}`}.`
      : 'Work it with a stiff brush until it is smooth.',
  ];
}
