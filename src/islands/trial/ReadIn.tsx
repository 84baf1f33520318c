/** Reading trials in: from a file or pasted text, with a look at what is in it before anything is kept. */
import { useState } from 'preact/hooks';
import { TRIAL_LIMITS, type Trial } from '../../core/trial/record';
import { doneCount } from '../../core/trial/counts';
import type { FileReading as Read } from '../../stores/trial/files';
import type { TrialShelf } from '../../stores/trial/shelf';
import type { Option } from '../parts/Field';
import { Incoming } from './Incoming';

const files = () => import('../../stores/trial/files');

export function ReadIn({ shelf, tools }: { readonly shelf: TrialShelf; readonly tools: readonly Option[] }) {
  const [found, setFound] = useState<Read | undefined>(undefined);
  const [text, setText] = useState('');
  const [said, say] = useState('');

  const look = async (content: string, name: string) => {
    const { readIn } = await files();
    setFound(
      await readIn(content, {
        name,
        by: '',
        now: new Date().toISOString(),
        tools: new Map(tools.map(({ value, text: called }) => [value, called])),
      }),
    );
    say('');
  };
  const open = async (file: File | undefined) => {
    if (!file) return;
    // Larger files are refused before they are read: a phone would choke on them.
    if (file.size > 4 * TRIAL_LIMITS.file)
      return setFound({ trials: [], notes: ['The file is too large to be a trial.'] });
    await look(await file.text(), file.name.replace(/\.[a-z]+$/i, '') || 'Read from a file').catch(() =>
      setFound({ trials: [], notes: ['The file could not be read.'] }),
    );
  };
  const settle = (trial: Trial, words: string) => {
    setFound((now) => now && { ...now, trials: now.trials.filter((one) => one !== trial) });
    say(words);
  };
  return (
    <section aria-labelledby="read-in">
      <h2 id="read-in">Read in</h2>
      <p>
        A file saved here or by someone else (JSON), or a spreadsheet saved as CSV. The spreadsheet needs the columns{' '}
        <em>paper</em> and <em>adhesive</em>, and one column for each question that says pass, partly or fail.{' '}
        <em>Grammage</em>, <em>hold</em>, <em>spread with</em> (a tool such as roller), <em>repeat</em> and{' '}
        <em>note</em> are understood too.
      </p>
      <div class="field">
        <label class="field-label" for="read-file">
          File
        </label>
        <input
          id="read-file"
          type="file"
          accept=".json,.csv,.txt,.tsv,application/json,text/csv,text/plain"
          onChange={(event) => void open(event.currentTarget.files?.[0])}
        />
      </div>
      <details>
        <summary>Or paste it</summary>
        <div class="field">
          <label class="field-label" for="read-text">
            Rows or data
          </label>
          <textarea id="read-text" rows={5} value={text} onInput={(event) => setText(event.currentTarget.value)} />
        </div>
        <div class="button-row">
          <button type="button" class="button-quiet" onClick={() => void look(text, 'Pasted')}>
            Look at it
          </button>
        </div>
      </details>
      <div aria-live="polite">
        {said && <p>{said}</p>}
        {found && (
          <>
            {found.notes.length > 0 && (
              <div class="problem-list">
                <p>
                  <strong>{found.trials.length > 0 ? 'Read, but not all of it:' : 'Nothing could be read:'}</strong>
                </p>
                <ul>
                  {found.notes.map((note) => (
                    <li key={note}>{note}</li>
                  ))}
                </ul>
              </div>
            )}
            {found.trials.map((trial) => (
              <Incoming key={trial.id} trial={trial} shelf={shelf} onSettled={(words) => settle(trial, words)} />
            ))}
            {found.trials.length > 1 && (
              <p class="label">
                {found.trials.length} trials, {found.trials.reduce((sum, trial) => sum + doneCount(trial), 0)} swatches
                done. Each is kept or left on its own.
              </p>
            )}
          </>
        )}
      </div>
    </section>
  );
}
