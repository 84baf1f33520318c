/** The mixing and coverage calculators over this site's own records. */
import { DEFAULT_COVER, type CoverPlan } from '../core/cover-plan';
import { DEFAULT_MIX, type MixPlan } from '../core/mix-plan';
import { catalogue } from '../data/catalogue';
import { createCovering, type CoverStore } from './covering';
import { createMixing, type MixStore } from './mixing';

export const openMixing = (start: MixPlan = DEFAULT_MIX): MixStore => createMixing(catalogue, start);
export const openCovering = (start: CoverPlan = DEFAULT_COVER): CoverStore => createCovering(catalogue, start);
