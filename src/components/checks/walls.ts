/** Which constants of a search came to rest on the edge of the range that they were allowed. */
import { SEARCHED, type BondConstants } from '../../core/joint/constants';

/** `constants` are written with three figures, so an edge is met when it is met to three figures. */
export function constantsAtWall(constants: Readonly<Record<string, number>>): (keyof BondConstants)[] {
  return (Object.keys(constants) as (keyof BondConstants)[]).filter((key) => {
    const range = SEARCHED[key];
    const found = constants[key];
    return found !== undefined && range !== 'fixed' && range.some((edge) => Math.abs(found / edge - 1) < 0.005);
  });
}
