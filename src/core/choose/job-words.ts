/** The job in one line, for those who only want to see that it is theirs. */
import { formatAmount, lowerFirst } from '../base/format';
import type { Catalogue } from '../records/records';
import type { Job } from './job';
import { taskOf } from './sampling';
import { TASK_WORDS } from './task-words';

/** "Lokta, light, 55 g/m², on binder's board (grey board), 210 × 150 mm"; other tasks than covering are named before it. */
export function jobInBrief(job: Job, catalogue: Catalogue): string {
  const task = taskOf(job);
  const sheet = catalogue.papers.get(job.paper.family)!.name;
  const weight = job.paper.grammage === undefined ? '' : `, ${formatAmount(job.paper.grammage)}\u00a0g/m²`;
  const ground = lowerFirst(catalogue.substrates.get(job.substrate)!.name);
  const size = `${job.widthMm}\u00a0×\u00a0${job.heightMm}\u00a0mm`;
  const doing = task === 'cover' ? '' : `${TASK_WORDS[task].doing}: `;
  return `${doing}${doing ? lowerFirst(sheet) : sheet}${weight}, on ${ground}, ${size}`;
}
