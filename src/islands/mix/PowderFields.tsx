/** A powder to dissolve. */
import { useStore } from '@nanostores/preact';
import { POWDERS, type MixField } from '../../core/mix/plan';
import { PickOf, TextOf } from '../parts/PlanField';
import { AmountFields, BASIS_OPTIONS, useNames, type MixFieldsProps } from './AmountFields';

export function PowderFields(props: MixFieldsProps) {
  const names = useNames(props);
  const gelatine = useStore(props.store.$texts).powder === 'gelatine';
  return (
    <>
      <PickOf<MixField> {...props} field="powder" label="The powder" options={names(POWDERS)} />
      <div class="field-row">
        <TextOf<MixField> {...props} field="percent" label="Strength" unit="%" />
        {!gelatine && (
          <TextOf<MixField>
            {...props}
            field="grade"
            label="Grade, if another"
            unit="mPa·s"
            hint="The label: viscosity at 2 %."
          />
        )}
      </div>
      <PickOf<MixField> {...props} field="basis" label="Per cent means" options={BASIS_OPTIONS} />
      <AmountFields {...props} />
    </>
  );
}
