/** What the coverage calculator asks: the thing or its pieces, the adhesive and its coat, and for how many. */
import { useStore } from '@nanostores/preact';
import type { CoverField } from '../../core/cover/plan';
import { PRESETS } from '../../core/cover/pieces';
import type { CoverStore } from '../../stores/cover/cover';
import { named } from '../parts/Field';
import { PaperPick } from '../parts/PaperPick';
import { PickOf, TextOf } from '../parts/PlanField';
import { UnitField } from '../parts/UnitField';
import { PieceRows } from './PieceRows';

export interface CoverFieldsProps {
  readonly store: CoverStore;
  readonly prefix: string;
}

const THING_OPTIONS = [
  ...Object.entries(PRESETS).map(([value, { name }]) => ({ value, text: name })),
  { value: 'own', text: 'My own pieces' },
];
export function ThingFields(props: CoverFieldsProps) {
  const { store, prefix } = props;
  const { thing } = useStore(store.$texts);
  const deep = thing !== 'lining' && thing !== 'accordion';
  return (
    <>
      <PickOf<CoverField> {...props} field="thing" options={THING_OPTIONS} />
      <UnitField store={store} prefix={prefix} hint="You may also type the unit: 9 1/4 in, 23,5 cm." />
      {thing === 'own' ? (
        <PieceRows {...props} />
      ) : (
        <div class="field-row">
          <TextOf<CoverField> {...props} field="width" label={thing === 'lining' ? 'Width' : 'Its width'} />
          <TextOf<CoverField> {...props} field="height" label={thing === 'lining' ? 'Height' : 'Its height'} />
          {deep && <TextOf<CoverField> {...props} field="thickness" />}
          <TextOf<CoverField> {...props} field="turnIn" />
        </div>
      )}
    </>
  );
}

export function CoatFields(props: CoverFieldsProps) {
  const { store } = props;
  const { coatFrom } = useStore(store.$texts);
  const wet = named(new Map([...store.catalogue.adhesives].filter(([, { form }]) => form === 'wet')));
  return (
    <>
      <PickOf<CoverField> {...props} field="adhesive" options={wet} />
      <PickOf<CoverField>
        {...props}
        field="coatFrom"
        options={[
          { value: 'tool', text: 'as this tool usually leaves it' },
          { value: 'weighed', text: 'weighed: a board before and after' },
        ]}
      />
      {coatFrom === 'tool' ? (
        <PickOf<CoverField> {...props} field="tool" options={named(store.catalogue.techniques)} />
      ) : (
        <div class="field-row">
          <TextOf<CoverField> {...props} field="before" />
          <TextOf<CoverField> {...props} field="after" />
          <TextOf<CoverField> {...props} field="trialArea" hint="A5 is 311 cm²." />
        </div>
      )}
      <div class="field-row">
        <PickOf<CoverField>
          {...props}
          field="faces"
          options={[
            { value: '1', text: 'one face' },
            { value: '2', text: 'both faces' },
          ]}
        />
        <TextOf<CoverField> {...props} field="passes" />
        <TextOf<CoverField> {...props} field="loss" />
      </div>
      <PaperPick<CoverField> {...props} field="paper" />
    </>
  );
}
