/** Where one adhesive holds on the plane of paper weight and absorbency, and how it fails elsewhere. */
import { figure } from '../../core/base/format';
import { logScale } from '../../core/base/scale';
import type { Range } from '../../core/base/quantity';
import { MAP_LIMITS, runsOf, type WeightMap } from '../../core/choose/weight-map';
import { Hatches, MapKey, regionsIn } from './MapParts';

interface Props {
  readonly map: WeightMap;
  readonly grammage: Range;
  readonly sorptivity: Range;
  readonly adhesive: string;
}

const BOX = { left: 44, right: 350, top: 8, bottom: 222 };
const WEIGHTS = [10, 20, 50, 100, 200, 400];
const DRINKS: readonly (readonly [number, string])[] = [
  [1, 'slow'],
  [5, ''],
  [20, 'fast'],
];

export function WeightMapPlate({ map, grammage, sorptivity, adhesive }: Props) {
  const x = logScale(MAP_LIMITS.grammage, [BOX.left, BOX.right]);
  const y = logScale(MAP_LIMITS.sorptivity, [BOX.bottom, BOX.top]);
  const rowHeight = (BOX.bottom - BOX.top) / map.sorptivities.length;
  const columnWidth = (BOX.right - BOX.left) / map.grammages.length;
  const [meX, meY] = [x(grammage.middle), y(sorptivity.middle)];
  return (
    <figure class="plate">
      <div class="plate-body">
        <svg
          viewBox="0 0 360 262"
          class="drawing"
          role="img"
          aria-label={`Map of paper weight against absorbency for ${adhesive}. Your paper: about ${figure(grammage.middle)} g/m², taking in ${figure(sorptivity.middle)} g/m² per root second. The ranking below says the same in numbers.`}
        >
          <Hatches />
          <rect
            class="fill-paper"
            x={BOX.left}
            y={BOX.top}
            width={BOX.right - BOX.left}
            height={BOX.bottom - BOX.top}
          />
          {map.regions.flatMap((row, i) =>
            runsOf(row).map(({ region, from, to }) =>
              region === 'holds' ? null : (
                <rect
                  key={`${i} ${from}`}
                  fill={`url(#hatch-${region})`}
                  x={BOX.left + from * columnWidth}
                  y={BOX.bottom - (i + 1) * rowHeight}
                  width={(to - from) * columnWidth}
                  height={rowHeight + 0.3}
                />
              ),
            ),
          )}
          <rect class="axis" x={BOX.left} y={BOX.top} width={BOX.right - BOX.left} height={BOX.bottom - BOX.top} />
          {WEIGHTS.map((weight) => (
            <text key={weight} class="axis-text" x={x(weight)} y="240" text-anchor={weight === 400 ? 'end' : 'middle'}>
              {weight}
            </text>
          ))}
          <text class="axis-text" x={BOX.right} y="257" text-anchor="end">
            weight, g/m²
          </text>
          {DRINKS.map(([value, word]) => (
            <text key={value} class="axis-text" x={BOX.left - 6} y={y(value) + 4} text-anchor="end">
              {word || value}
            </text>
          ))}
          <line class="mark-you" x1={x(grammage.low)} x2={x(grammage.high)} y1={meY} y2={meY} />
          <line class="mark-you" x1={meX} x2={meX} y1={y(sorptivity.low)} y2={y(sorptivity.high)} />
          <circle class="fill-paper" cx={meX} cy={meY} r="7" />
          <circle class="mark-you" cx={meX} cy={meY} r="3" />
        </svg>
        <MapKey present={regionsIn([map])} />
      </div>
      <figcaption class="plate-caption">
        Papers like yours in every other way, with {adhesive}: weight to the right, thirst upwards (what it takes in,
        g/m² per √s). The cross is your paper, with its range.
      </figcaption>
    </figure>
  );
}
