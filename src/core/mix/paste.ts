/** Starch paste: what goes in the pan, how it is cooked, and how it is thinned for the work. */
import { figure, span, withUnit, lowerFirst, formatAmount } from '../base/format';
import type { MixAnswer } from './answer';
import type { Fact } from '../base/fact';
import type { MixPlan } from './plan';
import { carefully, type Step } from '../safety/hazards';
import { batchFor, inJug, onScale } from './words';
import { BOILED_OFF, cookPaste, PASTE_USES, starchFor, STARCH_LOOSE_DENSITY, thinPaste } from '../adhesive/paste';
import type { Catalogue } from '../records/records';
import { fail, ok, type Result } from '../base/result';
import { inTeaspoons } from '../base/rounding';

/** ml to a gram of paste, near enough to size a batch: starch weighs 1.5 and water 1. */
const PASTE_DENSITY = 1.05;

/** Starch paste: what to weigh, how to cook it, and how to thin it. */
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
        message: `Cooked like this, the paste has ${thickest} % starch, already thinner than the ${target} % for ${use}. Give fewer parts of water, or choose "as cooked".`,
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
  const ingredient = catalogue.ingredients.get(plan.starch)!;
  const name = lowerFirst(ingredient.name.replace(/ powder$/, ''));
  const spoons = inTeaspoons(paste.starchGrams, 'starch');
  const thinned = thinner >= 0.5;
  return ok({
    sentence: `Cook ${starch} of ${name} in ${water} of water${thinned ? `, then work in about ${inJug(thinner)} more when it is cold` : ''}.`,
    brief: ['Paste', `${starch} in ${water}`],
    portions: [
      {
        name: name,
        amount: starch,
        grams: paste.starchGrams,
        or: `${inJug(paste.starchGrams / STARCH_LOOSE_DENSITY)} spooned loosely, from memory`,
      },
      { name: 'water into the pan', amount: water },
      ...(thinned ? [{ name: 'water to thin it, cold', amount: inJug(thinner) }] : []),
    ],
    ...carefully(steps(plan, starch, water, thinner, ingredient.madeAt!), ingredient.hazards),
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

/** Seconds in the microwave between one stir and the next: University of Virginia Library. */
const BURST_SECONDS = 20;

/**
 * How each vessel cooks it. Times: 15 to 25 min in a pan, Metropolitan Museum; 20 to 40 min, reCollections 1998; the
 * microwave's bursts and its ten minutes at low power, University of Virginia Library and Book_Arts-L 2000.
 */
const COOKING: Readonly<Record<MixPlan['vessel'], readonly string[]>> = {
  pan: [
    'Heat it gently and stir all the time, over the whole of the bottom. It turns from milk to a thick, clear-grey paste within a minute or two; keep it moving for 15 to 25 min.',
  ],
  'double-boiler': [
    'Set the pot in a larger one with simmering water, and stir. This is slower than a pan and cannot burn it: allow 20 to 40 min from the moment it thickens. Look after the water below, and lift the pot out away from you, for the steam burns.',
  ],
  microwave: [
    `Cook it at full power for ${BURST_SECONDS} s, take it out, stir to the bottom, and do it again until it is stiff and translucent. Wear oven gloves and stir with wood: hot paste can boil up as it is stirred, and a metal spoon makes that worse.`,
    'Then let it go on at low power for ten minutes, stirring twice. Starch that has only thickened is not yet cooked, and its paste is gritty and weak.',
  ],
};

const POT: Readonly<Record<MixPlan['vessel'], string>> = {
  pan: 'the pan',
  'double-boiler': 'the inner pot of a double boiler',
  microwave: 'a glass or glazed bowl that holds three times as much, and is kept for this alone',
};

function steps({ use, vessel }: MixPlan, starch: string, water: string, thinner: number, celsius: number): Step[] {
  return [
    {
      text: `Weigh ${starch} of starch into ${POT[vessel]} and stir in ${water} of cold water until no lump is left. Let it stand for half an hour, better an hour.`,
      does: ['pour-powder'],
    },
    ...COOKING[vessel].map((text) => ({ text, celsius })),
    {
      text: 'It is done when it shines and you can see into it, when it falls from the spoon in a sheet, and when a little of it, cooled between two fingers, pulls as they part. White and chalky, or gritty: cook on.',
      celsius,
    },
    { text: 'Pour it into a clean bowl, press film on its face so that no skin forms, and let it cool.', celsius },
    { text: 'Rub it through a fine sieve or a stocking, twice for fine work.' },
    {
      text:
        thinner >= 0.5
          ? `Work in the ${inJug(thinner)} of cold water a spoonful at a time with a stiff brush. Stop sooner if it already feels right${use === 'as-cooked' ? '' : ` for ${use}`}.`
          : 'Work it with a stiff brush until it is smooth.',
    },
    {
      text: 'Write on the jar what it is and the day on which it was cooked. Keep it covered and cold, and do not freeze it.',
      does: ['keep'],
    },
  ];
}
