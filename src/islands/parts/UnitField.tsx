/** In which unit a calculator's lengths are typed; another unit writes them anew. */
import { useStore } from '@nanostores/preact';
import type { LengthUnit } from '../../core/base/length-text';
import { SelectField } from './Field';
import type { FieldStore } from './PlanField';

const UNITS = ['mm', 'cm', 'in'].map((value) => ({ value, text: value }));

interface Props {
  readonly store: FieldStore<'unit'> & { readonly changeUnit: (unit: LengthUnit) => void };
  readonly prefix: string;
  readonly label?: string;
  readonly hint?: string;
}

export function UnitField({ store, prefix, label, hint }: Props) {
  const { unit } = useStore(store.$texts);
  return (
    <SelectField
      id={`${prefix}unit`}
      label={label ?? store.fields.unit.label!}
      value={unit}
      options={UNITS}
      hint={hint}
      onPick={(picked) => store.changeUnit(picked as LengthUnit)}
    />
  );
}
