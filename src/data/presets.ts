/** Jobs that lessons open the chooser at. */
import { DEFAULT_JOB, type Job, type Need } from '../core/choose/job';
import { usualOfTask } from '../core/choose/task-words';
import type { Task } from '../core/records/task';

/** A task with its usual sheet, ground and size. */
function usually(task: Task, needs: readonly Need[] = []): Job {
  const { family, ...ground } = usualOfTask(task);
  return { ...DEFAULT_JOB, task, paper: { family }, ...ground, needs };
}

export const presets: Readonly<Record<string, Job>> = {
  /** a light, soft sheet on board: the case where weight decides */
  'light-sheet': { ...DEFAULT_JOB, paper: { family: 'kozo-tissue', grammage: 18 } },
  /** a sheet that nobody knows, whose drop went in fast */
  'fast-drop': { ...DEFAULT_JOB, paper: { family: 'marbled', grammage: 90, dropSeconds: 4 } },
  /** a large side, which takes half a minute to lay: the case where time decides */
  'large-side': { ...DEFAULT_JOB, paper: { family: 'wove-text' }, widthMm: 320, heightMm: 440 },
  /** the first job of a beginner: a soft bark paper on a small box */
  'first-job': { ...DEFAULT_JOB, paper: { family: 'lokta-light' } },
  /** a cover that has to lie flat */
  'lie-flat': { ...DEFAULT_JOB, paper: { family: 'wove-text' }, widthMm: 210, heightMm: 300, needs: ['flat'] },
  /** a photograph's mount or a keepsake: it must come apart again */
  'come-apart': { ...DEFAULT_JOB, paper: { family: 'kozo-medium' }, needs: ['undo', 'long-lived'] },
  /** a class of children, without a hot plate */
  'a-class': { ...DEFAULT_JOB, paper: { family: 'marbled' }, needs: ['children', 'no-heat'] },
  /** an everyday cover on board: the case where the families stand side by side */
  'a-cover-on-board': DEFAULT_JOB,
  /** an endpaper onto the inside of its board */
  'an-endpaper': usually('paste-down'),
  /** the first lining of a sewn spine, which somebody may want off again */
  'a-spine': usually('line-spine'),
  /** a thin lining behind a weak sheet */
  'a-lining': usually('line-sheet', ['undo']),
  /** a tear in a leaf */
  'a-tear': usually('mend', ['undo']),
  /** a print that hangs by its hinges */
  'a-hinge': usually('hinge', ['undo', 'long-lived']),
};
