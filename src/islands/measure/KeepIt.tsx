/** Keeps the paper on this device. */
import { useStore } from '@nanostores/preact';
import { useEffect, useState } from 'preact/hooks';
import { readPaper } from '../../core/paper/own-paper';
import { localStorageOrNone } from '../../stores/shared/device-storage';
import type { MeasureStore } from '../../stores/measure/measure';
import { openOwnPapers, type OwnPapers } from '../../stores/shared/own-papers';
import { useFocusNext } from '../parts/use-focus-next';

export function KeepIt({ store }: { readonly store: MeasureStore }) {
  const [own, setOwn] = useState<OwnPapers | undefined>(undefined);
  useEffect(() => setOwn(openOwnPapers(localStorageOrNone())), []);
  return (
    <section aria-label="Keep it">
      <h2>Keep it</h2>
      <p>
        Until you close this tab every calculator knows this paper. To find it again another day, give it a name and
        keep it on this device.
      </p>
      {own && <Kept own={own} store={store} />}
    </section>
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
      <div class="button-row">
        <button type="button" id="keep-paper" class="button" disabled={problems.length > 0} onClick={keep}>
          Keep this paper on this device
        </button>
      </div>
      <p class="field-hint" aria-live="polite">
        {said}
      </p>
      {!kept && (
        <p class="field-hint">
          This browser does not let the page keep anything. The link below holds the paper all the same.
        </p>
      )}
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
