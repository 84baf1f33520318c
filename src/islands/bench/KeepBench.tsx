/** Keeps the bench on this device, and forgets it. */
import { useStore } from '@nanostores/preact';
import { useState } from 'preact/hooks';
import { benchInWords } from '../../core/bench/bench-text';
import type { BenchStore } from '../../stores/bench/bench';
import { leaveBenchOut } from '../../stores/shared/bench-job';
import { openKeptBench, type KeptBench } from '../../stores/shared/own-bench';
import { KeepRow, KeepSection } from '../parts/KeepOnDevice';

export function KeepBench({ store }: { readonly store: BenchStore }) {
  return (
    <KeepSection
      open={openKeptBench}
      about="Until you close this tab, the chooser and the calculators that ask for a tool reckon with this bench, and say so. Keep it on this device to be offered it another day. A link carries it too, and nothing else of yours."
    >
      {(own) => <Kept own={own} store={store} />}
    </KeepSection>
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
      <KeepRow
        thing="bench"
        disabled={problems.length > 0}
        onKeep={keep}
        said={said}
        kept={kept}
        beside={
          bench !== '' && (
            <button type="button" class="button-quiet" onClick={forget}>
              Delete the bench kept here
            </button>
          )
        }
      />
    </div>
  );
}
