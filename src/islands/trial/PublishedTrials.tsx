/** Trials that others have published: a list to search, and a switch for each to count it as well. */
import { useStore } from '@nanostores/preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { countAlso, isCounted, leaveOut } from '../../stores/trial/published';
import { openShelf } from '../../stores/trial/shelf';
import { StorageNotice } from './StorageNotice';

export interface PublishedRow {
  readonly id: string;
  readonly name: string;
  /** the name that its contributor chose, '' for none */
  readonly by: string;
  readonly licence: string;
  /** invented: never counted */
  readonly demo: boolean;
  readonly swatches: number;
  readonly papers: readonly string[];
  readonly adhesives: readonly string[];
  /** address of the file */
  readonly file: string;
}

const has = (row: PublishedRow, word: string) =>
  [row.name, row.by, ...row.papers, ...row.adhesives].some((text) => text.toLowerCase().includes(word));

export default function PublishedTrials({ rows }: { readonly rows: readonly PublishedRow[] }) {
  const shelf = useMemo(openShelf, []);
  const trials = useStore(shelf.$trials);
  const [word, setWord] = useState('');
  const [failed, setFailed] = useState('');
  // the build has no storage, and must not say that a reader has none
  const [awake, setAwake] = useState(false);
  useEffect(() => setAwake(true), []);
  const found = rows.filter((row) => has(row, word.trim().toLowerCase()));
  const turn = async (row: PublishedRow, on: boolean) => {
    setFailed('');
    if (!on) return leaveOut(shelf, row.id);
    const message = await countAlso(shelf, row.id, row.file);
    if (message !== undefined) setFailed(message);
  };
  return (
    <div>
      {awake && <StorageNotice shelf={shelf} />}
      <div class="field no-print">
        <label class="field-label" for="published-word">
          Show only trials with this paper, adhesive or name
        </label>
        <input
          id="published-word"
          type="search"
          autocomplete="off"
          value={word}
          onInput={(event) => setWord(event.currentTarget.value)}
        />
      </div>
      <p aria-live="polite">
        {found.length} of {rows.length} {rows.length === 1 ? 'trial' : 'trials'}
      </p>
      {failed !== '' && <p class="field-error">{failed}</p>}
      <ul class="plain-list">
        {found.map((row) => (
          <li key={row.id}>
            <h2>{row.name}</h2>
            <p>
              {row.demo ? 'Invented, to show how this works. ' : ''}
              {row.by === '' ? 'Handed in without a name' : `Handed in by ${row.by}`}, {row.licence}. {row.swatches}{' '}
              swatches judged. Papers: {row.papers.join(', ')}. Adhesives: {row.adhesives.join(', ')}.{' '}
              <a href={row.file} download>
                Take the file
              </a>
            </p>
            {row.demo ? (
              <p class="field-hint">It is no evidence, so it cannot be counted.</p>
            ) : (
              <label class="choice no-print">
                <input
                  type="checkbox"
                  checked={isCounted(trials, row.id)}
                  onChange={(event) => void turn(row, event.currentTarget.checked)}
                />
                <span>Count these as well in my answers, as another person’s bench</span>
              </label>
            )}
          </li>
        ))}
      </ul>
    </div>
  );
}
