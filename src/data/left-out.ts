/** How well the bench model foretold the paper it had not seen: scores of the recorded chances. */
import type { Check } from '../schemas/checks';

type LeftOut = Extract<Check, { kind: 'leave-one-out' }>;
type Outcomes = Extract<Check, { kind: 'outcomes' }>;

export interface Foretold {
  readonly id: string;
  readonly paper: string;
  readonly thing: 'spread' | 'lift';
  readonly chance: number;
  readonly happened: boolean;
}

/** Every outcome beside the chance that was given to it. Throws where the record names an outcome that is not there. */
export function foretold(left: LeftOut, outcomes: Outcomes): readonly Foretold[] {
  return left.folds.flatMap(({ paper, rows }) =>
    rows.flatMap(({ id, spread, lift }) => {
      const row = outcomes.rows.find((one) => one.id === id);
      if (!row) throw new Error(`leave-one-out names "${id}", which is no outcome`);
      return [
        { id, paper, thing: 'spread' as const, chance: spread, happened: row.spreads },
        { id, paper, thing: 'lift' as const, chance: lift, happened: row.lifts },
      ];
    }),
  );
}

export interface Score {
  readonly asked: number;
  /** on the right side of one half */
  readonly right: number;
  /** mean squared difference of chance and outcome: 0 is perfect, 0.25 what one half throughout would give */
  readonly brier: number;
  /** the same of the share that comes about, said of each: the naive rule */
  readonly naive: number;
  /** how many were given a chance of `SURE` or more, of coming about or of not, and in how many of these it was so */
  readonly sure: number;
  readonly sureRight: number;
  /** how many of them come about: what "yes to everything" would have right */
  readonly yes: number;
}

/** A chance from which on the model counts as sure, either way. Our own line. */
export const SURE = 0.8;

export function scoreOf(all: readonly Foretold[]): Score {
  const mean = (of: (one: Foretold) => number) => all.reduce((sum, one) => sum + of(one), 0) / all.length;
  const share = mean(({ happened }) => Number(happened));
  const squared = (chance: number, happened: boolean) => (chance - Number(happened)) ** 2;
  const isRight = ({ chance, happened }: Foretold) => chance >= 0.5 === happened;
  const sure = all.filter(({ chance }) => Math.max(chance, 1 - chance) >= SURE);
  return {
    asked: all.length,
    right: all.filter(isRight).length,
    sure: sure.length,
    sureRight: sure.filter(isRight).length,
    brier: mean(({ chance, happened }) => squared(chance, happened)),
    naive: mean(({ happened }) => squared(share, happened)),
    yes: all.filter(({ happened }) => happened).length,
  };
}
