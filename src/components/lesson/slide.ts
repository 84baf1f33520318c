/** Moves a figure from step to step, by its range or by a finger that drags across the drawing. */

/** One position of a figure that can be changed, as the build worked it out. */
export interface SlideStep {
  /** "2 mm" */
  readonly at: string;
  /** "bows 5.8 mm" */
  readonly says: string;
  /** attributes of the parts of the drawing */
  readonly draw: Readonly<Record<string, Readonly<Record<string, string | number>>>>;
}

/** An `input` of the range, or a part of a drag. */
export function moveFigure(event: Event): void {
  const figure = (event.target as Element).closest<HTMLElement>('figure')!;
  if (event.type === 'input') show(figure);
  else drag(figure, event as PointerEvent);
}

const rangeOf = (figure: HTMLElement) => figure.querySelector<HTMLInputElement>('.slide input')!;

function show(figure: HTMLElement): void {
  const held = figure.querySelector<HTMLElement>('.slide')!;
  const steps = JSON.parse(held.dataset['steps']!) as readonly SlideStep[];
  const range = rangeOf(figure);
  const step = steps[Number(range.value)]!;
  range.setAttribute('aria-valuetext', `${step.at}: ${step.says}`);
  const at = document.createElement('strong');
  at.textContent = step.at;
  held.querySelector('.slide-says')!.replaceChildren(at, `: ${step.says}`);
  for (const [part, attributes] of Object.entries(step.draw)) {
    const element = figure.querySelector(`[data-part="${part}"]`)!;
    for (const [name, value] of Object.entries(attributes)) {
      if (name === 'text') element.textContent = String(value);
      else element.setAttribute(name, String(value));
    }
  }
}

/** A finger or a pressed mouse over the drawing: each event by itself, so that none has to be waited for. */
function drag(figure: HTMLElement, { target, clientX }: PointerEvent): void {
  const [from = 0, to = 1] = figure.querySelector<HTMLElement>('.slide')!.dataset['between']!.split(' ').map(Number);
  const { left, width } = (target as Element).closest('svg')!.getBoundingClientRect();
  const share = ((clientX - left) / width - from) / (to - from);
  const range = rangeOf(figure);
  range.value = String(Math.round(Math.min(1, Math.max(0, share)) * Number(range.max)));
  show(figure);
}
