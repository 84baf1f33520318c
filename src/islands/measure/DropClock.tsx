/** Times a drop: one press when it touches, one when its shine is gone. Big enough for a wet thumb. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { LONGEST_DROP_SECONDS } from '../../core/paper/limits';
import { STANDARD_DROP_SECONDS } from '../../core/paper/sorption';
import type { MeasureStore } from '../../stores/measure/measure';
import type { Signal } from '../parts/signal';

export function DropClock({ store }: { readonly store: MeasureStore }) {
  const [began, setBegan] = useState<number | undefined>(undefined);
  const [now, setNow] = useState(0);
  const [said, say] = useState('');
  const seconds = began === undefined ? 0 : Math.max(0, (now - began) / 1000);

  useEffect(() => {
    if (began === undefined) return;
    const timer = setInterval(() => setNow(performance.now()), 100);
    return () => clearInterval(timer);
  }, [began]);

  // It keeps the screen on, and calls when the standard test ends.
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
    void import('../parts/signal').then(({ createSignal }) => {
      if (!stays) return;
      const left = Math.max(0, STANDARD_DROP_SECONDS - (performance.now() - began) / 1000);
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
    const took = ((at - began) / 1000).toFixed(1);
    setBegan(undefined);
    store.set('drops', `${store.$texts.get().drops} ${took}`.trim());
    say(`${took} s, added to the drops.`);
  };
  return (
    <div class="drop-clock no-print">
      <button type="button" class="button" onClick={press}>
        {began === undefined ? 'A drop touches: start' : 'Its shine is gone: stop'}
      </button>
      {began === undefined ? (
        <button type="button" class="button-quiet" onClick={() => store.set('drops', '')}>
          Clear the drops
        </button>
      ) : (
        <button type="button" class="button-quiet" onClick={() => setBegan(undefined)}>
          Leave this one out
        </button>
      )}
      <p class="number" role="timer" aria-live="off">
        {began !== undefined && `${seconds.toFixed(1)} s`}
        {seconds > LONGEST_DROP_SECONDS
          ? ' It hardly drinks: choose hard-sized instead.'
          : seconds > STANDARD_DROP_SECONDS && ' Slow. You may go on; a glass over the drop keeps it from drying.'}
      </p>
      <p class="visually-hidden" aria-live="polite">
        {said}
      </p>
    </div>
  );
}
