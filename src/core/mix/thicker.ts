/** A mix that is too thin: powder where it dissolves, the same thing at full strength, or less water. */
import { figure, withUnit, lowerFirst, formatAmount } from '../base/format';
import type { MixAnswer } from './answer';
import { curveOf, jarName, thickness } from './jar-words';
import type { MixPlan } from './plan';
import { inJug, onScale } from './words';
import { carefully, type Step } from '../safety/hazards';
import type { Ingredient } from '../records/records';
import { fail, ok, type Result } from '../base/result';
import { powderToAdd, stockToAdd, waterToLose } from '../adhesive/alligation';

/** Too thin: powder where it dissolves, the same thing at full strength, or less water. */
/** Per cent starch by mass past which a spoon stands still. From memory: 1 : 3 comes to 25–29 %. */
const STIFFEST_PASTE = 29;

/** A jar made stronger, with powder, with a stronger jar, or by losing water. */
export function mixThicker(plan: MixPlan, ingredient: Ingredient): Result<MixAnswer> {
  const { stock, target, have } = plan;
  const asked = { haveMillilitres: have, fromPercent: stock, toPercent: target };
  const dispersed = ingredient.solids.middle < 1;
  const starch = plan.jar.includes('starch');
  const full = ingredient.solids.middle * 100;
  const lose = waterToLose(have, stock, target);
  const step = Number(plan.scale);
  const powder = powderToAdd({ ...asked, powderDensity: ingredient.density.middle });
  const fromFull = dispersed && full > target ? stockToAdd({ ...asked, stockPercent: full }) : undefined;
  if (dispersed && full <= target) {
    const message = `As supplied it has about ${figure(full, 2)} % solids, and nothing makes it stronger than that. Give a lower strength.`;
    return fail([{ field: 'target', code: 'too-large', message, limits: { low: 0.05, high: full, unit: '%' } }]);
  }
  if (starch && target > STIFFEST_PASTE) {
    const message = `Paste of more than ${STIFFEST_PASTE} % starch is too stiff to stir. Give a lower strength.`;
    return fail([
      { field: 'target', code: 'too-large', message, limits: { low: 0.05, high: STIFFEST_PASTE, unit: '%' } },
    ]);
  }
  const twice = Math.min(target * 2, 60);
  const add =
    fromFull !== undefined
      ? inJug(fromFull)
      : starch
        ? inJug(stockToAdd({ ...asked, stockPercent: twice }))
        : onScale(powder, step);
  const what =
    fromFull !== undefined
      ? `${jarName(ingredient)} as supplied`
      : starch
        ? `paste cooked at ${formatAmount(twice)} %`
        : lowerFirst(ingredient.name);
  return ok({
    sentence: `Water cannot help: ${formatAmount(target)} % is stronger than what you have. Add ${add} of ${what} to your ${inJug(have)}.`,
    brief: [`${formatAmount(stock)} % to ${formatAmount(target)} %`, `add ${add}`],
    portions: [{ name: what, amount: add }],
    ...carefully(
      [
        fromFull !== undefined || starch
          ? { text: 'Add it a little at a time and fold it in.' }
          : powderStep(ingredient),
        {
          text: 'Let it stand until the next day, a jelly in the cold, and try it before you add more.',
          does: ['keep'],
        },
      ],
      ingredient.hazards,
    ),
    facts: [
      {
        label: 'Or let water leave',
        value: withUnit(lose, 'ml', 2),
        note: `${inJug(have - lose)} remains; warm it open, stirring, if it bears warmth`,
      },
      ...thickness(ingredient, stock, target),
    ],
    warnings: [],
    ...curveOf(ingredient, target),
    figures: [have, fromFull ?? powder],
  });
}

/** How more of a powder goes into what has none of it dry: hot or swollen, never on top. */
function powderStep({ id, madeAt: celsius = 0 }: Ingredient): Step {
  return {
    text:
      id === 'gelatine'
        ? `Swell the granules in a little cold water, then warm the whole in a bath of hot water to about ${celsius} °C, 60 at the most, and stir until it is clear.`
        : `Warm a third of the mix to about ${celsius} °C: it turns cloudy and thin. Scatter the powder on it and stir until every grain is wet, then stir in the rest, ice-cold. Dry powder on a cold jelly makes lumps.`,
    does: ['pour-powder'],
    celsius,
  };
}
