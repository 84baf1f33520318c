/** The paper, its weight and what it goes on. */
import { useStore } from '@nanostores/preact';
import { figure } from '../../core/base/format';
import type { ChooseStore } from '../../stores/choose/choose';
import { named } from '../parts/Field';
import { PickOf, TextOf } from '../parts/PlanField';

export interface FieldsProps {
  readonly store: ChooseStore;
  readonly prefix: string;
}

export function PaperFields(props: FieldsProps) {
  const { $texts, catalogue } = props.store;
  const { family } = useStore($texts);
  const weight = catalogue.papers.get(family)?.grammage;
  return (
    <>
      <PickOf {...props} field="family" options={named(catalogue.papers)} />
      <TextOf
        {...props}
        field="grammage"
        placeholder={weight && `${figure(weight.low)} to ${figure(weight.high)}`}
        hint="Empty: what this kind of paper usually weighs."
      />
      <PickOf {...props} field="substrate" options={named(catalogue.substrates)} />
    </>
  );
}
