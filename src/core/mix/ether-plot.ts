/** Where the viscosity of a cellulose ether stands on a plate: across, its strength; up, tenfold steps. */
import { evenScale, logScale } from '../base/scale';
import { celluloseEtherViscosity } from '../adhesive/viscosity';

/** Strongest solution on the plate, %. */
export const MOST_PERCENT = 5;
export const DECADES = [1, 10, 100, 1000, 10_000, 100_000, 1_000_000] as const;
const POINTS = 50;

export interface EtherPlot {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** strength in %, what is past the end at the end */
  readonly x: (percent: number) => number;
  /** mPa·s */
  readonly y: (viscosity: number) => number;
  /** the curve of a grade, as an SVG path */
  readonly curve: (gradeMilliPascalSeconds: number) => string;
}

/** The plate in a drawing of 360 × 262, its curves ending at `right`. */
export function etherPlot(right: number): EtherPlot {
  const [left, top, bottom] = [50, 30, 224];
  const x = evenScale([0, MOST_PERCENT], [left, right]);
  const y = logScale([1, 1e6], [bottom, top]);
  const curve = (gradeMilliPascalSeconds: number) =>
    Array.from({ length: POINTS + 1 }, (_, i) => (i * MOST_PERCENT) / POINTS)
      .map((percent, i) => {
        const viscosity = celluloseEtherViscosity({ gradeMilliPascalSeconds, percent });
        return `${i === 0 ? 'M' : 'L'}${x(percent).toFixed(1)} ${y(viscosity).toFixed(1)}`;
      })
      .join('');
  return { left, right, top, bottom, x, y, curve };
}
