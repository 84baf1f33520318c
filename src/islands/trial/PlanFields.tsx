/** The rest of a plan: board, holds, repeats, questions, sizes, room. */
import { useStore } from '@nanostores/preact';
import { STANDARD_QUESTIONS } from '../../core/trial/design';
import { FACE_WORDS } from '../../core/trial/method';
import { TRIAL_LIMITS } from '../../core/trial/record';
import type { TrialPlanStore } from '../../stores/trial/plan';
import { NumberField, SelectField, type Option } from '../parts/Field';
import { GrowingRows } from '../parts/GrowingRows';
import { changed, without } from '../parts/rows';
import { TextField } from '../parts/TextField';
import { useProblem } from './PlanLists';
import { ToolField } from './ToolField';

interface Props {
  readonly store: TrialPlanStore;
}

export function TrialBenchFields({
  store,
  substrates,
  tools,
}: Props & { readonly substrates: readonly Option[]; readonly tools: readonly Option[] }) {
  const text = useStore(store.$text);
  const error = useProblem(store);
  return (
    <section aria-label="At the bench">
      <h2>At the bench</h2>
      <SelectField
        id="plan-substrate"
        label="Glued to"
        value={text.substrate}
        options={[...substrates, { value: '', text: 'Something else' }]}
        onPick={(substrate) => store.set('substrate', substrate)}
      />
      <ToolField id="plan-tool" tools={tools} value={text.tool} onPick={(tool) => store.set('tool', tool)} />
      <div class="field-row">
        <TextField
          id="plan-holds"
          label="Lifted after"
          unit="s"
          hint="One time, or several with spaces: 20 60"
          most={60}
          value={text.holds}
          error={error('holds')}
          onText={(holds) => store.set('holds', holds)}
        />
        <NumberField
          id="plan-replicates"
          label="Swatches of each"
          hint="3 at the least; 5 or more to see anything but extremes."
          value={text.replicates}
          error={error('replicates')}
          onText={(replicates) => store.set('replicates', replicates)}
        />
      </div>
    </section>
  );
}

export function QuestionFields({ store }: Props) {
  const { questions, ownQuestions } = useStore(store.$text);
  const error = useProblem(store)('questions');
  const toggle = (id: string) =>
    store.set('questions', questions.includes(id) ? questions.filter((one) => one !== id) : [...questions, id]);
  const setOwn = (place: number, part: { text?: string; criterion?: string }) =>
    store.set('ownQuestions', changed(ownQuestions, place, part));
  return (
    <section aria-label="Questions">
      <h2>Questions</h2>
      <fieldset
        class="choice-set"
        id="plan-questions"
        tabIndex={-1}
        aria-invalid={error ? 'true' : undefined}
        aria-describedby={error ? 'plan-questions-error' : undefined}
      >
        <legend>Each is judged pass, partly or fail</legend>
        {STANDARD_QUESTIONS.map(({ id, text, criterion }) => (
          <label class="choice" key={id}>
            <input type="checkbox" checked={questions.includes(id)} onChange={() => toggle(id)} />
            <span>
              {text}
              <span class="cell-note">{criterion}</span>
            </span>
          </label>
        ))}
      </fieldset>
      {error && (
        <p class="field-error" id="plan-questions-error">
          {error}
        </p>
      )}
      <GrowingRows
        count={ownQuestions.length}
        least={0}
        most={TRIAL_LIMITS.questions - questions.length}
        id="plan-own-question-"
        name="Your question"
        takeWords="Remove your question"
        addWords="Add a question of your own"
        frame="plan-item"
        rest="plan-questions"
        full={`A trial asks at most ${TRIAL_LIMITS.questions} questions.`}
        onTake={(i) => store.set('ownQuestions', without(ownQuestions, i))}
        onAdd={() => store.set('ownQuestions', [...ownQuestions, { text: '', criterion: '' }])}
      >
        {(i, take) => (
          <>
            <TextField
              id={`plan-own-${i}`}
              label="What is judged"
              most={TRIAL_LIMITS.text}
              value={ownQuestions[i]!.text}
              onText={(text) => setOwn(i, { text })}
            />
            <TextField
              id={`plan-own-${i}-criterion`}
              label="What counts as a pass, partly, a fail"
              hint="Write it before the first swatch, so that you cannot bend it later."
              lines
              most={TRIAL_LIMITS.text}
              value={ownQuestions[i]!.criterion}
              onText={(criterion) => setOwn(i, { criterion })}
            />
            {take}
          </>
        )}
      </GrowingRows>
    </section>
  );
}

const FACES: readonly Option[] = Object.entries(FACE_WORDS).map(([value, text]) => ({ value, text }));

export function SizeFields({ store }: Props) {
  const text = useStore(store.$text);
  const error = useProblem(store);
  const field = (
    name: 'widthMm' | 'heightMm' | 'coat' | 'celsius' | 'humidity' | 'seed',
    label: string,
    unit?: string,
    placeholder?: string,
  ) => (
    <NumberField
      id={`plan-${name}`}
      label={label}
      unit={unit}
      placeholder={placeholder}
      value={text[name]}
      error={error(name)}
      onText={(typed) => store.set(name, typed)}
    />
  );
  return (
    <details>
      <summary>Swatch size, way of gluing, room, name</summary>
      <div class="field-row">
        {field('widthMm', 'Width, across the grain', 'mm')}
        {field('heightMm', 'Height, along the grain', 'mm')}
      </div>
      <SelectField
        id="plan-face"
        label="The glue goes"
        value={text.face}
        options={FACES}
        onPick={(face) => store.set('face', face)}
      />
      {field('coat', 'Wet coat', 'g/m²', 'if you weighed it')}
      <div class="field-row">
        {field('celsius', 'Room', '°C')}
        {field('humidity', 'Humidity', '% RH')}
      </div>
      <TextField
        id="plan-batch"
        label="Batches and makers"
        lines
        most={TRIAL_LIMITS.note}
        value={text.batch}
        onText={(batch) => store.set('batch', batch)}
      />
      <TextField
        id="plan-name"
        label="Name of the trial"
        hint="Leave blank to name it after its papers and adhesives."
        most={TRIAL_LIMITS.name}
        value={text.name}
        onText={(name) => store.set('name', name)}
      />
      <TextField
        id="plan-by"
        label="Your name"
        most={TRIAL_LIMITS.name}
        autocomplete="name"
        value={text.by}
        onText={(by) => store.set('by', by)}
      />
      {field('seed', 'Number of the draw', undefined, 'drawn for you')}
      <p class="field-hint">The same number and plan always give the same order, so that a class can share one.</p>
    </details>
  );
}
