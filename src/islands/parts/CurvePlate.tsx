/** Viscosity of a cellulose ether against its strength, on a log axis, with what each strength is used for and where this mix stands. */
import { figure } from '../../core/format';
import { plain } from '../../core/plain';
import { likeness } from '../../core/mix-words';
import { logScale } from '../../core/plot';
import { USE_BANDS } from '../../core/use-bands';
import { celluloseEtherViscosity } from '../../core/viscosity';

interface Props {
  readonly grade: number;
  readonly percent: number;
}

const BOX = { left: 50, right: 346, top: 30, bottom: 224 };
const MOST = 5;
const DECADES = [1, 10, 100, 1000, 10000, 100000, 1000000];

export function CurvePlate({ grade, percent }: Props) {
  const at = (c: number) => celluloseEtherViscosity({ gradeMilliPascalSeconds: grade, percent: c });
  const x = (c: number) => BOX.left + ((BOX.right - BOX.left) * Math.min(c, MOST)) / MOST;
  const y = logScale([1, 1e6], [BOX.bottom, BOX.top]);
  const points = Array.from({ length: 51 }, (_, i) => (i * MOST) / 50);
  const curve = points.map((c, i) => `${i === 0 ? 'M' : 'L'}${x(c).toFixed(1)} ${y(at(c)).toFixed(1)}`).join('');
  const here = Math.min(percent, MOST);
  const beyond = percent > MOST;
  const said = beyond ? 'past the end of the curve' : `about ${figure(at(percent))} mPa·s, ${likeness(at(percent))}`;
  return (
    <figure class="plate">
      <div class="plate-body">
        <svg
          viewBox="0 0 360 262"
          class="drawing"
          role="img"
          aria-label={`Viscosity against strength for the ${plain(grade)} mPa·s grade. At ${plain(percent)} per cent it is ${said}. Size is made at half to one per cent, a mix for PVA at one to two, an adhesive at two to five.`}
        >
          {USE_BANDS.map(({ from, to, name }, i) => (
            <g key={name}>
              <rect
                class={i === 1 ? 'fill-board' : 'fill-paper'}
                x={x(from)}
                width={x(to) - x(from)}
                y={BOX.top}
                height={BOX.bottom - BOX.top}
              />
              <text class="axis-text" x={(x(from) + x(to)) / 2} y={i === 1 ? 12 : 25} text-anchor="middle">
                {name}
              </text>
            </g>
          ))}
          {DECADES.map((decade) => (
            <g key={decade}>
              <line class="ink-soft faint" x1={BOX.left} x2={BOX.right} y1={y(decade)} y2={y(decade)} />
              <text class="axis-text" x={BOX.left - 6} y={y(decade) + 4} text-anchor="end">
                {decade < 1000 ? decade : decade < 1e6 ? `${decade / 1000}k` : `${decade / 1e6}M`}
              </text>
            </g>
          ))}
          {[0, 1, 2, 3, 4, 5].map((c) => (
            <text key={c} class="axis-text" x={x(c)} y="242" text-anchor="middle">
              {c}
            </text>
          ))}
          <text class="axis-text" x={BOX.right} y="258" text-anchor="end">
            strength, %
          </text>
          <path class="ink" d={curve} />
          <path class="ink" stroke-dasharray="2 4" d={`M${x(2)} ${BOX.bottom}V${y(grade)}H${BOX.left}`} />
          <line class="mark-you" x1={x(here)} x2={x(here)} y1={y(at(here))} y2={BOX.bottom} />
          <circle class="fill-paper" cx={x(here)} cy={y(at(here))} r="7" />
          <circle class="mark-you" cx={x(here)} cy={y(at(here))} r="3" />
        </svg>
      </div>
      <figcaption class="plate-caption">
        Viscosity in mPa·s at 20 °C against strength, {plain(grade)} mPa·s grade, by the eighth-root law (from memory;
        it reads high past 4 %). Your mix: {said}. The dotted lines lead to the label, which is the viscosity at 2 %.
      </figcaption>
    </figure>
  );
}
