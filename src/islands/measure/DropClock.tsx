/** Times a drop: one press when it touches, one when its shine is gone. Big enough for a wet thumb. */
import { useEffect, useState } from 'preact/hooks';
import { LONGEST_DROP_SECONDS } from '../../core/paper/limits';
import { STANDARD_DROP_SECONDS } from '../../core/paper/sorption';
import type { MeasureStore } from '../../stores/measure/measure';

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
