/** One sheet to scale: pieces by number, cuts by the step that makes them, the grain as an arrow. */
import type { SheetDrawing } from '../../core/cut/drawing';

export function SheetPlate({ drawing, label }: { readonly drawing: SheetDrawing; readonly label: string }) {
  const { viewBox, sheet, trimmed, pieces, labels, cuts, cutNumbers, grain, width, height } = drawing;
  return (
    <svg viewBox={viewBox} class="drawing" role="img" aria-label={label}>
      <rect class="ink" {...sheet} />
      {trimmed && <rect class="axis" stroke-dasharray="4 3" {...trimmed} />}
      {pieces.map((piece, i) => (
        <rect class="cut-piece" key={i} {...piece} />
      ))}
      {cuts.map((cut, i) => (
        <line class="axis" key={i} {...cut} />
      ))}
      {labels.map(({ text, ...at }, i) => (
        <text class="plate-text" text-anchor="middle" key={i} {...at}>
          {text}
        </text>
      ))}
      {cutNumbers.map(({ text, ...at }, i) => (
        <text class="cut-number" text-anchor="middle" key={i} {...at}>
          {text}
        </text>
      ))}
      {grain && (
        <>
          <path class="ink" d={grain.path} />
          <text class="axis-text" x={grain.word.x} y={grain.word.y}>
            {grain.word.text}
          </text>
        </>
      )}
      <text class="axis-text" text-anchor="middle" x={width.x} y={width.y}>
        {width.text}
      </text>
      <text class="axis-text" x={height.x} y={height.y}>
        {height.text}
      </text>
    </svg>
  );
}
