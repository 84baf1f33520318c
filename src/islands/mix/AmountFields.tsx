/** How much, and what the scale can show. */
import type { MixField } from '../../core/mix/plan';
import type { MixStore } from '../../stores/mix/mix';
import { PickOf, TextOf } from '../parts/PlanField';

export interface MixFieldsProps {
  readonly store: MixStore;
  readonly prefix: string;
}

/** What a per cent counts. */
export const BASIS_OPTIONS = [
  { value: 'w/v', text: 'Grams in 100 ml of the finished liquid (w/v)' },
  { value: 'w/w', text: 'Grams in 100 g of the finished liquid (w/w)' },
];

export function AmountFields(props: MixFieldsProps) {
  return (
    <div class="field-row">
      <TextOf<MixField> {...props} field="need" />
      <TextOf<MixField> {...props} field="loss" />
      <ScaleField {...props} />
    </div>
  );
}

export function ScaleField(props: MixFieldsProps) {
  const options = ['1', '0.1', '0.01'].map((value) => ({ value, text: `${value} g` }));
  return <PickOf<MixField> {...props} field="scale" options={options} />;
}

/** Records as the choices of a field, in the order given. */
export function useNames({ store }: MixFieldsProps) {
  return (ids: readonly string[]) =>
    ids.map((id) => {
      const { ingredients, adhesives } = store.catalogue;
      return { value: id, text: adhesives.get(id)?.name ?? ingredients.get(id)?.name ?? id };
    });
}
