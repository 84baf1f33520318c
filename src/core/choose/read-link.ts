/**
 * A job as the readable tail of an address, and back. A link is a promise: keys in words, record ids
 * rather than positions, a fixed order, the version, and the answer that its sender saw. Nothing that
 * is pasted here can throw.
 */
import { RECORD_ID } from '../base/record-id';
import { DEFAULT_JOB, NEEDS, type Job } from './job';
import { SIZINGS, SURFACES, type JobPaper } from '../paper/asked-paper';
import { numberProblem } from './job-limits';
import { caliperProblem } from '../paper/limits';
import { parseNumber } from '../base/number-text';
import { encodeJob, FORMAT, NUMBER_KEYS } from './write-link';
import { decodeSeen, type Seen } from './seen';

export { encodeJob };

export interface Decoded {
  readonly job: Job;
  /** what was left out, each named as its reader would: "gsm (abc)" */
  readonly dropped: readonly string[];
  readonly seen?: Seen;
}

const MOST_IDS = 60;
const LONGEST = 4000;

/** Any text to a job: what cannot be read is left at its default and named in `dropped`. Never throws. */
export function decodeJob(text: unknown): Decoded {
  const query = new Map<string, string>();
  const dropped: string[] = [];
  const whole = typeof text === 'string' ? text.replace(/^[?#]/, '') : '';
  // Cut between two pairs, for half a number is another number.
  const source = whole.length > LONGEST ? whole.slice(0, Math.max(0, whole.lastIndexOf('&', LONGEST))) : whole;
  if (source !== whole) dropped.push('all past its first 4000 characters');
  for (const pair of source.split('&')) {
    const cut = pair.indexOf('=');
    if (cut <= 0) continue;
    const value = unescaped(pair.slice(cut + 1));
    if (value === undefined) dropped.push(pair.slice(0, cut).slice(0, 40));
    else query.set(pair.slice(0, cut), value);
  }
  const drop = (key: string) => dropped.push(`${key} (${query.get(key)!.slice(0, 40)})`);
  const oneOf = <T extends string>(key: string, allowed: readonly T[]): T | undefined => {
    const value = query.get(key);
    if (value === undefined) return undefined;
    const known = allowed.find((one) => one === value);
    if (known === undefined) drop(key);
    return known;
  };
  const anId = (key: string): string | undefined => {
    const value = query.get(key);
    if (value === undefined) return undefined;
    if (RECORD_ID.test(value) && value.length <= 60) return value;
    drop(key);
    return undefined;
  };
  const list = (key: string): readonly string[] => [...new Set((query.get(key) ?? '').split('.').filter(Boolean))];
  const numbers: { paper: Record<string, number>; job: Record<string, number> } = { paper: {}, job: {} };
  for (const [key, [part, field]] of Object.entries(NUMBER_KEYS)) {
    const value = query.get(key);
    if (value === undefined || value === '') continue;
    const number = parseNumber(value);
    if (number === undefined || numberProblem(field, number)) drop(key);
    else numbers[part][field] = number;
  }
  const version = query.get('v');
  if (version !== undefined && version !== FORMAT) drop('v');
  const needs = list('need');
  const known = NEEDS.filter((need) => needs.includes(need));
  const atHand = list('have')
    .filter((id) => RECORD_ID.test(id))
    .slice(0, MOST_IDS)
    .sort();
  if (needs.some((need) => !(NEEDS as readonly string[]).includes(need))) drop('need');
  if (list('have').length > MOST_IDS || list('have').some((id) => !RECORD_ID.test(id))) drop('have');
  const surface = oneOf('face', SURFACES);
  const sizing = oneOf('size', SIZINGS);
  const runs = oneOf('runs', ['yes', 'no']);
  // A link that names a paper without a weight means the whole family; one that names neither, the default.
  const family = anId('paper');
  const start: JobPaper = family === undefined ? DEFAULT_JOB.paper : { family };
  const paper = {
    ...start,
    ...numbers.paper,
    ...(surface && { surface }),
    ...(sizing && { sizing }),
    ...(runs && { coloursRun: runs === 'yes' }),
  };
  if (paper.grammage !== undefined && paper.caliper !== undefined && caliperProblem(paper.grammage, paper.caliper)) {
    drop('thick');
    delete (paper as { caliper?: number }).caliper;
  }
  const substrate = anId('on');
  const tool = anId('tool');
  const job: Job = {
    ...DEFAULT_JOB,
    ...numbers.job,
    paper,
    needs: known,
    atHand,
    ...(substrate && { substrate }),
    ...(tool && { tool }),
  };
  const seen = decodeSeen(query.get('seen'));
  if (query.has('seen') && !seen) drop('seen');
  return { job, dropped, ...(seen && { seen }) };
}

function unescaped(text: string): string | undefined {
  try {
    return decodeURIComponent(text.replace(/\+/g, ' '));
  } catch {
    return undefined;
  }
}
