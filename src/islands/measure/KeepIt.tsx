/** Keeps the paper on this device. */
import { useStore } from '@nanostores/preact';
import { useState } from 'preact/hooks';
import { readPaper } from '../../core/paper/own-paper';
import type { MeasureStore } from '../../stores/measure/measure';
import { openOwnPapers, type OwnPapers } from '../../stores/shared/own-papers';
import { KeepRow, KeepSection } from '../parts/KeepOnDevice';
import { useFocusNext } from '../parts/use-focus-next';

export function KeepIt({ store }: { readonly store: MeasureStore }) {
  return (
    <KeepSection
      open={openOwnPapers}
      about="Until you close this tab every calculator knows this paper. To find it again another day, give it a name and keep it on this device."
    >
      {(own) => <Kept own={own} store={store} />}
    </KeepSection>
  );
}

function Kept({ own, store }: { readonly own: OwnPapers; readonly store: MeasureStore }) {
  const papers = useStore(own.$papers);
  const kept = useStore(own.$kept);
  const { answer } = useStore(store.$solved);
  const problems = useStore(store.$problems);
  const [said, say] = useState('');
  const focusNext = useFocusNext();
  const nameless = answer.paper.name === undefined;
  const keep = () => {
    if (nameless) {
      say('Give it a name first, under “What you call it”.');
      document.getElementById('know-name')?.focus();
      return;
    }
    own.add(answer.text);
    say(`“${answer.paper.name}” is kept. Every calculator that asks for a paper now offers it.`);
  };
  return (
    <div class="no-print">
      <KeepRow thing="paper" disabled={problems.length > 0} onKeep={keep} said={said} kept={kept} />
      {papers.length > 0 && (
        <>
          <h3 id="kept-papers" tabIndex={-1}>
            Papers kept here
          </h3>
          <ul class="plain-list">
            {papers.map((text) => (
              <li key={text}>
                {readPaper(text)?.name}{' '}
                <button
                  type="button"
                  class="button-quiet"
                  onClick={() => {
                    own.remove(text);
                    focusNext('kept-papers', 'keep-paper');
                  }}
                >
                  Remove <span class="visually-hidden">{readPaper(text)?.name}</span>
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}
