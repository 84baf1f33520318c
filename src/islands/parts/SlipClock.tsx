/** How long the sheet has been down, against how long it can be moved. By screen, sound and vibration, with the screen kept on. */
import { useEffect, useState } from 'preact/hooks';
import { clockText } from '../../core/base/clock-text';
import { duration } from '../../core/base/format';
import { createSignal } from './signal';

export interface ClockProps {
  /** seconds that can be counted on, and at the most */
  readonly low: number;
  readonly high: number;
  /** when the sheet was laid, ms since 1970: right after sleep or a change of tab */
  readonly began: number;
  readonly onEnd: () => void;
}

export function SlipClock({ low, high, began, onEnd }: ClockProps) {
  const [now, setNow] = useState(Date.now);
  const seconds = Math.max(0, (now - began) / 1000);
  const due = seconds >= low;
  useEffect(() => {
    const signal = createSignal();
    const tick = () => setNow(Date.now());
    const left = low - (Date.now() - began) / 1000;
    if (left > 0) signal.startIn(left);
    const ring = setTimeout(() => signal.ring(), Math.max(0, left) * 1000);
    const timer = setInterval(tick, 200);
    document.addEventListener('visibilitychange', tick);
    return () => {
      clearTimeout(ring);
      clearInterval(timer);
      document.removeEventListener('visibilitychange', tick);
      signal.stop();
    };
  }, [began, low]);
  return (
    <div class="drop-clock slip-clock no-print" data-due={due ? 'yes' : 'no'}>
      <span class="number" role="timer" aria-live="off">
        {clockText(seconds)}
      </span>
      <span role="status">
        {seconds >= high
          ? 'It has grabbed by now: leave it.'
          : due
            ? 'It may grab from now on. Only press it down.'
            : `You can still move it, until ${duration(low)}.`}
      </span>
      <button type="button" class="button-quiet" onClick={onEnd}>
        Stop
      </button>
    </div>
  );
}
