/** A method in the words of the bench: who gets the glue, with what, and when the sheet goes down. */
import type { Finding, Placement } from './finding';
import type { Method } from './method';
import type { Catalogue, Substrate } from '../records/records';
import type { Task } from '../records/task';
import { taskOf } from './sampling';

/** At or below this weight a wet sheet tears when it is lifted. Common practice, no source. */
export const LIGHT_GRAMMAGE = 30;

const SHEETS: Partial<Readonly<Record<Task, string>>> = {
  mend: 'the mending strip',
  hinge: 'the end of the hinge',
  'line-sheet': 'the lining',
  label: 'the back of the label',
  'tip-in': 'the edge of the leaf',
  'join-boards': 'the edge of the board',
  laminate: 'the backing',
  mount: 'the back of the print',
};

/** What stays dry when the glue goes on what lies below; the paper where nothing else is meant. */
const NOT_THE: Partial<Readonly<Record<Task, string>>> = {
  mend: 'the mending strip',
  hinge: 'the hinge',
  'line-sheet': 'the lining',
  'line-spine': 'the lining',
  label: 'the label',
  'tip-in': 'the leaf',
  laminate: 'the backing',
  mount: 'the print',
};

/** What the glue goes on when it is the sheet's turn, as a sentence calls it. */
export const calledSheet = (task: Task): string => SHEETS[task] ?? 'the back of the paper';

/** What lies under the sheet, as a sentence calls it. */
export const calledBelow = (substrate: Substrate, task: Task): string =>
  task === 'line-spine'
    ? 'the spine'
    : task === 'mend'
      ? 'the edges of the tear'
      : task === 'decorate'
        ? 'the thing itself'
        : task === 'laminate'
          ? 'the piece that is backed'
          : /board/.test(substrate.id)
            ? 'the board'
            : 'the surface below';

/** Who gets the glue by this method, as a sentence calls it: "the back of the paper". */
export const gluedFace = ({ face }: Method, task: Task, substrate: Substrate): string =>
  ({
    sheet: calledSheet(task),
    'sheet-on-support': `${calledSheet(task)}, laid out on glass or film`,
    ground: `${calledBelow(substrate, task)}, not ${NOT_THE[task] ?? 'the paper'}`,
    both: 'both faces',
  })[face];

/** Which face gets the glue, with what, how thick, and when the sheet goes down. */
export function placementOf(
  { method, job, sheet, slipSeconds, needed, adhesive }: Finding,
  catalogue: Catalogue,
): Placement {
  const task = taskOf(job);
  const late = slipSeconds.p50 < needed;
  const substrate = catalogue.substrates.get(job.substrate)!;
  const glueGoesOn = gluedFace(method, task, substrate);
  const light = adhesive.form === 'wet' && sheet.grammage.middle <= LIGHT_GRAMMAGE;
  return {
    glueGoesOn,
    tool: method.tool,
    ...(method.coat && { coat: method.coat }),
    relaxMinutes: method.wait === 'relax' ? Math.round(method.minutes) : 0,
    placeBeforeContact: light || late,
  };
}
