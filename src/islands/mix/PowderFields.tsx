/** A powder to dissolve. */
import { useStore } from '@nanostores/preact';
import { POWDERS } from '../../core/mix/jars';
import type { MixField } from '../../core/mix/plan';
import { PickOf, TextOf } from '../parts/PlanField';
import { AmountFields, BASIS_OPTIONS, useNames, type MixFieldsProps } from './AmountFields';

export function PowderFields(props: MixFieldsProps) {
  const names = useNames(props);
  const gelatine = useStore(props.store.$texts).powder === 'gelatine';
  return (
    <>
      <PickOf<MixField> {...props} field="powder" options={names(POWDERS)} />
      <div class="field-row">
        <TextOf<MixField> {...props} field="percent" />
        {!gelatine && <TextOf<MixField> {...props} field="grade" hint="The label: viscosity at 2 %." />}
      </div>
      <PickOf<MixField> {...props} field="basis" options={BASIS_OPTIONS} />
      <AmountFields {...props} />
    </>
  );
}
