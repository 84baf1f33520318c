/** Fields of a calculator's table: label, unit, text, message and setter, by name. */
import { useStore } from '@nanostores/preact';
import type { ComponentChildren } from 'preact';
import type { InputError } from '../../core/base/result';
import type { Field } from '../../core/link/fields';
import type { ReadableAtom } from '../../stores/shared/plan';
import { NumberField, SelectField, type Option } from './Field';
import { OneOf } from './OneOf';

/** What these parts ask of a store; every store with a table of fields has it. */
export interface FieldStore<F extends string> {
  readonly fields: Readonly<Record<F, Field>>;
  readonly $texts: ReadableAtom<Readonly<Record<F, string>>>;
  readonly $problems: ReadableAtom<readonly InputError[]>;
  readonly set: (field: F, text: string) => void;
}

interface Common<F extends string> {
  readonly store: FieldStore<F>;
  readonly prefix: string;
  readonly field: F;
  /** where the form words it otherwise than the table */
  readonly label?: string | undefined;
  readonly hint?: ComponentChildren;
}

function useBound<F extends string>({ store, prefix, field, label, hint }: Common<F>) {
  const texts: Readonly<Record<string, string>> = useStore(store.$texts);
  const problems = useStore(store.$problems);
  const row = store.fields[field];
  const error = problems.find((problem) => problem.field === field)?.message;
  return {
    id: prefix + field,
    label: label ?? row.label ?? row.what,
    // lengths are typed in the plan's unit
    unit: row.kind === 'length' ? texts['unit'] : row.kind === 'number' ? row.unit : undefined,
    hint,
    error,
    value: texts[field]!,
    set: (text: string) => store.set(field, text),
  };
}

export function TextOf<F extends string>({
  placeholder,
  unit: otherUnit,
  ...props
}: Common<F> & { readonly unit?: string | undefined; readonly placeholder?: string | undefined }) {
  const { set, unit, ...bound } = useBound(props);
  return <NumberField {...bound} unit={otherUnit ?? unit} placeholder={placeholder} onText={set} />;
}

export function PickOf<F extends string>({ options, ...props }: Common<F> & { readonly options: readonly Option[] }) {
  const { set, ...bound } = useBound(props);
  return <SelectField {...bound} options={options} onPick={set} />;
}

export function OneOfField<F extends string>({
  options,
  ...props
}: Common<F> & { readonly options: readonly Option[] }) {
  const { set, id, value, label, hint } = useBound(props);
  return <OneOf legend={label} name={id} hint={hint} options={options} chosen={value} onPick={set} />;
}
