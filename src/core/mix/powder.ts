/** A powder into water: what to weigh, how to wet it out, how thick it will be. */
import { askPowder } from './dilution-input';
import { figure, span, withUnit, formatAmount } from '../base/format';
import type { MixAnswer } from './answer';
import type { Fact } from '../base/fact';
import type { MixPlan } from './plan';
import { mixedCelsius } from '../adhesive/mixture';
import { carefully, type Step } from '../safety/hazards';
import { BASIS_APART, batchFor, inJug, likeness, onScale, roundingWords } from './words';
import type { Range } from '../base/quantity';
import type { Catalogue } from '../records/records';
import { fail, ok, type Result } from '../base/result';
import { inTeaspoons, roundMix } from '../base/rounding';
import { USE_BANDS } from '../adhesive/use-bands';
import { celluloseEtherViscosity } from '../adhesive/viscosity';

/** The eighth-root law reads high beyond this, %. */
const LAW_HOLDS_TO = 4;
/** and says nothing past this, %. Our own line. */
const LAW_ENDS = 5;

/** A powder into water: what to weigh and in what order. */
export function mixPowder(plan: MixPlan, catalogue: Catalogue): Result<MixAnswer> {
  const ingredient = catalogue.ingredients.get(plan.powder)!;
  const { percent, basis } = plan;
  const asked = askPowder({
    targetPercent: percent,
    batchMillilitres: batchFor(plan.need, plan.loss),
    basis,
    powderDensity: ingredient.density.middle,
  });
  if (!asked.ok)
    return fail(
      asked.errors.map((error) => ({ ...error, field: error.field === 'targetPercent' ? 'percent' : 'need' })),
    );
  const { value: made, basesPartBy } = asked.value;
  const step = Number(plan.scale);
  const rounded = roundMix({ powderGrams: made.powderGrams, waterMillilitres: made.waterMillilitres, scaleStep: step });
  const grams = onScale(made.powderGrams, step);
  const water = inJug(made.waterMillilitres);
  const gelatine = plan.powder === 'gelatine';
  const name = gelatine ? 'gelatine' : `methylcellulose powder, ${String(gradeOf(plan, catalogue).middle)} mPa·s grade`;
  const spoons = inTeaspoons(made.powderGrams, gelatine ? 'gelatine' : 'methylcellulose');
  const rounding = roundingWords(percent, percent * (1 + rounded.shift));
  const facts: Fact[] = [
    {
      label: 'Strength',
      value: `${formatAmount(percent)}\u00a0%`,
      note: basis === 'w/v' ? 'grams in 100 ml of the finished liquid' : 'grams in 100 g of the finished liquid',
    },
    ...(gelatine ? gelatineFacts() : etherFacts(plan, catalogue)),
    {
      label: 'In level teaspoons',
      value: `about ${formatAmount(spoons.teaspoons)}, which is ${span(spoons.low, spoons.high, 'g')}`,
      note: 'from memory; a spoon may be a third out, so weigh if you can',
    },
  ];
  return ok({
    sentence: `Stir ${grams} of ${gelatine ? 'gelatine' : 'methylcellulose'} into ${water} of water: ${formatAmount(percent)} %, ${withUnit(plan.need, 'ml', 2)} for the work and the rest for pot and brush.`,
    brief: [gelatine ? 'Gelatine' : 'Methylcellulose', `${grams} in ${water}`],
    portions: [
      { name, amount: grams, grams: made.powderGrams },
      { name: 'water', amount: water },
    ],
    ...(rounding !== undefined && { rounding }),
    ...carefully(
      gelatine
        ? gelatineSteps(grams, water, ingredient.madeAt!)
        : etherSteps(grams, made.waterMillilitres, ingredient.madeAt!),
      ingredient.hazards,
    ),
    facts,
    warnings: [
      ...(basesPartBy === undefined ? [] : [BASIS_APART(percent, basesPartBy)]),
      ...(!gelatine && percent > LAW_HOLDS_TO && percent <= LAW_ENDS
        ? [`Above ${LAW_HOLDS_TO} % the viscosity law reads high: take the figure for the most it can be.`]
        : []),
    ],
    ...(!gelatine && {
      curve: { grade: gradeOf(plan, catalogue).middle, percent: (100 * made.powderGrams) / made.batchGrams },
    }),
    figures: [made.powderGrams, made.waterMillilitres],
  });
}

/** The label's viscosity: what the reader gave, else the record's. */
function gradeOf({ grade, powder }: MixPlan, catalogue: Catalogue): Range {
  if (grade !== undefined) return { low: grade * 0.8, middle: grade, high: grade * 1.2, basis: 'measured' };
  const { thickening } = catalogue.ingredients.get(powder)!;
  if (thickening.law !== 'cellulose-ether') throw new RangeError(`${powder} has no grade`);
  return thickening.grade;
}

function etherFacts(plan: MixPlan, catalogue: Catalogue): Fact[] {
  const grade = gradeOf(plan, catalogue);
  const beyond = plan.percent > LAW_ENDS;
  const at = (label: number) =>
    celluloseEtherViscosity({ gradeMilliPascalSeconds: label, percent: Math.min(plan.percent, 10) });
  return [
    {
      label: 'Viscosity at 20 °C',
      value: beyond ? 'not known: a stiff jelly' : span(at(grade.low), at(grade.high), 'mPa·s'),
      note: beyond
        ? 'the law is not to be trusted past 5 %'
        : `${likeness(at(grade.middle))}; from the label by the eighth-root law`,
    },
    { label: 'Good for', value: useOf(plan.percent), note: 'common practice' },
    {
      label: 'Clear after',
      value: plan.percent >= 4 ? 'about a day in the cold' : 'a night in the cold',
      note: 'a binder’s page: 5 % is clear after about 24 h; a workshop’s manual gives an hour or a night (Book_Arts-L 2000)',
    },
    {
      label: 'Keeps',
      value: 'for weeks, covered, clean and cold',
      note: 'common practice; throw it out when it thins, smells or shows spots',
    },
  ];
}

function useOf(percent: number): string {
  const band = USE_BANDS.find(({ from, to }) => percent >= from && percent <= to);
  if (band) return band.name;
  return percent < USE_BANDS[0].from ? 'little: thinner than a size' : 'a stiff stock, to be thinned before use';
}

function gelatineFacts(): Fact[] {
  return [
    { label: 'Sets to a jelly', value: 'on cooling, from about 1 %', note: 'Roberts & Etherington 1982' },
    { label: 'Keeps', value: 'a few days, covered and cold', note: 'common practice; warm again only what you need' },
  ];
}

/** °C of water that has stood among ice. */
const ICED = 2;
/**
 * °C below which a cellulose ether goes wholly into solution: plain methylcellulose, and the kinds with hydroxypropyl
 * in their name. From memory: makers' handbooks of cellulose ethers.
 */
const DISSOLVES_BELOW = { plain: 12, hydroxypropyl: 25 };

function etherSteps(grams: string, waterMillilitres: number, celsius: number): Step[] {
  const hot = waterMillilitres / 3;
  const cold = waterMillilitres - hot;
  const together = mixedCelsius([
    { grams: hot, celsius },
    { grams: cold, celsius: ICED },
  ]);
  return [
    {
      text: `Chill two thirds of the water, ${inJug(cold)}, until it is ice-cold. Ice may be part of it if it is weighed in. Weigh ${grams} of powder on paper, out of the draught.`,
      does: ['pour-powder'],
    },
    {
      text: `Heat the other third, ${inJug(hot)}, to about ${celsius} °C, and take it off the heat. Scatter the powder on it and stir until every grain is wet: milky, not yet thick.`,
      does: ['pour-powder'],
      celsius,
    },
    {
      text: `Stir in the ice-cold water. The whole comes to about ${figure(together, 2)} °C and begins to thicken.`,
      celsius: together,
    },
    {
      text: `Put it in the refrigerator, stir it now and then for an hour, and leave it there overnight. Plain methylcellulose dissolves fully only below about ${DISSOLVES_BELOW.plain} °C; kinds with “hydroxypropyl” in their name do below about ${DISSOLVES_BELOW.hydroxypropyl} °C. The packet says which it is.`,
    },
    {
      text: 'It is done when it is clear and even. If it is cloudy, has soft grains or threads in it, or is thinner than it should be, it is only half dissolved: leave it colder and longer.',
    },
    { text: 'Write the strength, the grade and the date on the jar.', does: ['keep'] },
  ];
}

/** °C at which gelatine is kept while it is used. Common practice, no source. */
const KEPT_WARM = 45;

function gelatineSteps(grams: string, water: string, celsius: number): Step[] {
  return [
    {
      text: `Weigh ${grams} of gelatine. Pour ${water} of cold water over it and let it swell for half an hour, until it is soft right through.`,
      does: ['pour-powder'],
    },
    {
      text: `Stand the jar in a bath of hot water, and stir until it is clear: about ${celsius} °C, 60 at the most. Do not boil it: it loses strength.`,
      celsius: 60,
    },
    {
      text: `Keep it in the bath at about ${KEPT_WARM} °C while you use it: cold it is a jelly. Melt only what you need, since each warming weakens it.`,
      celsius: KEPT_WARM,
    },
    { text: 'Write the strength and the date on the jar, and keep it covered and cold.', does: ['keep'] },
  ];
}
