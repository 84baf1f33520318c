/** The edge of the covered board at each stage, drawn to one scale along and up. The table beside it says the same. */
import type { Bow, Bows, StageId } from '../../core/flat/stages';
import { bowBrief, bowWords, STAGE_NAMES } from '../../core/flat/words';
import type { Direction } from '../../core/joint/curl';

interface Props {
  readonly bows: Bows;
  readonly direction: Direction;
  readonly boardMm: number;
  readonly lined: boolean;
}

const WIDE = 336;
const LEFT = 12;
const RULES = [1, 5, 10, 50, 100, 500];

export function EdgePlate({ bows, direction, boardMm, lined }: Props) {
  const { span } = bows.dry[direction];
  const perMm = WIDE / span;
  const thick = Math.max(1.5, boardMm * perMm);
  const rule = RULES.findLast((mm) => mm <= span / 2) ?? RULES[0]!;
  const stages = Object.keys(bows) as StageId[];
  let top = 2;
  const row = (says: string, { low, middle, high }: Pick<Bow, 'low' | 'middle' | 'high'>) => {
    const words = top + 12;
    const ends = words + 14 + thick / 2 + Math.max(0, -low * perMm);
    top = ends + Math.max(0, high * perMm) + thick / 2 + 16;
    return { says, words, ends, rise: middle * perMm, range: [low * perMm, high * perMm] };
  };
  const rows = [
    row('as cut: flat', { low: 0, middle: 0, high: 0 }),
    ...stages.map((id) => row(`${STAGE_NAMES[id]}: ${bowBrief(bows[id][direction])}`, bows[id][direction])),
  ];
  const arc = (ends: number, rise: number) =>
    `M${LEFT} ${ends}Q${LEFT + WIDE / 2} ${ends + 2 * rise} ${LEFT + WIDE} ${ends}`;
  const face = thick / 2 + 1.5;
  const spoken = stages.map((id) => `${STAGE_NAMES[id]}, ${bowWords(bows[id][direction])}`).join('; ');
  return (
    <svg
      viewBox={`0 0 360 ${Math.ceil(top + 22)}`}
      class="drawing"
      role="img"
      aria-label={`The edge of the board over its ${direction}, the cover paper on its upper face, drawn to scale at the middle of each range: as cut, flat; ${spoken}.`}
    >
      {rows.map(({ says, words, ends, rise, range }, i) => (
        <g key={says + i}>
          <text class="plate-text" x={LEFT} y={words}>
            {says}
          </text>
          {i > 0 && range.map((end, j) => <path class="ink-soft" d={arc(ends, end)} key={j} />)}
          <path class="edge-board" d={arc(ends, rise)} stroke-width={thick} />
          {i > 0 && <path class="edge-paper" d={arc(ends - face, rise)} />}
          {i > 0 && lined && <path class="edge-paper" d={arc(ends + face, rise)} stroke-dasharray="6 2" />}
        </g>
      ))}
      <path class="axis" d={`M${LEFT} ${top + 2}v6h${rule * perMm}v-6`} />
      <text class="axis-text" x={LEFT + rule * perMm + 6} y={top + 12}>
        {rule} mm, along and up
      </text>
    </svg>
  );
}
