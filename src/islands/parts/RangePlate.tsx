/** A range on a plain scale from nothing, with the figure to have in hand marked. The words beside it say the same. */
import { figure, formatAmount } from '../../core/base/format';

interface Props {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
  readonly buy: number;
  readonly unit: string;
}

export function RangePlate({ low, middle, high, buy, unit }: Props) {
  const most = Math.max(buy, high) * 1.08;
  const x = (value: number) => 8 + (340 * value) / most;
  return (
    <svg viewBox="0 -8 360 88" class="drawing" aria-hidden="true" focusable="false">
      <line class="axis" x1="8" x2="352" y1="52" y2="52" />
      <rect class="fill-water" x={x(low)} y="34" width={Math.max(1, x(high) - x(low))} height="12" />
      <path class="ink" d={`M${x(low)} 30v20M${x(high)} 30v20`} />
      <circle class="fill-ink" cx={x(middle)} cy="40" r="4" />
      <line class="mark-you" x1={x(buy)} x2={x(buy)} y1="20" y2="58" />
      <text class="mark-you" x={x(buy)} y="13" text-anchor="end">
        have {formatAmount(buy, 9)} {unit}
      </text>
      <text class="axis-text" x="8" y="72">
        0
      </text>
      <text class="axis-text" x={x(low)} y="72" text-anchor="middle">
        {low / most > 0.06 ? figure(low) : ''}
      </text>
      <text class="axis-text" x={x(high)} y="72" text-anchor="middle">
        {high / most - low / most > 0.08 ? figure(high) : ''}
      </text>
    </svg>
  );
}
