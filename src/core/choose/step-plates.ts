/** Which drawing shows a step of a method: names only, which whoever shows them looks up among the plates. */
import type { Task } from '../records/task';
import type { Choice } from './choose';
import { taskOf } from './sampling';

/** Where a task glues less than a whole face. */
const NARROW: Partial<Readonly<Record<Task, string>>> = {
  'line-spine': 'on-spine',
  'tip-in': 'on-strip',
  'join-boards': 'on-edge',
};

/** The plate of a dry adhesive, by a word for what it is applied with; where none of these is named it is a film. */
const DRY: Readonly<Record<string, string>> = {
  can: 'spray',
  stick: 'stick',
  press: 'tacked',
  iron: 'iron',
  sponge: 'remoistened',
  spreader: 'both-faces',
};
const APPLIED_WITH = new RegExp(`\\b(?:${Object.keys(DRY).join('|')})\\b`);

function putOnPlate({ method, facts: { adhesive, job } }: Choice): string {
  if (adhesive.form === 'dry') return DRY[APPLIED_WITH.exec(adhesive.appliedWith)?.[0] ?? ''] ?? 'film';
  const task = taskOf(job);
  const narrow = NARROW[task];
  if (narrow && method.face !== 'sheet-on-support') return narrow;
  if (task === 'mend' && method.face === 'ground') return 'on-tear';
  const onto = method.face === 'ground' ? 'board' : method.face === 'sheet-on-support' ? 'support' : 'sheet';
  return `on-${onto}-${method.tool}`;
}

/**
 * A plate for what a sentence of `core/choose/technique.ts` tells the hands to do, by its first words. The calculators
 * carry the sentences and not these names, which would cost every lesson that holds one.
 */
const BEGINS: readonly (readonly [begins: string, plate: string])[] = [
  ['Keep it at', 'keep-warm'],
  ['Lay it face down on glass', 'face-down-on-glass'],
  ['Lift it by the film', 'lift-by-film'],
  ['Let the pasted sheet relax', 'relax'],
  ['Hold it over its place', 'hold-over'],
  ['Mark the place first', 'let-down'],
  ['Lay it, check', 'slide'],
  ['Press it down with the flat', 'pat'],
  ['Rub down', 'rub-down'],
  ['Square it up', 'clamp'],
  ['Dry it under', 'press-blotters'],
  ['Press it under', 'press'],
  ['Protect the face', 'iron'],
];
const PUT_ON = /^(?:Put the glue on|Apply it to) /;

/** The steps of a choice in their order, each with the name of its plate; undefined where no plate shows it. */
export const drawnSteps = (choice: Choice): { text: string; plate: string | undefined }[] =>
  choice.technique.steps.map((text) => ({
    text,
    plate: PUT_ON.test(text) ? putOnPlate(choice) : BEGINS.find(([begins]) => text.startsWith(begins))?.[1],
  }));
