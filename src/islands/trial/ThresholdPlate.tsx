/** Pass chance against weight, with the band in which it may lie, for one adhesive at a time; the numbers stand in a table. */
import { useEffect, useState } from 'preact/hooks';
import { figure } from '../../core/base/format';
import { logScale } from '../../core/base/scale';
import type { Observation } from '../../core/stats/pass-threshold';
import type { Curve, CurvePoint } from '../../core/trial/curve';
import { percent } from '../../core/trial/words';
import { curveLater, curveNow } from '../../stores/trial/reading';
import { SelectField } from '../parts/Field';

interface Series {
  /** of the adhesive */
  readonly id: string;
  readonly name: string;
  readonly points: readonly Required<Observation>[];
  /** what the trial shows about weight, one of all claims of the page */
  readonly words: string;
}

interface Props {
  readonly id: string;
  readonly series: readonly Series[];
  /** drawn with the page, as the build does; else in turns, after it */
  readonly atOnce: boolean;
}

const [LEFT, RIGHT, TOP, BOTTOM] = [48, 350, 14, 190];

export function ThresholdPlate({ id, series, atOnce }: Props) {
  const [glue, setGlue] = useState(series[0]!.id);
  const { points, name, words } = series.find((one) => one.id === glue) ?? series[0]!;
  const key = JSON.stringify(points);
  const [made, setMade] = useState<{ readonly key: string; readonly curve: Curve } | undefined>(() =>
    atOnce ? { key, curve: curveNow(points) } : undefined,
  );
  useEffect(() => (made?.key === key ? undefined : curveLater(points, (curve) => setMade({ key, curve }))), [key]);
  const curve = made?.key === key ? made.curve : undefined;
  const weights = points.map(({ grammage }) => grammage);
  const ticks = [...new Set(weights)].sort((a, b) => a - b);
  const x = logScale([Math.min(...weights) / 1.15, Math.max(...weights) * 1.15], [LEFT, RIGHT]);
  const y = (chance: number) => BOTTOM - chance * (BOTTOM - TOP);
  const line = (pick: (point: CurvePoint) => number, list: readonly CurvePoint[]) =>
    list.map((point) => `${x(point.grammage).toFixed(1)},${y(pick(point)).toFixed(1)}`).join(' ');
  return (
    <figure class="plate">
      <div class="plate-body">
        {series.length > 1 && (
          <SelectField
            id={`${id}-curve`}
            label="Weight and pass chance, for"
            value={glue}
            options={series.map(({ id: value, name: text }) => ({ value, text }))}
            onPick={setGlue}
          />
        )}
        <svg
          viewBox="0 0 360 232"
          class="drawing"
          role="img"
          aria-label={`Pass chance against weight for ${name}. ${words}`}
        >
          {curve && (
            <polygon
              class="fill-board"
              points={`${line(({ high }) => high, curve.line)} ${line(({ low }) => low, [...curve.line].reverse())}`}
            />
          )}
          <line class="ink-soft" x1={LEFT} x2={RIGHT} y1={y(0.5)} y2={y(0.5)} stroke-dasharray="3 4" />
          {curve && <polyline class="ink" points={line(({ chance }) => chance, curve.line)} />}
          {points.map(({ grammage, passes, n }, i) => (
            <circle key={i} class="mark-you" cx={x(grammage)} cy={y(Number(passes) / n)} r="4" />
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
        {name}: {words} Dots are what was counted, all hands together
        {curve
          ? '; the line is the likeliest chance at each weight, the grey how far it may lie from that.'
          : '. Still working on the curve.'}
        <details>
          <summary>The numbers</summary>
          <p>
            A logistic curve with Firth’s penalty; the grey is its band at 95 % (profile likelihood, point by point).
            The band takes the papers as alike but for their weight.
          </p>
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
              {points.map(({ grammage, passes, n }, i) => {
                const at = curve?.tried[i];
                return (
                  <tr key={i}>
                    <th scope="row" class="n">
                      {figure(grammage, 2)}
                    </th>
                    <td class="n">
                      {Number(passes)} of {n}
                    </td>
                    <td class="n">{at ? percent(at.chance) : '…'}</td>
                    <td class="n">{at ? `${percent(at.low)}, ${percent(at.high)}` : '…'}</td>
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
