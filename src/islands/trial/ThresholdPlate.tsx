/** Pass chance against weight, with the band in which it may lie, for one adhesive at a time; the numbers stand in a table. */
import { useMemo, useState } from 'preact/hooks';
import { figure } from '../../core/base/format';
import { logScale } from '../../core/base/scale';
import type { TrialGlue } from '../../core/trial/record';
import { passThreshold, type Observation } from '../../core/stats/threshold';
import { percent, thresholdWords } from '../../core/trial/words';
import { SelectField } from '../parts/Field';

interface Series {
  readonly glue: TrialGlue;
  readonly points: readonly Required<Observation>[];
}

const [LEFT, RIGHT, TOP, BOTTOM] = [48, 350, 14, 190];
const STEPS = 24;

export function ThresholdPlate({ id, series }: { readonly id: string; readonly series: readonly Series[] }) {
  const [glue, setGlue] = useState(series[0]!.glue.id);
  const { points, glue: shown } = series.find((one) => one.glue.id === glue) ?? series[0]!;
  const { fit, curve, ticks } = useMemo(() => {
    const weights = points.map(({ grammage }) => grammage);
    const [least, most] = [Math.min(...weights) / 1.15, Math.max(...weights) * 1.15];
    const threshold = passThreshold(points);
    const at = Array.from({ length: STEPS + 1 }, (_, i) => least * Math.pow(most / least, i / STEPS));
    return {
      fit: threshold,
      curve: at.map((grammage) => ({ grammage, ...threshold.chanceAt(grammage) })),
      ticks: [...new Set(weights)].sort((a, b) => a - b),
    };
  }, [JSON.stringify(points)]);
  const x = logScale([curve[0]!.grammage, curve.at(-1)!.grammage], [LEFT, RIGHT]);
  const y = (chance: number) => BOTTOM - chance * (BOTTOM - TOP);
  const line = (pick: (point: (typeof curve)[number]) => number, list = curve) =>
    list.map((point) => `${x(point.grammage).toFixed(1)},${y(pick(point)).toFixed(1)}`).join(' ');
  const words = thresholdWords(fit);
  return (
    <figure class="plate">
      <div class="plate-body">
        {series.length > 1 && (
          <SelectField
            id={`${id}-curve`}
            label="Weight and pass chance, for"
            value={shown.id}
            options={series.map(({ glue: { id: value, name: text } }) => ({ value, text }))}
            onPick={setGlue}
          />
        )}
        <svg
          viewBox="0 0 360 232"
          class="drawing"
          role="img"
          aria-label={`Pass chance against weight for ${shown.name}. ${words}`}
        >
          <polygon
            class="fill-board"
            points={`${line(({ high }) => high)} ${line(({ low }) => low, [...curve].reverse())}`}
          />
          <line class="ink-soft" x1={LEFT} x2={RIGHT} y1={y(0.5)} y2={y(0.5)} stroke-dasharray="3 4" />
          <polyline class="ink" points={line(({ chance }) => chance)} />
          {points.map(({ grammage, passes, n }) => (
            <circle key={grammage} class="mark-you" cx={x(grammage)} cy={y(Number(passes) / n)} r="4" />
          ))}
          <line class="axis" x1={LEFT} x2={RIGHT} y1={BOTTOM} y2={BOTTOM} />
          <line class="axis" x1={LEFT} x2={LEFT} y1={TOP} y2={BOTTOM} />
          {[0, 0.5, 1].map((chance) => (
            <text key={chance} class="axis-text" x={LEFT - 6} y={y(chance) + 4} text-anchor="end">
              {percent(chance)}
            </text>
          ))}
          {ticks.map((grammage, i) =>
            // Weights that lie close share one label.
            i > 0 && x(grammage) - x(ticks[i - 1]!) < 26 ? null : (
              <text key={grammage} class="axis-text" x={x(grammage)} y={BOTTOM + 17} text-anchor="middle">
                {grammage}
              </text>
            ),
          )}
          <text class="axis-text" x={(LEFT + RIGHT) / 2} y={BOTTOM + 36} text-anchor="middle">
            weight, g/m², on a log scale
          </text>
        </svg>
      </div>
      <figcaption class="plate-caption">
        {shown.name}: {words} Dots are what was counted; the line is a logistic curve with Firth’s penalty, the grey its
        band at 95 % (profile likelihood, point by point).
        <details>
          <summary>The numbers</summary>
          <table class="numbers">
            <thead>
              <tr>
                <th scope="col" class="n">
                  g/m²
                </th>
                <th scope="col" class="n">
                  passed
                </th>
                <th scope="col" class="n">
                  chance
                </th>
                <th scope="col" class="n">
                  from, to
                </th>
              </tr>
            </thead>
            <tbody>
              {points.map(({ grammage, passes, n }) => {
                const { chance, low, high } = fit.chanceAt(grammage);
                return (
                  <tr key={grammage}>
                    <th scope="row" class="n">
                      {figure(grammage, 2)}
                    </th>
                    <td class="n">
                      {Number(passes)} of {n}
                    </td>
                    <td class="n">{percent(chance)}</td>
                    <td class="n">
                      {percent(low)}, {percent(high)}
                    </td>
                  </tr>
                );
              })}
            </tbody>
          </table>
        </details>
      </figcaption>
    </figure>
  );
}
