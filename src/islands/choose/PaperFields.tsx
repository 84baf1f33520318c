/** The task, then the sheet, its weight and what it goes on. */
import { useStore } from '@nanostores/preact';
import { figure } from '../../core/base/format';
import { TASK_WORDS } from '../../core/choose/task-words';
import { TASKS, type Task } from '../../core/records/task';
import { taskIn, type ChooseStore } from '../../stores/choose/choose';
import { named, SelectField } from '../parts/Field';
import { PickOf, TextOf } from '../parts/PlanField';

export interface FieldsProps {
  readonly store: ChooseStore;
  readonly prefix: string;
}

const DOINGS = TASKS.map((task) => ({ value: task, text: TASK_WORDS[task].doing }));

export function TaskField({ store, prefix }: FieldsProps) {
  const task = taskIn(useStore(store.$texts));
  return (
    <SelectField
      id={`${prefix}task`}
      label={store.fields.task.label}
      value={task}
      options={DOINGS}
      onPick={(picked) => store.setTask(picked as Task)}
    />
  );
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
