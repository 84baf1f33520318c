/** Where one goes from an answer, each link carrying what is known of the job. */
import { useStore } from '@nanostores/preact';
import { useEffect, useState } from 'preact/hooks';
import { factsIn, tailWith, type JobFacts } from '../../core/handover/job-facts';
import { ROOMS, type RoomId } from '../../core/handover/rooms';
import { $benchJob, NOTHING_MORE, tailKeptFor, wasIn } from '../../stores/shared/bench-job';
import type { ReadableAtom } from '../../stores/shared/plan';
import { baseOf } from './job-line';

interface Props {
  readonly room: RoomId;
  readonly address: string;
  /** of this room's link */
  readonly tail: string;
  readonly $tells?: ReadableAtom<JobFacts> | undefined;
}

const AFTER: Readonly<Record<RoomId, readonly RoomId[]>> = {
  measure: ['choose', 'cover', 'flat', 'trial', 'class'],
  choose: ['mix', 'cover', 'flat', 'trial', 'class'],
  mix: ['cover', 'flat', 'trial', 'class'],
  cover: ['mix', 'flat', 'trial', 'class'],
  flat: ['cover', 'trial', 'class'],
  make: ['cut', 'cover', 'class'],
  cut: ['cover', 'class'],
  class: ['cover', 'flat', 'trial'],
  trial: ['choose', 'class'],
  bench: ['choose', 'cover', 'flat', 'trial', 'class'],
};
/** A trial is planned on a page of its own. */
const PLAN = 'plan/';

export function NextRooms({ room, address, tail, $tells = NOTHING_MORE }: Props) {
  const { facts: said } = useStore($benchJob);
  const tells = useStore($tells);
  const [awake, wake] = useState(false);
  useEffect(() => wake(true), []);
  const base = baseOf(room, address);
  const linkTo = (to: RoomId): string => {
    const known = awake && wasIn(to) ? tailKeptFor(to) : tailWith(to, { ...said, ...factsIn(room, tail) });
    const carried = tailWith(to, tells, known);
    return `${base}${ROOMS[to].path}${to === 'trial' ? PLAN : ''}${carried.includes('&') ? `?${carried}` : ''}`;
  };
  // what is used as it comes is not mixed
  const rooms = AFTER[room].filter((to) => to !== 'mix' || room !== 'cover' || tells['mix']);
  return (
    <nav class="next-steps no-print" aria-label="Next">
      {rooms.map((to) => (
        <a key={to} href={linkTo(to)}>
          {ROOMS[to].next}
        </a>
      ))}
    </nav>
  );
}
