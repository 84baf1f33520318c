/** A jar whose strength is to change: a batch from a stronger stock, or all of it made thinner or thicker. */
import { solutionDensity, type StrengthBasis } from '../adhesive/dilution';
import { askDilution, askStretch } from './dilution-input';
import { figure, formatAmount } from '../base/format';
import type { MixAnswer } from './answer';
import { curveOf, dilutingSteps, jarName, thickness } from './jar-words';
import type { MixPlan } from './plan';
import { mixThicker } from './thicker';
import { BASIS_APART, batchFor, inJug, onScale, roundedStrength, roundingWords } from './words';
import type { Catalogue } from '../records/records';
import type { Ingredient } from '../records/adhesives';
import { fail, ok, type Result } from '../base/result';
import { carefully } from '../safety/hazards';

/** g/ml of what is in the jar, by either way of counting its strength. */
const densityOf =
  (percent: number, { density, solids }: Ingredient) =>
  (basis: StrengthBasis): number =>
    solutionDensity(percent, basis, { solids: solids.middle, density: density.middle });

/** A weaker mix from a strong jar: how much of it and how much water. */
export function mixByDiluting(plan: MixPlan, catalogue: Catalogue): Result<MixAnswer> {
  const ingredient = catalogue.ingredients.get(plan.jar)!;
  const { stock, target, basis } = plan;
  const asked = askDilution({
    stockPercent: stock,
    targetPercent: target,
    batchMillilitres: batchFor(plan.need, plan.loss),
    basis,
    stockDensity: densityOf(stock, ingredient),
  });
  if (!asked.ok) return fail(asked.errors.map((error) => ({ ...error, field: FIELD_OF[error.field] ?? error.field })));
  const { value: made, basesPartBy } = asked.value;
  const [much, water] = [inJug(made.stockMillilitres), inJug(made.waterMillilitres)];
  const rounding = roundingWords(made.percent, roundedStrength(made, basis));
  return ok({
    sentence: `Measure ${much} of the ${formatAmount(stock)} % stock and stir in ${water} of water: ${inJug(made.batchMillilitres)} at ${formatAmount(target)} %.`,
    brief: [`${formatAmount(stock)} % to ${formatAmount(target)} %`, `${much} + ${water}`],
    portions: [
      {
        name: `${jarName(ingredient)}, ${formatAmount(stock)} %`,
        amount: much,
        or: onScale(made.stockGrams, Number(plan.scale)),
      },
      { name: 'water', amount: water },
    ],
    ...(rounding !== undefined && { rounding }),
    ...carefully(dilutingSteps(ingredient, much, water), ingredient.hazards),
    facts: [
      {
        label: 'It makes',
        value: inJug(made.batchMillilitres),
        note: `with ${figure(plan.loss, 2)} % for pot and brush`,
      },
      ...thickness(ingredient, stock, target),
    ],
    warnings: basesPartBy === undefined ? [] : [BASIS_APART(stock, basesPartBy)],
    ...curveOf(ingredient, target),
    figures: [made.stockMillilitres, made.waterMillilitres],
  });
}

const FIELD_OF: Readonly<Record<string, string>> = {
  stockPercent: 'stock',
  targetPercent: 'target',
  batchMillilitres: 'need',
  haveMillilitres: 'have',
};

/** A jar that came out too weak or too strong, put right. */
export function mixByCorrecting(plan: MixPlan, catalogue: Catalogue): Result<MixAnswer> {
  const ingredient = catalogue.ingredients.get(plan.jar)!;
  const { stock, target, have, basis } = plan;
  if (target > stock) return mixThicker(plan, ingredient);
  const asked = askStretch({
    haveMillilitres: have,
    fromPercent: stock,
    toPercent: target,
    basis,
    stockDensity: densityOf(stock, ingredient),
  });
  if (!asked.ok) return fail(asked.errors.map((error) => ({ ...error, field: FIELD_OF[error.field] ?? error.field })));
  const { value: made, basesPartBy } = asked.value;
  const water = inJug(made.waterMillilitres);
  return ok({
    sentence:
      target === stock
        ? 'That is the strength it has: add nothing.'
        : `Stir ${water} of water into your ${inJug(have)}: it becomes ${inJug(made.batchMillilitres)} at ${formatAmount(target)} %.`,
    brief: [`${formatAmount(stock)} % to ${formatAmount(target)} %`, target === stock ? 'add nothing' : `add ${water}`],
    portions: [
      { name: `${jarName(ingredient)}, ${formatAmount(stock)} %`, amount: inJug(have) },
      ...(target === stock ? [] : [{ name: 'water', amount: water }]),
    ],
    ...carefully(target === stock ? [] : dilutingSteps(ingredient, inJug(have), water), ingredient.hazards),
    facts: [{ label: 'It makes', value: inJug(made.batchMillilitres) }, ...thickness(ingredient, stock, target)],
    warnings: basesPartBy === undefined ? [] : [BASIS_APART(stock, basesPartBy)],
    ...curveOf(ingredient, target),
    figures: [have, made.waterMillilitres],
  });
}
