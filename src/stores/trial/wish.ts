/** What somebody wants to know before planning: which of a few adhesives is right for a paper. As typed, and as it is asked. */
import { parseNumber } from '../../core/base/number-text';
import { PAPER_LIMITS } from '../../core/paper/limits';
import type { PlanText } from '../../core/trial/plan-text';

export interface Wish {
  /** id of the kind of paper, and of a second one at hand, '' for none */
  readonly family: string;
  readonly other: string;
  /** g/m², as typed */
  readonly grammage: string;
  /** ids of adhesives */
  readonly among: readonly string[];
  readonly substrate: string;
  /** id of a tool */
  readonly tool: string;
  /** what was measured of one's own bench, as links carry it; '' for the records alone */
  readonly bench: string;
  /** seconds needed to place it, as typed */
  readonly seconds: string;
}

export const FIRST_WISH: Wish = {
  family: 'marbled',
  other: '',
  grammage: '',
  among: ['pva', 'pva-mc-1-1', 'wheat-starch-paste-12'],
  substrate: 'binders-board',
  tool: 'brush-full',
  bench: '',
  seconds: '60',
};
export const MOST_AMONG = 4;
export interface Problem {
  readonly field: keyof Wish;
  readonly message: string;
}

/** What a link to a plan asks about; what it leaves out stays as it is. One adhesive alone is set against those that stand there. */
export function wishOf({ papers: [paper], glues, substrate, tool, holds }: PlanText, before: Wish): Wish {
  const named = glues.map(({ record }) => record);
  const among = [...new Set(named.length > 1 ? named : [...named, ...before.among])].slice(0, MOST_AMONG);
  const { family = before.family, grammage = '' } = paper ?? {};
  return { ...before, family, grammage, among, substrate, tool, seconds: holds };
}

/** A wish as it can be asked: its numbers read. */
export interface Wanted extends Pick<Wish, 'family' | 'other' | 'among' | 'substrate' | 'tool' | 'bench'> {
  /** g/m² */
  readonly grammage?: number;
  /** needed to place it */
  readonly seconds: number;
}

/** Seconds in which a sheet may have to be placed: as in a job (a test holds them to that). */
export const PLACE_SECONDS = { low: 1, high: 1800, unit: 's' } as const;

/** What is wanted, or what is wrong with it. */
export function wantedOf(wish: Wish): { readonly wanted?: Wanted; readonly problems: readonly Problem[] } {
  const problems: Problem[] = [];
  const figure = (field: 'grammage' | 'seconds', { low, high, unit }: { low: number; high: number; unit: string }) => {
    if (wish[field].trim() === '') return undefined;
    const value = parseNumber(wish[field]);
    if (value !== undefined && value >= low && value <= high) return value;
    problems.push({ field, message: `A number from ${low} to ${high} ${unit}, or nothing.` });
    return undefined;
  };
  const grammage = figure('grammage', PAPER_LIMITS.grammage);
  const seconds = figure('seconds', PLACE_SECONDS) ?? 60;
  if (wish.among.length < 2 || wish.among.length > MOST_AMONG)
    problems.push({ field: 'among', message: `Choose from 2 to ${MOST_AMONG} adhesives.` });
  if (problems.length > 0) return { problems };
  const { grammage: _typed, ...rest } = wish;
  return { wanted: { ...rest, seconds, ...(grammage !== undefined && { grammage }) }, problems };
}
