/** What maps of paper weight against absorbency share: the words for each region, its hatching, the key. */
import type { Region, WeightMap } from '../../core/choose/weight-map';

type Named = readonly [region: Region, words: string];

const REGIONS: readonly Named[] = [
  ['holds', 'spreads, lifts clean and holds'],
  ['drags', 'the sheet drags under the tool'],
  ['paper-gives', 'lifted, the paper tears'],
  ['board-gives', 'lifted, the face below comes away'],
  ['weak-bond', 'the dry joint is weak'],
];

/** The regions that stand on any of these maps, in the order of the work, with their words. */
export const regionsIn = (maps: readonly Pick<WeightMap, 'regions'>[]): readonly Named[] =>
  REGIONS.filter(([region]) => maps.some(({ regions }) => regions.some((row) => row.includes(region))));

export function MapKey({ present }: { readonly present: readonly Named[] }) {
  return (
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
  );
}

/** One hatching for each way to fail: told apart by direction, not by colour. */
export function Hatches() {
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
