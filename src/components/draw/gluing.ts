/** Which drawing shows a step of a method. */
import type { Choice } from '../../core/choose/choose';
import { taskOf } from '../../core/choose/sampling';
import { shownSteps, type HandSkill } from '../../core/choose/technique';
import type { Catalogue } from '../../core/records/records';
import type { Task } from '../../core/records/task';
import { PLATES } from './plates';

/** Where a task glues less than a whole face. */
const NARROW: Partial<Readonly<Record<Task, string>>> = {
  'line-spine': 'on-spine',
  'tip-in': 'on-strip',
  'join-boards': 'on-edge',
};

const SHOWN: Readonly<Record<Exclude<HandSkill, 'put-on'>, string>> = {
  warm: 'keep-warm',
  'lay-on-glass': 'face-down-on-glass',
  lift: 'lift-by-film',
  relax: 'relax',
  'let-down': 'let-down',
  slide: 'slide',
  rub: 'rub-down',
  pat: 'pat',
  clamp: 'clamp',
  'press-long': 'press-blotters',
  'press-short': 'press',
  iron: 'iron',
};

function putOnPlate({ method, facts: { adhesive, job } }: Choice): string {
  if (adhesive.form === 'dry')
    return /spray|can\b/i.test(adhesive.appliedWith) ? 'spray' : adhesive.id === 'glue-stick' ? 'stick' : 'film';
  const task = taskOf(job);
  const narrow = NARROW[task];
  if (narrow && method.face !== 'sheet-on-support') return narrow;
  if (task === 'mend' && method.face === 'ground') return 'on-tear';
  const onto = method.face === 'ground' ? 'board' : method.face === 'sheet-on-support' ? 'support' : 'sheet';
  return `on-${onto}-${method.tool}`;
}

/** The steps of a choice, each with the name of its plate. */
export const drawnSteps = (choice: Choice, catalogue: Catalogue): { text: string; plate: string | undefined }[] =>
  shownSteps(choice.facts, choice.technique, catalogue).map(([skill, text]) => {
    const plate = skill === 'put-on' ? putOnPlate(choice) : SHOWN[skill];
    return { text, plate: plate in PLATES ? plate : undefined };
  });
