/** Moves a figure from step to step, by its range or by a finger that drags across the drawing. */

/** One position of a figure that can be changed, as the build worked it out. */
export interface Step {
  /** "2 mm" */
  readonly at: string;
  /** "bows 5.8 mm" */
  readonly says: string;
  /** attributes of the parts of the drawing */
  readonly draw: Readonly<Record<string, Readonly<Record<string, string | number>>>>;
}

/** An `input` of the range, or the start of a drag. */
export function slide(event: Event): void {
  const figure = (event.target as Element).closest<HTMLElement>('figure')!;
  if (event.type === 'input') show(figure);
  else drag(figure, event as PointerEvent);
}

const rangeOf = (figure: HTMLElement) => figure.querySelector<HTMLInputElement>('.slide input')!;

function show(figure: HTMLElement): void {
  const held = figure.querySelector<HTMLElement>('.slide')!;
  const steps = JSON.parse(held.dataset['steps']!) as readonly Step[];
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

function drag(figure: HTMLElement, start: PointerEvent): void {
  const drawing = (start.target as Element).closest('svg')!;
  const [from = 0, to = 1] = figure.querySelector<HTMLElement>('.slide')!.dataset['between']!.split(' ').map(Number);
  const range = rangeOf(figure);
  const follow = ({ clientX }: PointerEvent) => {
    const { left, width } = drawing.getBoundingClientRect();
    const share = ((clientX - left) / width - from) / (to - from);
    range.value = String(Math.round(Math.min(1, Math.max(0, share)) * Number(range.max)));
    show(figure);
  };
  follow(start);
  const over = new AbortController();
  addEventListener('pointermove', follow, { signal: over.signal });
  for (const end of ['pointerup', 'pointercancel'])
    addEventListener(end, () => over.abort(), { once: true, signal: over.signal });
}
