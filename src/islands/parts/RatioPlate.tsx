/** Chance against the share of one part in a mix of two, with the run that works shaded and the easy parts marked. */
import { chanceInTen } from '../../core/base/format';
import { evenScale } from '../../core/base/scale';

interface Props {
  /** what the share is of, and what the rest is */
  readonly of: string;
  readonly rest: string;
  /** at even steps, from none of it to nothing else, 0–1 */
  readonly chances: readonly number[];
  readonly works?: { readonly from: number; readonly to: number } | undefined;
  /** share of the easy parts, the chance there, and how they read: "2 : 1" */
  readonly share: number;
  readonly chance: number;
  readonly brief: string;
}

const BOX = { left: 54, right: 344, top: 30, bottom: 190 };
const CHANCES: readonly (readonly [number, string])[] = [
  [0, 'never'],
  [0.5, '5 in 10'],
  [1, 'always'],
];
const SHARES: readonly (readonly [number, string])[] = [
  [0.25, '1 : 3'],
  [0.5, '1 : 1'],
  [0.75, '3 : 1'],
];

export function RatioPlate({ of, rest, chances, works, share, chance, brief }: Props) {
  const x = evenScale([0, 1], [BOX.left, BOX.right]);
  const y = evenScale([0, 1], [BOX.bottom, BOX.top]);
  const last = chances.length - 1;
  const line = chances.map((value, i) => `${x(i / last).toFixed(1)} ${y(value).toFixed(1)}`).join('L');
  // a run of one share is still a run that can be seen
  const [from, to] = works ? [Math.max(0, works.from - 0.0125), Math.min(1, works.to + 0.0125)] : [0, 0];
  const side = x(share) > 280 ? 'end' : x(share) < 90 ? 'start' : 'middle';
  const spoken = [0, 0.25, 0.5, 0.75, 1].map((part) => chanceInTen(chances[Math.round(part * last)]!));
  return (
    <svg
      viewBox="0 0 360 232"
      class="drawing"
      role="img"
      aria-label={`Chance that a mix works, from ${rest} alone to ${of} alone. ${rest} alone: ${spoken[0]}; one part of ${of} to three: ${spoken[1]}; half and half: ${spoken[2]}; three parts to one: ${spoken[3]}; ${of} alone: ${spoken[4]}.`}
    >
      {works && (
        <rect class="fill-water" x={x(from)} y={BOX.top} width={x(to) - x(from)} height={BOX.bottom - BOX.top} />
      )}
      {CHANCES.map(([value, text]) => (
        <g key={text}>
          <line
            class={value === 0 ? 'axis' : 'ink-soft faint'}
            x1={BOX.left}
            x2={BOX.right}
            y1={y(value)}
            y2={y(value)}
          />
          <text class="axis-text" x={BOX.left - 6} y={y(value) + 4} text-anchor="end">
            {text}
          </text>
        </g>
      ))}
      {SHARES.map(([value, text]) => (
        <g key={text}>
          <line class="axis" x1={x(value)} x2={x(value)} y1={BOX.bottom} y2={BOX.bottom + 5} />
          <text class="axis-text" x={x(value)} y={BOX.bottom + 18} text-anchor="middle">
            {text}
          </text>
        </g>
      ))}
      <text class="axis-text" x={BOX.left} y={BOX.bottom + 36}>
        all {rest}
      </text>
      <text class="axis-text" x={BOX.right} y={BOX.bottom + 36} text-anchor="end">
        all {of}
      </text>
      <path class="ink" d={`M${line}`} />
      <line class="mark-you" x1={x(share)} x2={x(share)} y1={BOX.top} y2={BOX.bottom} stroke-dasharray="5 4" />
      <circle class="mark-you" cx={x(share)} cy={y(chance)} r="4" />
      <text class="mark-you" x={x(share)} y="18" text-anchor={side}>
        {brief}
      </text>
    </svg>
  );
}
