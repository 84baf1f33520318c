/** The calculator of warp over this site's own records. */
import { catalogue } from '../data/catalogue';
import { madeAhead } from './made-ahead';
import { createWarping, type WarpStore } from './warping';

const warping = madeAhead(() => createWarping(catalogue));

/** Works out the first answer before the page needs it. */
export const prepareWarping = warping.prepare;

export const openWarping = (): WarpStore => warping.take();
