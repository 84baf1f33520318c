/** What is being done: it leads, in its maker's words. */
import { useStore } from '@nanostores/preact';
import { TASK_WORDS } from '../../core/choose/task-words';
import { TASKS, type Task } from '../../core/records/task';
import { taskIn } from '../../stores/choose/choose';
import { SelectField } from '../parts/Field';
import type { FieldsProps } from './PaperFields';

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
