/** Sentences that several kinds of mix share. */
import type { Dilution, StrengthBasis } from '../adhesive/dilution';
import { figure, formatAmount } from '../base/format';
import { jugStep, roundToStep } from '../base/rounding';

/** What must be mixed so that `need` reaches the work when `lossPercent` of it stays behind. */
export const batchFor = (need: number, lossPercent: number): number => need / (1 - lossPercent / 100);

/** Grams as this scale shows them; never nothing. */
export function onScale(grams: number, step: number): string {
  const shown = Math.max(step, roundToStep(grams, step));
  return `${formatAmount(shown, 9)}\u00a0g`;
}

/** Millilitres as a jug shows them. */
export const inJug = (millilitres: number): string => {
  const step = jugStep(millilitres);
  return `${formatAmount(Math.max(step, roundToStep(millilitres, step)), 9)}\u00a0ml`;
};

const FRACTIONS = [
  '',
  '',
  'half',
  'a third',
  'a quarter',
  'a fifth',
  'a sixth',
  'a seventh',
  'an eighth',
  'a ninth',
  'a tenth',
];

/** How thick the mix is beside what it was made from: "about a sixth as thick as PVA". `thinner` is base ÷ mix. */
export function thicknessWords(thinner: number, than: string): string {
  if (thinner >= 0.85 && thinner <= 1.2) return `about as thick as ${than}`;
  if (thinner < 1) return `about ${figure(1 / thinner)} times as thick as ${than}`;
  const whole = Math.round(thinner);
  if (whole > 30) return `far thinner than ${than}`;
  if (whole < 2) return `a little thinner than ${than}`;
  return `about ${FRACTIONS[whole <= 12 ? Math.min(whole, 10) : whole] ?? `1/${figure(thinner, 1)}`} as thick as ${than}`;
}

const LIKE: readonly (readonly [below: number, word: string])[] = [
  [15, 'runny as milk'],
  [200, 'like light oil'],
  [1000, 'like thin cream'],
  [5000, 'like thick cream or paint'],
  [20000, 'like honey'],
  [80000, 'like soft jelly'],
];

/** What a viscosity is like, for those who have no viscometer. From memory. */
export const likeness = (milliPascalSeconds: number): string =>
  LIKE.find(([below]) => milliPascalSeconds < below)?.[1] ?? 'a stiff jelly that keeps its shape';

/** "It comes to 2.44 % in place of 2.5 %: 2 % weaker, which nobody will notice." Undefined when rounding does nothing. */
export function roundingWords(wanted: number, made: number): string | undefined {
  const shift = made / wanted - 1;
  const off = Math.abs(shift) * 100;
  if (off < 0.5) return undefined;
  const judged =
    off < 5
      ? 'too little to notice'
      : off < 15
        ? 'noticeable; a finer scale or a larger batch is better'
        : 'too much; use a finer scale or make a larger batch';
  return `So measured it comes to ${formatAmount(made)} % in place of ${formatAmount(wanted)} %: ${figure(off, off < 10 ? 1 : 2)} % ${shift > 0 ? 'stronger' : 'weaker'}, ${judged}.`;
}

/** What to say where per cent by volume and by mass are noticeably apart. */
export const BASIS_APART = (percent: number, off: number): string =>
  `Above 10 %, grams in 100 ml and grams in 100 g part company: counted the other way, ${formatAmount(percent)} % would need ${figure(Math.abs(off), 1)} % ${off > 0 ? 'more' : 'less'}. Say on the label which one you mean.`;

/** Strength of a dilution when its stock and water are taken as the jug shows them, in the basis it was asked for in. */
export function roundedStrength(made: Dilution, basis: StrengthBasis): number {
  const stock = roundToStep(made.stockMillilitres, jugStep(made.stockMillilitres));
  const water = roundToStep(made.waterMillilitres, jugStep(made.waterMillilitres));
  if (stock === 0) return 0;
  const taken = stock / made.stockMillilitres;
  const whole = basis === 'w/v' ? stock + water : made.stockGrams * taken + water;
  return (100 * made.solidsGrams * taken) / whole;
}
