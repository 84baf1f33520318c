/** The pieces to one scale, each with its turn-ins as a dashed border. The table below says the same in numbers. */
import type { NamedRow } from '../../core/cover/plan';
import { shelve } from '../../core/make/shelve';

const WIDTH = 344;

export function PiecesPlate({ rows }: { readonly rows: readonly NamedRow[] }) {
  const { places, height } = shelve(
    rows.map(({ piece }) => piece),
    WIDTH,
  );
  const kinds = rows.map(({ name, piece }, i) => `${piece.count} × ${name ?? `piece ${i + 1}`}`).join(', ');
  return (
    <svg
      viewBox={`0 0 360 ${height + 16}`}
      class="drawing"
      role="img"
      aria-label={`The pieces to one scale: ${kinds}.`}
    >
      {places.map(({ x, y, width, height: high, turn, row, times }, i) => (
        <g key={i} transform={`translate(${8 + x} ${8 + y})`}>
          {turn.top + turn.right + turn.bottom + turn.left > 0 && (
            <rect
              class="axis"
              stroke-dasharray="4 3"
              width={width + turn.left + turn.right}
              height={high + turn.top + turn.bottom}
            />
          )}
          <rect class="ink fill-paper" x={turn.left} y={turn.top} width={width} height={high} />
          <text class="plate-text halo" x={turn.left + width / 2} y={turn.top + high / 2 + 4} text-anchor="middle">
            {times > 1 ? `${row + 1} (× ${times})` : row + 1}
          </text>
        </g>
      ))}
    </svg>
  );
}
