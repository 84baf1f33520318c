/** The fields that only the chooser's own page has: more of the paper, the needs, the bench. */
import { useStore } from '@nanostores/preact';
import { NEED_WORDS } from '../../core/choose/tipping-words';
import { NEEDS } from '../../core/choose/job';
import { SIZINGS, SURFACES } from '../../core/paper/asked-paper';
import type { Sizing, Surface } from '../../core/records/records';
import { Choices } from '../parts/Choices';
import { named, NumberField, SelectField } from '../parts/Field';
import { useErrors, type FieldsProps } from './PaperFields';

const SURFACE_WORDS: Record<Surface, string> = {
  smooth: 'Smooth',
  textured: 'Textured or crumpled',
  embossed: 'Embossed',
};
const SIZING_WORDS: Record<Sizing, string> = {
  unsized: 'Unsized: drinks at once',
  'lightly-sized': 'Lightly sized',
  sized: 'Sized: for writing',
  'hard-sized': 'Hard-sized: water stands on it',
  coated: 'Coated',
};

/** What a test or a data sheet says of this sheet; empty fields are taken from its kind. */
export function MoreAboutPaper({ store, prefix }: FieldsProps) {
  const inputs = useStore(store.$inputs);
  const error = useErrors(store);
  const told = [inputs.caliper, inputs.dropSeconds, inputs.cobb, inputs.surface, inputs.sizing, inputs.coloursRun].some(
    Boolean,
  );
  const family = store.catalogue.papers.get(inputs.family);
  return (
    <details open={told}>
      <summary>More about this paper, if you know it</summary>
      <div class="field-row">
        <NumberField
          id={`${prefix}dropSeconds`}
          label="A drop sinks in after"
          unit="s"
          value={inputs.dropSeconds}
          hint="Drop water on the back and time it until the shine goes."
          error={error('dropSeconds')}
          onText={(text) => store.set('dropSeconds', text)}
        />
        <NumberField
          id={`${prefix}cobb`}
          label="or Cobb 60"
          unit="g/m²"
          value={inputs.cobb}
          hint="From a data sheet; it wins over the drop."
          error={error('cobb')}
          onText={(text) => store.set('cobb', text)}
        />
      </div>
      <NumberField
        id={`${prefix}caliper`}
        label="Thickness"
        unit="µm"
        value={inputs.caliper}
        hint="0.1 mm is 100 µm. Empty: from the family's density."
        error={error('caliper')}
        onText={(text) => store.set('caliper', text)}
      />
      <SelectField
        id={`${prefix}surface`}
        label="Its surface"
        value={inputs.surface}
        options={[
          { value: '', text: `As its kind: ${family ? SURFACE_WORDS[family.surface].toLowerCase() : ''}` },
          ...SURFACES.map((value) => ({ value, text: SURFACE_WORDS[value] })),
        ]}
        onPick={(value) => store.set('surface', value as '' | Surface)}
      />
      <SelectField
        id={`${prefix}sizing`}
        label="Its sizing or coating"
        value={inputs.sizing}
        options={[
          { value: '', text: `As its kind: ${family ? SIZING_WORDS[family.sizing].toLowerCase() : ''}` },
          ...SIZINGS.map((value) => ({ value, text: SIZING_WORDS[value] })),
        ]}
        onPick={(value) => store.set('sizing', value as '' | Sizing)}
      />
      <SelectField
        id={`${prefix}coloursRun`}
        label="Do its colours run when wet?"
        value={inputs.coloursRun}
        options={[
          { value: '', text: `As its kind: ${family?.coloursRun ?? ''}` },
          { value: 'yes', text: 'Yes, they run' },
          { value: 'no', text: 'No, they are fast' },
        ]}
        onPick={(value) => store.set('coloursRun', value as '' | 'yes' | 'no')}
      />
    </details>
  );
}

export function NeedFields({ store }: Pick<FieldsProps, 'store'>) {
  const { needs } = useStore(store.$inputs);
  return (
    <details open={needs.length > 0}>
      <summary>What the work must do{needs.length > 0 ? ` (${needs.length})` : ''}</summary>
      <Choices
        legend="It needs to be"
        name="needs"
        options={NEEDS.map((value) => ({ value, text: NEED_WORDS[value] }))}
        chosen={needs}
        onToggle={(value) => store.toggle('needs', value)}
      />
    </details>
  );
}

export function BenchFields({ store, prefix }: FieldsProps) {
  const inputs = useStore(store.$inputs);
  const suggested = useStore(store.$suggestedSeconds);
  const error = useErrors(store);
  const text = (
    field: 'widthMm' | 'heightMm' | 'placeSeconds' | 'celsius' | 'humidity',
    label: string,
    unit: string,
    placeholder?: string,
  ) => (
    <NumberField
      id={prefix + field}
      label={label}
      unit={unit}
      value={inputs[field]}
      placeholder={placeholder}
      error={error(field)}
      onText={(value) => store.set(field, value)}
    />
  );
  return (
    <>
      <details>
        <summary>The piece, the room and the tool</summary>
        <div class="field-row">
          {text('widthMm', 'Width', 'mm')}
          {text('heightMm', 'Height', 'mm')}
        </div>
        {text('placeSeconds', 'Time you need to place it', 's', `${suggested}, from its size`)}
        <div class="field-row">
          {text('celsius', 'Room', '°C')}
          {text('humidity', 'Humidity', '% RH')}
        </div>
        <SelectField
          id={`${prefix}tool`}
          label="Your tool"
          value={inputs.tool}
          options={named(store.catalogue.techniques)}
          error={error('tool')}
          onPick={(id) => store.set('tool', id)}
        />
      </details>
      <details open={inputs.atHand.length > 0}>
        <summary>Only what is at hand{inputs.atHand.length > 0 ? ` (${inputs.atHand.length})` : ''}</summary>
        <Choices
          legend="Adhesives you have"
          name="atHand"
          hint="Tick none to rank them all."
          options={named(store.catalogue.adhesives)}
          chosen={inputs.atHand}
          onToggle={(value) => store.toggle('atHand', value)}
        />
      </details>
    </>
  );
}
