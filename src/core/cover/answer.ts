/** The coverage calculator's answer: how much to have in hand, what it leaves on the work, and what the sheet makes of it. */
import { areaOf, coatFromWeighing } from '../base/piece';
import { PRESETS } from './pieces';
import { piecesAreSound } from './pieces-text';
import { cover, type Coverage } from '../adhesive/coverage';
import { COVER_FIELDS, rowsOf, type CoverPlan, type NamedRow } from './plan';
import { coverageFacts, classFacts } from './facts';
import { figure, span, lowerFirst, formatAmount } from '../base/format';
import { liquidOf, type Liquid } from '../adhesive/liquid';
import type { Fact } from '../base/fact';
import { unknownRecords } from '../link/fields';
import { around, type Range } from '../base/quantity';
import { recordsOn } from '../records/kinds';
import type { Catalogue } from '../records/records';
import type { WetAdhesive } from '../records/adhesives';
import { fail, ok, type InputError, type Result } from '../base/result';

export interface CoverAnswer {
  readonly sentence: string;
  /** what was asked, in a few words: it stands for the form where that is folded */
  readonly asked: string;
  readonly brief: readonly [what: string, amount: string];
  readonly buyMillilitres: number;
  readonly coverage: Coverage;
  readonly rows: readonly (NamedRow & { readonly squareMetres: number })[];
  readonly facts: readonly Fact[];
  readonly warnings: readonly string[];
  /** ml on the work, heavy end, without what stays in the pot: what the mixing calculator takes over */
  readonly onTheWork: number;
  readonly figures: readonly number[];
}

/** What the water does to the sheet, for those who show it. */
export interface FlatFacts {
  readonly facts: readonly Fact[];
  readonly warnings: readonly string[];
}
/** Undefined where it has not been reckoned: the amounts are told without it. */
export type FlatReckoner = (plan: CoverPlan, coverage: Coverage, catalogue: Catalogue) => FlatFacts | undefined;

/** `flat` reckons what the water does to the sheet (cover-flat.ts); a lesson that does not show it leaves it out. */
export function coverAnswer(plan: CoverPlan, catalogue: Catalogue, flat?: FlatReckoner): Result<CoverAnswer> {
  const adhesive = catalogue.adhesives.get(plan.adhesive);
  const problems = problemsOf(plan, catalogue);
  if (problems.length > 0 || adhesive?.form !== 'wet') return fail(problems);
  const liquid = liquidOf(adhesive, catalogue);
  const rows = rowsOf(plan).map((row) => ({ ...row, squareMetres: areaOf(row.piece) }));
  const coat = coatOf(plan, catalogue);
  const coverage = cover({
    pieces: rows.map(({ piece }) => piece),
    coat,
    passes: plan.passes,
    faces: Number(plan.faces),
    lossPercent: plan.loss,
    liquid,
    times: plan.makers,
    sparePercent: plan.spare,
    ...(plan.bottle !== undefined && {
      container: { millilitres: plan.bottle, ...(plan.price !== undefined && { price: plan.price }) },
    }),
  });
  const { mixMillilitres, buyMillilitres } = coverage;
  if (mixMillilitres.high > MOST_TO_MIX) return fail([tooMuch(plan, coverage)]);
  const water = flat?.(plan, coverage, catalogue) ?? { facts: [], warnings: [] };
  const amount = span(mixMillilitres.low, mixMillilitres.high, 'ml');
  const buy = `${formatAmount(buyMillilitres, 9)}\u00a0ml`;
  return ok({
    sentence: `Have ${buy} of ${adhesive.short} in hand: the job takes ${amount}, by how heavy your coat is.`,
    asked: `${plan.thing === 'own' ? 'Pieces of your own' : PRESETS[plan.thing].name}, with ${adhesive.short}`,
    brief: [lowerFirst(adhesive.short), `have ${buy}`],
    buyMillilitres,
    coverage,
    rows,
    facts: [
      ...coverageFacts(coverage, coat, liquid, plan.coatFrom === 'tool'),
      ...water.facts,
      ...classFacts(plan, coverage),
    ],
    warnings: [...warningsFor(adhesive, liquid, coverage), ...water.warnings],
    onTheWork: coverage.wetMillilitres.high,
    figures: [coverage.squareMetres, mixMillilitres.middle, buyMillilitres],
  });
}

function problemsOf(plan: CoverPlan, catalogue: Catalogue): InputError[] {
  return [
    ...unknownRecords(plan, COVER_FIELDS, catalogue),
    ...(plan.thing !== 'own' || piecesAreSound(plan.pieces)
      ? []
      : [{ field: 'pieces', code: 'empty', message: 'Give at least one piece.' } as const]),
    ...(plan.coatFrom === 'weighed' ? coatProblems(plan) : []),
  ];
}

/** Coats past these, g/m², are a slip of area or of unit. Our own line: hand coats run from about 20 to 110. */
const COATS = { low: 1, high: 1000 };

function coatProblems({ before, after, trialArea }: CoverPlan): InputError[] {
  const problem = (field: string, message: string): InputError[] => [{ field, code: 'contradiction', message }];
  if (after <= before)
    return problem(
      'after',
      `After gluing the board must weigh more than before: give more than ${formatAmount(before, 6)} g.`,
    );
  const coat = coatFromWeighing(before, after, trialArea / 10000);
  if (coat >= COATS.low && coat <= COATS.high) return [];
  return problem(
    'trialArea',
    `These weights on this area would be a coat of ${figure(coat)} g/m², and hand coats run from about 20 to 110. Check the area: it is in square centimetres.`,
  );
}

/** ml; past this a count, a size or a coat is a slip. Our own line: ten tonnes, more than a workshop spreads in years. */
const MOST_TO_MIX = 1e7;

function tooMuch({ thing }: CoverPlan, { squareMetres, mixMillilitres }: Coverage): InputError {
  return {
    field: thing === 'own' ? 'pieces' : 'makers',
    code: 'too-large',
    message: `That is ${figure(mixMillilitres.high / 1000)} litres on ${figure(squareMetres)} m², and this calculator answers up to ${figure(MOST_TO_MIX / 1000)} litres. Check the sizes and counts, the number of makers and the coats.`,
  };
}

/** A scale's step and an uneven hand: how far one weighed coat may be from the next. Common practice, no source. */
const WEIGHED_WITHIN = 0.15;

function coatOf(plan: CoverPlan, catalogue: Catalogue): Range {
  if (plan.coatFrom === 'tool') return recordsOn(plan.bench, catalogue).techniques.get(plan.tool)!.coat;
  return around(coatFromWeighing(plan.before, plan.after, plan.trialArea / 10000), WEIGHED_WITHIN, 'measured');
}

function warningsFor(adhesive: WetAdhesive, liquid: Liquid, coverage: Coverage): string[] {
  const { dryGrams, squareMetres } = coverage;
  const dry = dryGrams ? dryGrams.middle / squareMetres : undefined;
  return [
    ...(coverage.squareMetres > 0 && dry !== undefined && dry < liquid.leastDryCoat
      ? [
          `A middling coat leaves ${figure(dry)} g/m² dry, and a sound joint with ${adhesive.short} needs about ${figure(liquid.leastDryCoat)}: lay a heavier coat or a second one.`,
        ]
      : []),
    ...(adhesive.needsHeat
      ? [
          'Count the time to cook or warm it, and cook a little more than you need: it cannot be made while the sheet waits.',
        ]
      : []),
  ];
}
