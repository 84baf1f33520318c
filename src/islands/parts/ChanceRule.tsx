/**
 * A chance as a measuring stick: ten divisions, a mark where the chance lies, and the words beside it.
 * The table of the same numbers stands in the ranking, so the drawing is hidden from those who listen.
 */
import { chanceInTen } from '../../core/base/format';

interface Props {
  readonly label: string;
  readonly chance: number;
  readonly note: string;
}

const WIDTH = 200;
/** half of the mark, so that it is whole at either end */
const END = 6;
const at = (share: number) => END + share * (WIDTH - 2 * END);
/** In one path: an answer shows up to eight sticks, and is drawn anew with every key. */
const DIVISIONS = Array.from({ length: 11 }, (_, i) => `M${at(i / 10).toFixed(1)} ${i % 5 === 0 ? 8 : 12}V16`).join('');

export function ChanceRule({ label, chance, note }: Props) {
  return (
    <li class="chance-row">
      <span class="chance-label">{label}</span>
      <svg viewBox={`0 0 ${WIDTH} 22`} class="chance-stick" aria-hidden="true" focusable="false">
        <line class="axis" x1={at(0)} x2={at(1)} y1="16" y2="16" />
        <path class="ink-soft" d={DIVISIONS} />
        <path class="mark-you" d={`M${at(chance)} 16l-5 -12h10z`} />
      </svg>
      <span class="chance-words">
        {chanceInTen(chance)}
        <span class="cell-note">{note}</span>
      </span>
    </li>
  );
}
