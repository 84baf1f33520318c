/** A method in a few words, for those who compare ways of doing the same thing. */
import { lowerFirst, span } from '../base/format';
import type { Catalogue } from '../records/records';
import type { Job } from './job';
import type { Method } from './method';
import { gluedFace } from './placement';
import { taskOf } from './sampling';

/** "the board, not the paper, with a full brush, 50 to 90 g/m² wet; laid after 3 min". Common practice. */
export function methodInWords(method: Method, job: Job, catalogue: Catalogue): string {
  const face = gluedFace(method, taskOf(job), catalogue.substrates.get(job.substrate)!);
  // a film or a tissue is put on with something that is no technique of ours
  const tool = catalogue.techniques.get(method.tool)?.name ?? method.tool;
  const coat = method.coat ? `, ${span(method.coat.low, method.coat.high, 'g/m²')} wet` : '';
  return `${face}: ${lowerFirst(tool)}${coat}${waitInWords(method)}`;
}

/** The same without the coat, where there is little room: "the board, not the paper: full brush; laid at once". */
export const methodInShort = (method: Method, job: Job, catalogue: Catalogue): string => {
  const { coat: _coat, ...rest } = method;
  return methodInWords(rest, job, catalogue);
};

function waitInWords({ wait, minutes }: Method): string {
  if (wait === 'none') return '; laid at once';
  const after = `after about ${Math.round(minutes)}\u00a0min`;
  return wait === 'relax' ? `; laid ${after}, when it has relaxed` : `; laid ${after}, when it is tacky`;
}
