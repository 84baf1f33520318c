/** Paper weight and thickness: grammage, basis weight, apparent density, pore volume, weighing your own. */
import { mustBePositive, mustBeWithin } from '../base/result';

const GRAMS_PER_POUND = 453.59237; // exact: international pound
const SQUARE_METRES_PER_SQUARE_INCH = 0.00064516; // exact: inch = 25.4 mm
const SHEETS_PER_REAM = 500;

/** Density of the cellulose fibre wall, g/cm³. About 1.5, from memory. */
export const FIBRE_DENSITY = 1.5;

/**
 * Basic sheets by grade, inches. A North American "basis weight" is the weight in pounds of 500 sheets
 * of the grade's own basic sheet, so the same pounds mean different papers in different grades.
 * Source: GNU units 2.22, definitions of the paper weights.
 */
export const BASIC_SHEETS = {
  bond: [17, 22],
  writing: [17, 22],
  ledger: [17, 22],
  copy: [17, 22],
  book: [25, 38],
  text: [25, 38],
  offset: [25, 38],
  cover: [20, 26],
  index: [25.5, 30.5],
  tag: [24, 36],
  newsprint: [24, 36],
  tissue: [24, 36],
  wrapping: [24, 36],
  glassine: [24, 36],
  bristol: [22.5, 28.5],
  blotting: [19, 24],
  blanks: [22, 28],
} as const;

export type Grade = keyof typeof BASIC_SHEETS;

/** Square metres in a ream of 500 basic sheets of this grade. */
function reamArea(grade: Grade): number {
  const sheet = Object.hasOwn(BASIC_SHEETS, grade) ? BASIC_SHEETS[grade] : undefined;
  if (!sheet)
    throw new RangeError(`grade must be one of ${Object.keys(BASIC_SHEETS).join(', ')}; got ${String(grade)}`);
  return SHEETS_PER_REAM * sheet[0] * sheet[1] * SQUARE_METRES_PER_SQUARE_INCH;
}

/** Grammage, g/m², of a paper sold as `pounds` of this grade. Throws RangeError unless pounds > 0. */
export function grammageFromBasisWeight(pounds: number, grade: Grade): number {
  mustBePositive('pounds', pounds);
  return (pounds * GRAMS_PER_POUND) / reamArea(grade);
}

/** Basis weight, lb per 500 basic sheets of this grade, of a paper of `gsm` g/m². Throws RangeError unless gsm > 0. */
export function basisWeightFromGrammage(gsm: number, grade: Grade): number {
  mustBePositive('gsm', gsm);
  return (gsm * reamArea(grade)) / GRAMS_PER_POUND;
}

/**
 * Grammage, g/m², of a paper sold by the kilograms of 1000 sheets of `widthMm` × `heightMm`, as Japanese mills
 * do (788 × 1091 mm unless another is named). Source: Japanese paper-weight tables. Throws RangeError unless all are above 0.
 */
export function grammageFromThousand(kilograms: number, widthMm = 788, heightMm = 1091): number {
  for (const [name, value] of Object.entries({ kilograms, widthMm, heightMm })) mustBePositive(name, value);
  return (kilograms * 1e6) / (widthMm * heightMm);
}

/** The other way: kilograms of 1000 sheets of `widthMm` × `heightMm` of a paper of `gsm` g/m². */
export function thousandFromGrammage(gsm: number, widthMm = 788, heightMm = 1091): number {
  for (const [name, value] of Object.entries({ gsm, widthMm, heightMm })) mustBePositive(name, value);
  return (gsm * widthMm * heightMm) / 1e6;
}

/** Bulk, cm³/g: caliper over grammage, the inverse of the apparent density (ISO 534). */
export function bulk(gsm: number, micrometres: number): number {
  return 1 / apparentDensity(gsm, micrometres);
}

/** Apparent density, g/cm³, of a sheet of `gsm` g/m² and caliper `micrometres` (ISO 534: mass per area over thickness). */
export function apparentDensity(gsm: number, micrometres: number): number {
  mustBePositive('gsm', gsm);
  mustBePositive('micrometres', micrometres);
  return gsm / micrometres;
}

/** Apparent density, g/cm³, of the loosest felted sheet. From memory. */
export const LEAST_DENSITY = 0.08;

/** Whether a sheet can be so: no denser than its fibre, no looser than any felt. */
export function densityIsPossible(gsm: number, micrometres: number): boolean {
  const density = apparentDensity(gsm, micrometres);
  return density <= FIBRE_DENSITY && density >= LEAST_DENSITY;
}

/** Share of the sheet's volume that is not fibre: 1 − ρ/1.5. Throws RangeError when denser than the fibre itself. */
export function porosity(gsm: number, micrometres: number): number {
  const density = apparentDensity(gsm, micrometres);
  mustBeWithin('apparent density', density, 0, FIBRE_DENSITY);
  return 1 - density / FIBRE_DENSITY;
}

/** Water that fills every pore of the sheet, g/m²: caliper × porosity (1 µm of pore holds 1 g/m²). */
export function poreVolume(gsm: number, micrometres: number): number {
  return micrometres * porosity(gsm, micrometres);
}

export interface Weighing {
  /** what the scale showed for the whole stack, g */
  readonly grams: number;
  readonly widthMm: number;
  readonly heightMm: number;
  /** sheets in the stack; 1 when left out */
  readonly sheets?: number;
  /** smallest step the scale shows, g; 1 when left out */
  readonly scaleStepGrams?: number;
  /** how far each cut edge may be out, mm; 0.5 when left out */
  readonly cutMm?: number;
}

/**
 * Grammage from a kitchen scale, with its standard uncertainty and its ± figure, all g/m².
 * A display that steps by d is uncertain by d/√12 (a rectangular distribution: JCGM 100, 4.3.7), taken
 * at both the zero and the reading; each side of the cut by cutMm/√3. `uncertainty` is the expanded
 * figure (k = 2, about 95 in 100). Throws RangeError unless every figure is above 0.
 */
export function grammageFromWeighing(weighing: Weighing): { value: number; uncertainty: number; standard: number } {
  const { grams, widthMm, heightMm, sheets = 1, scaleStepGrams = 1, cutMm = 0.5 } = weighing;
  for (const [name, value] of Object.entries({ grams, widthMm, heightMm, sheets, scaleStepGrams }))
    mustBePositive(name, value);
  mustBeWithin('cutMm', cutMm, 0, 10);
  const value = (grams * 1e6) / (widthMm * heightMm * sheets);
  const scale = (scaleStepGrams * Math.SQRT2) / Math.sqrt(12) / grams;
  const width = cutMm / Math.sqrt(3) / widthMm;
  const height = cutMm / Math.sqrt(3) / heightMm;
  const standard = value * Math.hypot(scale, width, height);
  return { value, uncertainty: 2 * standard, standard };
}
