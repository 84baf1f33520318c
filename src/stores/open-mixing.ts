/** The mixing calculator over this site's own records. */
import { DEFAULT_MIX, type MixPlan } from '../core/mix-plan';
import { catalogue } from '../data/catalogue';
import { createMixing, type MixStore } from './mixing';

export const openMixing = (start: MixPlan = DEFAULT_MIX): MixStore => createMixing(catalogue, start);
