/** How a covered board curls along one direction of the work, its plies each with a grain of its own. */
import { bowHeight, stripCurvature } from './laminate';

/** A direction on the work: across its width from side to side, or up its height. */
export type Direction = 'width' | 'height';

/** A ply of something with a grain. What has none takes its `across` figures both ways. */
export interface GrainedPly {
  /** mm */
  readonly thickness: number;
  readonly grain: Direction | 'none';
  /** any one unit for all plies */
  readonly modulus: { readonly along: number; readonly across: number };
  /** growth from dry to soaked, as a share */
  readonly expansion: { readonly along: number; readonly across: number };
  /** how much of that growth it would make if it were free: 1 when soaked, below 0 when it would shrink */
  readonly moisture: number;
}

export interface Curl {
  /** 1/mm; positive bows away from the first ply */
  readonly curvature: number;
  /** height of the bow, mm */
  readonly bowMm: number;
  /** the ply whose face goes hollow */
  readonly towards: 'first' | 'last' | 'neither';
}

/**
 * How a strip of these plies curls along one direction of the work, `widthMm` long that way (0–100 000 mm).
 * Each direction stands alone: what bending one way does to the other, and twist, are left out.
 */
export function curl(strip: {
  readonly plies: readonly GrainedPly[];
  readonly widthMm: number;
  readonly direction: Direction;
}): Curl {
  const { plies, widthMm, direction } = strip;
  const curvature = stripCurvature(
    plies.map(({ thickness, grain, modulus, expansion, moisture }) => {
      const way = grain === direction ? 'along' : 'across';
      return { thickness, modulus: modulus[way], strain: expansion[way] * moisture };
    }),
  );
  const towards = curvature > 0 ? 'last' : curvature < 0 ? 'first' : 'neither';
  return { curvature, bowMm: bowHeight(curvature, widthMm), towards };
}
