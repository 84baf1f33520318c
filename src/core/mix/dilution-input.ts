/** The sums of dilution.ts as a reader asks for them: what cannot be made is said in words, beside its field. */
import {
  diluteTo,
  solutionFromPowder,
  stretch,
  type Dilution,
  type PowderSolution,
  type StrengthBasis,
} from '../adhesive/dilution';
import { figure, formatAmount } from '../base/format';
import { fail, ok, type ErrorCode, type InputError, type Result } from '../base/result';
import { powderToAdd } from '../adhesive/alligation';

/** What each number may be. */
export const DILUTION_LIMITS = {
  stockPercent: { low: 0.01, high: 100, unit: '%', what: 'The strength you have' },
  targetPercent: { low: 0.01, high: 99, unit: '%', what: 'The strength you want' },
  batchMillilitres: { low: 1, high: 100000, unit: 'ml', what: 'The amount to make' },
  haveMillilitres: { low: 1, high: 100000, unit: 'ml', what: 'The amount you have' },
} as const;
export type DilutionField = keyof typeof DILUTION_LIMITS;

/** Above this, per 100 ml and per 100 g part company by more than a few per cent. Our own line. */
export const BASES_PART_ABOVE = 10;

/** What is wrong with one number of a dilution, or undefined. */
export function dilutionProblem(field: DilutionField, value: number): InputError | undefined {
  const { low, high, unit, what } = DILUTION_LIMITS[field];
  const problem = (code: ErrorCode): InputError => ({
    field,
    code,
    message: `${what} must be a number from ${low} to ${figure(high, 6)} ${unit}.`,
    limits: { low, high, unit },
  });
  if (!Number.isFinite(value)) return problem('not-a-number');
  if (value <= 0) return problem('not-positive');
  return value < low ? problem('too-small') : value > high ? problem('too-large') : undefined;
}

const problemsOf = (numbers: Partial<Readonly<Record<DilutionField, number>>>): InputError[] =>
  (Object.entries(numbers) as [DilutionField, number][]).flatMap(
    ([field, value]) => dilutionProblem(field, value) ?? [],
  );

export interface DilutionAnswer<T> {
  readonly value: T;
  /** how far the other way of counting per cent would be off, in per cent; only when it matters */
  readonly basesPartBy?: number;
}

/** Grams of powder for a batch. */
export function askPowder(ask: {
  targetPercent: number;
  batchMillilitres: number;
  basis: StrengthBasis;
  powderDensity: number;
}): Result<DilutionAnswer<PowderSolution>> {
  const { targetPercent, batchMillilitres } = ask;
  const problems = problemsOf({ targetPercent, batchMillilitres });
  if (problems.length > 0) return fail(problems);
  const value = solutionFromPowder(ask);
  const other = solutionFromPowder({ ...ask, basis: otherThan(ask.basis) });
  return ok({ value, ...partsBy(targetPercent, (other.powderGrams / value.powderGrams - 1) * 100) });
}

/** Stock and water for a batch. */
export function askDilution(ask: {
  stockPercent: number;
  targetPercent: number;
  batchMillilitres: number;
  basis: StrengthBasis;
  /** g/ml of what is in the jar; per cent by volume and by mass are not the same liquid */
  stockDensity: (basis: StrengthBasis) => number;
}): Result<DilutionAnswer<Dilution>> {
  const { stockPercent, targetPercent, batchMillilitres } = ask;
  const problems = problemsOf({ stockPercent, targetPercent, batchMillilitres });
  if (problems.length > 0) return fail(problems);
  if (targetPercent > stockPercent) return fail([tooStrong(batchMillilitres, stockPercent, targetPercent)]);
  const by = (basis: StrengthBasis) => diluteTo({ ...ask, basis, stockDensity: ask.stockDensity(basis) });
  const [value, other] = [by(ask.basis), by(otherThan(ask.basis))];
  return ok({ value, ...partsBy(stockPercent, (other.stockGrams / value.stockGrams - 1) * 100) });
}

/** Water to add to all there is. */
export function askStretch(ask: {
  haveMillilitres: number;
  fromPercent: number;
  toPercent: number;
  basis: StrengthBasis;
  /** g/ml of what is in the jar; per cent by volume and by mass are not the same liquid */
  stockDensity: (basis: StrengthBasis) => number;
}): Result<DilutionAnswer<Dilution>> {
  const { haveMillilitres, fromPercent, toPercent } = ask;
  const problems = problemsOf({ haveMillilitres, stockPercent: fromPercent, targetPercent: toPercent });
  if (problems.length > 0) return fail(problems);
  if (toPercent > fromPercent) return fail([tooStrong(haveMillilitres, fromPercent, toPercent)]);
  const by = (basis: StrengthBasis) => stretch({ ...ask, basis, stockDensity: ask.stockDensity(basis) });
  const [value, other] = [by(ask.basis), by(otherThan(ask.basis))];
  return ok({ value, ...partsBy(fromPercent, (other.batchMillilitres / value.batchMillilitres - 1) * 100) });
}

/** Water cannot do it; powder can, and how much is worth saying. */
function tooStrong(millilitres: number, from: number, to: number): InputError {
  const grams = powderToAdd({ haveMillilitres: millilitres, fromPercent: from, toPercent: to });
  return {
    field: 'targetPercent',
    code: 'contradiction',
    message:
      `Water only weakens: ${formatAmount(to)} % is stronger than the ${formatAmount(from)} % you have. ` +
      `Give at most ${formatAmount(from)} %, or stir about ${figure(grams, 2)} g of powder into ${formatAmount(millilitres)} ml of it.`,
    limits: { low: DILUTION_LIMITS.targetPercent.low, high: from, unit: '%' },
  };
}

const otherThan = (basis: StrengthBasis): StrengthBasis => (basis === 'w/v' ? 'w/w' : 'w/v');

const partsBy = (percent: number, off: number) => (percent > BASES_PART_ABOVE ? { basesPartBy: off } : {});
