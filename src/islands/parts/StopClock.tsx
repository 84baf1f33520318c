/** Times one thing at the bench: a press when it begins, a press when it is over. Big enough for a wet thumb. */
import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Signal } from './signal';

export interface StopClockProps {
  /** on the button, before and while it runs */
  readonly words: readonly [start: string, stop: string];
  /** seconds at which it calls; it keeps the screen on in any case */
  readonly callsAt: number;
  /** seconds from the first press to the second */
  readonly onStop: (seconds: number) => void;
  /** as it is read out when it stops, after the seconds */
  readonly said: string;
  /** what there is to say of so long a wait */
  readonly remark?: (seconds: number) => string | undefined;
  /** beside the button while it stands still */
  readonly beside?: ComponentChildren;
}

export function StopClock({ words, callsAt, onStop, said: saidAfter, remark, beside }: StopClockProps) {
  const [began, setBegan] = useState<number | undefined>(undefined);
  const [now, setNow] = useState(0);
  const [said, say] = useState('');
  const seconds = began === undefined ? 0 : Math.max(0, (now - began) / 1000);

  useEffect(() => {
    if (began === undefined) return;
    const timer = setInterval(() => setNow(performance.now()), 100);
    return () => clearInterval(timer);
  }, [began]);

  const signal = useRef<Signal | undefined>(undefined);
  const quiet = () => {
    signal.current?.stop();
    signal.current = undefined;
  };
  useEffect(() => quiet, []);
  useEffect(() => {
    if (began === undefined) return;
    let ring: ReturnType<typeof setTimeout> | undefined;
    let stays = true;
    void import('./signal').then(({ createSignal }) => {
      if (!stays) return;
      const left = Math.max(0, callsAt - (performance.now() - began) / 1000);
      signal.current = createSignal();
      signal.current.startIn(left);
      ring = setTimeout(() => signal.current?.ring(), left * 1000);
    });
    return () => {
      stays = false;
      clearTimeout(ring);
      quiet();
    };
  }, [began]);

  const press = () => {
    const at = performance.now();
    if (began === undefined) {
      setNow(at);
      setBegan(at);
      say('The clock is running.');
      return;
    }
    const took = (at - began) / 1000;
    setBegan(undefined);
    onStop(took);
    say(`${took.toFixed(1)} s${saidAfter}`);
  };
  return (
    <div class="drop-clock no-print">
      <button type="button" class="button" onClick={press}>
        {words[began === undefined ? 0 : 1]}
      </button>
      {began === undefined ? (
        beside
      ) : (
        <button type="button" class="button-quiet" onClick={() => setBegan(undefined)}>
          Leave this one out
        </button>
      )}
      <p class="number" role="timer" aria-live="off">
        {began !== undefined && `${seconds.toFixed(1)} s`} {remark?.(seconds)}
      </p>
      <p class="visually-hidden" aria-live="polite">
        {said}
      </p>
    </div>
  );
}
