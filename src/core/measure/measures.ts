/** From what was measured to a grammage and a caliper, or to what cannot be. */
import { asOneDrop, isDrop } from '../paper/drop-test';
import { halfDriedAfter, readStain, USUAL_DROP_MICROLITRES, type StainTest } from '../paper/sorption';
import { figure } from '../base/format';
import { withinLimits } from '../base/limits';
import { PAPER_LIMITS } from '../paper/limits';
import { caliperProblem } from '../paper/misfit';
import type { MeasureField, MeasurePlan } from './plan';
import { grammageFromBasisWeight, grammageFromThousand, grammageFromWeighing, type Weighing } from '../paper/paper';
import type { InputError } from '../base/result';

/** The weighing that was typed in; undefined when the weight is known in another way. */
export const weighingOf = (plan: MeasurePlan): Weighing | undefined =>
  plan.weightBy === 'weighed'
    ? {
        grams: plan.grams,
        widthMm: plan.pieceWide,
        heightMm: plan.pieceHigh,
        sheets: plan.pieces,
        scaleStepGrams: plan.step,
      }
    : undefined;

/** Grammage, g/m², by the way the weight is known; undefined when only the kind of paper is known. */
export function grammageOf(plan: MeasurePlan, weighing: Weighing | undefined): number | undefined {
  if (weighing) return grammageFromWeighing(weighing).value;
  if (plan.weightBy === 'metric') return plan.gsm;
  if (plan.weightBy === 'pounds') return grammageFromBasisWeight(plan.pounds, plan.grade);
  return plan.weightBy === 'thousand' ? grammageFromThousand(plan.kilos, plan.sheetWide, plan.sheetHigh) : undefined;
}

/** Caliper, µm, of one sheet by the way the thickness is known; undefined when only the kind of paper is known. */
export function caliperOf(plan: MeasurePlan, gsm: number): number | undefined {
  if (plan.thickBy === 'gauge') return plan.caliper;
  if (plan.thickBy === 'stack') return (1000 * plan.stackMm) / plan.stackSheets;
  return plan.thickBy === 'bulk' ? gsm * plan.bulk : undefined;
}

const WEIGHT_FIELD = { kind: 'family', metric: 'gsm', pounds: 'pounds', thousand: 'kilos', weighed: 'grams' } as const;
const THICK_FIELD = { kind: 'family', gauge: 'caliper', stack: 'stackMm', bulk: 'bulk' } as const;

/** What is wrong with what the measures make, each said beside the field it was typed in. */
export function measureProblems(
  plan: MeasurePlan,
  gsm: number | undefined,
  caliper: number | undefined,
  usual: number,
): InputError[] {
  const at = (field: MeasureField, problem: InputError | undefined, made: string): InputError[] =>
    problem ? [{ ...problem, field, message: `${made} ${problem.message}` }] : [];
  const outside = (field: 'grammage' | 'caliper', value: number): InputError | undefined => {
    const found = withinLimits(field, value, PAPER_LIMITS[field]);
    return found.ok ? undefined : found.errors[0];
  };
  const weight = gsm === undefined ? undefined : outside('grammage', gsm);
  if (weight) return at(WEIGHT_FIELD[plan.weightBy], weight, `This makes ${figure(gsm!)} g/m².`);
  if (plan.drinkBy === 'drop' && !plan.drops.every(isDrop)) {
    const { low, high } = PAPER_LIMITS.dropSeconds;
    return [{ field: 'drops', code: 'too-large', message: `Each drop must take from ${low} to ${high} s.` }];
  }
  const stain = plan.drinkBy === 'drop' ? stainOf(plan, asOneDrop(plan.drops).seconds) : undefined;
  if (stain && readStain(stain).dried > 0.5) {
    const ends = figure(halfDriedAfter(stain), 2);
    const message = `By ${ends} s half of such a drop has dried from such a stain, and the seconds say nothing. Stand a glass over it, take larger drops, or choose “not known” and hard-sized as its sizing.`;
    return [{ field: 'drops', code: 'contradiction', message }];
  }
  if (caliper === undefined) return [];
  const thick = outside('caliper', caliper) ?? caliperProblem(short(gsm ?? usual), caliper);
  return at(
    THICK_FIELD[plan.thickBy],
    thick,
    plan.thickBy === 'gauge' ? '' : `This makes ${figure(caliper)} µm a sheet.`,
  );
}

/** Three digits: more than any of these measures deserves. */
export const short = (value: number): number => Number(value.toPrecision(3));

/** The drop and its stain, where the stain was measured: `seconds` are those of all drops as one. */
export const stainOf = ({ dropsPerMl, stain }: MeasurePlan, seconds: number): StainTest | undefined =>
  stain === undefined ? undefined : { seconds, stainMm: stain, microlitres: dropVolume(dropsPerMl) };

/** µl of one drop. */
export const dropVolume = (dropsPerMl: number | undefined): number =>
  dropsPerMl === undefined ? USUAL_DROP_MICROLITRES : 1000 / dropsPerMl;
