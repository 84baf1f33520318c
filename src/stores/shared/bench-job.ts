/**
 * One job on one bench: what was said in one room is known in the others, for as long as the tab is open. Kept on the
 * device for the session; where that is refused, every room works by itself.
 */
import { atom, type ReadableAtom } from 'nanostores';
import { factsIn, isSameSheet, tailWith, type JobFacts } from '../../core/handover/job-facts';
import type { RoomId } from '../../core/handover/rooms';
import { sessionStorageOrNone } from './device-storage';

const KEY = 'open-time:job';

/** Texts with the count of changes at which each was said. */
type Said = Readonly<Record<string, readonly [text: string, at: number]>>;
interface Kept {
  readonly count: number;
  readonly facts: Said;
  /** the tail of each room's link as it was left */
  readonly rooms: Said;
  /** the job that a stranger's link put aside */
  readonly aside?: Omit<Kept, 'aside'>;
}
const NOTHING: Kept = { count: 0, facts: {}, rooms: {} };

/** What there is to say of the job over a room. */
export interface JobOnBench {
  readonly facts: JobFacts;
  /** the facts that a link has put aside */
  readonly aside?: JobFacts;
}

const factsOf = (facts: Said): JobFacts =>
  Object.fromEntries(Object.entries(facts).map(([fact, [text]]) => [fact, text]));

const $job = atom<JobOnBench>({ facts: {} });
/** The job as it stands on this page. */
export const $benchJob: ReadableAtom<JobOnBench> = $job;

function read(storage: Storage | undefined): Kept {
  try {
    const kept = JSON.parse(storage?.getItem(KEY) ?? 'null') as Kept | null;
    const isSaid = (said: unknown): said is Said =>
      typeof said === 'object' && said !== null && Object.values(said).every((one) => typeof one?.[0] === 'string');
    return kept && isSaid(kept.facts) && isSaid(kept.rooms) && Number.isFinite(kept.count) ? kept : NOTHING;
  } catch {
    return NOTHING;
  }
}

function write(kept: Kept): void {
  try {
    sessionStorageOrNone()?.setItem(KEY, JSON.stringify(kept));
  } catch {
    // Where nothing can be kept, a link carries the job on all the same.
  }
  $job.set({ facts: factsOf(kept.facts), ...(kept.aside && { aside: factsOf(kept.aside.facts) }) });
}

/** For a room that tells the others no more than its link does. */
export const NOTHING_MORE: ReadableAtom<JobFacts> = atom<JobFacts>({});

/** A frame in someone else's page is nobody's bench. */
const isFramed = () => window.self !== window.top;

/** Forgets everything that was said. */
export function startAfresh(): void {
  try {
    sessionStorageOrNone()?.removeItem(KEY);
  } catch {
    // Nothing to forget where nothing can be kept.
  }
  $job.set({ facts: {} });
}

/** The job and every room without the bench that was measured, where somebody leaves it out of an answer. */
export function leaveBenchOut(): void {
  const kept = read(sessionStorageOrNone());
  const { bench: _bench, ...facts } = kept.facts;
  const without = (tail: string) => tail.replace(/&bench=[^&]*/, '');
  const rooms = Object.entries(kept.rooms).map(([room, [tail, at]]) => [room, [without(tail), at]] as const);
  write({ ...kept, facts, rooms: Object.fromEntries(rooms) });
}

/** Takes back the job that a link has put aside. */
export function takeBack(): void {
  const { aside } = read(sessionStorageOrNone());
  if (aside) write(aside);
}

/** The tail with which a room is opened from here: as it was left, with what has been said elsewhere since. */
export const tailKeptFor = (room: RoomId): string => tailOf(room, read(sessionStorageOrNone()));

/** Whether anything was said in this room itself. */
export const wasIn = (room: RoomId): boolean => room in read(sessionStorageOrNone()).rooms;

function tailOf(room: RoomId, { facts, rooms }: Kept): string {
  const [tail, at] = rooms[room] ?? ['', -1];
  const newer = Object.fromEntries(Object.entries(facts).filter(([, [, when]]) => when > at));
  const said = factsOf(newer);
  // A bare version says nothing.
  return tail === '' && !tailWith(room, said).includes('&') ? '' : tailWith(room, said, tail);
}

/** What one room's answer hands to another: it goes along by a next step, and changes nothing that is gone back to. */
const HANDED_ON = ['mix', 'cover pieces', 'cut pieces'];

/** What has been said elsewhere since this room was left, laid over it; empty where nothing has. For a page that comes back as it was. */
export function comeBackTo(room: RoomId): string {
  const kept = read(sessionStorageOrNone());
  write(kept);
  const [, at] = kept.rooms[room] ?? ['', Infinity];
  const facts = Object.fromEntries(
    Object.entries(kept.facts).filter(([fact, [, when]]) => when > at && !HANDED_ON.includes(fact)),
  );
  return isFramed() || Object.keys(facts).length === 0 ? '' : tailOf(room, { ...kept, facts });
}

/** Whether two tails say the same, however their signs are written. */
const sameTail = (a: string, b: string | undefined): boolean =>
  b !== undefined && new URLSearchParams(a).toString() === new URLSearchParams(b).toString();

/** With what tail a room is about to be opened: its link, or without one what is kept. Nothing is said by asking. */
export const tailAhead = (room: RoomId, link: string): string =>
  link.length > 1 || isFramed() ? link : tailKeptFor(room);

/**
 * The tail to open a room with: a stranger's link as it stands, a link of this site's own laid over what the room was
 * left with, and without a link what was said so far. An address that is just how the room was left is gone back to,
 * or loaded anew: it is opened with what has been said elsewhere since. Says what the link says of the job.
 */
export function openWith(room: RoomId, link: string, referrer: string): string {
  if (isFramed()) return link;
  const kept = read(sessionStorageOrNone());
  const own = tailOf(room, kept);
  if (link.length <= 1) {
    write(kept);
    return own;
  }
  if (sameTail(link, kept.rooms[room]?.[0])) return comeBackTo(room) || link;
  const brought = factsIn(room, link);
  const isOurs = referrer.startsWith(`${window.location.origin}/`) || sameFacts(brought, factsIn(room, own));
  const isOther = Object.entries(brought).some(([fact, text]) => (kept.facts[fact]?.[0] ?? text) !== text);
  const start = isOurs || !isOther ? kept : { ...NOTHING, aside: { ...kept } };
  write(withFacts(start, brought));
  return isOurs && own !== '' ? laidOver(room, brought, own, link) : link;
}

const sameFacts = (a: JobFacts, b: JobFacts) => Object.entries(a).every(([fact, text]) => b[fact] === text);

const laidOver = (room: RoomId, brought: JobFacts, own: string, link: string): string => {
  const pairs = (tail: string) => Object.fromEntries(new URLSearchParams(tail));
  const all: Record<string, string> = { ...pairs(tailWith(room, brought, own)), ...pairs(link.replace(/^\?/, '')) };
  return new URLSearchParams(all).toString();
};

function withFacts(kept: Kept, facts: JobFacts): Kept {
  const changed = Object.entries(facts).filter(([fact, text]) => {
    const before = kept.facts[fact]?.[0];
    // A room that asks for a sheet field by field says all of it but its name.
    return before !== text && !(fact === 'paper' && before !== undefined && isSameSheet(text, before));
  });
  if (changed.length === 0) return kept;
  const count = kept.count + 1;
  const anew = Object.fromEntries(changed.map(([fact, text]) => [fact, [text, count] as const]));
  return { ...kept, count, facts: { ...kept.facts, ...anew } };
}

/** Makes everything that a room's link says known elsewhere, as when one goes on from its answer: figures that stood there at first too. */
export function sayWhole(room: RoomId, tail: string): void {
  if (!isFramed()) write(withFacts(read(sessionStorageOrNone()), factsIn(room, tail)));
}

/** What a room says from now on: each fact that changes is known elsewhere, and the room is found as it was left. */
export function sayFrom(room: RoomId, tail: string, more: JobFacts): (tail: string, more: JobFacts) => void {
  let before: JobFacts = { ...factsIn(room, tail), ...more };
  return (next, nextMore) => {
    if (isFramed()) return;
    const now = { ...factsIn(room, next), ...nextMore };
    const changed = Object.fromEntries(Object.entries(now).filter(([fact, text]) => before[fact] !== text));
    before = now;
    const kept = withFacts(read(sessionStorageOrNone()), changed);
    write({ ...kept, rooms: { ...kept.rooms, [room]: [next, kept.count] } });
  };
}
