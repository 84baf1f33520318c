/** How to apply the adhesive that was chosen, step by step. Common practice throughout. */
import type { Finding, Placement } from './finding';
import { span, lowerFirst } from '../base/format';
import type { Catalogue, DryAdhesive, Stroke, WetAdhesive } from '../records/records';
import type { Sheet } from '../paper/sheet';
import type { Task } from '../records/task';
import { taskOf } from './sampling';

/** What to do, in order, each a sentence. */
export function stepsFor(facts: Finding, placement: Placement, catalogue: Catalogue): readonly string[] {
  const { adhesive } = facts;
  return adhesive.form === 'dry' ? drySteps(adhesive, placement) : wetSteps(adhesive, facts, placement, catalogue);
}

function drySteps(adhesive: DryAdhesive, { glueGoesOn, tool, placeBeforeContact }: Placement): string[] {
  return [
    `Apply it to ${glueGoesOn} with ${tool}.`,
    placeBeforeContact
      ? 'Mark the place first. Lay one edge, then roll the rest down with your hand behind it.'
      : 'Lay it, check the edges, then smooth from the middle.',
    adhesive.needsHeat
      ? 'Protect the face with a clean sheet, set it with the iron, and let it cool under weight.'
      : 'Rub down through a clean sheet, from the middle to the edges.',
  ];
}

function wetSteps(
  { usedAt }: WetAdhesive,
  { sheet, slipSeconds, method, job }: Finding,
  placement: Placement,
  catalogue: Catalogue,
): string[] {
  const { glueGoesOn, relaxMinutes, placeBeforeContact, coat } = placement;
  const task = taskOf(job);
  const tool = catalogue.techniques.get(placement.tool)!;
  const wet = coat ? `, about ${span(coat.low, coat.high, 'g/m²')} wet` : '';
  const steps = [
    usedAt === undefined ? '' : `Keep it at about ${usedAt} °C, no hotter, and warm the pieces.`,
    method.face === 'sheet-on-support'
      ? 'Lay it face down on glass, or on a piece of polyester film, and paste it there.'
      : '',
    `Put the glue on ${glueGoesOn}: ${lowerFirst(tool.name)}, ${ALONG[task] ?? STROKE_WORDS[tool.stroke]}${wet}.`,
    method.face === 'sheet-on-support'
      ? 'Lift it by the film, or with the tip of a knife laid flat, and carry it over while it is wet.'
      : '',
    relaxMinutes > 0 ? `Let the pasted sheet relax for about ${relaxMinutes} min, until it lies limp and flat.` : '',
    ...(task === 'join-boards' ? [stoodUp(placeBeforeContact)] : laidDown(placeBeforeContact, sheet.surface)),
    task === 'join-boards' ? '' : (driedBy(task, job.substrate, catalogue) ?? pressing(slipSeconds.p50)),
  ];
  return steps.filter(Boolean);
}

const laidDown = (placeBeforeContact: boolean, surface: Sheet['surface']): readonly string[] => [
  placeBeforeContact
    ? 'Hold it over its place and get it right before it touches; let it down from one edge and do not lift it again.'
    : 'Lay it, check the corners, and move it while it still slides.',
  surface === 'embossed'
    ? 'Press it down with the flat of a soft brush or cloth: a bone folder would crush the pattern.'
    : 'Rub down through a clean sheet, from the middle to the edges.',
];

/** The wall of a box is not laid down, but stood up. */
const stoodUp = (placeBeforeContact: boolean): string =>
  `Square it up on its mark ${placeBeforeContact ? 'at once, for it grabs' : 'while it still slides'}. Hold or clamp it until it has set, and leave it alone until the next day.`;

/** How a tool goes over a face, after its name. Common practice, as its record says. */
export const STROKE_WORDS: Readonly<Record<Stroke, string>> = {
  outwards: 'from the middle out over the edges',
  bands: 'in bands from edge to edge',
  pull: 'in one pull from edge to edge',
};

/** How a strip or an edge is brushed, whatever the tool. Common practice, no source. */
const ALONG: Partial<Readonly<Record<Task, string>>> = {
  mend: 'evenly, out over every edge',
  hinge: 'evenly, right up to its edges',
  'tip-in': 'in an even line, with waste paper laid over the rest',
  'join-boards': 'in an even line along the whole edge',
  'line-spine': 'from the middle towards head and tail',
};

/** What would stick to what presses it, or wet its neighbours. Common practice, no source. */
const DRIED_APART = 'Dry it under a board and weight between non-stick paper and blotters, for an hour at least.';

/** How a task's work dries, where that is not simply under a board and weight. Common practice, no source. */
const DRIED: Partial<Readonly<Record<Task, string>>> = {
  'line-spine':
    'Rub down again after a minute, then leave the book to dry until the next day, spine upwards and held between boards.',
  decorate:
    'Press it down with the flat of a soft brush wherever an edge lifts, and let it dry where it stands. Then brush a thin coat of the same over paper and edges, after a test on a scrap.',
  'paste-down':
    'Press it under a board and weight until the next day, the book shut on waxed paper or plastic film, which keeps the damp from its leaves.',
  mend: DRIED_APART,
  hinge: DRIED_APART,
};

/** What glass, glaze and metal that bear a label most often are: round. Common practice, no source. */
const LABEL_ON_A_JAR = 'Rub down its edges again after a minute, and let it dry where it stands.';

/** How it dries where its task or its ground asks for more than a board and weight; undefined elsewhere. */
const driedBy = (task: Task, ground: string, { substrates }: Catalogue): string | undefined =>
  task === 'label' && substrates.get(ground)!.face === 'non-porous' ? LABEL_ON_A_JAR : DRIED[task];

/** Slow glues still hold their water when they are laid; they need longer under weight. */
function pressing(slipSeconds: number): string {
  return slipSeconds > 120
    ? 'Dry it under a board and weight with clean blotters, changed after an hour, until the next day.'
    : 'Press it under a board and weight for half an hour, then leave it under a light weight until the next day.';
}
