/** The model alone beside the model with one's own trials, what they rest on, and the switch. */
import { useStore } from '@nanostores/preact';
import type { ComponentChildren } from 'preact';
import { adhesiveName } from '../../core/choose/answer-words';
import { chanceInTen, figure } from '../../core/base/format';
import { rangeOf, type Updated } from '../../core/handover/trial-evidence';
import type { Thing } from '../../core/joint/bench';
import { percent } from '../../core/trial/words';
import type { ChoosePageStore } from '../../stores/choose/choose-page';
import { openEvidence, type EvidenceStore } from '../../stores/choose/evidence';
import { localStorageOrNone } from '../../stores/shared/device-storage';
import { openShelf } from '../../stores/trial/shelf';
import { THING_WORDS } from './Answer';
import { TaughtNote } from './Taught';

interface Props {
  readonly store: ChoosePageStore;
  readonly evidence: EvidenceStore;
}

interface PanelProps extends Props {
  /** path of the trial pages */
  readonly trialsAt: string;
}

/** `sent`: the evidence that a link brought, if it did. */
export function openPanel(store: ChoosePageStore, sent: string | undefined, trialsAt: string): ComponentChildren {
  const { taught } = store.$link.get();
  const evidence = openEvidence(store, openShelf().$trials, sent, localStorageOrNone(), taught);
  return <OwnTrialsPanel store={store} evidence={evidence} trialsAt={trialsAt} />;
}

function OwnTrialsPanel({ store, evidence, trialsAt }: PanelProps) {
  const speaks = useStore(evidence.$speaks);
  const on = useStore(evidence.$isOn);
  const source = useStore(evidence.$source);
  const learned = useStore(evidence.learning.$learned);
  const taught = useStore(evidence.learning.$taught);
  const onlyOthers = taught !== undefined && taught.others === taught.swatches;
  if (!speaks && !learned) {
    return (
      <p class="field-hint no-print">
        None of your <a href={trialsAt}>swatch trials</a> has a say in this answer yet.
      </p>
    );
  }
  return (
    <section class="own-trials" aria-labelledby="own-trials">
      <h2 id="own-trials">
        {source === 'sent'
          ? 'With the trials of whoever sent this'
          : onlyOthers
            ? 'With trials of others'
            : 'With your own trials'}
      </h2>
      <label class="choice no-print">
        <input type="checkbox" checked={on} onChange={(event) => evidence.turn(event.currentTarget.checked)} />
        <span>{on ? 'The answer above counts them' : 'The answer above is the model alone'}</span>
      </label>
      {source === 'own' && <TaughtNote store={store} evidence={evidence} />}
      {speaks && <OwnTrialsTable store={store} evidence={evidence} />}
    </section>
  );
}

function OwnTrialsTable({ store, evidence }: Props) {
  const told = useStore(evidence.$told);
  const choices = useStore(store.$choices);
  const rows = choices.flatMap(({ adhesiveId }) => told.get(adhesiveId) ?? []).slice(0, 6);
  return (
    <section class="scroll-box" tabIndex={0} aria-label="Model and trials, a wide table">
      <table class="numbers">
        <caption>
          Swatches of this very kind of paper, counted. The model counts as four swatches (an estimate). A swatch counts
          less the farther its weight, absorbency and hold time are from this job’s; only the same adhesive on the same
          board counts, and the model has not learned from these.
        </caption>
        <thead>
          <tr>
            <th scope="col">Chance</th>
            <th scope="col">Before counting</th>
            <th scope="col">With them counted</th>
            <th scope="col">Rests on</th>
          </tr>
        </thead>
        {rows.map((row) => (
          <tbody key={row.adhesiveId}>
            <tr>
              <th scope="rowgroup" colSpan={4}>
                {adhesiveName(row.adhesiveId, store.catalogue)}
              </th>
            </tr>
            {THING_WORDS.map(([thing, label]) => {
              const updated = (row.things as Partial<Record<Thing, Updated>>)[thing];
              if (!updated) return null;
              const { low, high } = rangeOf(updated);
              return (
                <tr key={thing}>
                  <th scope="row">{label}</th>
                  <td>{chanceInTen(updated.modelAlone)}</td>
                  <td>
                    {chanceInTen(updated.withTrials)}
                    <span class="cell-note">
                      {percent(low)} to {percent(high)}
                    </span>
                  </td>
                  <td>
                    {updated.swatches} {updated.swatches === 1 ? 'swatch' : 'swatches'}
                    <span class="cell-note">counting as {figure(updated.weight)}</span>
                  </td>
                </tr>
              );
            })}
            <tr>
              <th scope="row">All together</th>
              <td>{chanceInTen(row.modelChance)}</td>
              <td>{chanceInTen(row.chance)}</td>
              <td />
            </tr>
          </tbody>
        ))}
      </table>
    </section>
  );
}
