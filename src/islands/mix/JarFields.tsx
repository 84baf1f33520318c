/** A jar whose strength is to change. */
import { lowerFirst } from '../../core/base/format';
import { useStore } from '@nanostores/preact';
import { JARS, type MixField } from '../../core/mix/plan';
import { PickOf, TextOf } from '../parts/PlanField';
import { AmountFields, BASIS_OPTIONS, ScaleField, type MixFieldsProps } from './AmountFields';

export function JarFields(props: MixFieldsProps) {
  const { catalogue, $texts } = props.store;
  const correcting = useStore($texts).kind === 'correct';
  const jars = JARS.map((id) => ({
    value: id,
    text: lowerFirst(catalogue.ingredients.get(id)!.name.replace(/ (powder|granules)/, '')),
  }));
  return (
    <>
      <PickOf<MixField> {...props} field="jar" options={jars} />
      {correcting && <TextOf<MixField> {...props} field="have" />}
      <div class="field-row">
        <TextOf<MixField> {...props} field="stock" />
        <TextOf<MixField> {...props} field="target" />
      </div>
      <PickOf<MixField> {...props} field="basis" options={BASIS_OPTIONS} />
      {correcting ? <ScaleField {...props} /> : <AmountFields {...props} />}
    </>
  );
}
