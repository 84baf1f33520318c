/** The line with the job over a room, fetched once something of a job was said. */
import { useStore } from '@nanostores/preact';
import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { ROOMS, type RoomId } from '../../core/handover/rooms';
import { $benchJob } from '../../stores/shared/bench-job';

export interface JobLineProps {
  readonly room: RoomId;
  /** path of this room's page */
  readonly address: string;
}

/** Where the site's own addresses begin, from the address of one room. */
export const baseOf = (room: RoomId, address: string): string => address.slice(0, -ROOMS[room].path.length);

export function KnownJob(props: JobLineProps) {
  const { facts } = useStore($benchJob);
  const [Line, setLine] = useState<ComponentType<JobLineProps>>();
  const isKnown = Object.keys(facts).length > 0;
  useEffect(() => {
    if (isKnown) void import('./JobLine').then(({ JobLine }) => setLine(() => JobLine));
  }, [isKnown]);
  return Line ? <Line {...props} /> : null;
}
