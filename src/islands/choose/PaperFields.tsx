/** The sheet, its weight and what it goes on. */
import { useStore } from '@nanostores/preact';
import { figure } from '../../core/base/format';
import { TASK_WORDS } from '../../core/choose/task-words';
import { taskIn, type ChooseStore } from '../../stores/choose/choose';
import { named } from '../parts/Field';
import { PickOf, TextOf } from '../parts/PlanField';

export interface FieldsProps {
  readonly store: ChooseStore;
  readonly prefix: string;
}

export function PaperFields(props: FieldsProps) {
  const { $texts, catalogue } = props.store;
  const texts = useStore($texts);
  const weight = catalogue.papers.get(texts.family)?.grammage;
  const words = TASK_WORDS[taskIn(texts)];
  return (
    <>
      <PickOf {...props} field="family" label={words.sheet} options={named(catalogue.papers)} />
      <TextOf
        {...props}
        field="grammage"
        placeholder={weight && `${figure(weight.low)} to ${figure(weight.high)}`}
        hint="Leave it blank to use the usual weight."
      />
      <PickOf {...props} field="substrate" label={words.ground} options={named(catalogue.substrates)} />
    </>
  );
}
