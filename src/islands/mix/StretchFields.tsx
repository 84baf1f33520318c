/** PVA to make go further. */
import { useStore } from '@nanostores/preact';
import { BASES, EXTENDERS } from '../../core/mix/jars';
import type { MixField } from '../../core/mix/plan';
import { named } from '../parts/Field';
import { PaperPick } from '../parts/PaperPick';
import { PickOf, TextOf } from '../parts/PlanField';
import { AmountFields, ScaleField, useNames, type MixFieldsProps } from './AmountFields';

export function StretchFields(props: MixFieldsProps) {
  const names = useNames(props);
  const { aim, from } = useStore(props.store.$texts);
  return (
    <>
      <PickOf<MixField> {...props} field="base" options={names(BASES)} />
      <PickOf<MixField> {...props} field="extender" options={names(EXTENDERS)} />
      <PickOf<MixField>
        {...props}
        field="aim"
        options={[
          { value: 'parts', text: 'parts by volume' },
          { value: 'solids', text: 'solids of the mix' },
        ]}
      />
      {aim === 'parts' ? (
        <div class="field-row">
          <TextOf<MixField> {...props} field="baseParts" unit="" />
          <TextOf<MixField> {...props} field="extenderParts" unit="" />
        </div>
      ) : (
        <TextOf<MixField> {...props} field="solids" unit="% by mass" />
      )}
      <PickOf<MixField>
        {...props}
        field="from"
        options={[
          { value: 'need', text: 'the amount I need' },
          { value: 'have', text: 'the PVA I have left' },
        ]}
      />
      {from === 'have' ? (
        <div class="field-row">
          <TextOf<MixField> {...props} field="haveGrams" />
          <ScaleField {...props} />
        </div>
      ) : (
        <AmountFields {...props} />
      )}
      <PaperPick<MixField> {...props} field="paper" />
      <PickOf<MixField> {...props} field="tool" options={named(props.store.catalogue.techniques)} />
      <TextOf<MixField> {...props} field="celsius" />
    </>
  );
}
