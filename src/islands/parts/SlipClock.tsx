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
  /** what it says while there is time, from `low` on, and from `high` on; of a laid sheet when left out */
  readonly says?: ClockWords | undefined;
}

export type ClockWords = readonly [meanwhile: (until: string) => string, due: string, over: string];

const OF_A_SHEET: ClockWords = [
  (until) => `You can still move it, until ${until}.`,
  'It may grab from now on. Only press it down.',
  'It has grabbed by now: leave it.',
];

export function SlipClock({ low, high, began, onEnd, says = OF_A_SHEET }: ClockProps) {
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
      <span role="status">{seconds >= high ? says[2] : due ? says[1] : says[0](duration(low))}</span>
      <button type="button" class="button-quiet" onClick={onEnd}>
        Stop
      </button>
    </div>
  );
}
