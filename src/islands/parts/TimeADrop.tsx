/** A clock beside a field for the seconds of a drop, as they would be typed. It is fetched when it is started. */
import { FetchedClock } from './SlipTimer';

export function TimeADrop({ onTimed }: { readonly onTimed: (seconds: string) => void }) {
  return (
    <FetchedClock
      start="Time a drop"
      bring={async () => {
        const { DropTimer } = await import('./DropTimer');
        return <DropTimer onTimed={onTimed} />;
      }}
    />
  );
}
