/** Keeps the bench on this device, and forgets it. */
import { useStore } from '@nanostores/preact';
import { useEffect, useState } from 'preact/hooks';
import { benchInWords } from '../../core/bench/bench-text';
import type { BenchStore } from '../../stores/bench/bench';
import { leaveBenchOut } from '../../stores/shared/bench-job';
import { localStorageOrNone } from '../../stores/shared/device-storage';
import { openKeptBench, type KeptBench } from '../../stores/shared/own-bench';

export function KeepBench({ store }: { readonly store: BenchStore }) {
  const [own, setOwn] = useState<KeptBench | undefined>(undefined);
  useEffect(() => setOwn(openKeptBench(localStorageOrNone())), []);
  return (
    <section aria-label="Keep it">
      <h2>Keep it</h2>
      <p>
        Until you close this tab, the chooser and the calculators that ask for a tool reckon with this bench, and say
        so. Keep it on this device to be offered it another day. A link carries it too, and nothing else of yours.
      </p>
      {own && <Kept own={own} store={store} />}
    </section>
  );
}

function Kept({ own, store }: { readonly own: KeptBench; readonly store: BenchStore }) {
  const bench = useStore(own.$bench);
  const kept = useStore(own.$kept);
  const { answer } = useStore(store.$solved);
  const problems = useStore(store.$problems);
  const [said, say] = useState('');
  const keep = () => {
    if (answer.text === '') return say('Measure one of the four first.');
    own.keep(answer.text);
    say('This bench is kept. The chooser offers it from now on.');
  };
  const forget = () => {
    own.forget();
    leaveBenchOut();
    say('The bench is deleted from this device.');
    document.getElementById('keep-bench')?.focus();
  };
  return (
    <div class="no-print">
      {bench !== '' && (
        <p>
          Kept here: <strong>{benchInWords(bench)}</strong>.
        </p>
      )}
      <div class="button-row">
        <button type="button" id="keep-bench" class="button" disabled={problems.length > 0} onClick={keep}>
          Keep this bench on this device
        </button>
        {bench !== '' && (
          <button type="button" class="button-quiet" onClick={forget}>
            Delete the bench kept here
          </button>
        )}
      </div>
      <p class="field-hint" aria-live="polite">
        {said}
      </p>
      {!kept && (
        <p class="field-hint">
          This browser does not let the page keep anything. The link below holds the bench all the same.
        </p>
      )}
    </div>
  );
}
