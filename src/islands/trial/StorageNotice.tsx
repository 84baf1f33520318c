/** Says when this device does not keep what is done here, and gives the way out: a file. */
import { useStore } from '@nanostores/preact';
import { fileNameOf } from '../../core/trial/text';
import type { TrialShelf, Trouble } from '../../stores/trial/shelf';

const WORDS: Readonly<Record<Trouble, string>> = {
  full: 'The storage of this browser is full. What you do now is held in this page only and is lost when it closes. Save it to a file, delete a trial or some photos, and go on.',
  refused:
    'This browser does not let the page keep anything, as in a private window. What you do now is lost when the page closes: save it to a file.',
};

export function StorageNotice({ shelf }: { readonly shelf: TrialShelf }) {
  const trouble = useStore(shelf.$trouble);
  const trials = useStore(shelf.$trials);
  // the build has no storage either, and its page would say so to everybody until it wakes
  if (!trouble || typeof window === 'undefined') return null;
  const saveAll = async () => {
    const { save, trialsJson } = await import('../../stores/trial/files');
    save(`${fileNameOf(trials[0]?.name ?? 'trials')}.json`, 'application/json', trialsJson(trials));
  };
  return (
    <div class="problem-list" role="alert">
      <p>
        <strong>{WORDS[trouble]}</strong>
      </p>
      {trials.length > 0 && (
        <div class="button-row">
          <button type="button" class="button" onClick={() => void saveAll()}>
            Save to a file now
          </button>
        </div>
      )}
    </div>
  );
}
