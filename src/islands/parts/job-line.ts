/** What the line with the job over a room is told, and where the site's own addresses begin. */
import { ROOMS, type RoomId } from '../../core/handover/rooms';

export interface JobLineProps {
  readonly room: RoomId;
  /** path of this room's page */
  readonly address: string;
}

/** Where the site's own addresses begin, from the address of one room. */
export const baseOf = (room: RoomId, address: string): string => address.slice(0, -ROOMS[room].path.length);
