/** Beside a field for the seconds of a drop: a clock for it, fetched when it is asked for. */
import type { ComponentType } from 'preact';
import { useState } from 'preact/hooks';
import type { DropTimerProps } from './DropTimer';

export function TimeADrop({ onTimed }: DropTimerProps) {
  const [Clock, setClock] = useState<ComponentType<DropTimerProps>>();
  const [failed, setFailed] = useState(false);
  if (Clock) return <Clock onTimed={onTimed} />;
  const fetchIt = () =>
    import('./DropTimer').then(
      ({ DropTimer }) => setClock(() => DropTimer),
      () => setFailed(true),
    );
  return (
    <p class="slip-timer no-print">
      <button type="button" class="button-quiet" onClick={() => void fetchIt()}>
        Time a drop
      </button>{' '}
      <span class="label">{failed && 'The clock could not be fetched. Press once more to try again.'}</span>
    </p>
  );
}
