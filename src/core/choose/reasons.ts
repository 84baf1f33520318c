/** Why an adhesive stands where it stands: sentences with their numbers, the weightiest first. */
import type { Finding, Reason } from './finding';
import { chanceInTen, duration, durationSpan, figure, withUnit } from '../base/format';
import type { Sheet } from '../paper/sheet';

/** The reasons for one adhesive, weightiest first; the same order for everybody. */
export function reasonsFor(facts: Finding): readonly Reason[] {
  const all = [
    ...facts.fit.notes,
    spreadReason(facts),
    ...(facts.weights.lift > 0 ? [liftReason(facts)] : []),
    ...reachReason(facts),
    ...strikeReason(facts),
    ...grabReason(facts),
    slipReason(facts),
    bondReason(facts),
    flatReason(facts),
  ];
  return all.sort((a, b) => b.weight - a.weight || (a.code < b.code ? -1 : 1));
}

/** Weight of a margin: failing ones outweigh holding ones, clear ones outweigh close ones. */
function weightOf(chance: number): number {
  return chance < 0.5 ? 3 + (0.5 - chance) * 6 : 1 + Math.abs(chance - 0.75) * 2;
}

const times = (margin: number) => (margin >= 20 ? 'many times' : `${figure(margin)} times`);
/** The nearest share that people say, each up to the middle between it and the next. */
const SHARES: readonly (readonly [upTo: number, words: string])[] = [
  [0.15, 'a tenth of'],
  [0.225, 'a fifth of'],
  [0.29, 'a quarter of'],
  [0.415, 'a third of'],
  [0.58, 'half of'],
  [0.71, 'two thirds of'],
  [0.85, 'three quarters of'],
  [1, 'nine tenths of'],
];
const shareInWords = (share: number) =>
  `about ${SHARES.find(([upTo]) => share <= upTo)?.[1] ?? `${figure(share)} times`}`;
const grams = (sheet: Sheet) => withUnit(sheet.grammage.middle, 'g/m²');
/** "A 70 g/m² sheet", "an 80 g/m² sheet": eight, eleven and eighteen begin with a vowel. */
function sheetOfWeight(sheet: Sheet): string {
  const weight = grams(sheet);
  return `${/^(?:8|1[18](?!\d))/.test(weight) ? 'an' : 'a'} ${weight} sheet`;
}
const upper = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

function spreadReason({ adhesive, sheet, chances, margins, method }: Finding): Reason {
  const against = chances.spread < 0.5;
  const base = { code: 'spread', weight: weightOf(chances.spread), against };
  if (adhesive.form === 'dry') {
    const text = against
      ? `Rubbing it on drags ${sheetOfWeight(sheet)}: it bears ${figure(margins.spread)} of what that asks.`
      : `It goes on without dragging ${sheetOfWeight(sheet)}.`;
    return { ...base, text };
  }
  if (method.face === 'ground')
    return { ...base, text: 'What it is brushed on does not drag, as the sheet would.', weight: 1 };
  if (method.face === 'sheet-on-support') {
    const leaves = against
      ? `Pasted out on glass, ${sheetOfWeight(sheet)} tears as it is peeled off: it bears ${figure(margins.spread)} of the pull.`
      : `Pasted out on glass, ${sheetOfWeight(sheet)} does not drag, and comes off whole.`;
    return { ...base, text: leaves };
  }
  const text = against
    ? `${upper(sheetOfWeight(sheet))} drags and wrinkles under the tool: it bears ${figure(margins.spread)} of what the tool asks.`
    : `${upper(sheetOfWeight(sheet))} bears ${times(margins.spread)} what the tool asks of it.`;
  return { ...base, text };
}

function liftReason({ chances, margins, gives, needed }: Finding): Reason {
  const against = chances.lift < 0.5;
  const when = `Lifted ${withUnit(needed, 's')} after laying,`;
  const side =
    gives === 'substrate' ? 'the face of what it lies on comes away' : 'the paper tears or leaves fibres behind';
  const text = against
    ? `${when} ${side}: the weaker side bears ${figure(margins.lift)} of the pull.`
    : `${when} it comes away clean ${chanceInTen(chances.lift)} times: the weaker side bears ${times(margins.lift)} the pull.`;
  return { code: 'lift', weight: weightOf(chances.lift) + 0.2, against, text };
}

/** Only where the first stroke may dry before the last is laid. */
function reachReason({ chances, openSeconds }: Finding): readonly Reason[] {
  if (chances.reach >= 0.75) return [];
  const text = `What was brushed first stays open for ${openSeconds.p90 < 1 ? 'less than a second' : openSeconds.p10 < 1 ? `at most about ${duration(openSeconds.p90)}` : `about ${durationSpan(openSeconds.p10, openSeconds.p90)}`}, and brushing a piece of this size takes about as long or longer.`;
  return [{ code: 'reach', weight: weightOf(chances.reach) + 0.1, against: chances.reach < 0.5, text }];
}

/** Only where it may come through and be seen. */
function strikeReason({ chances, weights }: Finding): readonly Reason[] {
  if (chances.strike >= 0.75 || weights.strike === 0) return [];
  const text = 'It may come through to the face, where it stains, shines or stiffens.';
  return [{ code: 'strike', weight: weightOf(chances.strike), against: chances.strike < 0.5, text }];
}

/** Only where edges may spring up before it has set. */
function grabReason({ chances, weights }: Finding): readonly Reason[] {
  if (chances.grab >= 0.5 || weights.grab === 0) return [];
  const text = 'It is slow to grab: hold edges and turn-ins down until they stay.';
  return [{ code: 'grab', weight: 2, against: true, text }];
}

function slipReason({ slipSeconds, needed, adhesive }: Finding): Reason {
  const against = slipSeconds.p50 < needed;
  const long =
    slipSeconds.p10 >= 3600
      ? duration(slipSeconds.p10)
      : slipSeconds.p90 < 1
        ? 'less than a second'
        : slipSeconds.p10 < 1
          ? `at most about ${duration(slipSeconds.p90)}`
          : `about ${durationSpan(slipSeconds.p10, slipSeconds.p90)}`;
  const text = against
    ? `You can move it for ${long}, and you need ${withUnit(needed, 's')}: ${adhesive.form === 'dry' ? 'lay one edge first and roll the rest down' : 'place it before it touches'}.`
    : `You can move it for ${long}; you need ${withUnit(needed, 's')}.`;
  return { code: 'slip', weight: against ? 3 : 1.4, against, text };
}

function bondReason({ adhesive, job, chances, margins }: Finding): Reason {
  const against = chances.bond < 0.5;
  const text = against
    ? `It may not hold: the dry film is ${figure(margins.bond)} of what this joint asks${job.needs.includes('flexes') || job.needs.includes('damp') ? ', with the use you named' : ''}.`
    : `The dry ${adhesive.form === 'dry' ? 'joint' : 'film'} is ${times(margins.bond)} what this joint asks.`;
  return { code: 'bond', weight: weightOf(chances.bond), against, text };
}

function flatReason({ chances, margins }: Finding): Reason {
  const against = chances.flat < 0.5;
  const text = against
    ? `The water it brings will cockle or bow the work: ${figure(1 / margins.flat)} times what passes as flat.`
    : margins.flat >= 20
      ? 'It brings too little water to bow anything.'
      : `Pressed until dry, it bows ${shareInWords(1 / margins.flat)} what still passes as flat.`;
  return { code: 'flat', weight: weightOf(chances.flat), against, text };
}
