/** The calculator of warp over this site's own records. */
import { catalogue } from '../../data/catalogue';
import { madeAhead } from '../shared/precompute';
import { createFlat, type FlatStore } from './flat';

const warping = madeAhead(() => createFlat(catalogue));

/** Works out the first answer before the page needs it. */
export const prepareFlat = warping.prepare;

export const openFlat = (): FlatStore => warping.take();
