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
      <PickOf<MixField> {...props} field="jar" label="In the jar" options={jars} />
      {correcting && <TextOf<MixField> {...props} field="have" label="I have" unit="ml" />}
      <div class="field-row">
        <TextOf<MixField> {...props} field="stock" label="It is" unit="%" />
        <TextOf<MixField> {...props} field="target" label="I want" unit="%" />
      </div>
      <PickOf<MixField> {...props} field="basis" label="Per cent means" options={BASIS_OPTIONS} />
      {correcting ? <ScaleField {...props} /> : <AmountFields {...props} />}
    </>
  );
}
