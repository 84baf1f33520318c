/** What another task changes in the form: apart, since a lesson keeps to the task that it is about. */
import { JOB_PAPER_FIELDS } from '../../core/choose/job';
import { usualOfTask } from '../../core/choose/task-words';
import type { Task } from '../../core/records/task';
import { taskIn, type ChooseStore, type JobTexts } from './choose';

/** What changes in the form with the task. What the reader has said of sheet, ground and size stays. */
function changedByTask(texts: JobTexts, task: Task): Partial<JobTexts> {
  const [before, now] = [usualOfTask(taskIn(texts)), usualOfTask(task)];
  const untouched = (field: keyof typeof now) => texts[field] === String(before[field]);
  const size = untouched('widthMm') && untouched('heightMm');
  const sheet = Object.keys(JOB_PAPER_FIELDS).every((field) =>
    field === 'family' ? untouched('family') : texts[field as keyof JobTexts] === '',
  );
  return {
    // links made before tasks were asked for have none, and mean to cover
    task: task === 'cover' ? '' : task,
    ...(size && { widthMm: String(now.widthMm), heightMm: String(now.heightMm) }),
    ...(sheet && { family: now.family }),
    ...(untouched('substrate') && { substrate: now.substrate }),
  };
}

/** Another task: what stands as it usually does for the last one now stands as it does for this one. */
export function changeTask({ $texts }: Pick<ChooseStore, '$texts'>, task: Task): void {
  const texts = $texts.get();
  $texts.set({ ...texts, ...changedByTask(texts, task) });
}
