/** The fields that only the chooser's own page has: more of the paper, the needs, the bench. */
import { useStore } from '@nanostores/preact';
import { NEED_WORDS } from '../../core/choose/tipping-words';
import { JOB_FIELDS, JOB_PAPER_FIELDS, NEEDS } from '../../core/choose/job';
import { SIZINGS, SURFACES } from '../../core/paper/asked-paper';
import type { Sizing, Surface } from '../../core/records/records';
import { Choices } from '../parts/Choices';
import { named } from '../parts/Field';
import { PickOf, TextOf } from '../parts/PlanField';
import type { FieldsProps } from './PaperFields';

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

/** Of what is asked of the sheet, what stands here: all but its kind and its weight. */
const FOLDED = (Object.keys(JOB_PAPER_FIELDS) as (keyof typeof JOB_PAPER_FIELDS)[]).filter(
  (field) => field !== 'family' && field !== 'grammage',
);

/** What a test or a data sheet says of this sheet; empty fields are taken from its kind. */
export function MoreAboutPaper(props: FieldsProps) {
  const { $texts, catalogue } = props.store;
  const texts = useStore($texts);
  const family = catalogue.papers.get(texts.family);
  return (
    <details open={FOLDED.some((field) => texts[field] !== '')}>
      <summary>More about this paper, if you know it</summary>
      <div class="field-row">
        <TextOf {...props} field="dropSeconds" hint="Drop water on the back and time it until the shine goes." />
        <TextOf {...props} field="cobb" hint="From a data sheet; it wins over the drop." />
      </div>
      <TextOf {...props} field="caliper" hint="0.1 mm is 100 µm. Empty: from the family's density." />
      <PickOf
        {...props}
        field="surface"
        options={[
          { value: '', text: `As its kind: ${family ? SURFACE_WORDS[family.surface].toLowerCase() : ''}` },
          ...SURFACES.map((value) => ({ value, text: SURFACE_WORDS[value] })),
        ]}
      />
      <PickOf
        {...props}
        field="sizing"
        options={[
          { value: '', text: `As its kind: ${family ? SIZING_WORDS[family.sizing].toLowerCase() : ''}` },
          ...SIZINGS.map((value) => ({ value, text: SIZING_WORDS[value] })),
        ]}
      />
      <PickOf
        {...props}
        field="coloursRun"
        options={[
          { value: '', text: `As its kind: ${family?.coloursRun ?? ''}` },
          { value: 'yes', text: 'Yes, they run' },
          { value: 'no', text: 'No, they are fast' },
        ]}
      />
    </details>
  );
}

export function NeedFields({ store }: Pick<FieldsProps, 'store'>) {
  const { needs } = useStore(store.$texts);
  return (
    <details open={needs.length > 0}>
      <summary>What the work must do{needs.length > 0 ? ` (${needs.length})` : ''}</summary>
      <Choices
        legend={JOB_FIELDS.needs.label}
        name="needs"
        options={NEEDS.map((value) => ({ value, text: NEED_WORDS[value] }))}
        chosen={needs}
        onToggle={(value) => store.toggle('needs', value)}
      />
    </details>
  );
}

export function BenchFields(props: FieldsProps) {
  const { store } = props;
  const { atHand } = useStore(store.$texts);
  const suggested = useStore(store.$suggestedSeconds);
  return (
    <>
      <details>
        <summary>The piece, the room and the tool</summary>
        <div class="field-row">
          <TextOf {...props} field="widthMm" />
          <TextOf {...props} field="heightMm" />
        </div>
        <TextOf {...props} field="placeSeconds" placeholder={`${suggested}, from its size`} />
        <div class="field-row">
          <TextOf {...props} field="celsius" />
          <TextOf {...props} field="humidity" unit="% RH" />
        </div>
        <PickOf {...props} field="tool" options={named(store.catalogue.techniques)} />
      </details>
      <details open={atHand.length > 0}>
        <summary>Only what is at hand{atHand.length > 0 ? ` (${atHand.length})` : ''}</summary>
        <Choices
          legend={JOB_FIELDS.atHand.label}
          name="atHand"
          hint="Tick none to rank them all."
          options={named(store.catalogue.adhesives)}
          chosen={atHand}
          onToggle={(value) => store.toggle('atHand', value)}
        />
      </details>
    </>
  );
}
