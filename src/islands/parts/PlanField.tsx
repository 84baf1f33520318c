/** Fields of a calculator whose plan is said in a table: its text, its message and its setter, by name. */
import { useStore } from '@nanostores/preact';
import type { ComponentChildren } from 'preact';
import type { InputError } from '../../core/base/result';
import type { ReadableAtom } from '../../stores/shared/plan';
import { NumberField, SelectField, type Option } from './Field';
import { OneOf } from './OneOf';

/** What these parts ask of a store; every plan store has it. */
export interface Fields<F extends string> {
  readonly $texts: ReadableAtom<Readonly<Record<F, string>>>;
  readonly $problems: ReadableAtom<readonly InputError[]>;
  readonly set: (field: F, text: string) => void;
}

interface Common<F extends string> {
  readonly store: Fields<F>;
  readonly prefix: string;
  readonly field: F;
  readonly label: string;
  readonly hint?: ComponentChildren;
}

function useBound<F extends string>({ store, prefix, field }: Pick<Common<F>, 'store' | 'prefix' | 'field'>) {
  const texts = useStore(store.$texts);
  const problems = useStore(store.$problems);
  const error = problems.find((problem) => problem.field === field)?.message;
  return { id: prefix + field, value: texts[field], error, set: (text: string) => store.set(field, text) };
}

export function TextOf<F extends string>(props: Common<F> & { readonly unit?: string; readonly placeholder?: string }) {
  const { set, ...bound } = useBound(props);
  const { label, hint, unit, placeholder } = props;
  return <NumberField {...bound} label={label} hint={hint} unit={unit} placeholder={placeholder} onText={set} />;
}

export function PickOf<F extends string>(props: Common<F> & { readonly options: readonly Option[] }) {
  const { set, ...bound } = useBound(props);
  const { label, hint, options } = props;
  return <SelectField {...bound} label={label} hint={hint} options={options} onPick={set} />;
}

export function OneOfField<F extends string>(props: Common<F> & { readonly options: readonly Option[] }) {
  const { set, id, value } = useBound(props);
  const { label, hint, options } = props;
  return <OneOf legend={label} name={id} hint={hint} options={options} chosen={value} onPick={set} />;
}
