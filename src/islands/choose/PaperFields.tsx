/** The paper, its weight and what it goes on. */
import { useStore } from '@nanostores/preact';
import { figure } from '../../core/base/format';
import type { ChooseStore } from '../../stores/choose/choose';
import { named, NumberField, SelectField } from '../parts/Field';

export interface FieldsProps {
  readonly store: ChooseStore;
  readonly prefix: string;
}

/** A field's message, when something is wrong with it. */
export function useErrors(store: ChooseStore): (field: string) => string | undefined {
  const problems = useStore(store.$problems);
  return (field) => problems.find((problem) => problem.field === field)?.message;
}

export function PaperFields({ store, prefix }: FieldsProps) {
  const inputs = useStore(store.$inputs);
  const error = useErrors(store);
  const family = store.catalogue.papers.get(inputs.family);
  const weight = family?.grammage;
  return (
    <>
      <SelectField
        id={`${prefix}family`}
        label="Your paper is most like"
        value={inputs.family}
        options={named(store.catalogue.papers)}
        error={error('family')}
        onPick={(id) => store.set('family', id)}
      />
      <NumberField
        id={`${prefix}grammage`}
        label="Its weight"
        unit="g/m²"
        value={inputs.grammage}
        placeholder={weight && `${figure(weight.low)} to ${figure(weight.high)}`}
        hint="Empty: what this kind of paper usually weighs."
        error={error('grammage')}
        onText={(text) => store.set('grammage', text)}
      />
      <SelectField
        id={`${prefix}substrate`}
        label="It goes on"
        value={inputs.substrate}
        options={named(store.catalogue.substrates)}
        error={error('substrate')}
        onPick={(id) => store.set('substrate', id)}
      />
    </>
  );
}
