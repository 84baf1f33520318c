/** Jobs that lessons open the chooser at. */
import { DEFAULT_JOB, type Job } from '../core/job';

export const presets: Readonly<Record<string, Job>> = {
  /** a light, soft sheet on board: the case where weight decides */
  'light-sheet': { ...DEFAULT_JOB, paper: { family: 'kozo-tissue', grammage: 18 } },
  /** an everyday cover on board: the case where the families stand side by side */
  'a-cover-on-board': DEFAULT_JOB,
};
