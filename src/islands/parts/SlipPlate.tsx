/** How long each sheet can be moved, on a log time axis, with the time the reader needs marked. */
import { duration, durationSpan } from '../../core/base/format';
import { logScale } from '../../core/base/scale';

export interface SlipRow {
  readonly name: string;
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

interface Props {
  readonly rows: readonly SlipRow[];
  readonly neededSeconds: number;
}

const TICKS: readonly (readonly [seconds: number, text: string])[] = [
  [1, '1 s'],
  [10, '10 s'],
  [60, '1 min'],
  [600, '10 min'],
  [3600, '1 h'],
];
const ROW = 44;
const TOP = 22;

export function SlipPlate({ rows, neededSeconds }: Props) {
  const x = logScale([0.8, 3600], [8, 338]);
  const height = TOP + rows.length * ROW + 28;
  const axis = height - 24;
  const need = x(neededSeconds);
  const spoken = rows.map((row) => `${row.name}: about ${durationSpan(row.low, row.high)}`).join('; ');
  return (
    <svg
      viewBox={`0 0 360 ${height}`}
      class="drawing"
      role="img"
      aria-label={`Time you can move the sheet, on a scale from one second to one hour. You need ${duration(neededSeconds)}. ${spoken}.`}
    >
      {TICKS.map(([seconds, text], i) => (
        <g key={text}>
          <line class="ink-soft faint" x1={x(seconds)} x2={x(seconds)} y1={TOP} y2={axis} />
          <text
            class="axis-text"
            x={x(seconds)}
            y={height - 6}
            text-anchor={i === 0 ? 'start' : i === TICKS.length - 1 ? 'end' : 'middle'}
          >
            {text}
          </text>
        </g>
      ))}
      <line class="mark-you" x1={need} x2={need} y1={TOP - 4} y2={axis} stroke-dasharray="5 4" />
      <text class="mark-you" x={need} y="12" text-anchor={need > 260 ? 'end' : need < 60 ? 'start' : 'middle'}>
        you need {duration(neededSeconds)}
      </text>
      {rows.map((row, i) => {
        const y = TOP + i * ROW + 32;
        return (
          <g key={row.name}>
            <text class="plate-text halo" x="8" y={y - 12}>
              {row.name}
            </text>
            <line class="ink" x1={x(row.low)} x2={x(row.high)} y1={y} y2={y} />
            <path class="ink" d={`M${x(row.low)} ${y - 4}v8M${x(row.high)} ${y - 4}v8`} />
            <circle class="fill-ink" cx={x(row.middle)} cy={y} r="4" />
          </g>
        );
      })}
      <line class="axis" x1="8" x2="338" y1={axis} y2={axis} />
    </svg>
  );
}
