/** What stands behind the curves of a cellulose ether: what each strength is used for, and both axes. */
import { DECADES, MOST_PERCENT, type EtherPlot } from '../../core/mix/ether-plot';
import { USE_BANDS } from '../../core/adhesive/use-bands';

export function EtherAxes({ plot: { left, right, top, bottom, x, y } }: { readonly plot: EtherPlot }) {
  return (
    <>
      {USE_BANDS.map(({ from, to, name }, i) => (
        <g key={name}>
          <rect
            class={i === 1 ? 'fill-board' : 'fill-paper'}
            x={x(from)}
            width={x(to) - x(from)}
            y={top}
            height={bottom - top}
          />
          <text class="axis-text" x={(x(from) + x(to)) / 2} y={i === 1 ? 12 : 25} text-anchor="middle">
            {name}
          </text>
        </g>
      ))}
      {DECADES.map((decade) => (
        <g key={decade}>
          <line class="ink-soft faint" x1={left} x2={right} y1={y(decade)} y2={y(decade)} />
          <text class="axis-text" x={left - 6} y={y(decade) + 4} text-anchor="end">
            {decade < 1e3 ? decade : decade < 1e6 ? `${decade / 1e3}k` : `${decade / 1e6}M`}
          </text>
        </g>
      ))}
      {Array.from({ length: MOST_PERCENT + 1 }, (_, percent) => (
        <text key={percent} class="axis-text" x={x(percent)} y="242" text-anchor="middle">
          {percent}
        </text>
      ))}
      <text class="axis-text" x={right} y="258" text-anchor="end">
        strength, %
      </text>
    </>
  );
}
