/** PVA made to go further: portions, solids, thickness, slip, the film it leaves, and how far it can go. */
import { unknownRecords } from '../link/fields';
import { durationSpan, figure, withUnit, lowerFirst, formatAmount } from '../base/format';
import type { MixAnswer } from './answer';
import { paperInSentence } from '../paper/own-paper';
import { mixedFilmFacts, keeps, reach, stretchSteps } from './reach';
import { MIX_FIELDS, type MixPlan } from './plan';
import { batchFor, inJug, onScale, thicknessWords } from './words';
import type { Catalogue, Technique } from '../records/records';
import { everyIngredient } from '../adhesive/natures';
import { carefully, gravestFirst, type Nature } from '../safety/hazards';
import type { SlipReckoner } from './slip';
import { fail, ok, type InputError, type Result } from '../base/result';
import { alone, blend, partsForSolids, type Blend, type Blended } from '../adhesive/blend';
import { liquidOf } from '../adhesive/liquid';

/**
 * `slipOf` asks the chooser's model how long the sheet slides; it is handed in because the model is
 * large and a page may want its first answer before it has come.
 */
export function mixStretched(plan: MixPlan, catalogue: Catalogue, slipOf?: SlipReckoner): Result<MixAnswer> {
  const unknown = unknownRecords(plan, MIX_FIELDS, catalogue);
  if (unknown.length > 0) return fail(unknown);
  const base = liquidOf(alone(plan.base, catalogue), catalogue);
  const added = liquidOf(alone(plan.extender, catalogue), catalogue);
  const [most, least] = [base.solids * 100, added.solids * 100];
  if (plan.aim === 'solids' && !(plan.solids < most && plan.solids > least))
    return fail([solidsOutOfReach(plan.solids, least, most)]);
  const parts: Blend =
    plan.aim === 'parts'
      ? { ...plan, by: 'volume' }
      : {
          base: plan.base,
          extender: plan.extender,
          baseParts: 1,
          extenderParts: partsForSolids(plan.base, plan.extender, plan.solids, catalogue),
          by: 'mass',
        };
  const mixed = blend(parts, catalogue);
  // Everything below is for one unit of parts; scale it to what is needed, or to what there is.
  const baseGrams = parts.by === 'mass' ? parts.baseParts : parts.baseParts * base.density;
  const times = plan.from === 'have' ? plan.haveGrams / baseGrams : batchFor(plan.need, plan.loss) / mixed.millilitres;
  const addedGrams = (mixed.grams - baseGrams) * times;
  const portion = (name: string, grams: number, density: number) => ({
    name,
    amount: onScale(grams, Number(plan.scale)),
    grams,
    or: inJug(grams / density),
  });
  const [baseName, addedName] = [nameOf(plan.base, catalogue), nameOf(plan.extender, catalogue)];
  const tool = catalogue.techniques.get(plan.tool)!;
  const slip = slipOf?.(parts, plan, catalogue);
  const { steps, cautions } = carefully(stretchSteps(plan, baseName, addedName), [
    ...naturesIn(plan.base, catalogue),
    ...naturesIn(plan.extender, catalogue),
  ]);
  const millilitres = mixed.millilitres * times;
  const ratio = figure(parts.extenderParts / parts.baseParts, 2);
  return ok({
    sentence: `Stir ${onScale(addedGrams, Number(plan.scale))} of ${addedName} into ${onScale(baseGrams * times, Number(plan.scale))} of ${baseName}: ${inJug(millilitres)} of a mix ${thicknessWords(mixed.thinner, baseName)}.`,
    brief: [`1:${ratio} ${parts.by === 'mass' ? 'by mass' : 'by volume'}`, `${inJug(millilitres)}`],
    portions: [
      portion(baseName, baseGrams * times, base.density),
      ...(addedGrams > 0 ? [portion(addedName, addedGrams, added.density)] : []),
    ],
    steps,
    facts: [
      {
        label: 'Solids',
        value: withUnit(mixed.solidsPercent, '% by mass', 2),
        note: `and ${figure(mixed.waterPercent, 2)} % water (${baseName} alone: ${figure(most, 2)} % solids)`,
      },
      {
        label: 'Thickness',
        value: thicknessWords(mixed.thinner, baseName),
        note: `about ${figure(mixed.viscosity)} mPa·s against ${figure(base.viscosity, 2)}; our estimate`,
      },
      ...(slip
        ? [
            {
              label: `Time to move ${paperInSentence(plan.paper, catalogue)}`,
              value: durationSpan(slip.mixed.p10, slip.mixed.p90),
              note: `${durationSpan(slip.base.p10, slip.base.p90)} with ${baseName} alone; about ${figure(slip.times, 2)} times as long, an estimate of the model`,
            },
          ]
        : []),
      keeps(plan.extender),
      ...mixedFilmFacts(mixed, tool, millilitres),
      ...reach(plan, tool, catalogue),
    ],
    warnings: warningsFor(plan, mixed, tool),
    // no dispersion comes undone with water
    cautions: gravestFirst(['valued-original', ...cautions]),
    ...(slip && {
      slip: {
        neededSeconds: slip.neededSeconds,
        rows: [
          { name: `${baseName} alone`, low: slip.base.p10, middle: slip.base.p50, high: slip.base.p90 },
          { name: 'this mix', low: slip.mixed.p10, middle: slip.mixed.p50, high: slip.mixed.p90 },
        ],
      },
    }),
    figures: [baseGrams * times, Math.max(addedGrams, 0), mixed.solidsPercent],
  });
}

const nameOf = (id: string, catalogue: Catalogue): string => {
  const adhesive = catalogue.adhesives.get(id);
  return adhesive?.form === 'wet' ? adhesive.short : lowerFirst(catalogue.ingredients.get(id)?.name ?? id);
};

/** What an ingredient, or all that an adhesive is made of, is. */
function naturesIn(id: string, catalogue: Catalogue): readonly Nature[] {
  const adhesive = catalogue.adhesives.get(id);
  const ingredients = adhesive ? everyIngredient(adhesive, catalogue) : [catalogue.ingredients.get(id)!];
  return ingredients.flatMap(({ hazards }) => hazards);
}

const solidsOutOfReach = (asked: number, least: number, most: number): InputError => ({
  field: 'solids',
  code: 'contradiction',
  message: `Between these two a mix can have more than ${figure(least, 2)} % and less than ${figure(most, 2)} % solids; ${formatAmount(asked)} % is outside.`,
  limits: { low: least, high: most, unit: '%' },
});

function warningsFor(plan: MixPlan, mixed: Blended, { coat }: Technique): string[] {
  const dry = coat.middle * mixed.solids;
  const thin = dry < mixed.leastDryCoat;
  const cold = mixed.filmFormsAbove !== undefined && plan.celsius < mixed.filmFormsAbove;
  return [
    ...(thin
      ? [
          `Too thin to trust: a middling coat leaves ${figure(dry, 2)} g/m² dry, and a sound joint needs about ${figure(mixed.leastDryCoat, 2)}. Use less ${plan.extender === 'water' ? 'water' : 'of what is added'}, or lay two coats.`,
        ]
      : []),
    ...(cold
      ? [
          `At ${figure(plan.celsius, 2)} °C this dispersion may dry to a powder and not to a film: it needs about ${figure(mixed.filmFormsAbove!, 2)} °C or more.`,
        ]
      : []),
    ...(plan.extender === 'water' && mixed.thinner > 8
      ? [
          'Water thins PVA fast and brings most of its weight to the sheet. Methylcellulose gives the same time with a body that brushes.',
        ]
      : []),
    ...(plan.extender.includes('paste')
      ? ['With paste in it the mix spoils as paste does. Make what a day needs.']
      : []),
  ];
}
