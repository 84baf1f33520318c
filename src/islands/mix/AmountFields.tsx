/** How much, and what the scale can show. */
import type { MixField } from '../../core/mix-plan';
import type { MixStore } from '../../stores/mixing';
import { PickOf, TextOf } from '../parts/PlanField';

export interface MixFieldsProps {
  readonly store: MixStore;
  readonly prefix: string;
}

export function AmountFields(props: MixFieldsProps) {
  return (
    <div class="field-row">
      <TextOf<MixField> {...props} field="need" label="For the work" unit="ml" />
      <TextOf<MixField> {...props} field="loss" label="Left in the pot" unit="%" />
      <ScaleField {...props} />
    </div>
  );
}

export function ScaleField(props: MixFieldsProps) {
  const options = ['1', '0.1', '0.01'].map((value) => ({ value, text: `${value} g` }));
  return <PickOf<MixField> {...props} field="scale" label="Scale steps of" options={options} />;
}
