/** The figures behind a coverage, each with how it is known. */
import type { CoverPlan } from './plan';
import { squareMetresPerLitre, type Coverage } from '../adhesive/coverage';
import { figure, span, formatAmount } from '../base/format';
import type { Liquid } from '../adhesive/liquid';
import type { Fact } from '../base/fact';
import type { Range } from '../base/quantity';

const spanOf = ({ low, high }: Range, unit: string): string => span(low, high, unit);

/** Area, coat, film and what a litre covers. `byTool`: a coat that was measured is that of the bench, and not weighed for this job. */
export function coverageFacts(coverage: Coverage, coat: Range, liquid: Liquid, byTool = false): Fact[] {
  const { squareMetres, wetGrams, wetMicrometres, dryMicrometres, dryGrams, waterPerSquareMetre } = coverage;
  return [
    {
      label: 'Area to glue',
      value: `${figure(squareMetres, 3)}\u00a0m²`,
      note: 'turn-ins, coats for both faces and spare included',
    },
    {
      label: 'Coat, wet',
      value: spanOf(coat, 'g/m²'),
      note:
        coat.basis === 'measured'
          ? byTool
            ? 'as measured on your bench'
            : 'weighed, give or take 15 %'
          : 'each pass; from memory: weigh a board before and after for yours',
    },
    {
      label: 'On the work',
      value: spanOf(wetGrams, 'g'),
      note: `${spanOf(coverage.wetMillilitres, 'ml')} at ${figure(liquid.density, 3)} g/ml`,
    },
    {
      label: 'Film',
      value: `${spanOf(wetMicrometres, 'µm')} wet`,
      note:
        dryMicrometres && dryGrams
          ? `${spanOf(dryMicrometres, 'µm')} dry, ${spanOf(dryGrams, 'g')} of solids in all`
          : '',
    },
    {
      label: 'A litre covers',
      value: span(squareMetresPerLitre(wetMicrometres.high), squareMetresPerLitre(wetMicrometres.low), 'm²'),
    },
    ...(waterPerSquareMetre ? [{ label: 'Water brought', value: spanOf(waterPerSquareMetre, 'g/m²') }] : []),
  ];
}

/** For many makers: bottles and what they cost. */
export function classFacts(plan: CoverPlan, { containers, cost }: Coverage): Fact[] {
  const many =
    plan.makers > 1
      ? [
          {
            label: 'For the class',
            value: `${formatAmount(plan.makers, 4)} makers, ${formatAmount(plan.spare, 3)} % spare`,
          },
        ]
      : [];
  if (containers === undefined || plan.bottle === undefined) return many;
  const bottles = {
    label: 'Bottles',
    value: `${containers} of ${formatAmount(plan.bottle, 6)}\u00a0ml`,
    note: 'enough for the heavy end',
  };
  return [
    ...many,
    bottles,
    ...(cost === undefined
      ? []
      : [{ label: 'Cost', value: figure(cost, cost >= 100 ? 4 : 3), note: 'in the currency of your price' }]),
  ];
}
