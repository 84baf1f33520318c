/** The paper calculator's answer: the paper as every calculator takes it, and its figures in all the ways a shop writes them. */
import { nearestWithin } from '../base/limits';
import { figure, span } from '../base/format';
import { drawGrain, type GrainDrawing } from './grain-picture';
import { findGrain, grainName, type GrainFinding } from '../paper/grain-tests';
import { drinkFacts, grainFact, soundness, thicknessFacts, weightFact } from './facts';
import { asOneDrop } from '../paper/drop-test';
import { grainWasTried, type MeasurePlan } from './plan';
import { caliperOf, dropVolume, grammageOf, measureProblems, short, stainOf, weighingOf } from './measures';
import type { Fact } from '../base/fact';
import { basisWeightFromGrammage, thousandFromGrammage, type Grade } from '../paper/paper';
import { writePaper, type OwnPaper } from '../paper/own-paper';
import type { Catalogue } from '../records/records';
import { fail, ok, type Result } from '../base/result';
import { PAPER_LIMITS } from '../paper/limits';
import { dropFromSorptivity, readStain, sorptivityFromDrop } from '../paper/sorption';
import { sheetOf, type Sheet } from '../paper/sheet';

export interface MeasureAnswer {
  readonly paper: OwnPaper;
  /** the paper as links carry it */
  readonly text: string;
  readonly sentence: string;
  readonly facts: readonly Fact[];
  readonly weights: readonly { readonly name: string; readonly pounds: number }[];
  /** kg of 1000 sheets of 788 × 1091 mm */
  readonly thousand: number;
  /** figure for the strip at the top of a phone */
  readonly brief: string;
  readonly picture: GrainDrawing;
  readonly warnings: readonly string[];
  readonly figures: readonly number[];
}

/** What an ordinary shop sells by the pound, and the grades that share its basic sheet. */
const WEIGHTS: readonly (readonly [name: string, grade: Grade])[] = [
  ['bond, writing, ledger', 'bond'],
  ['text, book, offset', 'text'],
  ['cover', 'cover'],
  ['index', 'index'],
  ['tag, wrapping, tissue', 'tag'],
  ['bristol', 'bristol'],
];

/** A paper of one's own as every calculator takes it, and its figures as shops write them. Faults name the field. */
export function measureAnswer(plan: MeasurePlan, catalogue: Catalogue): Result<MeasureAnswer> {
  const kind = catalogue.papers.get(plan.family);
  if (!kind) return fail([{ field: 'family', code: 'unknown-id', message: 'Choose a kind of paper from the list.' }]);
  const weighing = weighingOf(plan);
  const gsm = grammageOf(plan, weighing);
  const caliper = caliperOf(plan, gsm ?? kind.grammage.middle);
  const drops = plan.drinkBy === 'drop' ? plan.drops : undefined;
  const problems = measureProblems(plan, gsm, caliper, kind.grammage.middle);
  if (problems.length > 0) return fail(problems);

  const grain = findGrain(plan, kind.grain);
  const drop = drops && asOneDrop(drops);
  const paper: OwnPaper = {
    family: plan.family,
    ...(gsm !== undefined && { grammage: short(gsm) }),
    ...(caliper !== undefined && { caliper: short(caliper) }),
    ...(drop && { dropSeconds: asUsualDrop(plan, drop.seconds) }),
    ...(plan.drinkBy === 'cobb' && { cobb: plan.cobb }),
    ...(plan.surface !== 'kind' && { surface: plan.surface }),
    ...(plan.sizing !== 'kind' && { sizing: plan.sizing }),
    ...(plan.colours !== 'kind' && { coloursRun: plan.colours === 'yes' }),
    ...(grain.settled && { grain: grain.likeliest }),
    ...(plan.name.trim() !== '' && { name: plan.name.trim() }),
  };
  const sheet = sheetOf({ paper }, catalogue);
  const middle = sheet.grammage.middle;
  return ok({
    paper,
    text: writePaper(paper),
    sentence: sentenceFor(plan, paper, sheet, grain),
    facts: [
      weightFact(sheet, weighing),
      ...thicknessFacts(sheet, paper),
      ...drinkFacts(plan, sheet, drop, drops?.length ?? 0),
      grainFact(grain, plan.shape, grainWasTried(plan)),
    ],
    weights: WEIGHTS.map(([name, grade]) => ({ name, pounds: basisWeightFromGrammage(middle, grade) })),
    thousand: thousandFromGrammage(middle),
    brief: `${figure(middle, 3)}\u00a0g/m²`,
    picture: drawGrain(grain, plan.shape),
    warnings: soundness({ plan, weighing, drop, grain, gsm, sheet }),
    figures: [middle, middle / sheet.density.middle, sheet.sorptivity.middle, Math.round(100 * grain.chances.height)],
  });
}

/**
 * The other calculators know one kind of drop, the usual one without a stain, since links have always carried it: what
 * was measured better goes to them as the seconds of the usual drop that says the same.
 */
function asUsualDrop(plan: MeasurePlan, seconds: number): number {
  const stain = stainOf(plan, seconds);
  if (!stain && plan.dropsPerMl === undefined) return seconds;
  const sorptivity = stain
    ? readStain(stain).sorptivity.middle
    : sorptivityFromDrop(seconds, dropVolume(plan.dropsPerMl));
  // A slip of the stain can ask for more than any sheet drinks; the seconds end long before that.
  return Number(nearestWithin(dropFromSorptivity(Math.min(1000, sorptivity)), PAPER_LIMITS.dropSeconds).toPrecision(3));
}

function sentenceFor(plan: MeasurePlan, paper: OwnPaper, sheet: Sheet, grain: GrainFinding): string {
  const { grammage, density } = sheet;
  const weight =
    plan.weightBy === 'kind' ? span(grammage.low, grammage.high, 'g/m²') : `${figure(grammage.middle, 3)} g/m²`;
  const thick =
    paper.caliper === undefined
      ? `${span(grammage.low / density.high, grammage.high / density.low, 'µm')} thick by its kind`
      : `${figure(paper.caliper, 3)} µm thick`;
  const way = {
    height: 'its grain runs up and down',
    width: 'its grain runs from side to side',
    none: 'it has no grain to speak of',
  };
  const called = grainName(grain.likeliest, plan.shape);
  const which = grain.settled
    ? `${way[grain.likeliest]}${called ? ` (${called})` : ''}`
    : 'its grain is not settled yet';
  return `It weighs ${weight}, is ${thick}, and ${which}.`;
}
