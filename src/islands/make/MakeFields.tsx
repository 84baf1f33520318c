/** What the project calculator asks: what is made, its sizes, and how it is covered. */
import { useStore } from '@nanostores/preact';
import type { LengthUnit } from '../../core/base/length-text';
import type { MakeField } from '../../core/make/fields';
import { PROJECTS, type AskedOfSome } from '../../core/make/projects';
import { OneOfField, PickOf, TextOf, type FieldStore } from '../parts/PlanField';
import { UnitField } from '../parts/UnitField';

export interface MakeFieldsProps {
  /** any store whose fields hold a project */
  readonly store: FieldStore<MakeField> & { readonly changeUnit: (unit: LengthUnit) => void };
  readonly prefix: string;
}

const options = (pairs: readonly (readonly [value: string, text: string])[]) =>
  pairs.map(([value, text]) => ({ value, text }));
const PROJECT_OPTIONS = options(Object.entries(PROJECTS).map(([id, { title }]) => [id, title]));
export function MakeFields(props: MakeFieldsProps) {
  const { store, prefix } = props;
  const { project } = useStore(store.$texts);
  // A link or a list can only name a project that there is.
  const { of, asks } = PROJECTS[project as keyof typeof PROJECTS];
  const has = (field: AskedOfSome) => asks.includes(field);
  return (
    <>
      <OneOfField<MakeField> {...props} field="project" options={PROJECT_OPTIONS} />
      <UnitField store={store} prefix={prefix} hint="You may also type the unit: 9 1/4 in, 23,5 cm." />
      <div class="field-row">
        <TextOf<MakeField> {...props} field="width" hint={`Of ${of}.`} />
        <TextOf<MakeField> {...props} field="height" hint="Head to tail." />
      </div>
      {project === 'accordion' ? <AccordionFields {...props} /> : <ThicknessFields {...props} />}
      <div class="field-row">
        <TextOf<MakeField> {...props} field="board" />
        <PickOf<MakeField>
          {...props}
          field="stock"
          label={has('cover') ? 'Cover or sides of' : 'Covered with'}
          options={options([
            ['paper', 'paper'],
            ['cloth', 'cloth'],
          ])}
        />
      </div>
      <MoreFields {...props} />
    </>
  );
}

function ThicknessFields(props: MakeFieldsProps) {
  const { thicknessFrom } = useStore(props.store.$texts);
  return (
    <>
      <PickOf<MakeField>
        {...props}
        field="thicknessFrom"
        options={options([
          ['measured', 'measured, pressed lightly'],
          ['leaves', 'from the number of leaves'],
        ])}
      />
      <div class="field-row">
        {thicknessFrom === 'measured' ? (
          <TextOf<MakeField> {...props} field="thickness" />
        ) : (
          <>
            <TextOf<MakeField> {...props} field="leaves" hint="Two pages each." />
            <TextOf<MakeField> {...props} field="caliper" />
          </>
        )}
      </div>
    </>
  );
}

function AccordionFields(props: MakeFieldsProps) {
  return (
    <div class="field-row">
      <TextOf<MakeField> {...props} field="panels" hint="Folds between them; the first and last are pasted down." />
      <TextOf<MakeField>
        {...props}
        field="sheet"
        placeholder="as long as needed"
        hint="That your sheet gives. Strips are joined by tabs."
      />
    </div>
  );
}

function MoreFields(props: MakeFieldsProps) {
  const { project } = useStore(props.store.$texts);
  const pick = (field: AskedOfSome, pairs: readonly (readonly [string, string])[]) =>
    PROJECTS[project as keyof typeof PROJECTS].asks.includes(field) && (
      <PickOf<MakeField> {...props} field={field} options={options(pairs)} />
    );
  return (
    <div class="field-row">
      {pick('cover', [
        ['full', 'one piece'],
        ['quarter', 'spine cloth and two sides'],
      ])}
      {pick('back', [
        ['none', 'nothing on it'],
        ['lining', 'a lining'],
        ['hollow', 'a hollow'],
      ])}
      {pick('lined', [
        ['yes', 'yes'],
        ['no', 'no'],
      ])}
      {pick('ties', [
        ['0', 'none'],
        ['1', 'one pair'],
        ['3', 'three pairs'],
      ])}
    </div>
  );
}
