/** What a scale or a jug can show, and what rounding to it does to the strength. */
import { mustBePositive, mustBeWithin } from './result';

/** `value` at the nearest step of the scale. */
export function roundToStep(value: number, step: number): number {
  mustBePositive('step', step);
  mustBeWithin('value', value, 0, 1e9);
  // Steps such as 0.1 have no exact binary form: twelve digits are more than any scale shows.
  return Number((Math.round(value / step) * step).toPrecision(12));
}

/** Millilitres that a jug shows: to 1 ml below 50, 5 ml below 500, 10 ml below 2 l, 50 ml above. Common practice, no source. */
export function jugStep(millilitres: number): number {
  return millilitres < 50 ? 1 : millilitres < 500 ? 5 : millilitres < 2000 ? 10 : 50;
}

/**
 * Up to a round figure to have in hand: the next whole step of 5, 10, 50, 100, 500 … ml, the largest that is at most a
 * twentieth of the amount (5 ml at least). Never less than is needed, and past 100 ml never a twentieth more. Our own line.
 */
export function roundUpForJug(millilitres: number): number {
  mustBeWithin('millilitres', millilitres, 0, 1e15);
  if (millilitres <= 0) return 0;
  const most = millilitres / 20 + 1e-9;
  const ten = 10 ** Math.floor(Math.log10(most));
  const step = Math.max(5, 5 * ten <= most ? 5 * ten : ten);
  return Math.ceil(millilitres / step - 1e-9) * step;
}

/** Round figures of things that are sold by weight, in tens. Common practice, no source. */
const SOLD_BY = [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10];
/** g; nobody sells less of a powder or a glue. Common practice, no source. */
const LEAST_SOLD = 10;

/** Up to a round figure to ask for in a shop, g: 100 for 91.8. Never less than is needed, and 10 at least. */
export function roundUpToBuy(grams: number): number {
  mustBeWithin('grams', grams, 0, 1e9);
  if (grams <= LEAST_SOLD) return LEAST_SOLD;
  const ten = 10 ** Math.floor(Math.log10(grams));
  return SOLD_BY.find((step) => step * ten >= grams * (1 - 1e-9))! * ten;
}

export interface Rounded {
  readonly solidsGrams: number;
  readonly waterMillilitres: number;
  /** strength of the rounded mix, per cent by mass */
  readonly percent: number;
  /** the strength that was meant, per cent by mass */
  readonly wanted: number;
  /** how far off, as a share of the strength that was meant: 0.04 is 4 % stronger */
  readonly shift: number;
}

export interface ToRound {
  readonly powderGrams: number;
  readonly waterMillilitres: number;
  /** smallest step of the scale, g */
  readonly scaleStep: number;
  /** smallest step of the jug, ml; `jugStep` of the water when left out */
  readonly jugStepMillilitres?: number;
}

/** A powder and its water as the bench can measure them. A powder is never rounded away: at least one step is weighed. */
export function roundMix({ powderGrams, waterMillilitres, scaleStep, jugStepMillilitres }: ToRound): Rounded {
  mustBePositive('powderGrams', powderGrams);
  mustBePositive('waterMillilitres', waterMillilitres);
  const solidsGrams = Math.max(scaleStep, roundToStep(powderGrams, scaleStep));
  const step = jugStepMillilitres ?? jugStep(waterMillilitres);
  const water = Math.max(step, roundToStep(waterMillilitres, step));
  const wanted = (100 * powderGrams) / (powderGrams + waterMillilitres);
  const percent = (100 * solidsGrams) / (solidsGrams + water);
  return { solidsGrams, waterMillilitres: water, percent, wanted, shift: percent / wanted - 1 };
}

/** Grams that a level teaspoon (5 ml) holds, by what is in it, and how far off a spoon may be. All from memory: weigh if you can. */
export const SPOONS = {
  methylcellulose: { gramsPerTeaspoon: 2, offBy: 0.3 },
  starch: { gramsPerTeaspoon: 2.7, offBy: 0.25 },
  gelatine: { gramsPerTeaspoon: 3.3, offBy: 0.25 },
} as const;

export interface Spoonfuls {
  /** level teaspoons, to the quarter */
  readonly teaspoons: number;
  /** what they may really hold, g */
  readonly low: number;
  readonly high: number;
}

/** An estimate in level teaspoons, with its error. Never more exact than a quarter spoon. */
export function inTeaspoons(grams: number, powder: keyof typeof SPOONS): Spoonfuls {
  mustBePositive('grams', grams);
  const { gramsPerTeaspoon, offBy } = SPOONS[powder];
  const teaspoons = Math.max(0.25, Math.round((grams / gramsPerTeaspoon) * 4) / 4);
  const held = teaspoons * gramsPerTeaspoon;
  return { teaspoons, low: held * (1 - offBy), high: held * (1 + offBy) };
}
