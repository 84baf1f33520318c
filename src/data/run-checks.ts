/** Runs check rows. The tests and the page "How we check" call this same code, so neither can show what the other did not run. */
import { choose } from '../core/choose/choose';
import { DEFAULT_JOB } from '../core/choose/job';
import type { Catalogue } from '../core/records/records';
import type { Check, FormulaRow, OutcomeRow } from '../schemas/checks';
import { CHECK_FUNCTIONS } from './check-functions';

export interface FormulaResult {
  readonly row: FormulaRow;
  readonly ours: number;
  readonly difference: number;
  readonly passes: boolean;
}

/** Throws when a row calls what is not there or gets no number back: a slip in a check file must not pass. */
export function runFormula(row: FormulaRow): FormulaResult {
  const call = CHECK_FUNCTIONS[row.call] as ((...args: unknown[]) => unknown) | undefined;
  if (!call) throw new Error(`${row.id}: no function "${row.call}" in src/data/check-functions.ts`);
  const whole = call(...row.args);
  const ours = (row.pick?.split('.') ?? []).reduce<unknown>(
    (value, key) => (value as Record<string, unknown>)[key],
    whole,
  );
  if (typeof ours !== 'number' || !Number.isFinite(ours)) throw new Error(`${row.id}: ${row.call} gave no number`);
  const difference = ours - row.expected;
  return { row, ours, difference, passes: Math.abs(difference) <= row.within };
}

export interface OutcomeResult {
  readonly row: OutcomeRow;
  readonly spreadChance: number;
  readonly liftChance: number;
  readonly gives: 'paper' | 'substrate' | 'neither';
  readonly passes: boolean;
}

export function runOutcome(
  row: OutcomeRow,
  { setting }: Extract<Check, { kind: 'outcomes' }>,
  catalogue: Catalogue,
): OutcomeResult {
  const job = {
    ...DEFAULT_JOB,
    paper: { family: row.paper, grammage: row.grammage },
    substrate: setting.substrate,
    tool: setting.technique,
    placeSeconds: setting.seconds,
  };
  const choice = choose(job, catalogue).find(({ adhesiveId }) => adhesiveId === row.adhesive);
  if (!choice) throw new Error(`${row.id}: no adhesive "${row.adhesive}"`);
  const { spread, lift } = choice.chances;
  const side = row.gives === undefined || choice.gives === row.gives;
  const passes = spread >= 0.5 === row.spreads && lift >= 0.5 === row.lifts && side;
  return { row, spreadChance: spread, liftChance: lift, gives: choice.gives, passes };
}
