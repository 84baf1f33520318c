/** What the calculator of warp asks: the sheet, the board, the glue, the lining, the weight and the rooms. */
import { useStore } from '@nanostores/preact';
import { boardsOf } from '../../core/flat/making';
import type { FlatField } from '../../core/flat/plan';
import type { FlatStore } from '../../stores/flat/flat';
import { named } from '../parts/Field';
import { PaperPick } from '../parts/PaperPick';
import { OneOfField, PickOf, TextOf } from '../parts/PlanField';
import { UnitField } from '../parts/UnitField';

export interface FlatFieldsProps {
  readonly store: FlatStore;
  readonly prefix: string;
}

const BOARD_GRAINS = [
  { value: 'height', text: 'up the height' },
  { value: 'width', text: 'across the width' },
  { value: 'unknown', text: 'I do not know' },
];
const GRAINS = [...BOARD_GRAINS, { value: 'none', text: 'none: handmade, alike both ways' }];
const USUAL = 'leave blank';

export function SheetFields(props: FlatFieldsProps) {
  const { store, prefix } = props;
  return (
    <>
      <PaperPick<FlatField> {...props} field="paper" />
      <div class="field-row">
        <TextOf<FlatField> {...props} field="paperWeight" placeholder={USUAL} />
        <PickOf<FlatField> {...props} field="paperGrain" options={GRAINS} />
      </div>
      <div class="field-row">
        <TextOf<FlatField> {...props} field="width" />
        <TextOf<FlatField> {...props} field="height" />
        <UnitField store={store} prefix={prefix} label="Both in" />
      </div>
      <PickOf<FlatField> {...props} field="board" options={named(boardsOf(store.catalogue))} />
      <div class="field-row">
        <TextOf<FlatField> {...props} field="boardThick" placeholder={USUAL} />
        <PickOf<FlatField> {...props} field="boardGrain" options={BOARD_GRAINS} />
      </div>
    </>
  );
}

export function GlueFields(props: FlatFieldsProps) {
  const { store } = props;
  const { adhesive, lining } = useStore(store.$texts);
  const wet = store.catalogue.adhesives.get(adhesive)?.form !== 'dry';
  return (
    <>
      <PickOf<FlatField> {...props} field="adhesive" options={named(store.catalogue.adhesives)} />
      {wet && <PickOf<FlatField> {...props} field="tool" options={named(store.catalogue.techniques)} />}
      <OneOfField<FlatField>
        {...props}
        field="lining"
        options={[
          { value: 'none', text: 'nothing' },
          { value: 'paper', text: 'a lining, glued with the same' },
        ]}
      />
      {lining === 'paper' && (
        <>
          <PaperPick<FlatField> {...props} field="liningPaper" />
          <div class="field-row">
            <TextOf<FlatField> {...props} field="liningWeight" placeholder={USUAL} />
            <PickOf<FlatField> {...props} field="liningGrain" options={GRAINS} />
          </div>
        </>
      )}
    </>
  );
}

export function AirFields(props: FlatFieldsProps) {
  return (
    <>
      <TextOf<FlatField> {...props} field="press" hint="Until the next day is 24; 0 if it dries free." />
      <div class="field-row">
        <TextOf<FlatField> {...props} field="celsius" />
        <TextOf<FlatField> {...props} field="humidity" unit="% RH" />
        <TextOf<FlatField> {...props} field="later" unit="% RH" />
      </div>
    </>
  );
}
