/** What a swatch may need besides: a note, a photo, setting aside, the room, who judges, the whole list. */
import { useStore } from '@nanostores/preact';
import { useState } from 'preact/hooks';
import { parseNumber } from '../../core/base/number-text';
import { USUAL_METHOD } from '../../core/trial/method';
import { isDone, nameIn, TRIAL_LIMITS, type Swatch, type Trial } from '../../core/trial/record';
import type { TrialRun } from '../../stores/trial/run';
import { NumberField, type Option } from '../parts/Field';
import { TextField } from '../parts/TextField';
import { Photo } from './Photo';
import { ToolField } from './ToolField';

interface Props {
  readonly run: TrialRun;
  readonly trial: Trial;
  readonly swatch: Swatch;
  readonly readAt: string;
  readonly cardsAt: string;
  readonly tools: readonly Option[];
}

export function RunMore({ run, trial, swatch, readAt, cardsAt, tools }: Props) {
  const who = useStore(run.$who);
  const blind = useStore(run.$blind);
  const [note, setNote] = useState(swatch.note ?? '');
  return (
    <>
      <details open={Boolean(swatch.note)}>
        <summary>Note, photo, set aside</summary>
        <TextField
          id="run-note"
          label="Note on this swatch"
          lines
          most={TRIAL_LIMITS.note}
          value={note}
          onText={(text) => {
            setNote(text);
            run.note(text);
          }}
        />
        <Photo trial={trial.id} number={swatch.number} />
        <div class="button-row">
          <button
            type="button"
            class="button-quiet"
            aria-pressed={swatch.spoiled === true}
            onClick={() => run.spoil(!swatch.spoiled)}
          >
            {swatch.spoiled ? 'Count it after all' : 'Set it aside: it counts nowhere'}
          </button>
        </div>
        <p class="field-hint">
          For a swatch that was dropped, smeared or mixed up. Never for one whose result you do not like.
        </p>
      </details>
      <details>
        <summary>Tool, room, batches, who judges</summary>
        <label class="choice">
          <input type="checkbox" checked={blind} onChange={(event) => run.setBlind(event.currentTarget.checked)} />
          <span>
            Judge blind: hide the adhesive
            <span class="cell-note">For when another has laid the swatches, or for judging a day later.</span>
          </span>
        </label>
        <ToolField
          id="run-tool"
          tools={tools}
          hint="Of the whole trial. A swatch that came in from another trial keeps its own."
          value={trial.method?.tool ?? USUAL_METHOD.tool}
          onPick={(tool) => run.setMethod({ ...trial.method, tool })}
        />
        <Room run={run} trial={trial} />
        <TextField
          id="run-who"
          label="Who judges"
          most={TRIAL_LIMITS.name}
          autocomplete="name"
          value={who}
          onText={run.setWho}
        />
      </details>
      <details>
        <summary>All swatches in their order</summary>
        <ol class="run-list">
          {trial.swatches.map((one) => (
            <li key={one.number} value={one.number}>
              <button
                type="button"
                class="button-quiet"
                aria-current={one.number === swatch.number ? 'true' : undefined}
                onClick={() => {
                  run.show(one.number);
                  // the list folds itself up for the next swatch
                  document.getElementById('run-place')?.focus();
                }}
              >
                {nameIn(trial.papers, one.paper)}, {blind ? 'adhesive hidden' : nameIn(trial.glues, one.glue)},{' '}
                {one.hold} s:{' '}
                <strong>
                  {one.spoiled
                    ? 'set aside'
                    : isDone(one, trial.questions)
                      ? 'done'
                      : Object.keys(one.outcomes).length > 0
                        ? 'begun'
                        : 'open'}
                </strong>
              </button>
            </li>
          ))}
        </ol>
      </details>
      <p>
        <a href={`${readAt}?trial=${trial.id}`}>Read what it shows so far</a> ·{' '}
        <a href={`${cardsAt}?trial=${trial.id}`}>Cards and labels to print</a>
      </p>
    </>
  );
}

/** Room and batches as text; a number that does not fit is not stored, and the field says why. */
function Room({ run, trial }: Pick<Props, 'run' | 'trial'>) {
  const { conditions } = trial;
  const [celsius, setCelsius] = useState(String(conditions.celsius ?? ''));
  const [humidity, setHumidity] = useState(String(conditions.humidity ?? ''));
  const [batch, setBatch] = useState(conditions.batch ?? '');
  const read = (text: string, { low, high, unit }: { low: number; high: number; unit: string }) => {
    const value = text.trim() === '' ? undefined : (parseNumber(text) ?? NaN);
    const sound = value === undefined || (value >= low && value <= high);
    return { value: sound ? value : undefined, error: sound ? undefined : `A number from ${low} to ${high} ${unit}.` };
  };
  const keep = (c: string, h: string, b: string) => {
    const [warm, damp] = [read(c, TRIAL_LIMITS.celsius).value, read(h, TRIAL_LIMITS.humidity).value];
    run.setConditions({
      ...(warm !== undefined && { celsius: warm }),
      ...(damp !== undefined && { humidity: damp }),
      ...(b && { batch: b }),
    });
  };
  return (
    <>
      <div class="field-row">
        <NumberField
          id="run-celsius"
          label="Room"
          unit="°C"
          value={celsius}
          error={read(celsius, TRIAL_LIMITS.celsius).error}
          onText={(text) => {
            setCelsius(text);
            keep(text, humidity, batch);
          }}
        />
        <NumberField
          id="run-humidity"
          label="Humidity"
          unit="% RH"
          value={humidity}
          error={read(humidity, TRIAL_LIMITS.humidity).error}
          onText={(text) => {
            setHumidity(text);
            keep(celsius, text, batch);
          }}
        />
      </div>
      <TextField
        id="run-batch"
        label="Batches and makers"
        lines
        most={TRIAL_LIMITS.note}
        value={batch}
        onText={(text) => {
          setBatch(text);
          keep(celsius, humidity, text);
        }}
      />
    </>
  );
}
