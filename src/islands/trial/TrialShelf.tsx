/** The trials on this device: open, delete, save all, read in. Nothing is overwritten without asking. */
import { useStore } from '@nanostores/preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { doneCount } from '../../core/trial/counts';
import type { Trial } from '../../core/trial/record';
import { openShelf, type TrialShelf as Shelf } from '../../stores/trial/shelf';
import type { Option } from '../parts/Field';
import { ReadIn } from './ReadIn';
import { StorageNotice } from './StorageNotice';
import { useFocusNext } from '../parts/use-focus-next';

interface Props {
  readonly planAt: string;
  readonly runAt: string;
  readonly readAt: string;
  readonly cardsAt: string;
  readonly tools: readonly Option[];
}

const files = () => import('../../stores/trial/files');

export default function TrialShelf(props: Props) {
  const shelf = useMemo(openShelf, []);
  const [awake, wake] = useState(false);
  useEffect(() => wake(true), []);
  const trials = useStore(shelf.$trials);
  const damaged = useStore(shelf.$damaged);
  if (!awake) {
    return (
      <p>
        Your trials show here once the page is awake. Until then, look at <a href={props.readAt}>an invented one</a>: 4
        papers, 2 adhesives, 32 swatches.
      </p>
    );
  }
  const saveAll = async () => {
    const { save, trialsJson } = await files();
    save('all-trials.json', 'application/json', trialsJson(trials));
  };
  return (
    <>
      <StorageNotice shelf={shelf} />
      <h2 id="own-trials-here" tabIndex={-1}>
        On this device
      </h2>
      {trials.length === 0 && <p>No trial yet. Plan one, or read one in below.</p>}
      <ul class="plain-list trial-list">
        {trials.map((trial) => (
          <TrialRow key={trial.id} trial={trial} shelf={shelf} {...props} />
        ))}
      </ul>
      <div class="button-row">
        <a class="button" href={props.planAt}>
          Plan a trial
        </a>
        {trials.length > 0 && (
          <button type="button" class="button-quiet" onClick={() => void saveAll()}>
            Save all to a file
          </button>
        )}
      </div>
      {trials.length > 0 && (
        <p class="field-hint">
          The file takes everything but photos; those go along in the page in a file, which each trial’s reading page
          makes.
        </p>
      )}
      <Keeping />
      {damaged.map(({ key, text }) => (
        <div class="problem-list" key={key}>
          <p>Something stored here as a trial cannot be read any more. It is left as it is until you say otherwise.</p>
          <div class="button-row">
            <button
              type="button"
              class="button-quiet"
              onClick={() => void files().then(({ save }) => save('damaged-trial.txt', 'text/plain', text))}
            >
              Save its text
            </button>
            <button type="button" class="button-quiet" onClick={() => shelf.removeDamaged(key)}>
              Delete it
            </button>
          </div>
        </div>
      ))}
      <ReadIn shelf={shelf} tools={props.tools} />
    </>
  );
}

function TrialRow({ trial, shelf, runAt, readAt, cardsAt }: Props & { readonly trial: Trial; readonly shelf: Shelf }) {
  const [asking, ask] = useState(false);
  const focusNext = useFocusNext();
  const { id, name, swatches, createdAt } = trial;
  const done = doneCount(trial);
  const remove = () => {
    shelf.remove(id);
    document.getElementById('own-trials-here')?.focus();
    void import('../../stores/trial/photos').then(({ removePhotosOf }) => removePhotosOf(id)).catch(() => undefined);
  };
  return (
    <li>
      <h3>{name}</h3>
      <p class="label">
        {done} of {swatches.length} swatches done{createdAt && `, planned ${createdAt.slice(0, 10)}`}
      </p>
      <p class="trial-links">
        <a href={`${runAt}?trial=${id}`}>{done < swatches.length ? 'Run it' : 'Look through it'}</a>
        <a href={`${readAt}?trial=${id}`}>Read it</a>
        <a href={`${cardsAt}?trial=${id}`}>Cards and labels</a>
        {!asking && (
          <button
            type="button"
            class="button-plain"
            id={`delete-${id}`}
            onClick={() => {
              ask(true);
              focusNext(`ask-${id}`);
            }}
          >
            Delete
          </button>
        )}
      </p>
      {asking && (
        <div class="problem-list" role="group" aria-label={`Delete ${name}`} id={`ask-${id}`} tabIndex={-1}>
          <p>
            Delete this trial and its photos from this device? It cannot be brought back, unless you have saved it to a
            file.
          </p>
          <div class="button-row">
            <button type="button" class="button" onClick={remove}>
              Delete it
            </button>
            <button
              type="button"
              class="button-quiet"
              onClick={() => {
                ask(false);
                focusNext(`delete-${id}`);
              }}
            >
              Keep it
            </button>
          </div>
        </div>
      )}
    </li>
  );
}

/** Browsers clear what they hold when room runs short, unless they were asked to keep it. */
function Keeping() {
  const [kept, setKept] = useState<boolean | undefined>(undefined);
  const [refused, refuse] = useState(false);
  useEffect(() => {
    void navigator.storage?.persisted?.().then(setKept, () => undefined);
  }, []);
  if (kept === undefined) return null;
  if (kept) return <p class="field-hint">This browser has agreed to keep your trials. A file is safer still.</p>;
  const request = async () => {
    const agreed = await navigator.storage.persist().catch(() => false);
    setKept(agreed);
    refuse(!agreed);
  };
  return (
    <p class="field-hint">
      {refused
        ? 'This browser did not agree. Save your trials to a file now and then. '
        : 'This browser may clear what it holds when room runs short. '}
      <button type="button" class="button-plain" onClick={() => void request()}>
        Ask it to keep them
      </button>
    </p>
  );
}
