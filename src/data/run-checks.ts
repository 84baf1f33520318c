/** Runs check rows. The tests and the page "How we check" call this same code, so neither can show what the other did not run. */
import { DEFAULT_JOB } from '../core/choose/job';
import { judge } from '../core/choose/judge';
import type { Catalogue } from '../core/records/records';
import type { Check, FormulaRow, OutcomeRow } from '../schemas/checks';
import { CHECK_FUNCTIONS } from './check-functions';

export interface FormulaResult {
  readonly row: FormulaRow;
  readonly ours: number;
  readonly difference: number;
  readonly passes: boolean;
}

/**
 * Throws when a row calls what is not there or gets no number back: a slip in a check file must not pass.
 * The tests hand it functions that answer wrongly, to see each row fail.
 */
export function runFormula(row: FormulaRow, functions: typeof CHECK_FUNCTIONS = CHECK_FUNCTIONS): FormulaResult {
  const call = functions[row.call] as ((...args: unknown[]) => unknown) | undefined;
  if (!call)
    throw new Error(
      `${row.id}: no function "${row.call}" in src/data/check-functions.ts; enter it in CHECK_FUNCTIONS there, or mend its name here`,
    );
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
  const adhesive = catalogue.adhesives.get(row.adhesive);
  if (adhesive?.form !== 'wet') throw new Error(`${row.id}: no adhesive "${row.adhesive}" that is brushed`);
  // Brushed on the sheet with this tool, whatever method would suit it better.
  const choice = judge(adhesive, job, catalogue);
  const answer = { spreadChance: choice.chances.spread, liftChance: choice.chances.lift, gives: choice.gives };
  return { row, ...answer, passes: meets(row, answer) };
}

/** Whether what the model says of a sheet is what is found at the bench. */
export function meets(row: OutcomeRow, answer: Pick<OutcomeResult, 'spreadChance' | 'liftChance' | 'gives'>): boolean {
  const side = row.gives === undefined || answer.gives === row.gives;
  return answer.spreadChance >= 0.5 === row.spreads && answer.liftChance >= 0.5 === row.lifts && side;
}
