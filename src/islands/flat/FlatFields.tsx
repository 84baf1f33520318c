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
const USUAL = 'leave empty';

export function SheetFields(props: FlatFieldsProps) {
  const { store, prefix } = props;
  const { unit } = useStore(store.$texts);
  return (
    <>
      <PaperPick<FlatField> {...props} field="paper" label="The cover paper is most like" />
      <div class="field-row">
        <TextOf<FlatField> {...props} field="paperWeight" label="Paper’s weight" unit="g/m²" placeholder={USUAL} />
        <PickOf<FlatField> {...props} field="paperGrain" label="Paper’s grain" options={GRAINS} />
      </div>
      <div class="field-row">
        <TextOf<FlatField> {...props} field="width" label="Board’s width" unit={unit} />
        <TextOf<FlatField> {...props} field="height" label="Board’s height" unit={unit} />
        <UnitField store={store} prefix={prefix} label="Both in" />
      </div>
      <PickOf<FlatField> {...props} field="board" label="The board" options={named(boardsOf(store.catalogue))} />
      <div class="field-row">
        <TextOf<FlatField> {...props} field="boardThick" label="Board’s thickness" unit={unit} placeholder={USUAL} />
        <PickOf<FlatField> {...props} field="boardGrain" label="Board’s grain" options={BOARD_GRAINS} />
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
      <PickOf<FlatField> {...props} field="adhesive" label="The adhesive" options={named(store.catalogue.adhesives)} />
      {wet && (
        <PickOf<FlatField> {...props} field="tool" label="Spread with" options={named(store.catalogue.techniques)} />
      )}
      <OneOfField<FlatField>
        {...props}
        field="lining"
        label="On the inside of the board"
        options={[
          { value: 'none', text: 'nothing' },
          { value: 'paper', text: 'a lining, glued with the same' },
        ]}
      />
      {lining === 'paper' && (
        <>
          <PaperPick<FlatField> {...props} field="liningPaper" label="The lining is most like" />
          <div class="field-row">
            <TextOf<FlatField>
              {...props}
              field="liningWeight"
              label="Lining’s weight"
              unit="g/m²"
              placeholder={USUAL}
            />
            <PickOf<FlatField> {...props} field="liningGrain" label="Lining’s grain" options={GRAINS} />
          </div>
        </>
      )}
    </>
  );
}

export function AirFields(props: FlatFieldsProps) {
  return (
    <>
      <TextOf<FlatField>
        {...props}
        field="press"
        label="Under weight for"
        unit="h"
        hint="Until the next day is 24; 0 if it dries free."
      />
      <div class="field-row">
        <TextOf<FlatField> {...props} field="celsius" label="Your room" unit="°C" />
        <TextOf<FlatField> {...props} field="humidity" label="Its humidity" unit="% RH" />
        <TextOf<FlatField> {...props} field="later" label="Where it will live" unit="% RH" />
      </div>
    </>
  );
}
