/** A job as the readable tail of an address; `read-link.ts` reads it back. */
import { NEEDS, type Job } from './job';
import type { NumberField } from './job-limits';
import { writePairs } from '../link/pairs';
import { encodeSeen, type Seen } from './seen';

/** Version of the link's own form. */
export const FORMAT = '1';

/** Number fields and the keys that carry them. */
export const NUMBER_KEYS = {
  gsm: ['paper', 'grammage'],
  thick: ['paper', 'caliper'],
  drop: ['paper', 'dropSeconds'],
  cobb: ['paper', 'cobb'],
  wide: ['job', 'widthMm'],
  high: ['job', 'heightMm'],
  place: ['job', 'placeSeconds'],
  room: ['job', 'celsius'],
  rh: ['job', 'humidity'],
} as const satisfies Record<string, readonly ['paper' | 'job', NumberField]>;

/** The tail of a link, without "?". `decodeJob` gives the same job back. */
export function encodeJob(job: Job, seen?: Seen): string {
  const { paper } = job;
  const pairs: [string, string | number | undefined][] = [
    ['v', FORMAT],
    ['paper', paper.family],
    ['gsm', paper.grammage],
    ['thick', paper.caliper],
    ['drop', paper.dropSeconds],
    ['cobb', paper.cobb],
    ['face', paper.surface],
    ['size', paper.sizing],
    ['runs', paper.coloursRun === undefined ? undefined : paper.coloursRun ? 'yes' : 'no'],
    ['on', job.substrate],
    ['wide', job.widthMm],
    ['high', job.heightMm],
    ['place', job.placeSeconds],
    ['need', NEEDS.filter((need) => job.needs.includes(need)).join('.') || undefined],
    ['room', job.celsius],
    ['rh', job.humidity],
    ['tool', job.tool],
    ['have', [...job.atHand].sort().join('.') || undefined],
    ['seen', seen && encodeSeen(seen)],
  ];
  return writePairs(pairs.flatMap(([key, value]) => (value === undefined ? [] : [[key, String(value)] as const])));
}
