/** Clocks beside a time that matters. A clock, with its sound, is fetched when it is started, and counts from the press. */
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { duration } from '../../core/base/format';
import type { ClockWords } from './SlipClock';

interface FetchedClockProps {
  /** on the button */
  readonly start: string;
  readonly beside?: string;
  readonly bring: () => Promise<(began: number, onEnd: () => void) => ComponentChildren>;
}

function FetchedClock({ start, beside, bring }: FetchedClockProps) {
  const [running, setRunning] = useState<{ readonly clock: ComponentChildren }>();
  const [failed, setFailed] = useState(false);
  if (running) return <>{running.clock}</>;
  const press = () => {
    // Counted from the press, however long the clock takes to come.
    const began = Date.now();
    const onEnd = () => setRunning(undefined);
    bring().then(
      (make) => setRunning({ clock: make(began, onEnd) }),
      () => setFailed(true),
    );
  };
  return (
    <p class="slip-timer no-print">
      <button type="button" class="button-quiet" onClick={press}>
        {start}
      </button>{' '}
      <span class="label">{failed ? 'The clock could not be fetched. Press once more to try again.' : beside}</span>
    </p>
  );
}

interface SlipTimerProps {
  /** seconds that can be counted on, and at the most */
  readonly low: number;
  readonly high: number;
  /** on the button, where it times something else than a laid sheet, and what it says then */
  readonly start?: string;
  readonly says?: ClockWords;
}

/** Started when the sheet is down, it calls when the time to move it may be over. */
export function SlipTimer({ low, high, start = 'Start when it is down', says }: SlipTimerProps) {
  return (
    <FetchedClock
      start={start}
      beside={`It calls after ${duration(low)}.`}
      bring={async () => {
        const { SlipClock } = await import('./SlipClock');
        return (began, onEnd) => <SlipClock {...{ low, high, says, began, onEnd }} />;
      }}
    />
  );
}

/** Beside a field for the seconds of a drop, as they would be typed. */
export function TimeADrop({ onTimed }: { readonly onTimed: (seconds: string) => void }) {
  return (
    <FetchedClock
      start="Time a drop"
      bring={async () => {
        const { DropTimer } = await import('./DropTimer');
        return () => <DropTimer onTimed={onTimed} />;
      }}
    />
  );
}
