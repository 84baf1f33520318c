/**
 * Running a trial by the bench: one swatch at a time in the drawn order, a clock that starts when the sheet
 * is laid, big answers. Every tap is stored at once.
 */
import { useStore } from '@nanostores/preact';
import { useMemo } from 'preact/hooks';
import { doneCount, paperWithWeight } from '../../core/trial/counts';
import { madeInWords, methodOf } from '../../core/trial/method';
import { createRun } from '../../stores/trial/run';
import { localStorageOrNone } from '../../stores/shared/device-storage';
import { openShelf } from '../../stores/trial/shelf';
import type { Option } from '../parts/Field';
import { GlueName } from './GlueName';
import { NameDoubt } from './NameDoubt';
import { Questions } from './Questions';
import { RunClock } from './RunClock';
import { RunMore } from './RunMore';
import { StorageNotice } from './StorageNotice';
import { useTrialId } from './use-trial';

interface Props {
  readonly planAt: string;
  readonly readAt: string;
  readonly cardsAt: string;
  readonly adhesives: readonly Option[];
  readonly tools: readonly Option[];
}

export default function TrialRun(props: Props) {
  const id = useTrialId();
  const shelf = useMemo(openShelf, []);
  const trials = useStore(shelf.$trials);
  if (id === undefined) {
    return (
      <p>
        This page shows one swatch at a time, in the order that was drawn: its paper and its adhesive. A clock counts
        from laying to lifting (20 s, say), and each question has 3 large answers. Every tap is kept at once.
      </p>
    );
  }
  if (!trials.some((trial) => trial.id === id)) {
    return (
      <>
        <StorageNotice shelf={shelf} />
        <p>
          {id === ''
            ? trials.length > 0
              ? 'Choose a trial to run:'
              : 'This device holds no trial yet.'
            : 'This device holds no such trial. A trial lives on the device on which it was planned; to move it, save it to a file there and read the file in here.'}
        </p>
        <ul>
          {trials.map((trial) => (
            <li key={trial.id}>
              <a href={`?trial=${trial.id}`}>{trial.name}</a>
            </li>
          ))}
        </ul>
        <p>
          <a href={props.planAt}>Plan a trial</a>
        </p>
      </>
    );
  }
  return <Bench key={id} id={id} {...props} />;
}

function Bench({ id, readAt, cardsAt, adhesives, tools }: Props & { readonly id: string }) {
  const shelf = useMemo(openShelf, []);
  const run = useMemo(() => createRun(shelf, id, localStorageOrNone(), { now: Date.now }), []);
  const trial = useStore(run.$trial);
  const swatch = useStore(run.$swatch);
  const canUndo = useStore(run.$canUndo);
  const blind = useStore(run.$blind);
  if (!trial || !swatch) return <p>This trial was deleted in another tab.</p>;
  const done = doneCount(trial);
  const paper = trial.papers.find((one) => one.id === swatch.paper);
  const place = trial.swatches.indexOf(swatch);
  const beside = (step: number) => trial.swatches[place + step]?.number;
  return (
    <div class="run">
      <StorageNotice shelf={shelf} />
      {!blind && <NameDoubt trial={trial} adhesives={adhesives} shelf={shelf} />}
      <div class="run-head">
        <p class="run-place" id="run-place" tabIndex={-1} aria-live="polite">
          Swatch <span class="run-number">{swatch.number}</span> of {trial.swatches.length}
          <span class="cell-note">
            {trial.name}: {done} done{swatch.spoiled ? '. This one is set aside.' : ''}
          </span>
        </p>
        <progress max={trial.swatches.length} value={done} aria-label="Swatches done" />
      </div>
      <dl class="run-what">
        <div>
          <dt>Paper</dt>
          <dd>{paper ? paperWithWeight(paper) : swatch.paper}</dd>
        </div>
        <div>
          <dt>Adhesive</dt>
          <dd>
            {blind ? 'hidden' : <GlueName trial={trial} glue={swatch.glue} shelf={adhesives} />}
            <span class="cell-note">{madeInWords(methodOf(swatch, trial))}</span>
          </dd>
        </div>
        <div>
          <dt>Lift after</dt>
          <dd>{swatch.hold} s</dd>
        </div>
      </dl>
      <RunClock key={swatch.number} run={run} swatch={swatch} />
      <Questions run={run} trial={trial} swatch={swatch} />
      <div class="run-steps">
        <button
          type="button"
          class="button-quiet"
          aria-disabled={beside(-1) === undefined}
          onClick={() => run.show(beside(-1) ?? swatch.number)}
        >
          Before
        </button>
        <button type="button" class="button-quiet" aria-disabled={!canUndo} onClick={run.undo}>
          Undo
        </button>
        <button type="button" class="button" onClick={run.next}>
          {done === trial.swatches.length ? 'Next' : 'Next to do'}
        </button>
      </div>
      {done === trial.swatches.length && (
        <p class="run-done">
          Every swatch is judged. <a href={`${readAt}?trial=${id}`}>Read what it showed</a>
        </p>
      )}
      <RunMore
        key={`more ${swatch.number}`}
        run={run}
        trial={trial}
        swatch={swatch}
        readAt={readAt}
        cardsAt={cardsAt}
        tools={tools}
      />
    </div>
  );
}
