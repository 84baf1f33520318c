/** What may go wrong in this class, most of it time. */
import { VERDICT_WORDS } from '../choose/answer-words';
import type { Choice } from '../choose/choose';
import type { Ranked } from '../choose/finding';
import { durationSpan, duration, lowerFirst } from '../base/format';
import type { Percentiles } from '../base/quantity';
import type { Catalogue, WetAdhesive } from '../records/records';
import type { ClassPlan } from './plan';

/** How long one piece can be moved, and how long it takes to place. */
export interface SlipOf {
  readonly name: string;
  readonly slip: Percentiles;
  readonly needed: number;
}

/** Beginners take this many times as long to place a sheet. Common practice, no source. */
export const BEGINNERS = 1.5;

/** One line for each piece that may grab before it is placed, with what to do about it. */
export function slipWarnings(slips: readonly SlipOf[], adhesive: WetAdhesive, better: readonly string[]): string[] {
  const short = slips.filter(({ slip, needed }) => slip.p10 < needed * BEGINNERS);
  if (short.length === 0) return [];
  const lines = short.map(
    ({ name, slip, needed }) =>
      `The ${name} takes a beginner about ${duration(needed * BEGINNERS)} to place and can be moved for ${durationSpan(slip.p10, slip.p90)}: ${
        slip.p50 < needed
          ? 'lay it from marks, and do not count on moving it'
          : 'some will run out of time; mark its place first'
      }.`,
  );
  return [
    ...lines,
    ...(better.length > 0 ? [`Slower than ${adhesive.short} in this room: ${better.join(', ')}.`] : []),
  ];
}

/** Adhesives that are sound or likely for the main piece and give a beginner time. */
export function slowerOnes(choices: readonly Ranked[], needed: number, catalogue: Catalogue): readonly string[] {
  return choices
    .filter(
      ({ verdict, slipSeconds }) =>
        (verdict === 'sound' || verdict === 'likely') && slipSeconds.p10 >= needed * BEGINNERS,
    )
    .map(({ adhesiveId }) => catalogue.adhesives.get(adhesiveId)!)
    .filter((adhesive): adhesive is WetAdhesive => adhesive.form === 'wet')
    .slice(0, 2)
    .map(({ short }) => short);
}

/** The room, the verdict, and a class that is too short. */
export function classWarnings(plan: ClassPlan, choice: Choice): string[] {
  return [
    ...(choice.verdict === 'sound' || choice.verdict === 'likely' ? [] : [inDoubt(choice)]),
    ...(plan.celsius >= 26
      ? ['A warm room shortens every time above. Keep pots covered, and the glue in the shade.']
      : []),
    ...(plan.celsius < 15
      ? ['In so cold a room some dispersions form no film. Warm the room, and the boards with it.']
      : []),
    ...(plan.humidity >= 70 ? ['In so damp a room work dries late: count a second night under weight.'] : []),
    ...(plan.humidity <= 30
      ? ['In so dry a room a brushed sheet skins early and boards warp as they dry: work in small steps.']
      : []),
  ];
}

/** With the weightiest thing that speaks against it: what speaks for it is no reason for doubt. */
const inDoubt = (choice: Choice): string =>
  `The adhesive you chose is ${lowerFirst(VERDICT_WORDS[choice.verdict])} on this paper. ${choice.reasons.find(({ against }) => against)?.text ?? ''}`.trim();
