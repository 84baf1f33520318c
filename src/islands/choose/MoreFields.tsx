/** The fields that only the chooser's own page has: more of the paper, the needs, the bench. */
import { useStore } from '@nanostores/preact';
import { NEED_WORDS } from '../../core/choose/tipping-words';
import { JOB_FIELDS, JOB_PAPER_FIELDS, NEEDS, type Need } from '../../core/choose/job';
import { TASK_WORDS } from '../../core/choose/task-words';
import { SIZINGS, SURFACES } from '../../core/paper/asked-paper';
import type { Sizing, Surface } from '../../core/records/records';
import { taskIn } from '../../stores/choose/choose';
import { Choices } from '../parts/Choices';
import { named } from '../parts/Field';
import { PickOf, TextOf } from '../parts/PlanField';
import { TimeADrop } from '../parts/TimeADrop';
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
        <TextOf {...props} field="cobb" hint="From a data sheet. It is used in place of the drop." />
      </div>
      <TimeADrop onTimed={(seconds) => props.store.set('dropSeconds', seconds)} />
      <TextOf {...props} field="caliper" hint="0.1 mm is 100 µm. Leave blank to use the usual thickness." />
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

/** What this task turns on; whatever is ticked already stays in view. */
export function NeedFields({ store }: Pick<FieldsProps, 'store'>) {
  const texts = useStore(store.$texts);
  const { needs } = texts;
  const asked = TASK_WORDS[taskIn(texts)].needs;
  const shown = [...asked, ...NEEDS.filter((need) => needs.includes(need) && !asked.includes(need))];
  const others = NEEDS.filter((need) => !shown.includes(need));
  const option = (value: Need) => ({ value, text: NEED_WORDS[value] });
  const choices = { name: 'needs', chosen: needs, onToggle: (value: string) => store.toggle('needs', value) };
  return (
    <details open={needs.length > 0}>
      <summary>What the work must do{needs.length > 0 ? ` (${needs.length})` : ''}</summary>
      <Choices {...choices} legend={JOB_FIELDS.needs.label} options={shown.map(option)} />
      {others.length > 0 && (
        <details>
          <summary>Asked less often for this</summary>
          <Choices {...choices} legend="Less often" options={others.map(option)} />
        </details>
      )}
    </details>
  );
}

export function RoomAndBoardFields(props: FieldsProps) {
  const { store } = props;
  const texts = useStore(store.$texts);
  const suggested = useStore(store.$suggestedSeconds);
  const { sides, asksLined, asksPlacing } = TASK_WORDS[taskIn(texts)];
  return (
    <>
      <details>
        <summary>The piece, the room and the tool</summary>
        <div class="field-row">
          <TextOf {...props} field="widthMm" label={sides[0]} />
          <TextOf {...props} field="heightMm" label={sides[1]} />
        </div>
        {(asksPlacing || texts.placeSeconds !== '') && (
          <TextOf {...props} field="placeSeconds" placeholder={`${suggested}, from its size`} />
        )}
        {(asksLined || texts.lined !== '') && (
          <PickOf
            {...props}
            field="lined"
            options={[
              { value: '', text: 'As is usual' },
              { value: 'yes', text: 'Yes, it is lined too' },
              { value: 'no', text: 'No, one side only' },
            ]}
          />
        )}
        <div class="field-row">
          <TextOf {...props} field="celsius" />
          <TextOf {...props} field="humidity" unit="% RH" />
        </div>
        <PickOf {...props} field="tool" options={named(store.catalogue.techniques)} />
      </details>
      <AtHandFields store={store} />
    </>
  );
}

/** What a person has: ingredients first, since mixes follow from them; then things that come ready; then tools. */
function AtHandFields({ store }: Pick<FieldsProps, 'store'>) {
  const { atHand } = useStore(store.$texts);
  const { ingredients, adhesives, techniques } = store.catalogue;
  const choices = { name: 'atHand', chosen: atHand, onToggle: (value: string) => store.toggle('atHand', value) };
  const poured = named(ingredients).filter(({ value }) => value !== 'water');
  return (
    <details open={atHand.length > 0}>
      <summary>Limit to what I have{atHand.length > 0 ? ` (${atHand.length})` : ''}</summary>
      <Choices
        {...choices}
        legend="What I can mix from"
        hint="Tick your powders, pastes and glues, and the mixes you can make of them are compared too. Leave all unticked to compare everything."
        options={poured}
      />
      <details open={atHand.some((id) => adhesives.has(id))}>
        <summary>Adhesives, one by one</summary>
        <Choices {...choices} legend={JOB_FIELDS.atHand.label} options={named(adhesives)} />
      </details>
      <details open={atHand.some((id) => techniques.has(id))}>
        <summary>Tools I have</summary>
        <Choices {...choices} legend="Tools" options={named(techniques)} />
      </details>
    </details>
  );
}
