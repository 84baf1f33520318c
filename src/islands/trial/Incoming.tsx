/** One trial that was read in: what is in it, and where it should go. */
import { useStore } from '@nanostores/preact';
import { useState } from 'preact/hooks';
import { count, doneCount, paperWithWeight } from '../../core/trial/counts';
import { conflictName, mergeTrials, type Merged } from '../../core/trial/merge';
import { nameIn, outcomeOf, type Trial } from '../../core/trial/record';
import type { TrialShelf } from '../../stores/trial/shelf';
import { SelectField } from '../parts/Field';

interface Props {
  readonly trial: Trial;
  readonly shelf: TrialShelf;
  readonly onSettled: (words: string) => void;
}

const ROWS = 5;

export function Incoming({ trial, shelf, onSettled }: Props) {
  const trials = useStore(shelf.$trials);
  const twin = trials.find(({ id }) => id === trial.id);
  const [into, setInto] = useState(twin?.id ?? '');
  const [merged, setMerged] = useState<Merged | undefined>(undefined);
  const target = trials.find(({ id }) => id === into);

  const add = async () => {
    const { newId } = await import('../../stores/trial/files');
    shelf.put(twin ? { ...trial, id: newId(), name: `${trial.name} (read in)` } : trial);
    onSettled(`“${trial.name}” is on this device now.`);
  };
  const merge = (keep?: 'mine' | 'theirs') => {
    const now = target && (shelf.read(target.id) ?? target);
    if (!now) return;
    const result = mergeTrials(now, trial, keep);
    if (result.conflicts.length > 0 && keep === undefined) return setMerged(result);
    shelf.put(result.trial);
    const left = result.left > 0 ? ` ${result.left} did not fit.` : '';
    onSettled(`${result.added} swatches were added to “${now.name}”; ${result.same} were there already.${left}`);
  };
  return (
    <div class="incoming">
      <h3>{trial.name}</h3>
      <p>
        {count(trial.papers.length, 'paper')}, {count(trial.glues.length, 'adhesive')},{' '}
        {count(trial.questions.length, 'question')}, {count(trial.swatches.length, 'swatch', 'swatches')},{' '}
        {doneCount(trial)} done
        {trial.by && `, by ${trial.by}`}. Here are the first:
      </p>
      <section class="scroll-box" tabIndex={0} aria-label="First swatches, a wide table">
        <table class="numbers">
          <thead>
            <tr>
              <th scope="col">Swatch</th>
              <th scope="col">Paper</th>
              <th scope="col">Adhesive</th>
              <th scope="col">Hold, s</th>
              {trial.questions.map(({ id, text }) => (
                <th scope="col" key={id}>
                  {text}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {trial.swatches.slice(0, ROWS).map((swatch) => {
              const paper = trial.papers.find(({ id }) => id === swatch.paper);
              return (
                <tr key={swatch.number}>
                  <th scope="row">{swatch.number}</th>
                  <td>{paper && paperWithWeight(paper)}</td>
                  <td>{nameIn(trial.glues, swatch.glue)}</td>
                  <td>{swatch.hold}</td>
                  {trial.questions.map(({ id }) => (
                    <td key={id}>{outcomeOf(swatch, id) ?? '–'}</td>
                  ))}
                </tr>
              );
            })}
          </tbody>
        </table>
      </section>
      {twin && <p>This device holds a trial of the same origin. You can join the two, or keep this one beside it.</p>}
      {trials.length > 0 && (
        <SelectField
          id={`into-${trial.id}`}
          label="Where it goes"
          value={into}
          options={[
            { value: '', text: 'A trial of its own' },
            ...trials.map(({ id, name }) => ({ value: id, text: `Join it to: ${name}` })),
          ]}
          onPick={(id) => {
            setInto(id);
            setMerged(undefined);
          }}
        />
      )}
      {merged && (
        <div class="problem-list" role="alert">
          <p>
            <strong>
              {merged.conflicts.length === 1 ? 'One swatch was' : `${merged.conflicts.length} swatches were`} judged
              differently here and there. Whose judgement stays?
            </strong>
          </p>
          <ul>
            {merged.conflicts.slice(0, 8).map((conflict) => (
              <li key={conflict.number}>{conflictName(merged.trial, conflict)}</li>
            ))}
          </ul>
          <div class="button-row">
            <button type="button" class="button" onClick={() => merge('mine')}>
              Those on this device
            </button>
            <button type="button" class="button-quiet" onClick={() => merge('theirs')}>
              Those read in
            </button>
          </div>
        </div>
      )}
      <div class="button-row">
        <button type="button" class="button" onClick={() => (target ? merge() : void add())}>
          {target ? 'Join them' : 'Keep it'}
        </button>
        <button type="button" class="button-quiet" onClick={() => onSettled(`“${trial.name}” was left out.`)}>
          Leave it out
        </button>
      </div>
    </div>
  );
}
