/** A mix that is too thin: powder where it dissolves, the same thing at full strength, or less water. */
import { figure, withUnit, lowerFirst, formatAmount } from '../base/format';
import type { MixAnswer } from './answer';
import { curveOf, jarName, thickness } from './jar-words';
import type { MixPlan } from './plan';
import { inJug, onScale } from './words';
import type { Ingredient } from '../records/records';
import { fail, ok, type Result } from '../base/result';
import { powderToAdd, stockToAdd, waterToLose } from '../adhesive/alligation';

/** Too thin: powder where it dissolves, the same thing at full strength, or less water. */
/** Per cent starch by mass past which a spoon stands still. From memory: 1 : 3 comes to 25–29 %. */
const STIFFEST_PASTE = 29;

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
    steps: [
      fromFull !== undefined || starch
        ? 'Add it a little at a time and fold it in.'
        : plan.jar === 'gelatine'
          ? 'Swell the granules in a little of the cold solution first, then warm the whole to 50 to 60 °C.'
          : 'Wet the powder out in a third of the mix, warmed to about 80 °C, then stir in the rest cold. Dry powder on a cold jelly makes lumps.',
      'Let it stand until the next day and try it before you add more.',
    ],
    facts: [
      {
        label: 'Or let water leave',
        value: withUnit(lose, 'ml', 2),
        note: `${inJug(have - lose)} remains; warm it open, stirring, if it bears warmth`,
      },
      ...thickness(ingredient, stock, target),
    ],
    warnings: [],
    cautions: dispersed ? [] : ['powder-dust'],
    ...curveOf(ingredient, target),
    figures: [have, fromFull ?? powder],
  });
}
