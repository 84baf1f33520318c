/** How to apply the adhesive that was chosen, step by step. Common practice throughout. */
import type { Finding, Placement } from './finding';
import { span, lowerFirst } from '../base/format';
import type { Catalogue, DryAdhesive, Stroke, WetAdhesive } from '../records/records';
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
    placeBeforeContact
      ? 'Hold it over its place and get it right before it touches; let it down from one edge and do not lift it again.'
      : 'Lay it, check the corners, and move it while it still slides.',
    task === 'join-boards'
      ? ''
      : sheet.surface === 'embossed'
        ? 'Press it down with the flat of a soft brush or cloth: a bone folder would crush the pattern.'
        : 'Rub down through a clean sheet, from the middle to the edges.',
    method.press === 'clamp'
      ? 'Square it up, and hold or clamp it until it has set; then leave it alone until the next day.'
      : (leftToDry(task, job.substrate, catalogue) ?? pressing(slipSeconds.p50)),
  ];
  return steps.filter(Boolean);
}

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

/** What no board and weight can be laid on. Common practice, no source. */
const LEFT_TO_DRY: Partial<Readonly<Record<Task, string>>> = {
  'line-spine':
    'Rub down again after a minute, then leave the book to dry until the next day, spine upwards and held between boards.',
  decorate: 'Press it down with the flat of a soft brush wherever an edge lifts, and let it dry where it stands.',
};

/** What glass, glaze and metal that bear a label most often are: round. Common practice, no source. */
const LABEL_ON_A_JAR = 'Rub down its edges again after a minute, and let it dry where it stands.';

/** How it dries where no board and weight can be laid on it; undefined where they can. */
const leftToDry = (task: Task, ground: string, { substrates }: Catalogue): string | undefined =>
  task === 'label' && substrates.get(ground)!.face === 'non-porous' ? LABEL_ON_A_JAR : LEFT_TO_DRY[task];

/** Slow glues still hold their water when they are laid; they need longer under weight. */
function pressing(slipSeconds: number): string {
  return slipSeconds > 120
    ? 'Dry it under a board and weight with clean blotters, changed after an hour, until the next day.'
    : 'Press it under a board and weight for half an hour, then leave it under a light weight until the next day.';
}
