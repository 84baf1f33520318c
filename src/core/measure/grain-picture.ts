/** A sheet with its fibres, to be drawn: the same picture for the same grain, always. */
import type { GrainFinding, GrainWay } from '../paper/grain-tests';
import type { MeasurePlan } from './plan';

export interface GrainDrawing {
  readonly width: number;
  readonly height: number;
  /** ends of each fibre: x1, y1, x2, y2 */
  readonly fibres: readonly (readonly [number, number, number, number])[];
  readonly says: string;
}

const SHAPES = { taller: [150, 200], wider: [240, 160], square: [180, 180] } as const;
const FIBRES = 70;
const HALF = 11;
/** Fibres of a sheet with a grain stray this far from it, radians. For the picture only. */
const STRAY = 0.35;
/** Steps that spread points evenly over a square (the plastic number's). */
const STEP = [0.7548776662466927, 0.5698402909980532] as const;
const SAYS: Readonly<Record<GrainWay, string>> = {
  height: 'Its fibres run up and down.',
  width: 'Its fibres run from side to side.',
  none: 'Its fibres lie in every direction.',
};

/** The sheet as it was held, with its grain as lines and its name beside it. */
export function drawGrain(grain: GrainFinding, shape: MeasurePlan['shape']): GrainDrawing {
  const [width, height] = SHAPES[shape];
  const way = grain.settled ? grain.likeliest : 'none';
  const along = way === 'height' ? Math.PI / 2 : 0;
  const fibres = Array.from({ length: FIBRES }, (_, i): readonly [number, number, number, number] => {
    const x = HALF + ((0.5 + STEP[0] * i) % 1) * (width - 2 * HALF);
    const y = HALF + ((0.5 + STEP[1] * i) % 1) * (height - 2 * HALF);
    const turn = ((i * 0.618034) % 1) * 2 - 1;
    const angle = along + turn * (way === 'none' ? Math.PI / 2 : STRAY);
    const [dx, dy] = [HALF * Math.cos(angle), HALF * Math.sin(angle)];
    return [x - dx, y - dy, x + dx, y + dy].map((value) => Number(value.toFixed(1))) as never;
  });
  return { width, height, fibres, says: `A sheet as you hold it. ${SAYS[way]}` };
}
