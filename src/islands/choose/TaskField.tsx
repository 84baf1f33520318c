/** What is being done: it leads, in its maker's words; and what is asked after it, in the words of that task. */
import { useStore } from '@nanostores/preact';
import { TASK_WORDS } from '../../core/choose/task-words';
import { TASKS, type Task } from '../../core/records/task';
import { changeTask } from '../../stores/choose/change-task';
import { taskIn } from '../../stores/choose/choose';
import { SelectField } from '../parts/Field';
import { PaperFields, type FieldsProps } from './PaperFields';

const DOINGS = TASKS.map((task) => ({ value: task, text: TASK_WORDS[task].doing }));

export function TaskField({ store, prefix }: FieldsProps) {
  const task = taskIn(useStore(store.$texts));
  return (
    <SelectField
      id={`${prefix}task`}
      label={store.fields.task.label}
      value={task}
      options={DOINGS}
      onPick={(picked) => changeTask(store, picked as Task)}
    />
  );
}

/** The sheet, its weight and what it goes on. */
export function PaperOfTask(props: FieldsProps) {
  const texts = useStore(props.store.$texts);
  return <PaperFields {...props} asks={TASK_WORDS[taskIn(texts)]} />;
}
