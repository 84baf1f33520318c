/** Where one adhesive holds on the plane of paper weight and absorbency, and how it fails elsewhere. */
import { figure } from '../../core/format';
import { logScale } from '../../core/plot';
import type { Range } from '../../core/quantity';
import { MAP_LIMITS, type Region, type WeightMap } from '../../core/weight-map';

interface Props {
  readonly map: WeightMap;
  readonly grammage: Range;
  readonly sorptivity: Range;
  readonly adhesive: string;
}

const REGIONS: readonly (readonly [Region, string])[] = [
  ['holds', 'spreads, lifts clean and holds'],
  ['drags', 'the sheet drags under the tool'],
  ['paper-gives', 'lifted, the paper tears'],
  ['board-gives', 'lifted, the face below comes away'],
  ['weak-bond', 'the dry joint is weak'],
];
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
  const present = REGIONS.filter(([region]) => map.regions.some((row) => row.includes(region)));
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
        <ul class="map-key">
          {present.map(([region, words]) => (
            <li key={region}>
              <svg viewBox="0 0 24 16" width="24" height="16" aria-hidden="true" focusable="false">
                <rect class="fill-paper" width="24" height="16" />
                {region !== 'holds' && <rect width="24" height="16" fill={`url(#hatch-${region})`} />}
                <rect class="axis" x="0.5" y="0.5" width="23" height="15" />
              </svg>
              {words}
            </li>
          ))}
        </ul>
      </div>
      <figcaption class="plate-caption">
        Papers like yours in every other way, with {adhesive}: weight to the right, thirst upwards (what it takes in,
        g/m² per √s). The cross is your paper, with its range.
      </figcaption>
    </figure>
  );
}

/** Neighbouring cells of one region, so that a row is a few rectangles and not thirty. */
function runsOf(row: readonly Region[]): { region: Region; from: number; to: number }[] {
  const runs: { region: Region; from: number; to: number }[] = [];
  row.forEach((region, i) => {
    const last = runs.at(-1);
    if (last?.region === region) last.to = i + 1;
    else runs.push({ region, from: i, to: i + 1 });
  });
  return runs;
}

/** One hatching for each way to fail: told apart by direction, not by colour. */
function Hatches() {
  return (
    <defs>
      <pattern id="hatch-drags" width="6" height="6" patternUnits="userSpaceOnUse">
        <path class="ink-soft" d="M1 0v6M4 0v6" />
      </pattern>
      <pattern id="hatch-paper-gives" width="7" height="7" patternUnits="userSpaceOnUse">
        <path class="ink-soft" d="M-1 8L8 -1" />
      </pattern>
      <pattern id="hatch-board-gives" width="7" height="7" patternUnits="userSpaceOnUse">
        <path class="ink-soft" d="M-1 8L8 -1M-1 -1L8 8" />
      </pattern>
      <pattern id="hatch-weak-bond" width="7" height="7" patternUnits="userSpaceOnUse">
        <circle class="fill-ink" cx="3" cy="3" r="0.9" />
      </pattern>
    </defs>
  );
}
