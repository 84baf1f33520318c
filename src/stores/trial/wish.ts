/** What somebody wants to know before planning: which of a few adhesives is right for a paper. As typed, and as it is asked. */
import { parseNumber } from '../../core/base/number-text';
import { DEFAULT_JOB, JOB_FIELDS, type Job } from '../../core/choose/job';
import type { Asking } from '../../core/learn/next-swatch';

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
/** Seconds after which a swatch is lifted: soon, and when the job needs it. */
const SOON = 20;

export interface Problem {
  readonly field: keyof Wish;
  readonly message: string;
}

/** The question that a wish makes, or what is wrong with it. */
export function askingOf(wish: Wish): { readonly asking?: Asking; readonly problems: readonly Problem[] } {
  const problems: Problem[] = [];
  const figure = (field: 'grammage' | 'seconds', { low, high, unit }: { low: number; high: number; unit: string }) => {
    if (wish[field].trim() === '') return undefined;
    const value = parseNumber(wish[field]);
    if (value !== undefined && value >= low && value <= high) return value;
    problems.push({ field, message: `A number from ${low} to ${high} ${unit}, or nothing.` });
    return undefined;
  };
  const grammage = figure('grammage', JOB_FIELDS.grammage);
  const seconds = figure('seconds', JOB_FIELDS.placeSeconds) ?? 60;
  if (wish.among.length < 2 || wish.among.length > MOST_AMONG)
    problems.push({ field: 'among', message: `Choose from 2 to ${MOST_AMONG} adhesives.` });
  if (problems.length > 0) return { problems };
  const paper = { family: wish.family, ...(grammage !== undefined && { grammage }) };
  const job: Job = {
    ...DEFAULT_JOB,
    paper,
    substrate: wish.substrate,
    tool: wish.tool,
    placeSeconds: seconds,
    ...(wish.bench && { bench: wish.bench }),
  };
  const papers = [paper, ...(wish.other === '' || wish.other === wish.family ? [] : [{ family: wish.other }])];
  return { asking: { job, among: wish.among, papers, holds: [...new Set([SOON, seconds])] }, problems };
}
