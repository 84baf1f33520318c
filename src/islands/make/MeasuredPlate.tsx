/** A drawing to scale with dimension lines and figures; its label says the same in words. */
import type { Picture, Words } from '../../core/make/picture';

const LOOKS = { cover: 'ink fill-paper', board: 'ink fill-board', sheet: 'ink fill-paper', fold: 'axis' } as const;

export function MeasuredPlate({ picture }: { readonly picture: Picture }) {
  const { width, height, shapes, lines, figures, labels, words } = picture;
  return (
    <svg viewBox={`0 0 ${width} ${height}`} class="drawing" role="img" aria-label={words}>
      {shapes.map(({ look, d }, i) => (
        <path key={i} class={LOOKS[look]} d={d} stroke-dasharray={look === 'fold' ? '5 3' : undefined} />
      ))}
      <path class="axis" d={lines} />
      {figures.map((one, i) => (
        <Figure key={i} {...one} look="axis-text halo" />
      ))}
      {labels.map((one, i) => (
        <Figure key={i} {...one} look="plate-text" />
      ))}
    </svg>
  );
}

function Figure({ x, y, text, turned, look }: Words & { readonly look: string }) {
  return (
    <text class={look} text-anchor="middle" x={x} y={y} transform={turned ? `rotate(-90 ${x} ${y})` : undefined}>
      {text}
    </text>
  );
}
