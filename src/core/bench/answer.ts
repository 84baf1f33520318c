/** What was found of one's own bench: each number with its range, beside what is usual, and all of it as one text. */
import { figure, formatAmount, lowerFirst, span } from '../base/format';
import { fail, LOADING, ok, type InputError, type Loading, type Result } from '../base/result';
import { liquidOf } from '../adhesive/liquid';
import { unknownRecords } from '../link/fields';
import { asOneDrop } from '../paper/drop-test';
import { readPaper } from '../paper/own-paper';
import { sheetOf } from '../paper/sheet';
import { dropDoubt, sorptivityFromDrop, USUAL_DROP_MICROLITRES } from '../paper/sorption';
import { BENCH_LIMITS, onBench, type BenchMeasure, type BenchQuantity } from './own-bench';
import type { Catalogue, WetAdhesive } from '../records/records';
import { QUANTITY_WORDS, shownAs, writeBench } from './bench-text';
import { coatOfSpoon, coatOfWeighings } from './coat';
import type { grabOfStrips, slipAt, Strip } from './grab';
import { grabsBy } from './grabs-by';
import { BENCH_FIELDS, benchIsMeasured, type BenchField, type BenchPlan } from './plan';
import { solidsOfSheet, solidsOfSmear } from './solids';
import { narrow, type Ends, type BenchReading } from './uncertain';

/** One thing that was measured of the bench. */
export interface BenchFound {
  readonly quantity: BenchQuantity;
  /** id and name of what it was measured of */
  readonly of: string;
  readonly name: string;
  /** as read from the test, with its ± of 95 in 100 */
  readonly measured: string;
  /** what the calculators reckon with now, and before */
  readonly now: string;
  readonly before: string;
  /** what a reader should do or know; empty where there is nothing */
  readonly note: string;
}

export interface BenchAnswer {
  readonly found: readonly BenchFound[];
  /** the bench as links carry it; empty while nothing is measured */
  readonly text: string;
  readonly sentence: string;
  readonly brief: string;
  readonly warnings: readonly string[];
  readonly figures: readonly number[];
}

interface Step {
  readonly quantity: BenchQuantity;
  readonly of: string;
  readonly name: string;
  readonly measured: BenchReading;
  readonly usual: Ends;
  readonly note?: string;
}

/** What reads a strip: it needs the model of the joint, which a bench without a strip does without. */
export interface StripReader {
  readonly grabOfStrips: typeof grabOfStrips;
  readonly slipAt: typeof slipAt;
}

/** A bench as it was measured; with nothing measured, that nothing is. Loading where a strip is to be read and `reader` is not there yet. Faults name the field. */
export function benchAnswer(
  plan: BenchPlan,
  catalogue: Catalogue,
  reader: StripReader | undefined,
): Result<BenchAnswer> | Loading {
  const problems = [...unknownRecords(plan, BENCH_FIELDS, catalogue), ...contradictions(plan)];
  if (problems.length > 0) return fail(problems);
  if (plan.grabBy !== 'none' && !reader) return LOADING;
  const first = [coatStep(plan, catalogue), solidsStep(plan, catalogue), boardStep(plan, catalogue)];
  const steps = first.filter((step) => step !== undefined);
  // The strip is read on the bench as it is known by then.
  const before = writeBench({ measures: steps.map(measureOf) });
  const grab = reader && grabStep(plan, onBench(before, catalogue), catalogue, reader);
  if (grab === 'no share does') {
    const message =
      'The model cannot slide for so long with this glue, coat and board. Look at the strips again, or weigh your coat.';
    return fail([{ field: 'grabbed', code: 'contradiction', message }]);
  }
  const all = [...steps, ...(grab ? [grab] : [])];
  const measures = all.map(measureOf);
  const name = plan.name.trim();
  const far = all.filter(({ measured, usual }) => narrow(measured, usual).isFar);
  return ok({
    found: all.map(foundOf),
    text: benchIsMeasured(plan) ? writeBench({ measures, ...(name !== '' && { name }) }) : '',
    sentence:
      all.length === 0
        ? 'None of the 4 is measured yet, so the calculators go by what is usual for such benches.'
        : `Measured on your bench: ${list(all.map(saidOf))}.`,
    brief: all.length === 0 ? 'nothing measured' : `${all.length} of 4 measured`,
    warnings: far.map(
      (step) =>
        `What you measured of ${lowerFirst(step.name)} (${saidOf(step)}) lies far from what is usual. Measure it once more before you rely on it.`,
    ),
    figures: measures.flatMap(({ range }) => [range.middle]),
  });
}

/** "a coat of 65 g/m²" */
const saidOf = ({ quantity, measured }: Step): string =>
  `${QUANTITY_WORDS[quantity][0]} ${valueOf(quantity, measured.value)}`;
const list = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;

const unitOf = (quantity: BenchQuantity): string => QUANTITY_WORDS[quantity][1];
const valueOf = (quantity: BenchQuantity, value: number): string =>
  `${figure(shownAs(quantity, value))}\u00a0${unitOf(quantity)}`;
const endsOf = (quantity: BenchQuantity, { low, high }: Ends): string =>
  span(shownAs(quantity, low), shownAs(quantity, high), unitOf(quantity));

/** The range within what such a number can be at all. */
function measureOf({ quantity, of, measured, usual }: Step): BenchMeasure {
  const [least, most] = BENCH_LIMITS[quantity];
  const { low, middle, high } = narrow(measured, usual).ends;
  const within = (value: number) => Math.min(most, Math.max(least, value));
  return { quantity, of, range: { low: within(low), middle: within(middle), high: within(high) } };
}

function foundOf(step: Step): BenchFound {
  const { quantity, of, name, measured, usual, note = '' } = step;
  return {
    quantity,
    of,
    name,
    measured: `${figure(shownAs(quantity, measured.value))} ± ${figure(shownAs(quantity, 2 * measured.standard))}\u00a0${unitOf(quantity)}`,
    now: endsOf(quantity, measureOf(step).range),
    before: endsOf(quantity, usual),
    note,
  };
}

function coatStep(plan: BenchPlan, catalogue: Catalogue): Step | undefined {
  if (plan.coatBy === 'none') return undefined;
  const tool = catalogue.techniques.get(plan.tool)!;
  const area = { widthMm: plan.wide, heightMm: plan.high };
  const adhesive = catalogue.adhesives.get(plan.spread) as WetAdhesive;
  const measured =
    plan.coatBy === 'weighed'
      ? coatOfWeighings({
          ...area,
          before: plan.before,
          after: plan.after,
          stepGrams: plan.step,
          seconds: plan.seconds,
        })
      : coatOfSpoon({ ...area, millilitres: plan.millilitres, density: liquidOf(adhesive, catalogue).density });
  const note =
    plan.coatBy === 'weighed' && plan.before.length < 3
      ? 'Brush three boards: how one coat differs from the next is half of what is uncertain.'
      : '';
  return { quantity: 'coat', of: tool.id, name: tool.name, measured, usual: tool.coat, note };
}

function solidsStep(plan: BenchPlan, catalogue: Catalogue): Step | undefined {
  if (plan.solidsBy === 'none') return undefined;
  const adhesive = catalogue.adhesives.get(plan.jar) as WetAdhesive;
  const ingredient = catalogue.ingredients.get(adhesive.parts[0]!.of)!;
  const measured =
    plan.solidsBy === 'smear'
      ? solidsOfSmear({ dish: plan.dish, wet: plan.wet, dry: plan.dry, stepGrams: plan.smearStep })
      : solidsOfSheet(plan.percent);
  const note =
    plan.solidsBy === 'smear' && plan.wet - plan.dish < 30 * plan.smearStep
      ? 'A larger smear, or a scale with finer steps, would halve the ±.'
      : '';
  return { quantity: 'solids', of: ingredient.id, name: ingredient.name, measured, usual: ingredient.solids, note };
}

/** Half of a triangle that reaches to a factor `doubt` either way, as a share: JCGM 100:2008, 4.3.9. */
const standardOfDoubt = (doubt: number): number => Math.log(doubt) / Math.sqrt(6);

const dropVolume = (perMl: number | undefined): number => (perMl === undefined ? USUAL_DROP_MICROLITRES : 1000 / perMl);

function boardStep(plan: BenchPlan, catalogue: Catalogue): Step | undefined {
  if (plan.boardBy === 'none') return undefined;
  const board = catalogue.substrates.get(plan.board)!;
  const { seconds, factor } = asOneDrop(plan.drops);
  const value = sorptivityFromDrop(seconds, dropVolume(plan.dropsPerMl));
  return {
    quantity: 'drinks',
    of: board.id,
    name: board.name,
    measured: { value, standard: value * standardOfDoubt(dropDoubt(seconds)) },
    usual: board.sorptivity,
    note:
      factor > 2
        ? `The slowest drop took ${formatAmount(factor, 2)} times as long as the quickest: try more places.`
        : '',
  };
}

/** `own`: the records as they are on the bench so far; `catalogue`: as they are for everybody. */
function grabStep(
  plan: BenchPlan,
  own: Catalogue,
  catalogue: Catalogue,
  reader: StripReader,
): Step | 'no share does' | undefined {
  if (plan.grabBy === 'none') return undefined;
  const adhesive = own.adhesives.get(plan.glue) as WetAdhesive;
  const ingredient = grabsBy(adhesive, own)!;
  const strip: Strip = {
    seconds: plan.grabbed,
    every: plan.every,
    adhesive,
    sheet: sheetOf({ paper: readPaper(plan.paper)! }, own),
    board: own.substrates.get(plan.board)!,
    tool: own.techniques.get(plan.tool)!,
  };
  const measured = reader.grabOfStrips(strip, own);
  if (!measured) return 'no share does';
  const usual = catalogue.ingredients.get(ingredient.id)!.grabSolids!;
  const foretold = reader.slipAt(strip, usual.middle, own);
  return {
    quantity: 'grabs',
    of: ingredient.id,
    name: ingredient.name,
    measured,
    usual,
    note: `The model alone had foretold about ${figure(foretold)} s for such a strip.${saysLittle(measured, usual) ? SAYS_LITTLE : ''}`,
  };
}

/** Whether what was measured leaves as much open as what is usual does. */
const saysLittle = ({ standard }: BenchReading, { low, high }: Ends): boolean => 2 * standard >= (high - low) / 2;
const SAYS_LITTLE = ' It says less than what is usual does: measure your coat and your board as well.';

/** What cannot be, each beside the field it was typed in. */
function contradictions(plan: BenchPlan): InputError[] {
  const at = (field: BenchField, message: string): InputError => ({ field, code: 'contradiction', message });
  const found: InputError[] = [];
  if (plan.coatBy === 'weighed') {
    if (plan.before.length !== plan.after.length)
      found.push(
        at(
          'after',
          `You weighed ${plan.before.length} before and ${plan.after.length} after. Give each board both times, in the same order.`,
        ),
      );
    else if (plan.before.some((grams, i) => plan.after[i]! <= grams))
      found.push(at('after', 'A brushed board weighs more than it did before. Give them in the same order.'));
    else if (coatTooHeavy(plan)) found.push(at('wide', COAT_SLIP));
  }
  if (plan.coatBy === 'spoon' && (plan.millilitres * 1e6) / (plan.wide * plan.high) > MOST_COAT)
    found.push(at('wide', COAT_SLIP));
  if (plan.solidsBy === 'smear') {
    if (plan.wet <= plan.dry) found.push(at('dry', 'A dry smear weighs less than it did wet.'));
    else if (plan.dry <= plan.dish) found.push(at('dry', 'The dry smear and its foil weigh more than the foil alone.'));
  }
  return found;
}

/** Coats past this, g/m², are a slip of area or of unit. Our own line: hand coats run from about 20 to 110. */
const MOST_COAT = 800;
const COAT_SLIP = `That makes a coat of more than ${MOST_COAT} g/m². Look at the area and the weights again.`;
const coatTooHeavy = ({ before, after, wide, high }: BenchPlan): boolean =>
  before.some((grams, i) => ((after[i]! - grams) * 1e6) / (wide * high) > MOST_COAT);
