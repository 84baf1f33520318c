/** A clock beside a time that matters. It is fetched, with its sound, when it is started, and counts from the press. */
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { duration } from '../../core/base/format';
import type { ClockWords } from './SlipClock';

interface FetchedClockProps {
  /** on the button */
  readonly start: string;
  readonly beside?: string;
  /** the clock that began at this moment, ms since 1970 */
  readonly bring: (began: number, onEnd: () => void) => Promise<ComponentChildren>;
}

export function FetchedClock({ start, beside, bring }: FetchedClockProps) {
  const [clock, setClock] = useState<ComponentChildren>();
  const [said, say] = useState<string>();
  // Counted from the press, however long the clock takes to come.
  const press = () =>
    void bring(Date.now(), () => setClock(undefined)).then(setClock, () =>
      say('The clock could not be fetched. Press once more to try again.'),
    );
  return (
    clock ?? (
      <p class="slip-timer no-print">
        <button type="button" class="button-quiet" onClick={press}>
          {start}
        </button>{' '}
        <span class="label">{said ?? beside}</span>
      </p>
    )
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
      bring={async (began, onEnd) => {
        const { SlipClock } = await import('./SlipClock');
        return <SlipClock low={low} high={high} says={says} began={began} onEnd={onEnd} />;
      }}
    />
  );
}
