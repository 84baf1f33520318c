/** The calculator of warp over this site's own records. */
import { DEFAULT_WARP, type WarpPlan } from '../core/warp-plan';
import { catalogue } from '../data/catalogue';
import { createWarping, type WarpStore } from './warping';

export const openWarping = (start: WarpPlan = DEFAULT_WARP): WarpStore => createWarping(catalogue, start);
