/**
 * What a trial showed: a table of papers and adhesives, two adhesives side by side, pass chance against
 * weight, plain words; and ways to give it away. The build renders it with the invented trial.
 */
import { useStore } from '@nanostores/preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Trial } from '../../core/trial/record';
import { prepareReading } from '../../stores/trial/reading';
import { openShelf } from '../../stores/trial/shelf';
import type { Option } from '../parts/Field';
import { Findings } from './Findings';
import { NameDoubt } from './NameDoubt';
import { Publish } from './Publish';
import { useTrialId } from './use-trial';

interface Props {
  readonly demo: Trial;
  /** paths of the other trial pages */
  readonly runAt: string;
  readonly trialsAt: string;
  readonly readAt: string;
  readonly adhesives: readonly Option[];
}

/** A trial that came in the link itself. */
function useSentTrial(): { readonly trial?: Trial; readonly notes: readonly string[] } {
  const [sent, setSent] = useState<{ trial?: Trial; notes: readonly string[] }>({ notes: [] });
  useEffect(() => {
    const read = () => {
      const tail = window.location.hash.slice(1);
      if (!tail.startsWith('t1.')) return setSent({ notes: [] });
      void import('../../stores/trial/files')
        .then(({ fromLinkTail }) => fromLinkTail(tail))
        .then(({ trials: [trial], notes }) => setSent({ ...(trial && { trial }), notes }));
    };
    read();
    window.addEventListener('hashchange', read);
    return () => window.removeEventListener('hashchange', read);
  }, []);
  return sent;
}

export default function TrialRead({ demo, runAt, trialsAt, readAt, adhesives }: Props) {
  const id = useTrialId();
  const shelf = useMemo(openShelf, []);
  const trials = useStore(shelf.$trials);
  const sent = useSentTrial();
  const own = trials.find((trial) => trial.id === id);
  const trial = sent.trial ?? own ?? demo;
  const missing = !sent.trial && !own && id !== undefined && id !== '';
  const keep = async () => {
    if (!sent.trial) return;
    const { newId } = await import('../../stores/trial/files');
    // One of the same name may be here already: the newcomer gets an id of its own and replaces nothing.
    const fresh = shelf.read(sent.trial.id) ? { ...sent.trial, id: newId() } : sent.trial;
    if (shelf.put(fresh)) window.location.assign(`${readAt}?trial=${fresh.id}`);
  };
  return (
    <>
      {sent.notes.length > 0 && (
        <div class="problem-list" role="status">
          {sent.notes.map((note) => (
            <p key={note}>{note}</p>
          ))}
        </div>
      )}
      {missing && (
        <div class="problem-list" role="status">
          <p>
            This device holds no such trial; the invented one stands below. A trial lives where it was planned: save it
            to a file or a link there.
          </p>
        </div>
      )}
      {trials.length > 0 && (
        <nav aria-label="Trials on this device" class="no-print">
          <p class="label">
            On this device:{' '}
            {trials.map((one, i) => (
              <>
                {i > 0 && ' · '}
                <a href={`${readAt}?trial=${one.id}`} aria-current={one.id === trial.id ? 'page' : undefined}>
                  {one.name}
                </a>
              </>
            ))}
          </p>
        </nav>
      )}
      {sent.trial && (
        <p>
          This trial came in the link and is not kept yet.{' '}
          <button type="button" class="button-quiet" onClick={() => void keep()}>
            Keep it on this device
          </button>
        </p>
      )}
      {sent.trial ? (
        <NameDoubt trial={trial} adhesives={adhesives} />
      ) : (
        <NameDoubt trial={trial} adhesives={adhesives} shelf={shelf} />
      )}
      <Findings key={trial.id} trial={trial} />
      {own && !sent.trial && (
        <p class="no-print">
          <a href={`${runAt}?trial=${own.id}`}>Go on judging</a> · <a href={trialsAt}>All trials</a>
        </p>
      )}
      <Publish trial={trial} address={readAt} />
    </>
  );
}

TrialRead.prepare = ({ demo }: Props) => prepareReading(demo);
