/** Viscosity of a cellulose ether against its strength, on a log axis, with what each strength is used for and where this mix stands. */
import { etherPlot, MOST_PERCENT } from '../../core/mix/ether-plot';
import { figure, formatAmount } from '../../core/base/format';
import { likeness } from '../../core/mix/words';
import { celluloseEtherViscosity } from '../../core/adhesive/viscosity';
import { EtherAxes } from './EtherAxes';

interface Props {
  readonly grade: number;
  readonly percent: number;
}

const PLOT = etherPlot(346);

export function CurvePlate({ grade, percent }: Props) {
  const { left, bottom, x, y } = PLOT;
  const at = (c: number) => celluloseEtherViscosity({ gradeMilliPascalSeconds: grade, percent: c });
  const here = Math.min(percent, MOST_PERCENT);
  const beyond = percent > MOST_PERCENT;
  const said = beyond ? 'past the end of the curve' : `about ${figure(at(percent))} mPa·s, ${likeness(at(percent))}`;
  return (
    <figure class="plate">
      <div class="plate-body">
        <svg
          viewBox="0 0 360 262"
          class="drawing"
          role="img"
          aria-label={`Viscosity against strength for the ${formatAmount(grade)} mPa·s grade. At ${formatAmount(percent)} per cent it is ${said}. Size is made at half to one per cent, a mix for PVA at one to two, an adhesive at two to five.`}
        >
          <EtherAxes plot={PLOT} />
          <path class="ink" d={PLOT.curve(grade)} />
          <path class="ink" stroke-dasharray="2 4" d={`M${x(2)} ${bottom}V${y(grade)}H${left}`} />
          <line class="mark-you" x1={x(here)} x2={x(here)} y1={y(at(here))} y2={bottom} />
          <circle class="fill-paper" cx={x(here)} cy={y(at(here))} r="7" />
          <circle class="mark-you" cx={x(here)} cy={y(at(here))} r="3" />
        </svg>
      </div>
      <figcaption class="plate-caption">
        Viscosity in mPa·s at 20 °C against strength, {formatAmount(grade)} mPa·s grade, by the eighth-root law (from
        memory; it reads high past 4 %). Your mix: {said}. The dotted lines lead to the label, which is the viscosity at
        2 %.
      </figcaption>
    </figure>
  );
}
