/** A clock beside a slip time: started when the sheet is down, it calls when the time to move it may be over. */
import type { ComponentType } from 'preact';
import { useState } from 'preact/hooks';
import { duration } from '../../core/base/format';
import type { ClockProps, ClockWords } from './SlipClock';

interface Props {
  /** seconds that can be counted on, and at the most */
  readonly low: number;
  readonly high: number;
  /** on the button, where it times something else than a laid sheet, and what it says then */
  readonly start?: string;
  readonly says?: ClockWords;
}

/** The clock itself, with its sound, is fetched when it is started. */
export function SlipTimer({ low, high, start: startWords = 'Start when it is down', says }: Props) {
  const [running, setRunning] = useState<{ readonly Clock: ComponentType<ClockProps>; readonly began: number }>();
  const [failed, setFailed] = useState(false);
  const start = async () => {
    // Counted from the press, however long the clock takes to come.
    const began = Date.now();
    try {
      const { SlipClock } = await import('./SlipClock');
      setRunning({ Clock: SlipClock, began });
      setFailed(false);
    } catch {
      setFailed(true);
    }
  };
  if (running) {
    const { Clock, began } = running;
    return <Clock low={low} high={high} began={began} onEnd={() => setRunning(undefined)} says={says} />;
  }
  return (
    <p class="slip-timer no-print">
      <button type="button" class="button-quiet" onClick={() => void start()}>
        {startWords}
      </button>{' '}
      <span class="label">
        {failed ? 'The clock could not be fetched. Press once more to try again.' : `It calls after ${duration(low)}.`}
      </span>
    </p>
  );
}
