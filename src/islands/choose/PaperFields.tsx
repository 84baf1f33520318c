/** The sheet, its weight and what it goes on. */
import { useStore } from '@nanostores/preact';
import { figure } from '../../core/base/format';
import type { TaskWords } from '../../core/choose/task-words';
import type { ChooseStore } from '../../stores/choose/choose';
import { named } from '../parts/Field';
import { PickOf, TextOf } from '../parts/PlanField';

export interface FieldsProps {
  readonly store: ChooseStore;
  readonly prefix: string;
}

/** The questions after the sheet and after what it goes on, as its task puts them. */
export type AskedOfTask = Pick<TaskWords, 'sheet' | 'ground'>;

export function PaperFields({ asks, ...props }: FieldsProps & { readonly asks: AskedOfTask }) {
  const { $texts, catalogue } = props.store;
  const texts = useStore($texts);
  const weight = catalogue.papers.get(texts.family)?.grammage;
  return (
    <>
      <PickOf {...props} field="family" label={asks.sheet} options={named(catalogue.papers)} />
      <TextOf
        {...props}
        field="grammage"
        placeholder={weight && `${figure(weight.low)} to ${figure(weight.high)}`}
        hint="Leave it blank to use the usual weight."
      />
      <PickOf {...props} field="substrate" label={asks.ground} options={named(catalogue.substrates)} />
    </>
  );
}
