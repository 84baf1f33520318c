/**
 * The clock of one swatch. It counts from the stored instant of laying, so it is right after sleep, reload
 * or a change of tab. At the end it signals by screen, sound and vibration, once.
 */
import { useEffect, useRef, useState } from 'preact/hooks';
import { clockText } from '../../core/base/clock-text';
import type { Swatch } from '../../core/trial/record';
import type { TrialRun } from '../../stores/trial/run';
import { createSignal, type Signal } from '../parts/signal';

interface Props {
  readonly run: TrialRun;
  readonly swatch: Swatch;
}

/** A swatch laid this long ago is being judged later, not timed now. */
const TIMED_FOR = 30 * 60;

export function RunClock({ run, swatch }: Props) {
  const { laidAt, hold } = swatch;
  const [now, setNow] = useState(Date.now);
  const signal = useRef<Signal | undefined>(undefined);
  const elapsed = laidAt === undefined ? undefined : Math.max(0, (now - laidAt) / 1000);
  const left = elapsed === undefined ? undefined : hold - elapsed;
  const timing = elapsed !== undefined && elapsed < hold + TIMED_FOR;

  useEffect(() => {
    if (!timing) return;
    const tick = () => setNow(Date.now());
    tick();
    const timer = setInterval(tick, 200);
    document.addEventListener('visibilitychange', tick);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', tick);
    };
  }, [timing, laidAt]);

  useEffect(() => () => signal.current?.stop(), []);

  const due = left !== undefined && left <= 0;
  useEffect(() => {
    // A page that opens after the end shows it; it does not ring for what is long past.
    if (due && left > -2) signal.current?.ring();
  }, [due]);

  const lay = () => {
    signal.current?.stop();
    // Sound may only be made after a touch, so it is set up by this one.
    signal.current = createSignal();
    signal.current.startIn(hold);
    run.lay();
    setNow(Date.now());
  };

  if (elapsed === undefined || left === undefined || !timing) {
    return (
      <div class="run-clock">
        <button type="button" class="button run-lay" onClick={lay}>
          {laidAt === undefined ? 'Laid: start the clock' : 'Lay it again: start the clock'}
        </button>
        {laidAt !== undefined && (
          <p class="field-hint">
            It was laid at {new Date(laidAt).toLocaleString('en-GB', { dateStyle: 'medium', timeStyle: 'short' })}.
          </p>
        )}
      </div>
    );
  }
  return (
    <div class="run-clock" data-due={due ? 'yes' : 'no'}>
      <p class="run-time">
        <span class="visually-hidden">{due ? 'Since the time was up: ' : 'Left: '}</span>
        <span class="number" role="timer">
          {due ? `+${clockText(-left)}` : clockText(Math.ceil(left))}
        </span>
      </p>
      <p class="run-word" role="status">
        {due ? 'Lift it now' : `Hold still: ${hold} s in all`}
      </p>
      <button type="button" class="button-quiet" onClick={lay}>
        Start again
      </button>
    </div>
  );
}
